#include "app/round/round_scene.hpp"

#include <algorithm>
#include <utility>

namespace app {

std::vector<RoundPart> roundScene(const RoundInput& input)
{
    std::vector<RoundPart> parts;
    addGarden(parts, input);
    addOtherTrees(parts, input);
    addChosenTree(parts, input);
    return parts;
}

void addPart(std::vector<RoundPart>& parts, RoundKind kind, const std::string& id, Mesh solid)
{
    if (!solid.triangles.empty())
        parts.push_back({kind, id, std::make_shared<const Mesh>(std::move(solid))});
}

model::Vec3 foot_m(const model::Garden& garden, model::Point2 position_m)
{
    return model::Ground(garden.slope).at(position_m);
}

double ringRadius_m(const model::Tree& tree)
{
    constexpr double kBeyond_m = 0.8; // the crown's edge
    return std::max(1.5, reach_m(tree) + kBeyond_m);
}

} // namespace app
