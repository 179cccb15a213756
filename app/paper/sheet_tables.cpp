#include "app/paper/sheet_tables.hpp"

#include "app/report/limb_ranking.hpp"
#include "app/words/cut_words.hpp"
#include "app/words/finding_list.hpp"
#include "app/words/labour_words.hpp"
#include "app/words/light_words.hpp"
#include "app/words/work_words.hpp"

#include <algorithm>

namespace app {
namespace {

using model::advice::DayRule;
using model::advice::PlannedCut;
using model::advice::Who;

QString cell(const QStringList& lines)
{
    return lines.join(QLatin1Char('\n'));
}

QString whatToDo(const PlannedCut& planned, const Wording& wording)
{
    QStringList lines{capitalised(cutKindWords(planned)) + QStringLiteral(". ") +
                          instruction(planned, wording),
                      measures(planned, wording)};
    if (planned.labour.who != Who::oneself) {
        lines << whoWords(planned.labour.who) + QLatin1Char(':');
        lines << reasons(planned.labour, wording);
    }
    lines << dropWords(planned, wording);
    return cell(lines + sentences(planned.notes, wording));
}

QString comesDownAs(const PlannedCut& planned, const Wording& wording)
{
    const Units& units = wording.units;
    QStringList lines;
    int number = 0;
    for (const auto& piece : planned.pieces) {
        if (piece.diameter_m <= 0.0)
            lines << Words::tr("Shoots, about %1, %2")
                         .arg(units.mass(piece.mass_kg), toolWords(piece.tool));
        else
            lines << Words::tr("%1) %2, about %3; %4 thick, %5 up, %6")
                         .arg(QString::number(++number), units.roughLength(piece.length_m),
                              units.mass(piece.mass_kg), units.diameter(piece.diameter_m),
                              units.roughLength(piece.cut_m.z), toolWords(piece.tool));
    }
    return cell(lines);
}

QString heightOr(const std::optional<double>& height_m, const Units& units)
{
    return height_m ? units.length(*height_m) : Words::tr("clear");
}

/// "1.9 m (short by 0.4 m)": what falls short is said, not coloured.
QString headroomCell(const std::optional<double>& height_m, double needed_m, const Units& units)
{
    const double short_m = height_m ? std::max(0.0, needed_m - *height_m) : 0.0;
    if (short_m < 0.005)
        return heightOr(height_m, units);
    return Words::tr("%1, short by %2").arg(units.length(*height_m), units.length(short_m));
}

const model::headroom::StripHeadroom*
sameStrip(const std::vector<model::headroom::StripHeadroom>& all, const std::string& strip)
{
    const auto found = std::ranges::find(all, strip, &model::headroom::StripHeadroom::strip);
    return found == all.end() ? nullptr : &*found;
}

QString strengthCell(const model::load::LimbLoad& load, const Units& units)
{
    return load.hasStrength ? units.share(load.utilisation) : Words::tr("none to count on");
}

const model::load::LimbLoad* loadAfter(const TreeOnPaper& on, const model::Tree& after,
                                       const std::string& limb)
{
    const auto index = limbIndex(after, limb);
    for (const auto& load : on.of.loadAfter.limbs)
        if (index != model::kNoLimb && load.limb == index)
            return &load;
    return nullptr;
}

QString gustCell(const model::load::BreakingGust& gust, double gust_m_s, const Units& units)
{
    if (!gust.hasStrength)
        return Words::tr("any gust");
    return gust_m_s < model::load::kGreatestGust_m_s
               ? units.speed(gust_m_s)
               : Words::tr("over %1").arg(units.speed(model::load::kGreatestGust_m_s));
}

QString dayWords(DayRule rule)
{
    switch (rule) {
    case DayRule::heat:
        return Words::tr("Feels like, in the shade (heat and humidity)");
    case DayRule::heatInSun:
        return Words::tr("Feels like, in full sun");
    case DayRule::heatForTree:
        return Words::tr("Air, for the tree");
    case DayRule::wind:
        return Words::tr("Gusts while at work");
    case DayRule::frost:
        return Words::tr("Frost");
    }
    return {};
}

} // namespace

Table cutTable(const TreeOnPaper& on)
{
    Table table;
    table.head = {Words::tr("No"), Words::tr("What to do"), Words::tr("It comes down as"),
                  Words::tr("Done")};
    table.widths = {0.05, 0.55, 0.33, 0.07};
    int number = 0;
    for (const auto& planned : on.of.suggestion.cuts)
        table.rows.push_back({QString::number(++number), whatToDo(planned, on.wording),
                              comesDownAs(planned, on.wording), QStringLiteral("☐")});
    return table;
}

Table headroomTable(const TreeOnPaper& on)
{
    const Units& units = on.wording.units;
    Table table;
    table.head = {Words::tr("Over"),
                  Words::tr("Needed"),
                  Words::tr("Now"),
                  Words::tr("At its heaviest"),
                  Words::tr("After the cuts"),
                  Words::tr("Then at its heaviest")};
    table.widths = {0.22, 0.10, 0.17, 0.17, 0.17, 0.17};
    for (const auto& strip : on.of.headroom) {
        const auto heaviest = [&](const model::headroom::StripHeadroom& of) {
            return of.sagged ? headroomCell(of.sagged->height_m, of.needed_m, units) : QString();
        };
        const auto* after = sameStrip(on.of.suggestion.after, strip.strip);
        table.rows.push_back(
            {thingName(*on.report.garden, strip.strip), units.length(strip.needed_m),
             headroomCell(strip.height_m, strip.needed_m, units), heaviest(strip),
             after ? headroomCell(after->height_m, strip.needed_m, units) : QString(),
             after ? heaviest(*after) : QString()});
    }
    return table;
}

Table loadTable(const TreeOnPaper& on)
{
    constexpr std::size_t kLimbs = 10;
    const Units& units = on.wording.units;
    const auto after = treeAfter(on.wording.tree, on.of);
    const bool cut = !on.of.suggestion.cuts.empty();
    Table table;
    table.head = {Words::tr("Limb"),           Words::tr("Load now"),
                  Words::tr("After the cuts"), Words::tr("One in ten breaks in"),
                  Words::tr("Half break in"),  Words::tr("Nine in ten break in")};
    table.widths = {0.24, 0.12, 0.13, 0.17, 0.17, 0.17};
    for (const auto& load : worstFirst(on.of.load)) {
        if (table.rows.size() == kLimbs)
            break;
        const auto& limb = on.wording.tree.limbs.at(load.limb);
        const auto& gust = on.of.breaking.at(load.limb);
        const auto* then = loadAfter(on, after, limb.id);
        table.rows.push_back({limbName(on.wording, limb.id), strengthCell(load, units),
                              !cut    ? QStringLiteral("–")
                              : !then ? Words::tr("taken off")
                                      : strengthCell(*then, units),
                              gustCell(gust, gust.p10_m_s, units),
                              gustCell(gust, gust.p50_m_s, units),
                              gustCell(gust, gust.p90_m_s, units)});
    }
    return table;
}

Table lightTable(const PaperReport& report, const model::Tables& tables, const Units& units)
{
    Table table;
    table.head = {Words::tr("Planting"), Words::tr("Needed"), Words::tr("Sun a day now"),
                  Words::tr("After the cuts"), Words::tr("Is that enough?")};
    table.widths = {0.34, 0.12, 0.17, 0.17, 0.20};
    for (std::size_t i = 0; i < report.light.surfaces.size(); ++i) {
        const auto& now = report.light.surfaces[i].light;
        const auto* after =
            i < report.lightAfter.surfaces.size() ? &report.lightAfter.surfaces[i].light : nullptr;
        const auto planting =
            std::ranges::find(report.garden->plantings, now.planting, &model::Planting::id);
        const auto* plant = findPlant(tables, planting->plant);
        const QString enough = suitsWords(after ? after->suits : now.suits);
        table.rows.push_back(
            {capitalised(surfaceName(now, *report.garden)),
             plant && plant->minSun_h ? units.hours(*plant->minSun_h) : QStringLiteral("–"),
             units.hours(now.growingSeason.standing.sun_h),
             after ? units.hours(after->growingSeason.standing.sun_h) : QString(),
             enough.isEmpty() ? Words::tr("not known") : enough});
    }
    return table;
}

Table monthTable(const TreeOnPaper& on)
{
    const auto& practice = on.wording.species.practice;
    const bool south = on.report.garden->place.latitude_deg < 0.0;
    const auto has = [&](const std::vector<int>& months, int month) {
        return std::ranges::find(months, south ? (month + 5) % 12 + 1 : month) != months.end();
    };
    Table table;
    QStringList marks;
    for (int month = 1; month <= 12; ++month) {
        table.head << on.wording.units.locale().standaloneMonthName(month, QLocale::ShortFormat);
        table.widths.push_back(1.0 / 12.0);
        marks << (has(practice.avoidMonthsNorth, month)  ? Words::tr("avoid")
                  : has(practice.bestMonthsNorth, month) ? Words::tr("good")
                                                         : QString());
    }
    table.rows = {marks};
    return table;
}

Table dayTable(const model::advice::DayWeather& weather, const Units& units)
{
    const auto found = model::advice::dayCheck(weather);
    Table table;
    table.head = {Words::tr("On the day"), Words::tr("Take care"), Words::tr("Not today"),
                  Words::tr("Read off")};
    table.widths = {0.43, 0.19, 0.19, 0.19};
    for (const auto rule :
         {DayRule::heat, DayRule::heatInSun, DayRule::heatForTree, DayRule::wind, DayRule::frost}) {
        const auto limit = model::advice::dayLimit(rule);
        const auto words = [&](double value) {
            return rule == DayRule::wind ? units.speed(value) : units.temperature(value);
        };
        const auto speaks = std::ranges::find(found, rule, &model::advice::DayFinding::rule);
        table.rows.push_back(
            {dayWords(rule),
             rule == DayRule::frost ? Words::tr("%1 and less").arg(words(limit.care))
                                    : Words::tr("from %1").arg(words(limit.care)),
             limit.stop ? Words::tr("from %1").arg(words(*limit.stop)) : QStringLiteral("–"),
             speaks != found.end() ? words(speaks->found) : QString()});
    }
    return table;
}

} // namespace app
