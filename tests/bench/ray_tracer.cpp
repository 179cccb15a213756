#include "tests/bench/ray_tracer.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace bench {
namespace {

using Capsule = RayTracer::Capsule;
using Stretch = RayTracer::Stretch;
using model::Vec3;

constexpr float kEndless = std::numeric_limits<float>::infinity();

/// The tracer's own context, and behind it what the rays have met so far.
struct Context {
    RTCIntersectContext tracer;
    std::vector<Stretch>* met; ///< one list for each ray, by its id
};

struct Ray {
    float org[3];
    float dir[3];
};

float dot(const float* a, const float* b)
{
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/// Where a ray is inside a capsule, ahead of its start. Reckoned from the ray's point nearest to
/// the capsule's middle, for float's sake.
bool chord(const Capsule& capsule, const Ray& ray, Stretch& inside)
{
    float to[3];
    for (int i = 0; i < 3; ++i)
        to[i] = ray.org[i] - capsule.middle[i];
    const float shift = -dot(to, ray.dir);
    for (int i = 0; i < 3; ++i)
        to[i] += shift * ray.dir[i];
    const float rayAlong = dot(ray.dir, capsule.axis);
    const float startAlong = dot(to, capsule.axis);
    const float a = 1.0F - rayAlong * rayAlong;
    const float b = -startAlong * rayAlong;
    const float c = dot(to, to) - startAlong * startAlong - capsule.radius * capsule.radius;
    const float room = b * b - a * c;
    if (room < 0.0F)
        return false;
    const auto ball = [&](float end, float sign, float& t) {
        float beside[3];
        for (int i = 0; i < 3; ++i)
            beside[i] = to[i] - end * capsule.axis[i];
        const float along = -dot(beside, ray.dir);
        const float space = along * along - dot(beside, beside) + capsule.radius * capsule.radius;
        if (space < 0.0F)
            return false;
        t = along + sign * std::sqrt(space);
        return true;
    };
    const auto surface = [&](float sign, float& t) {
        t = a > 1e-7F ? (-b + sign * std::sqrt(room)) / a : 0.0F;
        const float at = startAlong + t * rayAlong;
        if (a > 1e-7F && std::abs(at) < capsule.half)
            return true;
        const bool atEnd = a > 1e-7F ? at > 0.0F : sign * rayAlong > 0.0F;
        return ball(atEnd ? capsule.half : -capsule.half, sign, t);
    };
    if (!surface(-1.0F, inside.from) || !surface(1.0F, inside.to))
        return false;
    inside.from = std::max(0.0F, inside.from + shift);
    inside.to += shift;
    return inside.from < inside.to;
}

void bounds(const RTCBoundsFunctionArguments* args)
{
    const auto& capsule = static_cast<const Capsule*>(args->geometryUserPtr)[args->primID];
    float low[3];
    float high[3];
    for (int i = 0; i < 3; ++i) {
        const float reach = std::abs(capsule.axis[i]) * capsule.half + capsule.radius;
        low[i] = capsule.middle[i] - reach;
        high[i] = capsule.middle[i] + reach;
    }
    *args->bounds_o = {low[0], low[1], low[2], 0.0F, high[0], high[1], high[2], 0.0F};
}

/// The any-hit function: notes the stretch and reports no hit, so that the ray goes on.
void note(const RTCOccludedFunctionNArguments* args)
{
    const auto& capsule = static_cast<const Capsule*>(args->geometryUserPtr)[args->primID];
    auto* met = reinterpret_cast<Context*>(args->context)->met;
    for (unsigned i = 0; i < args->N; ++i) {
        if (args->valid[i] == 0)
            continue;
        const Ray ray{{RTCRayN_org_x(args->ray, args->N, i), RTCRayN_org_y(args->ray, args->N, i),
                       RTCRayN_org_z(args->ray, args->N, i)},
                      {RTCRayN_dir_x(args->ray, args->N, i), RTCRayN_dir_y(args->ray, args->N, i),
                       RTCRayN_dir_z(args->ray, args->N, i)}};
        Stretch inside;
        if (chord(capsule, ray, inside))
            met[RTCRayN_id(args->ray, args->N, i)].push_back(inside);
    }
}

float shareThrough(std::vector<Stretch>& met, float extinction_1_m)
{
    if (met.empty())
        return 1.0F;
    std::ranges::sort(met, {}, &Stretch::from);
    float length = 0.0F;
    float reached = 0.0F;
    for (const auto& part : met) {
        length += std::max(0.0F, part.to - std::max(part.from, reached));
        reached = std::max(reached, part.to);
    }
    return std::exp(-extinction_1_m * length);
}

} // namespace

RayTracer::RayTracer(const model::light::Canopy& tree)
    : device_(rtcNewDevice("threads=1")), scene_(rtcNewScene(device_))
{
    for (const auto& [solid, density, limb, around] : tree.leaves) {
        const Vec3 run = solid.b - solid.a;
        const Vec3 middle = 0.5 * (solid.a + solid.b);
        const double length = norm(run);
        const Vec3 axis = length > 0.0 ? (1.0 / length) * run : Vec3{0.0, 0.0, 1.0};
        const auto f = [](double value) { return static_cast<float>(value); };
        capsules_.push_back({{f(middle.x), f(middle.y), f(middle.z)},
                             {f(axis.x), f(axis.y), f(axis.z)},
                             f(length / 2.0),
                             f(solid.radius_m)});
    }
    RTCGeometry geometry = rtcNewGeometry(device_, RTC_GEOMETRY_TYPE_USER);
    rtcSetGeometryUserPrimitiveCount(geometry, static_cast<unsigned>(capsules_.size()));
    rtcSetGeometryUserData(geometry, capsules_.data());
    rtcSetGeometryBoundsFunction(geometry, bounds, nullptr);
    rtcSetGeometryOccludedFunction(geometry, note);
    rtcSetGeometryBuildQuality(geometry, RTC_BUILD_QUALITY_HIGH);
    rtcCommitGeometry(geometry);
    rtcAttachGeometry(scene_, geometry);
    rtcReleaseGeometry(geometry);
    rtcSetSceneBuildQuality(scene_, RTC_BUILD_QUALITY_HIGH);
    rtcCommitScene(scene_);
}

RayTracer::~RayTracer()
{
    rtcReleaseScene(scene_);
    rtcReleaseDevice(device_);
}

float RayTracer::through(Vec3 from, Vec3 towards, float extinction_1_m)
{
    thread_local std::vector<Stretch> met;
    met.clear();
    Context context{};
    rtcInitIntersectContext(&context.tracer);
    context.tracer.flags = RTC_INTERSECT_CONTEXT_FLAG_COHERENT;
    context.met = &met;
    RTCRay ray{};
    ray.org_x = static_cast<float>(from.x);
    ray.org_y = static_cast<float>(from.y);
    ray.org_z = static_cast<float>(from.z);
    ray.dir_x = static_cast<float>(towards.x);
    ray.dir_y = static_cast<float>(towards.y);
    ray.dir_z = static_cast<float>(towards.z);
    ray.tfar = kEndless;
    ray.mask = ~0U;
    rtcOccluded1(scene_, &context.tracer, &ray);
    return shareThrough(met, extinction_1_m);
}

void RayTracer::through(const Vec3* from, std::size_t count, Vec3 towards, float extinction_1_m,
                        float* shares)
{
    thread_local std::array<std::vector<Stretch>, 8> met;
    Context context{};
    rtcInitIntersectContext(&context.tracer);
    context.tracer.flags = RTC_INTERSECT_CONTEXT_FLAG_COHERENT;
    context.met = met.data();
    RTCRay8 rays{};
    alignas(32) std::array<int, 8> valid{};
    for (std::size_t i = 0; i < count; ++i) {
        met[i].clear();
        valid[i] = -1;
        rays.org_x[i] = static_cast<float>(from[i].x);
        rays.org_y[i] = static_cast<float>(from[i].y);
        rays.org_z[i] = static_cast<float>(from[i].z);
        rays.dir_x[i] = static_cast<float>(towards.x);
        rays.dir_y[i] = static_cast<float>(towards.y);
        rays.dir_z[i] = static_cast<float>(towards.z);
        rays.tfar[i] = kEndless;
        rays.mask[i] = ~0U;
        rays.id[i] = static_cast<unsigned>(i);
    }
    rtcOccluded8(valid.data(), scene_, &context.tracer, &rays);
    for (std::size_t i = 0; i < count; ++i)
        shares[i] = shareThrough(met[i], extinction_1_m);
}

} // namespace bench
