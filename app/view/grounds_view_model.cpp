#include "app/view/grounds_view_model.hpp"

#include "app/format/parse_degrees.hpp"
#include "app/words/place_words.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

constexpr std::size_t kMonths = 12;
constexpr double kWay_deg = 45.0;

/// "8 %" and "8" as 0.08, "1 in 12" and "1:12" as 0.083.
std::optional<double> parseFall(const QString& typed, const Units& units)
{
    for (const QString& between : {QStringLiteral(" in "), QStringLiteral(":")}) {
        const auto parts = typed.split(between);
        if (parts.size() != 2)
            continue;
        bool good[2] = {};
        const double down = units.locale().toDouble(parts[0].trimmed(), &good[0]);
        const double along = units.locale().toDouble(parts[1].trimmed(), &good[1]);
        return good[0] && good[1] && along > 0.0 ? std::optional(down / along) : std::nullopt;
    }
    return units.parseShare(typed);
}

} // namespace

GroundsViewModel::GroundsViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace), shares_(kMonths)
{
    connect(&workspace_.document(), &Document::replaced, this,
            [this] { shares_.assign(kMonths, std::nullopt); });
    connect(&workspace_.document(), &Document::gardenChanged, this, &GroundsViewModel::onGarden);
}

void GroundsViewModel::onGarden()
{
    const auto& shares = workspace_.garden().place.sunshineShare;
    if (shares.size() == kMonths)
        shares_.assign(shares.begin(), shares.end());
    else if (std::ranges::all_of(shares_, [](const auto& share) { return share.has_value(); }))
        shares_.assign(kMonths, std::nullopt); // taken back, or another garden
    emit changed();
}

void GroundsViewModel::change(const QString& what,
                              const std::function<void(model::Garden&)>& change)
{
    auto garden = workspace_.garden();
    change(garden);
    workspace_.say(
        workspace_.document().change(tr("change the garden's %1").arg(what), std::move(garden)));
    emit changed(); // what was typed and refused is put back
}

void GroundsViewModel::refuse(const QString& expected)
{
    workspace_.say(expected);
    emit changed();
}

QString GroundsViewModel::name() const
{
    return QString::fromStdString(workspace_.garden().name);
}

void GroundsViewModel::setName(const QString& name)
{
    if (name.trimmed().isEmpty())
        return refuse(tr("Give the garden a name."));
    change(tr("name"), [&](model::Garden& garden) { garden.name = name.trimmed().toStdString(); });
}

QString GroundsViewModel::latitude() const
{
    return workspace_.units().number(workspace_.garden().place.latitude_deg, 4);
}

void GroundsViewModel::setLatitude(const QString& typed)
{
    const auto value = parseDegrees(typed, workspace_.units().locale(), 'N', 'S');
    if (!value || std::abs(*value) > 90.0)
        return refuse(tr("Latitude: degrees north such as 47.4, or south such as 33.9 S."));
    change(tr("place"), [&](model::Garden& garden) { garden.place.latitude_deg = *value; });
}

QString GroundsViewModel::longitude() const
{
    return workspace_.units().number(workspace_.garden().place.longitude_deg, 4);
}

void GroundsViewModel::setLongitude(const QString& typed)
{
    const auto value = parseDegrees(typed, workspace_.units().locale(), 'E', 'W');
    if (!value || std::abs(*value) > 180.0)
        return refuse(tr("Longitude: degrees east such as 8.5, or west such as 77.0 W."));
    change(tr("place"), [&](model::Garden& garden) { garden.place.longitude_deg = *value; });
}

QString GroundsViewModel::altitude() const
{
    return workspace_.units().roughLength(workspace_.garden().place.altitude_m);
}

void GroundsViewModel::setAltitude(const QString& typed)
{
    const auto value = workspace_.units().parseLength_m(typed);
    if (!value || *value < -430.0 || *value > 6000.0)
        return refuse(tr("Height above the sea: a height such as %1.")
                          .arg(workspace_.units().roughLength(430.0)));
    change(tr("place"), [&](model::Garden& garden) { garden.place.altitude_m = *value; });
}

QStringList GroundsViewModel::exposures() const
{
    return exposureWords();
}

int GroundsViewModel::exposure() const
{
    return static_cast<int>(workspace_.garden().exposure);
}

void GroundsViewModel::setExposure(int exposure)
{
    if (exposure >= 0 && exposure < exposureWords().size())
        change(tr("wind"), [&](model::Garden& garden) {
            garden.exposure = static_cast<model::Exposure>(exposure);
        });
}

QString GroundsViewModel::gust() const
{
    return workspace_.units()
        .speed(workspace_.garden().designGust_m_s)
        .section(QLatin1Char('('), 0, 0)
        .trimmed();
}

