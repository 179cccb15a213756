#include "app/report/limb_ranking.hpp"

#include <algorithm>

namespace app {

std::vector<model::load::LimbLoad> worstFirst(const model::load::TreeLoad& load)
{
    std::vector<model::load::LimbLoad> limbs = load.limbs;
    std::stable_sort(limbs.begin(), limbs.end(), [](const auto& a, const auto& b) {
        if (a.hasStrength != b.hasStrength)
            return !a.hasStrength;
        return a.utilisation > b.utilisation;
    });
    return limbs;
}

} // namespace app
