#pragma once

#include "model/crown/flat_curtain.hpp"
#include "model/crown/leafy_bodies.hpp"
#include "model/garden/tree.hpp"

#include <cstddef>
#include <vector>

namespace model {

/// What the wind sees of a limb's end: its own leafy part and the outermost of the limbs that grow
/// from it.
struct Visible {
    double leaf_m2{};      ///< outline of the leafy bodies together (their union)
    double woodShare{1.0}; ///< share of their bare wood that shows outside that outline
};

/// The outlines of a tree's limbs as seen along level directions.
///
/// Upright distance is cut by level lines. On each the stretch that a leafy body covers is known
/// in closed form, and stretches are united exactly; a limb takes the united stretches of the limbs
/// that grow from it, so that each body is met once for each line, however deep it sits. Between
/// the lines the outline follows from the closed-form area of the single bodies times the share
/// of their stretches that is left after uniting (L8): exact for a limb that hides nothing, and
/// exact in the limit of many lines for the rest.
class Silhouettes {
public:
    /// \param lines  how many lines over the tree's height; 0: enough for 2 % (measured,
    ///               tests/model/load/silhouette_test.cpp)
    Silhouettes(const Tree& tree, const LimbOrder& order, const std::vector<LeafyBody>& bodies,
                int lines = 0);

    /// Looks along a bearing, or against it: the outlines are the same.
    void lookAlong(double bearing_deg);

    /// The limb's own leafy part with the `outermost` last of the limbs that grow from it
    /// (LimbOrder::children order), 0 .. all.
    [[nodiscard]] const Visible& visible(std::size_t limb, std::size_t outermost) const
    {
        return visible_[firstVisible_[limb] + outermost];
    }

private:
    using Spans = std::vector<Interval>; ///< sorted, apart from each other
    struct Drawn {
        Curtain solid{};
        std::size_t first{}; ///< lines first .. last - 1 may meet it
        std::size_t last{};
    };
    struct Outline {
        std::vector<Drawn> leaf;
        std::vector<Drawn> wood;
    };
    /// One limb with all that grows from it, as met by the lines.
    struct Rows {
        std::size_t first{}; ///< lines first .. last - 1 meet it
        std::size_t last{};
        std::vector<Spans> leaf; ///< for each of them
        std::vector<Spans> wood; ///< only where it shows
        double leafSingle_m{};   ///< lengths before uniting, over all lines
        double leafUnited_m{};
        double woodSingle_m{};
        double woodShown_m{};
        double leafSingle_m2{}; ///< closed form, before uniting
    };

    [[nodiscard]] std::vector<Drawn> drawn(const std::vector<Curtain>& chain) const;
    void reach(std::size_t limb);
    void draw(const Drawn& drawn, Vec3 across, std::size_t firstLine, std::vector<Spans>& onto,
              double& single_m);
    void drawOwn(std::size_t limb, Vec3 across);
    void add(Rows& whole, const Rows& part);
    void hideWood(Rows& rows, std::size_t line);
    [[nodiscard]] static Visible seen(const Rows& rows);

    const LimbOrder& order_;
    std::vector<Outline> outlines_;
    std::vector<Rows> rows_;
    std::vector<std::size_t> firstVisible_;
    std::vector<Visible> visible_;
    double bottom_m_{};
    double spacing_m_{1.0};
    Spans scratch_;
};

} // namespace model
