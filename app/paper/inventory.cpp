#include "app/paper/inventory.hpp"

#include "app/report/json_text.hpp"
#include "app/words/wording.hpp"
#include "model/crown/plan_outlines.hpp"
#include "model/document/words.hpp"
#include "model/geometry/earth.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

QString text(std::string_view words)
{
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

/// Six figures, no exponent, a point.
QString figure(double value)
{
    if (!std::isfinite(value))
        return {};
    QString digits = QString::number(value, 'f', 6);
    while (digits.endsWith(QLatin1Char('0')))
        digits.chop(1);
    if (digits.endsWith(QLatin1Char('.')))
        digits.chop(1);
    return digits == QLatin1String("-0") ? QStringLiteral("0") : digits;
}

QString figure(const std::optional<double>& value)
{
    return value ? figure(*value) : QString();
}

QString day(std::chrono::year_month_day date)
{
    return text(isoDate(date));
}

/// Crown spread as surveys take it: the mean of two readings at right angles.
double spread_m(const model::Tree& tree)
{
    double low[2]{1e9, 1e9};
    double high[2]{-1e9, -1e9};
    for (const auto& outline : model::planOutlines(model::leafyBodies(tree)))
        for (const auto& corner : outline) {
            low[0] = std::min(low[0], corner.x);
            high[0] = std::max(high[0], corner.x);
            low[1] = std::min(low[1], corner.y);
            high[1] = std::max(high[1], corner.y);
        }
    return high[0] < low[0] ? 0.0 : (high[0] - low[0] + high[1] - low[1]) / 2.0;
}

QString signsSeen(const model::Tree& tree)
{
    QStringList signs;
    for (const auto& observation : tree.observations)
        signs << signWords(observation.sign);
    return signs.join(QStringLiteral("; "));
}

QString cutsMade(const model::Visit& visit)
{
    QStringList cuts;
    for (const auto& cut : visit.cuts)
        cuts << text(word(cut.kind)) + QLatin1Char(' ') + text(cut.limb);
    return cuts.join(QStringLiteral("; "));
}

QString headroomMeasured(const model::Visit& visit, bool before)
{
    QStringList measured;
    for (const auto& record : visit.headroom)
        if (const auto& height = before ? record.before_m : record.after_m)
            measured << text(record.strip) + QLatin1Char(' ') + figure(*height);
    return measured.join(QStringLiteral("; "));
}

} // namespace

std::vector<QStringList> inventoryRecords(const model::Garden& garden, const model::Tables& tables)
{
    std::vector<QStringList> records{
        {QStringLiteral("id"), QStringLiteral("name"), QStringLiteral("species"),
         QStringLiteral("common_name"), QStringLiteral("planted_year"), QStringLiteral("vigour"),
         QStringLiteral("protection"), QStringLiteral("latitude_deg"),
         QStringLiteral("longitude_deg"), QStringLiteral("east_m"), QStringLiteral("north_m"),
         QStringLiteral("height_m"), QStringLiteral("crown_spread_m"),
         QStringLiteral("stem_diameter_m"), QStringLiteral("limbs"), QStringLiteral("signs_seen"),
         QStringLiteral("visits"), QStringLiteral("next_due")}};
    for (const auto& tree : garden.trees) {
        const auto place = model::onEarth({garden.place.latitude_deg, garden.place.longitude_deg},
                                          tree.position_m);
        const auto* species = findSpecies(tables, tree.species);
        const auto last = std::ranges::max_element(tree.visits, {}, &model::Visit::date);
        records.push_back(
            {text(tree.id), text(tree.name), text(tree.species),
             species ? text(species->common) : QString(),
             tree.plantedYear ? QString::number(*tree.plantedYear) : QString(),
             text(word(tree.vigour)), text(word(tree.protection)),
             QString::number(place.latitude_deg, 'f', 7),
             QString::number(place.longitude_deg, 'f', 7), figure(tree.position_m.x),
             figure(tree.position_m.y), figure(height_m(tree)), figure(spread_m(tree)),
             figure(stemDiameter_m(tree)), QString::number(tree.limbs.size()), signsSeen(tree),
             QString::number(tree.visits.size()),
             last != tree.visits.end() && last->nextDue ? day(*last->nextDue) : QString()});
    }
    return records;
}

std::vector<QStringList> visitRecords(const model::Garden& garden)
{
    std::vector<QStringList> records{
        {QStringLiteral("date"), QStringLiteral("tree_id"), QStringLiteral("tree"),
         QStringLiteral("visit_id"), QStringLiteral("by"), QStringLiteral("cuts"),
         QStringLiteral("leaf_share"), QStringLiteral("headroom_before_m"),
         QStringLiteral("headroom_after_m"), QStringLiteral("air_C"), QStringLiteral("humidity"),
         QStringLiteral("gust_m_s"), QStringLiteral("photos"), QStringLiteral("next_due"),
         QStringLiteral("note")}};
    for (const auto& tree : garden.trees)
        for (const auto& visit : tree.visits) {
            const auto weather = visit.weather.value_or(model::VisitWeather{});
            records.push_back({day(visit.date), text(tree.id), text(tree.name), text(visit.id),
                               text(visit.by), cutsMade(visit), figure(visit.leafShare),
                               headroomMeasured(visit, true), headroomMeasured(visit, false),
                               figure(weather.air_C), figure(weather.humidity),
                               figure(weather.gust_m_s), QString::number(visit.photos.size()),
                               visit.nextDue ? day(*visit.nextDue) : QString(), text(visit.note)});
        }
    std::stable_sort(records.begin() + 1, records.end(),
                     [](const auto& a, const auto& b) { return a.front() < b.front(); });
    return records;
}

std::vector<QStringList> loadRecords(const PaperReport& report)
{
    std::vector<QStringList> records{
        {QStringLiteral("tree_id"), QStringLiteral("limb_id"), QStringLiteral("limb"),
         QStringLiteral("gust_m_s"), QStringLiteral("mass_kg"), QStringLiteral("moment_Nm"),
         QStringLiteral("stress_Pa"), QStringLiteral("strength_Pa"),
         QStringLiteral("governing_at_m"), QStringLiteral("governing_bearing_deg"),
         QStringLiteral("utilisation"), QStringLiteral("utilisation_after_cuts"),
         QStringLiteral("breaking_gust_p10_m_s"), QStringLiteral("breaking_gust_p50_m_s"),
         QStringLiteral("breaking_gust_p90_m_s")}};
    for (const auto& of : report.assessment.trees) {
        const auto& tree = treeWithId(*report.garden, of.tree);
        const auto after = treeAfter(tree, of);
        for (const auto& load : of.load.limbs) {
            const auto& limb = tree.limbs.at(load.limb);
            const auto& gust = of.breaking.at(load.limb);
            const auto index = limbIndex(after, limb.id);
            QString then;
            for (const auto& each : of.loadAfter.limbs)
                if (each.limb == index && each.hasStrength)
                    then = figure(each.utilisation);
            records.push_back({text(of.tree), text(limb.id), text(limb.name),
                               figure(report.assessment.gust_m_s), figure(load.mass_kg),
                               figure(load.moment_Nm), figure(load.stress_Pa),
                               figure(load.strength_Pa), figure(load.governingAt_m),
                               figure(load.governingBearing_deg),
                               load.hasStrength ? figure(load.utilisation) : QString(), then,
                               gust.hasStrength ? figure(gust.p10_m_s) : QString(),
                               gust.hasStrength ? figure(gust.p50_m_s) : QString(),
                               gust.hasStrength ? figure(gust.p90_m_s) : QString()});
        }
    }
    return records;
}

} // namespace app
