#pragma once

#include "model/light/canopy.hpp"

#include <embree3/rtcore.h>

#include <memory>
#include <vector>

namespace bench {

/// The season's rays through a general-purpose ray tracer (Embree 3): capsules as user geometry,
/// with an any-hit function that notes each body's stretch and lets the ray go on. Only to compare
/// with: nothing but a benchmark needs it.
class RayTracer {
public:
    explicit RayTracer(const model::light::Canopy& tree);
    ~RayTracer();
    RayTracer(const RayTracer&) = delete;
    RayTracer& operator=(const RayTracer&) = delete;

    /// Share of light let through to one point.
    float through(model::Vec3 from, model::Vec3 towards, float extinction_1_m);

    /// The same for `count` <= 8 points at once, in a packet.
    void through(const model::Vec3* from, std::size_t count, model::Vec3 towards,
                 float extinction_1_m, float* shares);

    /// A capsule, ready to be met.
    struct Capsule {
        float middle[3]{};
        float axis[3]{}; ///< unit
        float half{};    ///< length of the axis
        float radius{};
    };
    struct Stretch {
        float from{};
        float to{};
    };

private:
    std::vector<Capsule> capsules_;
    RTCDevice device_;
    RTCScene scene_;
};

} // namespace bench
