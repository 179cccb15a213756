#include "model/advice/blend.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace model::advice {
namespace {

// Closed form: a need of 1 that one offer gives twice over and another not at all is met by half of
// each, and one more of it costs half of what the dear one costs.
TEST(Blend, TakesHalfOfEachWhereOneGivesTwiceWhatIsNeeded)
{
    Blend blend({1.0});
    blend.add(0.0, std::vector{0.0});
    blend.add(0.3, std::vector{2.0});
    blend.solve();
    EXPECT_NEAR(blend.cost(), 0.15, 1e-12);
    EXPECT_NEAR(blend.shares()[0], 0.5, 1e-12);
    EXPECT_NEAR(blend.prices()[0], 0.15, 1e-12);
}

// Law (duality of linear programs): at the prices found no offer is cheaper than the blend pays for
// it, and the blend costs just what the prices say.
TEST(Blend, CostsWhatItsPricesSay)
{
    std::mt19937 random(3);
    std::uniform_real_distribution<double> amount(0.0, 1.0);
    int dear = 0;
    for (int i = 0; i < 200; ++i) {
        const std::size_t needs = 1 + static_cast<std::size_t>(i) % 6;
        std::vector<double> needed;
        for (std::size_t row = 0; row < needs; ++row)
            needed.push_back(amount(random) - 0.2);
        Blend blend(needed);
        std::vector<std::vector<double>> gives;
        std::vector<double> costs;
        for (int offer = 0; offer < 30; ++offer) {
            std::vector<double> given;
            for (std::size_t row = 0; row < needs; ++row)
                given.push_back(amount(random) - 0.1);
            costs.push_back(amount(random));
            gives.push_back(given);
            blend.add(costs.back(), given);
            if (offer % 7 == 0)
                blend.solve(); // goes on from where it was
        }
        blend.solve();
        const auto& prices = blend.prices();
        const auto worth = [&](const std::vector<double>& given) {
            double sum = 0.0;
            for (std::size_t row = 0; row < needs; ++row)
                sum += prices[row] * given[row];
            return sum;
        };
        double least = 1e9;
        for (std::size_t offer = 0; offer < costs.size(); ++offer)
            least = std::min(least, costs[offer] - worth(gives[offer]));
        ASSERT_NEAR(blend.cost(), least + worth(needed), 1e-8) << i;
        dear += least < 0.0 ? 1 : 0;
    }
    EXPECT_GT(dear, 20);
}

} // namespace
} // namespace model::advice
