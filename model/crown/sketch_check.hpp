#pragma once

#include "model/crown/foliage.hpp"

#include <optional>
#include <vector>

namespace model {

/// A figure of a whole tree as it was drawn, and what published trees with as thick a stem have.
struct Plausible {
    double drawn{};
    double expected{}; ///< of the published fit
    double low{};      ///< two standard deviations of the fit below and above
    double high{};
    const char* source{""};
    [[nodiscard]] bool within() const { return drawn >= low && drawn <= high; }
};

/// The likely reason why a sketch falls outside what was published.
enum class SketchCause {
    girthSmall,  ///< wood and crown are both more than such a stem bears
    girthLarge,  ///< both are less
    limbsThick,  ///< the wood alone is too much: limbs drawn too thick or too many
    limbsThin,   ///< the wood alone is too little: limbs too thin, too short or missing
    crownWide,   ///< the leafy parts alone reach too far
    crownNarrow, ///< they reach too little
    leafDense,   ///< too much leaf for a crown that fits
    leafSparse,
};

/// A whole sketch held against published trees (C6, C7).
struct SketchCheck {
    double stemDiameter_m{};
    Plausible dryMass_kg;            ///< above ground, wood, twigs and leaf
    Plausible leafArea_m2;           ///< one-sided
    Plausible leafMass_kg;           ///< dry; no doubt is drawn from it
    Plausible crownSpread_m;         ///< diameter of a circle as large as the crown on plan
    std::vector<SketchCause> causes; ///< empty: nothing to doubt
};

/// \returns  blank for a stem thinner than 5 cm or a tree without leaf, of which nothing is known
/// \throws std::domain_error  on a tree that validate() refuses
[[nodiscard]] std::optional<SketchCheck> checkSketch(const Tree& tree, const Foliation& foliation,
                                                     const Species& species);

/// Above-ground dry mass of forest trees by the diameter of the stem (C6).
struct BiomassFit {
    double b0{};     ///< ln kg
    double b1{};     ///< per ln cm
    double spread{}; ///< standard deviation about the fit, ln
};
[[nodiscard]] BiomassFit biomassFit(BiomassGroup group);

} // namespace model
