#pragma once

#include "model/geometry/vec3.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace model::load {

/// A straight bar of a frame between two of its nodes, round, all of one stiffness.
struct Bar {
    std::size_t from{};
    std::size_t to{};
};

/// A force and a moment on a node.
struct NodeLoad {
    Vec3 force_N{};
    Vec3 moment_Nm{};
};

/// A frame that is held fast at its first node.
struct Frame {
    std::vector<Vec3> nodes_m;
    std::vector<NodeLoad> loads; ///< one for each node
    std::vector<Bar> bars;
};

/// What a bar carries at one of its ends.
struct BarEnd {
    double bending_Nm{};
    double torsion_Nm{};
};

struct BarEnds {
    BarEnd from{};
    BarEnd to{};
};

/// Solves the frame with CalculiX (`ccx`), a general-purpose finite element program.
/// \throws std::runtime_error  when ccx is missing, fails, or its answer can't be read
[[nodiscard]] std::vector<BarEnds> solveFrame(const Frame& frame, const std::string& name);

} // namespace model::load
