// Law: what targets.hpp says of any bytes holds of all seeds, of all that fuzzing ever found, and
// of each of them cut short.
#include "tests/fuzz/seeds.hpp"
#include "tests/fuzz/targets.hpp"

#include <gtest/gtest.h>

#include <map>

namespace fuzz {
namespace {

const std::map<std::string, void (*)(std::string_view)> kTargets = {{"json", json},
                                                                    {"garden", garden},
                                                                    {"tables", tables},
                                                                    {"gardenFile", gardenFile},
                                                                    {"photo", photo}};

class Replay : public testing::TestWithParam<std::string> {};

TEST_P(Replay, HoldsForSeedsAndWhatWasFound)
{
    int played = 0;
    for (const auto& all : {seeds(), found()})
        for (const auto& seed : all) {
            if (seed.target != GetParam())
                continue;
            SCOPED_TRACE(seed.name);
            const std::string_view bytes = seed.bytes;
            kTargets.at(seed.target)(bytes);
            kTargets.at(seed.target)(bytes.substr(0, bytes.size() / 2));
            ++played;
        }
    EXPECT_GT(played, 1);
}

INSTANTIATE_TEST_SUITE_P(Target, Replay,
                         testing::Values("json", "garden", "tables", "gardenFile", "photo"),
                         [](const auto& target) { return target.param; });

} // namespace
} // namespace fuzz
