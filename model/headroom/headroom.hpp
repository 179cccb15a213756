#pragma once

#include "model/crown/leafy_bodies.hpp"
#include "model/garden/garden.hpp"

#include <optional>
#include <string>
#include <vector>

namespace model::headroom {

/// Usual headroom for a use, with its source.
struct UsualHeadroom {
    double height_m{};
    std::string source;
};
[[nodiscard]] UsualHeadroom usualHeadroom(StripUse use);

/// Headroom a strip needs: the gardener's own figure, or the usual one for its use.
[[nodiscard]] double neededHeadroom_m(const Strip& strip);

/// True if the tree's stem stands in the strip (tree frame) or on its edge. People walk round a
/// stem, not under it: then its own wood doesn't count as overhead, its leaf and its limbs do.
[[nodiscard]] bool stemStandsIn(const Tree& tree, const Polygon& strip);

/// The lowest part of one limb over a strip.
struct LowPart {
    std::string limb;     ///< id
    double height_m{};    ///< of its lowest leaf, shoot or wood over the strip, above the ground
    bool hangingShoots{}; ///< it is the hanging shoots that are low: without them it is clear
    Point2 at_m{};        ///< garden frame, where
};

/// Headroom under one tree over one strip when the tree hangs at its heaviest.
struct SaggedHeadroom {
    std::optional<double> height_m; ///< lowest over the strip; blank: nothing overhangs it
    std::string lowestLimb;         ///< id of the limb that hangs lowest then; empty: none
    double shortfall_m{};           ///< 0 when enough
    std::vector<LowPart> blame;     ///< every limb below the needed height then, lowest first
};

/// Headroom under one tree over one strip, as it was drawn.
struct StripHeadroom {
    std::string strip; ///< id
    double needed_m{};
    std::optional<double> height_m;    ///< lowest over the strip; blank: nothing overhangs it
    std::optional<Point2> lowestAt_m;  ///< garden frame, where that is; blank as height_m is
    double shortfall_m{};              ///< 0 when enough
    std::optional<double> overhang_m2; ///< how much of the strip the crown covers; blank: left out
    std::vector<LowPart> blame;        ///< every limb below the needed height, lowest first
    /// Wet, in leaf and in fruit; blank: not asked for
    std::optional<SaggedHeadroom> sagged;

    /// The larger shortfall of the two.
    [[nodiscard]] double worstShortfall_m() const;
    /// The lower of the two heights; blank: nothing ever overhangs the strip.
    [[nodiscard]] std::optional<double> worstHeight_m() const;
};

/// One tree's headroom over every strip.
[[nodiscard]] std::vector<StripHeadroom> treeHeadroom(const Garden& garden, const Tree& tree);

/// Whether StripHeadroom::overhang_m2 is wanted: it takes ten times as long as all the rest.
enum class Overhang { reckoned, leftOut };

/// The same, also when the tree hangs at its heaviest. \param sagging  the same tree then
/// (load::sagUnder(): its stations moved)
[[nodiscard]] std::vector<StripHeadroom> treeHeadroom(const Garden& garden, const Tree& tree,
                                                      const Tree& sagging,
                                                      Overhang overhang = Overhang::reckoned);

/// Height of the lowest point of a curtain (tree frame) over a strip; nothing when they don't meet.
/// The underside is convex, so its least value over a polygon lies at the curtain's own lowest
/// point, or on an edge of the polygon (docs/methods/headroom.md, H1; good to a tenth of a
/// millimetre).
struct LowPoint {
    double height_m{};
    Point2 at_m{};
};
[[nodiscard]] std::optional<LowPoint> lowestOver(const Curtain& curtain, const Polygon& strip);

} // namespace model::headroom
