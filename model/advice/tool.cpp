#include "model/advice/tool.hpp"

#include "model/advice/limits.hpp"

namespace model::advice {

Tool toolFor(double diameter_m, double height_m)
{
    if (height_m > kPoleSawReach_m)
        return Tool::outOfReach;
    if (height_m > kReach_m)
        return diameter_m <= kPolePruner_m ? Tool::polePruner : Tool::poleSaw;
    if (diameter_m <= kSecateurs_m)
        return Tool::secateurs;
    return diameter_m <= kLoppers_m ? Tool::loppers : Tool::handSaw;
}

const char* toolSource(Tool tool)
{
    switch (tool) {
    case Tool::secateurs:
    case Tool::loppers:
    case Tool::handSaw:
        return "Iowa State University Extension, equipment to prune trees and shrubs (shears to "
               "3/4 in, loppers to 1 1/2 in, a saw above)";
    case Tool::polePruner:
        return "makers' figures of 1 to 1 1/4 in; the Nebraska Statewide Arboretum says up to 2 in";
    case Tool::poleSaw:
    case Tool::outOfReach:
        return "reach of a hand-held pole, common practice, no source";
    }
    return "";
}

} // namespace model::advice
