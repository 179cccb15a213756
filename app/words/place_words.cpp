#include "app/words/place_words.hpp"

namespace app {

QStringList exposureWords()
{
    return {Words::tr("Open: fields, lawns or water around it"),
            Words::tr("Scattered: trees, hedges and houses here and there"),
            Words::tr("Built up: houses or woodland close together"),
            Words::tr("Walled: built up, and walls or tall hedges around it")};
}

std::vector<GustChoice> gustChoices(const Units& units)
{
    // The first two are common practice, no source: gusts that lowland gardens of the middle
    // latitudes meet about once a year and once in ten. The third is the basic wind speed that
    // ASCE 7-05 gives for most of the inland United States, a 3-second gust at 10 m over open
    // country of about once in fifty years (90 mph; from memory).
    const auto choice = [&units](double gust_m_s, const QString& words) {
        return GustChoice{gust_m_s, words.arg(units.speed(gust_m_s))};
    };
    return {choice(25.0, Words::tr("%1: the strongest of most years")),
            choice(32.0, Words::tr("%1: a storm as it comes every ten years or so")),
            choice(40.0, Words::tr("%1: the wind that houses are built for, far from coasts"))};
}

QString measuresWords(Measures measures)
{
    switch (measures) {
    case Measures::unitedStates:
        return Words::tr(
            "Lengths in feet and inches, wind in mph. Metres can be typed too: 2.4 m.");
    case Measures::unitedKingdom:
        return Words::tr(
            "Lengths in metres, wind in mph. Feet and inches can be typed too: 8 ft 2 in.");
    case Measures::metric:
        break;
    }
    return Words::tr("Lengths in metres, girths in centimetres, wind in km/h. Other units can be "
                     "typed too: 8 ft 2 in.");
}

} // namespace app
