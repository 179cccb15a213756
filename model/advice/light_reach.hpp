#pragma once

#include "model/advice/leaf_mixes.hpp"
#include "model/advice/limb_states.hpp"
#include "model/light/light_study.hpp"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace model::advice {

/// What is looked for in the light of a surface.
using LightWorth = std::function<double(const light::StudyRay&)>;

/// How much light sets of cuts can give a surface at the most, from what its rays meet on their way
/// through the tree: kept once, summed up for ten thousand sets (docs/methods/advice.md, A6).
class LightReach {
public:
    /// \param forms  of each limb: the shapes that it may have
    LightReach(const light::LightStudy& study, const Tree& tree, const LimbForms& forms,
               const LightWorth& worth);

    struct Most {
        double sure{};  ///< light that there is whatever is done
        PerOption more; ///< at most what each option adds to that
    };
    /// For all sets of cuts that take only allowed options and no more leaf than this.
    /// \param states  of the same forms
    /// \param likely  how much of each limb's leaf is thought to go: the bound is closest for sets
    ///                like that; empty: not known
    [[nodiscard]] Most most(const LimbStates& states, const Allowed& allowed, double leafMost,
                            const std::vector<double>& likely = {}) const;

    /// The light itself, once all is decided, in the unit of the worth; within 2e-5 of that of the
    /// cut tree in LightStudy.
    /// \param states  per limb, of the same forms
    [[nodiscard]] double light(const std::vector<LimbState>& states) const;

private:
    /// Wood or leaf of a limb that is there in some of its forms.
    struct Pattern {
        std::size_t limb{};
        std::uint64_t forms{};
    };
    /// A stretch of a ray, or several that meet the same leaf.
    struct Stretch {
        double depth{}; ///< of leaf of medium density
        std::uint32_t mix{};
    };
    struct Ray {
        double worth{};
        std::size_t firstStretch{};
        std::size_t lastStretch{};
        std::size_t firstWood{};
        std::size_t lastWood{};
    };
    struct Bodies;
    /// Under which number a pattern or a mix is kept, while rays are added.
    struct Numbers {
        std::map<std::pair<std::size_t, std::uint64_t>, std::uint32_t> patterns;
        std::map<LeafMix, std::uint32_t> mixes;
    };
    void addRay(const light::StudyRay& ray, double worth, double extinction_1_m,
                const Bodies& bodies, Numbers& numbers);
    std::uint32_t pattern(std::size_t limb, std::uint64_t forms, Numbers& numbers);
    std::uint32_t mix(const LeafMix& parts, Numbers& numbers);
    /// What may become of one pattern.
    struct Prospect {
        LeafSpan span;
        double goesFor{}; ///< the least leaf for it to go; infinite: it stays
    };
    [[nodiscard]] std::vector<Prospect> prospects(const LimbStates& options, const Allowed& allowed,
                                                  double& leafLeft) const;
    /// Wood that has to go before a ray gets any light, or that stays for good.
    struct Blocked {
        std::uint32_t pattern{};
        bool forGood{};
    };
    [[nodiscard]] std::optional<Blocked> blocked(const Ray& ray,
                                                 const std::vector<Prospect>& prospects,
                                                 const LeafMixes& mixes, double leafLeft) const;

    std::vector<double> leafOf_; ///< per limb, its own, in some unit: for shares of gains
    std::vector<Pattern> patterns_;
    std::vector<LeafMix> mixes_;
    std::vector<Stretch> stretches_;
    std::vector<std::uint32_t> wood_; ///< patterns
    std::vector<Ray> rays_;
    double open_{}; ///< light on rays that meet nothing that could go
};

} // namespace model::advice
