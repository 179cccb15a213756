#pragma once

#include "model/geometry/vec3.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace model::load {

/// A straight square bar of a frame that may bend far, between two of its nodes.
struct SquareBar {
    std::size_t from{};
    std::size_t to{};
    double side_m{};
};

/// A frame that is held fast at its first node.
struct BentFrame {
    std::vector<Vec3> nodes_m;
    std::vector<SquareBar> bars;
    std::vector<double> down_N;     ///< on each node
    std::vector<std::size_t> props; ///< nodes that neither rise nor sink
    double stiffness_Pa{};
    bool bendsFar{}; ///< geometrically non-linear, loads in steps
};

/// Where the nodes go, and what the props push with.
struct BentNodes {
    std::vector<Vec3> moved_m;
    std::vector<double> push_N;
};

/// Stiffness in bending over that in torsion of such a bar as the solver has it. Its section stays
/// plane, which for torsion is the polar moment of area: 1 + 0.3 with a Poisson ratio of 0.3. Read
/// off a bent bar worked by hand: 1.299.
inline constexpr double kSquareTwistToBend = 1.3;

/// Solves the frame with CalculiX (`ccx`), a general-purpose finite element program, with beams of
/// three nodes that it takes apart into solid bricks.
/// \throws std::runtime_error  when ccx is missing, fails, or its answer can't be read
[[nodiscard]] BentNodes solveBentFrame(const BentFrame& frame, const std::string& name);

} // namespace model::load
