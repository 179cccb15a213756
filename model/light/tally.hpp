#pragma once

#include "model/light/limb_numbers.hpp"
#include "model/light/scene_beam.hpp"

#include <cstdint>
#include <utility>
#include <vector>

namespace model::light {

/// Light in the three ways it is counted.
struct Light3 {
    double sun_h{}; ///< effective sun hours
    double beam{};  ///< energy of the beam, MJ/m2
    double sky{};   ///< share of an even sky's light
};
inline Light3& operator+=(Light3& sum, Light3 more)
{
    sum.sun_h += more.sun_h;
    sum.beam += more.beam;
    sum.sky += more.sky;
    return sum;
}
inline Light3 operator*(double k, Light3 light)
{
    return {k * light.sun_h, k * light.beam, k * light.sky};
}

/// What a tree or a limb takes.
struct Taken3 {
    Light3 removal; ///< what taking it away would give back, all else standing
    Light3 firstIn; ///< what it would take if it stood alone
};

inline Taken3 operator*(double k, const Taken3& taken)
{
    return {k * taken.removal, k * taken.firstIn};
}
inline Taken3& operator+=(Taken3& sum, const Taken3& more)
{
    sum.removal += more.removal;
    sum.firstIn += more.firstIn;
    return sum;
}

/// Light on one surface, mean over its points, summed over directions.
struct Tally {
    Light3 open;       ///< nothing in the way
    Light3 structures; ///< walls and glass only
    Light3 standing;   ///< as things are
    /// Those that take something, by index into Scene::trees.
    std::vector<std::pair<std::size_t, Taken3>> trees;
    /// The same by tree and limb: the limb with all that grows from it, as a cut would take it.
    std::vector<std::pair<std::pair<std::size_t, std::size_t>, Taken3>> limbs;
    std::vector<Light3> points; ///< as things are, one for each point
};

/// Adds `weight` times one tally of a surface to another.
void add(double weight, const Tally& more, Tally& sum);

/// Adds packs of rays up to a tally of one surface at a time.
class Tallier {
public:
    /// \param beam   gets the limbs' numbers
    /// \param limbs  one for each tree, or empty: limbs are not told apart
    Tallier(SceneBeam& beam, std::span<const LimbNumbers> limbs);

    /// \param worth  of an unhindered ray on this surface, to each of tally.points
    void add(const Pack& pack, const PackLight& light, Light3 worth, Tally& tally);

    /// Writes what trees and limbs took since the last time to the tally, and begins anew.
    void finish(Tally& tally);

private:
    void addLimbs(const PackLight& light, const TreeLight& tree, const Lanes& others,
                  const Lanes& open, const Taken3& whole, Light3 worth);
    void findMet(std::span<const Crossing> rows, const LimbNumbers& numbers);

    /// Light taken, for one tree or limb; entries that took nothing are left out of tallies.
    struct Sum {
        Taken3 taken;
        bool touched{};
    };

    const SceneBeam& beam_;
    std::span<const LimbNumbers> limbs_;
    std::vector<std::size_t> firstLimb_; ///< per tree, into limbSums_
    std::vector<Sum> treeSums_;
    std::vector<Sum> limbSums_;
    std::vector<std::size_t> shaders_;                             ///< trees touched
    std::vector<std::pair<std::size_t, std::size_t>> shaderLimbs_; ///< trees and limbs touched
    // Of the pack and tree at hand:
    std::vector<std::size_t> met_;     ///< limbs that its rays meet, and those they grow from
    std::vector<LimbRange> ranges_;    ///< of met_
    std::vector<LimbLoss> losses_;     ///< of met_
    std::vector<std::uint64_t> isMet_; ///< one bit for each limb number
    std::vector<Lanes> before_;        ///< per tree met: what those before it let through
};

} // namespace model::light
