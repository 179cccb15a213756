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
    return {say(QT_TRANSLATE_NOOP("LoadScale", "light")),
            say(QT_TRANSLATE_NOOP("LoadScale", "moderate")),
            say(QT_TRANSLATE_NOOP("LoadScale", "heavy")),
            say(QT_TRANSLATE_NOOP("LoadScale", "near its strength")),
            say(QT_TRANSLATE_NOOP("LoadScale", "past its strength"))};
}

} // namespace app
