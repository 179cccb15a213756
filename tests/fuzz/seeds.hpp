#pragma once

#include <string>
#include <vector>

namespace fuzz {

/// Bytes to start from: good ones, and the ones that are known to be refused.
struct Seed {
    std::string target; ///< of targets.hpp
    std::string name;   ///< of a file
    std::string bytes;
};

/// Of the gardens and tables in the repository, and made: a garden file and photos.
[[nodiscard]] std::vector<Seed> seeds();

/// What was ever found to break a law, kept in tests/fuzz/found/TARGET.
[[nodiscard]] std::vector<Seed> found();

} // namespace fuzz
