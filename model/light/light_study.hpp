#pragma once

#include "model/light/pack.hpp"
#include "model/light/sample_day.hpp"
#include "model/light/scene_beam.hpp"
#include "model/light/surface.hpp"
#include "model/light/weather.hpp"
#include "model/light/year_light.hpp"

#include <atomic>
#include <chrono>
#include <span>
#include <vector>

namespace model::light {

/// What is looked at, and how closely.
struct StudyQuestion {
    std::vector<SampleDay> days;
    Weather weather;
    std::chrono::seconds step{std::chrono::minutes{10}};
    int skyDirections{200}; ///< 0: sun only, and no light integral
};

/// Light of a mean day on one surface.
struct SurfaceDay {
    DayLight mean;
    std::vector<DayLight> points; ///< one for each of the surface's points
};

/// One ray of a study, from a point of a surface to the light.
struct StudyRay {
    std::size_t surface{}; ///< index into the study's surfaces
    Vec3 from_m{};         ///< garden frame
    Vec3 towards{};        ///< unit
    double leafShare{};    ///< on the tree that changes, of full leaf
    DayLight worth;        ///< of the surface's mean, if that tree lets all of it through
};

/// Light on surfaces as one tree is redrawn or cut, again and again: what all else lets through is
/// traced once and kept. with() may be called from several threads at once.
class LightStudy {
public:
    /// \param foliations  one for each tree, in order, of the trees as they were sketched
    /// \param tree        index into Garden::trees of the tree that changes
    /// \throws std::domain_error  on a species that the tables don't hold
    LightStudy(const Garden& garden, std::span<const Foliation> foliations, const Tables& tables,
               std::size_t tree, std::vector<Surface> surfaces, const StudyQuestion& question);

    /// The light if the tree looked like this. Leaf per volume stays that of the sketch.
    [[nodiscard]] std::vector<SurfaceDay> with(const Tree& tree) const;
    /// The same for a tree that was drawn anew, with the leaf of the new sketch.
    [[nodiscard]] std::vector<SurfaceDay> with(const Tree& tree, const Foliation& foliation) const;
    /// The light if the tree were away.
    [[nodiscard]] std::vector<SurfaceDay> without() const;

    [[nodiscard]] std::span<const Surface> surfaces() const { return surfaces_; }

    /// The rays that the means of the surfaces are sums of, each with its share in the mean.
    [[nodiscard]] std::vector<StudyRay> rays() const;
    /// A tree as the study's rays meet it, in full leaf.
    [[nodiscard]] Canopy canopyOf(const Tree& tree) const
    {
        return canopy(tree, foliation_, *species_, 1.0, ground_);
    }

private:
    /// One direction of light and what it is worth.
    struct Ray {
        Vec3 towards{};
        double leafShare{};  ///< of the tree, on that day
        double sun_h{};      ///< to a surface that it lights
        double facing_mol{}; ///< to a surface that faces it
    };
    [[nodiscard]] DayLight worth(const Ray& ray, const Surface& surface) const;
    void addSun(const Place& place, const StudyQuestion& question,
                std::span<const std::vector<double>> shares);
    void addSky(const StudyQuestion& question, std::span<const std::vector<double>> shares);
    void traceOthers(Scene others);
    [[nodiscard]] std::vector<SurfaceDay> sum(const Tree* tree, const Foliation& foliation) const;

    std::size_t tree_;
    Ground ground_;
    Foliation foliation_;
    const Species* species_;
    std::vector<Surface> surfaces_;
    std::vector<Receivers> receivers_;
    Vec3 origin_;
    std::vector<Ray> rays_;
    std::vector<std::vector<double>> rayLeafShares_; ///< per ray, of all trees, while tracing
    std::vector<double> diffuse_MJ_m2_;              ///< per day
    std::vector<Lanes> others_; ///< per ray, surface and pack: what all else lets through
};

/// What one cut would bring to one surface.
struct CutGain {
    std::size_t cut{};        ///< index into the trees given
    std::size_t surface{};    ///< index into the study's surfaces
    DayLight gained;          ///< a day
    double leafShare{};       ///< of the tree's leaf that the cut takes
    double sunPerPercent_h{}; ///< sun hours a day per percent of leaf; the price of an hour, upside
                              ///< down
    double dliPerPercent_mol{}; ///< the same of the daily light integral
};

/// What each of several cuts would bring, the cheapest hour of sun first.
/// \param before  the tree as it stands
/// \param after   the tree after each cut (advice/prune.hpp)
/// \param cancel  looked at between cuts; set: those that were done
[[nodiscard]] std::vector<CutGain> cutGains(const LightStudy& study, const Foliation& foliation,
                                            const Tree& before, std::span<const Tree> after,
                                            const std::atomic<bool>* cancel = nullptr);

} // namespace model::light
