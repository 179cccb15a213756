#pragma once

#include "model/advice/options.hpp"
#include "model/garden/cut.hpp"
#include "model/light/light_study.hpp"
#include "model/species/species.hpp"

#include <map>
#include <span>
#include <utility>
#include <vector>

namespace model::advice {

/// All that shades and is shaded in a garden, besides the tree in question.
struct Surroundings {
    const Tables& tables;
    std::span<const Foliation> foliations; ///< one for each tree, in order, as sketched
};

/// Hours of sun wanted on the top of one planting.
struct LightWish {
    std::size_t planting{};  ///< index into Garden::plantings
    double sun_h{};          ///< effective hours a day, mean of the months
    std::vector<int> months; ///< 1..12; none: the growing season
};

/// Plantings that are to have their sun back.
class LightGoals {
public:
    LightGoals(const Garden& garden, const Tree& tree, const Surroundings& around,
               std::chrono::year year, const std::vector<LightWish>& wishes);

    /// The same, each asking only for this share of the way from what is to what is wanted.
    void ease(double share);

    /// Bounds that all have to be reached: one for each planting that lacks sun, and what was
    /// learnt.
    [[nodiscard]] std::size_t count() const { return lacking_.size() + active_.size(); }
    /// Learns from cuts that did not bring enough, so that help() knows what they bring together
    /// (A6). Nothing new is learnt after some dozens of times.
    /// \return true if help() now tells that these cuts fall short
    bool learn(const std::vector<Cut>& cuts) const;
    /// A6.
    [[nodiscard]] std::vector<double> help(const Taken& taken) const;
    /// Measured on the tree after cuts.
    [[nodiscard]] bool met(const Tree& cut) const;

    /// Effective sun hours a day for each wish.
    [[nodiscard]] std::vector<double> hours(const Tree& tree) const;
    [[nodiscard]] const std::vector<double>& now_h() const { return now_h_; }
    /// If the tree were away.
    [[nodiscard]] const std::vector<double>& without_h() const { return without_h_; }

private:
    /// What one limb gives back on a way from the whole tree to its bare stem: first the part that
    /// the cuts took, then, later, all the rest.
    struct Leg {
        double from_m{};             ///< of the part, along the limb
        double share{};              ///< of it; 0: the cuts left the limb alone
        std::vector<double> first_h; ///< by wish
        std::vector<double> rest_h;
    };
    /// A way from the whole tree to its bare stem.
    struct Way {
        std::vector<double> credit_h; ///< by wish: what lifting hanging shoots may give besides
        std::vector<Leg> legs;        ///< by limb
    };
    class Walk;
    struct Active {
        std::size_t way{};
        std::size_t wish{};
    };
    [[nodiscard]] Way wayPast(const std::vector<Cut>& cuts) const;
    [[nodiscard]] double gain_h(const Active& active, const Taken& taken) const;
    [[nodiscard]] double asked_h(const Active& active) const;
    void activate(std::size_t way) const;
    [[nodiscard]] std::vector<std::size_t> cheapestFirst() const;

    [[nodiscard]] Tree standingAlone(const Taken& taken) const;
    /// Hours that the whole part takes from each planting when it stands alone; kept once known.
    [[nodiscard]] const std::vector<double>& takenAlone_h(std::size_t limb, double from_m) const;

    const Tree& tree_;
    const Foliation& foliation_;
    Tree bareTrunk_;
    mutable std::vector<Way> ways_;
    mutable std::vector<Active> active_;
    std::vector<light::LightStudy> studies_;
    std::vector<double> wanted_h_;
    std::vector<double> most_h_; ///< eased
    std::vector<double> now_h_;
    std::vector<double> without_h_;
    std::vector<double> bare_h_; ///< with the stem's wood alone
    std::vector<std::size_t> lacking_;
    mutable std::map<std::pair<std::size_t, double>, std::vector<double>> alone_h_;
};

} // namespace model::advice
