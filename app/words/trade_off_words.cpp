#include "app/words/trade_off_words.hpp"

#include <cmath>

namespace app {
namespace {

using model::advice::Lack;
using model::advice::Offer;
using model::advice::TradeOff;

QString figures(const TradeOff& tradeOff, const std::vector<std::optional<double>>& values,
                const Wording& wording)
{
    if (tradeOff.lack != Lack::headroom)
        return tradeOffFigure(tradeOff.lack, values.front(), wording.units);
    QStringList parts;
    for (std::size_t i = 0; i < values.size(); ++i)
        parts << Words::tr("%1 %2", "a strip and its headroom")
                     .arg(thingName(wording.garden, tradeOff.subjects[i]),
                          tradeOffFigure(tradeOff.lack, values[i], wording.units));
    return parts.join(QStringLiteral("; "));
}

} // namespace

QString tradeOffTitle(const TradeOff& tradeOff, const Wording& wording)
{
    switch (tradeOff.lack) {
    case Lack::headroom:
        return Words::tr("Headroom:");
    case Lack::relief:
        return Words::tr("Share of its expected strength that the hardest pressed limb needs in a "
                         "gust of %1:")
            .arg(wording.units.speed(wording.garden.designGust_m_s));
    case Lack::light:
        break;
    }
    return Words::tr("Direct sun a day on %1 over the growing season:")
        .arg(thingName(wording.garden, tradeOff.subjects.front()));
}

QString tradeOffSubject(const TradeOff& tradeOff, std::size_t subject, const Wording& wording)
{
    switch (tradeOff.lack) {
    case Lack::headroom:
        return Words::tr("Least room over %1")
            .arg(thingName(wording.garden, tradeOff.subjects[subject]));
    case Lack::relief:
        return Words::tr("Hardest pressed limb, in a gust of %1")
            .arg(wording.units.speed(wording.garden.designGust_m_s));
    case Lack::light:
        break;
    }
    return Words::tr("Sun on %1").arg(thingName(wording.garden, tradeOff.subjects[subject]));
}

QString tradeOffAxis(Lack lack)
{
    switch (lack) {
    case Lack::headroom:
        return Words::tr("height clear under it, at its heaviest");
    case Lack::relief:
        return Words::tr("share of its strength that is asked, less is better");
    case Lack::light:
        break;
    }
    return Words::tr("direct sun a day over the growing season");
}

QString tradeOffFigure(Lack lack, const std::optional<double>& value, const Units& units)
{
    switch (lack) {
    case Lack::headroom:
        return value ? units.length(*value) : Words::tr("nothing overhead");
    case Lack::relief:
        return value ? units.share(*value) : Words::tr("no load");
    case Lack::light:
        break;
    }
    return units.hours(value.value_or(0.0));
}

QStringList tradeOffLines(const TradeOff& tradeOff, const Wording& wording)
{
    QStringList lines;
    QString last = figures(tradeOff, tradeOff.now, wording);
    lines << Words::tr("as it is: %1").arg(last);
    for (const Offer& offer : tradeOff.offers) {
        const QString reached = figures(tradeOff, offer.reached, wording);
        if (reached == last)
            continue;
        lines << Words::tr("for %1 of the leaf: %2")
                     .arg(wording.units.share(offer.leafShare), reached);
        last = reached;
    }
    if (lines.size() == 1)
        lines << Words::tr("nothing inside the guideline changes that");
    return lines;
}

} // namespace app
