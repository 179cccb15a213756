#include "app/drawing/load_scale.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace app {

int loadStep(double utilisation)
{
    const auto above = std::ranges::upper_bound(kLoadSteps, utilisation);
    return std::max(0, static_cast<int>(above - kLoadSteps.begin()) - 1);
}

QStringList loadStepWords()
{
    const auto say = [](const char* words) {
        return QCoreApplication::translate("LoadScale", words);
    };
    return {say("light"), say("moderate"), say("heavy"), say("near its strength"),
            say("past its strength")};
}

} // namespace app
