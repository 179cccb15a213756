#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/ground.hpp"
#include "model/garden/neighbour.hpp"
#include "model/garden/tree.hpp"
#include "model/geometry/curtain.hpp"
#include "model/geometry/ellipsoid.hpp"
#include "model/species/species.hpp"

#include <optional>
#include <vector>

namespace model::light {

/// A ball around something, to see at once which rays pass it by.
struct Ball {
    Vec3 middle_m{};
    double radius_m{};
};

/// Leaves in one body, garden frame.
struct LeafBody {
    Curtain solid;
    double density{1.0}; ///< leaf per volume, relative to Canopy::leafAreaDensity_1_m
    std::size_t limb{};  ///< index into Tree::limbs
    Ball bounds;
};

/// Leaves of a whole crown that is drawn as one body, garden frame.
struct CrownBody {
    Ellipsoid solid;
    double density{1.0}; ///< as LeafBody's
    Ball bounds;
};

/// A stretch of trunk or limb, garden frame: opaque.
struct WoodBody {
    Curtain solid;
    std::size_t limb{}; ///< index into Tree::limbs
    Ball bounds;
};

/// One tree as light meets it. Built once and then asked for many rays.
struct Canopy {
    std::vector<LeafBody> leaves;
    std::vector<CrownBody> crowns;
    std::vector<WoodBody> wood;
    double leafAreaDensity_1_m{}; ///< one-sided leaf area per volume of crown, in full leaf
    double twigExtinction_1_m{};  ///< of shoots too fine to draw, all year round
    double leafAngleX{};          ///< Campbell's x, leaf_angle.hpp
    double clumping{1.0};         ///< 1: leaves lie at random; less: they hide behind each other
    double leafShare{1.0};        ///< of full leaf, on the day
    Ball bounds;                  ///< around everything
};

/// \param tree       may have been cut since `foliation` was worked out for the sketch
/// \param leafShare  of full leaf on the day, 0..1
/// \param ground     that it stands on
[[nodiscard]] Canopy canopy(const Tree& tree, const Foliation& foliation, const Species& species,
                            double leafShare, const Ground& ground = {});

/// A tree known as a stem and one crown: leaf of its species over the crown's ellipsoid (L13).
[[nodiscard]] Canopy canopy(const Neighbour& neighbour, const Species& species, double leafShare,
                            const Ground& ground = {});

/// Its crown, garden frame.
[[nodiscard]] Ellipsoid crownOf(const Neighbour& neighbour, const Ground& ground = {});

/// Share of the beam lost per metre of crown of medium density, in one direction (L12).
[[nodiscard]] double extinction_1_m(const Canopy& canopy, Vec3 direction);

/// Metres of crown on a ray's way to the light, weighted by relative density; bodies of one tree
/// that overlap count once, by the densest (L13). Nothing when wood stands in the way.
/// \param direction  unit, towards the light
[[nodiscard]] std::optional<double> leafyPath_m(const Canopy& canopy, Vec3 from, Vec3 direction);

/// Share of a ray's light that the tree lets through to `from` (L12).
[[nodiscard]] double transmittance(const Canopy& canopy, Vec3 from, Vec3 direction);

/// Extinction times radius of a round crown whose shadow lets a mean share of light through (L15).
/// \throws std::domain_error  unless 0 < meanTransmittance < 1
[[nodiscard]] double extinctionRadius(double meanTransmittance);

} // namespace model::light
