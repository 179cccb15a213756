#include "tests/model/load/one_crown.hpp"

#include "model/load/limb_load.hpp"
#include "model/load/wind.hpp"
#include "tests/model/load/samples.hpp"

#include <cmath>

namespace model::load {

OneCrown oneCrown(DragGroup group, double speed_m_s, bool inLeaf)
{
    constexpr double kMiddle_m = 10.0;
    constexpr double kLength_m = 3.0;
    constexpr double kRadius_m = 2.0;
    const double foot_m = kMiddle_m - kLength_m / 2.0;
    auto tree = cantilever(straight("pole", {0, 0, 0}, {0, 0, foot_m}, 0.3, 0.2));
    tree.limbs.push_back(
        leafy(growing(straight("crown", {0, 0, foot_m}, {0, 0, foot_m + kLength_m}, 0.1, 0.02),
                      "pole", foot_m),
              0.0, kRadius_m));
    auto species = redMaple();
    species.wood.dragGroup = group;
    const auto foliation = foliate(tree, species);
    const Conditions wind{.gust_m_s = speed_m_s / gustShare(Exposure::open, kMiddle_m),
                          .inLeaf = inLeaf};
    const auto load = treeLoad(tree, foliation, species, kSeaside, Exposure::open, wind);
    return {foliation.outlineArea_m2, load.limbs[1].wind_N, airDensity_kg_m3(0.0)};
}

double dragExponent(DragGroup group, bool inLeaf)
{
    return std::log2(oneCrown(group, 20.0, inLeaf).force_N / oneCrown(group, 10.0, inLeaf).force_N);
}

} // namespace model::load
