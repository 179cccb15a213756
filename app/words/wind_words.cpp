#include "app/words/wind_words.hpp"

#include "app/words/wording.hpp"
#include "model/load/forecast.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace app {

int beaufortOfGust(double gust_m_s)
{
    return model::load::forceBringing(gust_m_s);
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

namespace {

QString forecastRemark(const model::load::ForecastGust& forecast, const Units& units)
{
    const QString gust = units.speed(forecast.gust_m_s);
    switch (forecast.said) {
    case model::load::Said::meanForce:
        return Words::tr("A forecast of %1 is one of steady wind; over open country its gusts "
                         "reach about %2.")
            .arg(forceWords(forecast.force), gust);
    case model::load::Said::gustForce:
        return Words::tr("Gusts of %1 are taken as %2.").arg(forceWords(forecast.force), gust);
    case model::load::Said::warning:
        break;
    }
    return Words::tr("The least gust of a severe thunderstorm is taken (%1): it can be stronger.")
        .arg(QString::fromStdString(forecast.source));
}

} // namespace

QStringList windRemarks(const model::Question& question, const Units& units)
{
    QStringList remarks;
    if (question.forecast)
        remarks << forecastRemark(*question.forecast, units);
    if (question.air_C != model::load::kStandardAir_C)
        remarks << Words::tr("The air is taken as %1.").arg(units.temperature(question.air_C));
    return remarks;
}

QString forceWords(int force)
{
    return Words::tr("force %1, %2").arg(force).arg(beaufortWord(force));
}

} // namespace app
