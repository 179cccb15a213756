#pragma once

#include <cmath>

namespace model {

/// A point or a direction in space: x east, y north, z up. Metres when it is a place, newtons
/// when it is a force, newton metres when it is a moment, one when it is a direction.
struct Vec3 {
    double x{};
    double y{};
    double z{};
    friend bool operator==(const Vec3&, const Vec3&) = default;
};

constexpr Vec3 operator+(Vec3 a, Vec3 b)
{
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
constexpr Vec3 operator-(Vec3 a, Vec3 b)
{
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
constexpr Vec3 operator*(double k, Vec3 a)
{
    return {k * a.x, k * a.y, k * a.z};
}
constexpr Vec3& operator+=(Vec3& a, Vec3 b)
{
    return a = a + b;
}
constexpr double dot(Vec3 a, Vec3 b)
{
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
constexpr Vec3 cross(Vec3 a, Vec3 b)
{
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double norm(Vec3 a)
{
    return std::sqrt(dot(a, a));
}

/// The point a share `t` of the way from `a` (t = 0) to `b` (t = 1).
constexpr Vec3 between(Vec3 a, Vec3 b, double t)
{
    return a + t * (b - a);
}

/// A point on the ground plan: x east, y north, metres.
struct Point2 {
    double x{};
    double y{};
    friend bool operator==(const Point2&, const Point2&) = default;
};

constexpr Point2 operator+(Point2 a, Point2 b)
{
    return {a.x + b.x, a.y + b.y};
}
constexpr Point2 operator-(Point2 a, Point2 b)
{
    return {a.x - b.x, a.y - b.y};
}
constexpr Point2 operator*(double k, Point2 a)
{
    return {k * a.x, k * a.y};
}
constexpr Point2 plan(Vec3 a)
{
    return {a.x, a.y};
}
inline double norm(Point2 a)
{
    return std::hypot(a.x, a.y);
}

} // namespace model
