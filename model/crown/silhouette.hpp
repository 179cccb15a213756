#pragma once

#include "model/crown/leafy_bodies.hpp"
#include "model/crown/span_row.hpp"
#include "model/garden/tree.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace model {

/// What the wind sees of a limb's end: its own leafy part and the outermost of the limbs that grow
/// from it.
struct Visible {
    double leaf_m2{};      ///< outline of the leafy bodies together (their union)
    double woodShare{1.0}; ///< share of their bare wood that shows outside that outline
};

/// What a new drawing of a tree leaves as it was.
struct Redrawn {
    std::vector<std::size_t> from; ///< per limb: its index in the drawing before; kNoLimb: new
    std::vector<bool> own;         ///< the limb's own stations or foliage differ
    std::vector<bool> beyond;      ///< its own or something that grows from it, or what grows
};

/// The outlines of a tree's limbs as seen along level directions.
///
/// Level lines cut the drawing. On each the stretch that a leafy body covers is known in closed
/// form, and stretches are united exactly; a limb takes the united stretches of the limbs that grow
/// from it, so that each body is met once for each line, however deep it sits. Between the lines
/// the outline follows from the closed-form area of the single bodies times the share of their
/// stretches that is left after uniting (L8): exact for a limb that hides nothing, and exact in the
/// limit of many lines for the rest.
///
/// The lines run at fixed heights, so that a limb that is bent leaves the others' stretches alone.
class Silhouettes {
public:
    /// \param bearings_deg  to look along; the outlines seen the other way are the same
    /// \param lines  how many lines over the tree's height; 0: enough for 2 % (measured,
    ///               tests/model/load/silhouette_test.cpp)
    Silhouettes(const Tree& tree, const LimbOrder& order, const std::vector<LeafyBody>& bodies,
                const std::vector<double>& bearings_deg, int lines = 0);

    /// Looks at nothing yet.
    explicit Silhouettes(const std::vector<double>& bearings_deg, int lines = 0);

    /// Looks at another drawing of the tree: the same as from scratch, but only what was redrawn is
    /// worked out anew. \param bodies  of those limbs at least, limb by limb
    /// \returns  true if the lines had to move, which makes every outline a little another
    bool redraw(const Tree& tree, const LimbOrder& order, const std::vector<LeafyBody>& bodies,
                const Redrawn& redrawn);

    /// The limb's own leafy part with the `outermost` last of the limbs that grow from it
    /// (LimbOrder::children order), 0 .. all. \param bearing  index into those given
    [[nodiscard]] const Visible& visible(std::size_t limb, std::size_t outermost,
                                         std::size_t bearing = 0) const
    {
        return limbs_[limb].visible[outermost * across_.size() + bearing];
    }

private:
    /// A curtain and the lines, first .. last - 1, that may meet it.
    struct Drawn {
        Curtain solid{};
        long first{};
        long last{};
    };
    /// Before uniting: lengths over all lines, and area.
    struct Single {
        double leaf_m{};
        double wood_m{};
        double leaf_m2{}; ///< closed form
    };
    /// The rows of one kind, for all bearings one after the other.
    struct Rows {
        std::vector<Interval> spans;
        std::vector<std::size_t> start; ///< of each row of each bearing, and the end
        [[nodiscard]] std::span<const Interval> row(std::size_t index) const
        {
            return std::span(spans).subspan(start[index], start[index + 1] - start[index]);
        }
        void clear(std::size_t expected);
        void append(const SpanRow& row);
    };
    /// One limb with all that grows from it.
    struct Seen {
        std::vector<Drawn> leaf; ///< its own alone
        std::vector<Drawn> wood; ///< likewise
        Interval heights{};      ///< of its own
        double finest_m{};       ///< radius of its own leafy bodies
        long first{};            ///< lines first .. last - 1 meet it
        long last{};
        Rows leafRows;
        Rows woodRows;                ///< only where it shows
        std::vector<Single> single;   ///< per bearing
        std::vector<Visible> visible; ///< [outermost limbs][bearing]
    };
    /// Where one limb is put together.
    struct Bench {
        std::vector<std::vector<Interval>> leaf; ///< of each of its own curtains, on its lines;
        std::vector<std::vector<Interval>> wood; ///< from > to where it doesn't meet the line
        SpanRow leafRow;
        SpanRow woodRow;
        SpanRow scratch;
        std::vector<double> leafUnited_m; ///< per number of outermost limbs, over all lines
        std::vector<double> woodShown_m;
    };

    void drawOwn(const Tree& tree, const std::vector<LeafyBody>& bodies, std::size_t limb);
    [[nodiscard]] double spacing() const;
    void meetLines(std::vector<Drawn>& chain) const;
    void reach(const LimbOrder& order, std::size_t limb);
    void lookAt(const LimbOrder& order, std::size_t limb);
    void lookAlong(const LimbOrder& order, std::size_t limb, std::size_t bearing);
    [[nodiscard]] Single layOwn(const Seen& limb, std::size_t bearing);
    void meet(const std::vector<Drawn>& chain, Vec3 across,
              std::vector<std::vector<Interval>>& stretches, double& single_m) const;
    void coverLine(const LimbOrder& order, std::size_t limb, std::size_t bearing, long line);

    std::vector<Vec3> across_; ///< per bearing, square to it
    int lines_;
    double spacing_m_{};
    std::vector<Seen> limbs_;
    Bench bench_;
};

/// The bearings of half a turn, `step_deg` apart.
[[nodiscard]] std::vector<double> halfTurn_deg(double step_deg);

} // namespace model
