#include "app/words/wind_words.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace app {
namespace {

constexpr double kKnot_m_s = 1852.0 / 3600.0;

// Lower ends of forces 1 to 12, knots of gust.
constexpr std::array<double, 12> kGusts_kn{1.26,  5.04, 8.82, 13.86, 21.42, 27.72,
                                           35.28, 43.0, 52.0, 61.0,  69.0,  80.64};

} // namespace

int beaufortOfGust(double gust_m_s)
{
    // A hair's breadth for speeds that were given in knots and came through other units.
    const double gust_kn = gust_m_s / kKnot_m_s + 1e-9;
    return static_cast<int>(std::ranges::upper_bound(kGusts_kn, gust_kn) - kGusts_kn.begin());
}

QString beaufortWord(int force)
{
    static constexpr std::array<const char*, 13> kWords{
        QT_TRANSLATE_NOOP("WindWords", "calm"),
        QT_TRANSLATE_NOOP("WindWords", "light air"),
        QT_TRANSLATE_NOOP("WindWords", "light breeze"),
        QT_TRANSLATE_NOOP("WindWords", "gentle breeze"),
        QT_TRANSLATE_NOOP("WindWords", "moderate breeze"),
        QT_TRANSLATE_NOOP("WindWords", "fresh breeze"),
        QT_TRANSLATE_NOOP("WindWords", "strong breeze"),
        QT_TRANSLATE_NOOP("WindWords", "near gale"),
        QT_TRANSLATE_NOOP("WindWords", "gale"),
        QT_TRANSLATE_NOOP("WindWords", "severe gale"),
        QT_TRANSLATE_NOOP("WindWords", "storm"),
        QT_TRANSLATE_NOOP("WindWords", "violent storm"),
        QT_TRANSLATE_NOOP("WindWords", "hurricane force"),
    };
    return QCoreApplication::translate("WindWords",
                                       kWords[static_cast<std::size_t>(std::clamp(force, 0, 12))]);
}

} // namespace app