void GroundsViewModel::setGust(const QString& typed)
{
    const auto value = workspace_.units().parseSpeed_m_s(typed);
    if (!value || *value < 0.0 || *value > 100.0)
        return refuse(tr("Gust: a wind speed such as %1.").arg(workspace_.units().speed(25.0)));
    change(tr("wind"), [&](model::Garden& garden) { garden.designGust_m_s = *value; });
}

QString GroundsViewModel::fall() const
{
    const auto& slope = workspace_.garden().slope;
    return slope ? workspace_.units().share(slope->gradient) : QString();
}

void GroundsViewModel::setFall(const QString& typed)
{
    const auto value =
        typed.trimmed().isEmpty() ? std::optional(0.0) : parseFall(typed, workspace_.units());
    if (!value || *value < 0.0 || *value > 1.0)
        return refuse(tr("Fall of the ground: such as 8 %, or 1 in 12; empty: level."));
    change(tr("slope"), [&](model::Garden& garden) {
        if (*value == 0.0)
            garden.slope.reset();
        else if (garden.slope)
            garden.slope->gradient = *value;
        else
            garden.slope = model::Slope{*value, 180.0, {}};
    });
}

QStringList GroundsViewModel::ways() const
{
    QStringList ways;
    for (int way = 0; way < 8; ++way)
        ways << Units::bearing(way * kWay_deg);
    return ways;
}

int GroundsViewModel::fallsTo() const
{
    const auto& slope = workspace_.garden().slope;
    return slope ? static_cast<int>(std::lround(slope->fallsTo_deg / kWay_deg)) % 8 : -1;
}

void GroundsViewModel::setFallsTo(int way)
{
    if (way < 0 || way >= 8 || !workspace_.garden().slope)
        return;
    change(tr("slope"), [&](model::Garden& garden) { garden.slope->fallsTo_deg = way * kWay_deg; });
}

QString GroundsViewModel::fallsToText() const
{
    const auto& slope = workspace_.garden().slope;
    if (!slope)
        return tr("level ground");
    return tr("%1 (%2)", "a direction and its bearing")
        .arg(Units::bearing(slope->fallsTo_deg), workspace_.units().angle(slope->fallsTo_deg));
}

QStringList GroundsViewModel::months() const
{
    QStringList names;
    for (int month = 1; month <= static_cast<int>(kMonths); ++month)
        names << workspace_.units().month(month);
    return names;
}

QStringList GroundsViewModel::sunshine() const
{
    QStringList texts;
    for (const auto& share : shares_)
        texts << (share ? workspace_.units().share(*share) : QString());
    return texts;
}

QString GroundsViewModel::sunshineText() const
{
    const auto known = std::ranges::count_if(shares_, [](const auto& s) { return s.has_value(); });
    if (known == 0)
        return tr("Not known: light is reckoned for cloudless skies. A weather service tells it "
                  "as the share of the hours that the sun could shine.");
    if (known < static_cast<std::ptrdiff_t>(kMonths))
        return tr("%1 of 12 months are here; light is reckoned with them once all are.").arg(known);
    return tr("Light over the year is reckoned with these.");
}

void GroundsViewModel::setSunshine(int month, const QString& typed)
{
    if (month < 0 || month >= static_cast<int>(kMonths))
        return;
    std::optional<double> share;
    if (!typed.trimmed().isEmpty()) {
        share = workspace_.units().parseShare(typed);
        if (!share || *share < 0.0 || *share > 1.0)
            return refuse(tr("Sunshine: a share of the time it could shine, such as 45 %."));
    }
    shares_[static_cast<std::size_t>(month)] = share;
    const bool whole = std::ranges::all_of(shares_, [](const auto& s) { return s.has_value(); });
    if (!whole && workspace_.garden().place.sunshineShare.empty())
        return emit changed();
    const auto kept = shares_;
    change(tr("sunshine"), [&](model::Garden& garden) {
        garden.place.sunshineShare.clear();
        for (const auto& each : shares_)
            if (whole)
                garden.place.sunshineShare.push_back(*each);
    });
    shares_ = kept; // what is typed so far stays, though the garden has none of it
    emit changed();
}

void GroundsViewModel::forgetSunshine()
{
    shares_.assign(kMonths, std::nullopt);
    if (workspace_.garden().place.sunshineShare.empty())
        return emit changed();
    change(tr("sunshine"), [](model::Garden& garden) { garden.place.sunshineShare.clear(); });
}

QStringList GroundsViewModel::measures() const
{
    return {tr("Metres, kilograms, km/h"), tr("Metres, kilograms, mph"), tr("Feet, pounds, mph")};
}

int GroundsViewModel::measure() const
{
    return static_cast<int>(workspace_.units().measures());
}

void GroundsViewModel::setMeasure(int measure)
{
    if (measure < 0 || measure >= measures().size())
        return;
    workspace_.setMeasures(static_cast<Measures>(measure));
    emit changed();
}

} // namespace app
