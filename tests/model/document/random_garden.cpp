#include "tests/model/document/random_garden.hpp"

#include "model/document/words.hpp"

#include <array>
#include <cmath>
#include <numbers>
#include <random>

using namespace model;

namespace {

class Maker {
public:
    explicit Maker(std::uint32_t seed) : engine_(seed) {}

    Garden garden();

private:
    std::mt19937 engine_;

    // The standard's distributions differ between libraries; these don't.
    std::size_t below(std::size_t count) { return engine_() % count; }
    bool chance(double share) { return unit() < share; }
    double unit() { return static_cast<double>(engine_()) / 4294967296.0; }
    double number(double low, double high)
    {
        const double value = low + (high - low) * unit();
        const double typed = std::round(value * 100.0) / 100.0;
        return typed < low || typed > high || chance(0.5) ? value : typed;
    }
    std::optional<double> maybe(double low, double high)
    {
        return chance(0.5) ? std::optional(number(low, high)) : std::nullopt;
    }
    template <typename Enum>
    Enum any()
    {
        const auto& table = Words<Enum>::table;
        return table[below(table.size())].first;
    }

    std::string text();
    std::string note() { return chance(0.3) ? text() + "\n\t\"" + text() + "\\" : ""; }
    std::string id(const char* kind, std::size_t i) { return kind + std::to_string(i) + text(); }
    Extras extras();
    std::chrono::year_month_day day();
    Polygon outline();
    Foliage foliage(double length);
    Defect defect(double length);
    Limb trunk();
    Limb limbFrom(const Limb& parent, std::size_t i);
    Goal goal();
    Cut cut()
    {
        return {any<CutKind>(),  id("limb", below(20)), number(0.0, 5.0),
                maybe(0.0, 5.0), maybe(0.0, 1.0),       extras()};
    }
    std::optional<Vec3> tip();
    void measured(Visit& visit);
    Visit visit(std::size_t i);
    Tree tree(std::size_t i);
    LeafDates leafDates();
    Neighbour neighbour(std::size_t i);
    Structure structure(std::size_t i);
    ElectricLine line(std::size_t i);
};

std::string Maker::text()
{
    static constexpr std::array kPieces{"oak",    " ",      "\"",         "\\",     "/", "~", "é",
                                        "\u00df", "\u6728", "\U0001F333", "{",      "]", ",", ":",
                                        "\u007f", "0",      "limb ",      "\u2028", "'", "-"};
    std::string made;
    for (std::size_t pieces = below(8); pieces > 0; --pieces)
        made += kPieces[below(kPieces.size())];
    return made;
}

Extras Maker::extras()
{
    static constexpr std::array kTexts{"null",
                                       "true",
                                       "-12",
                                       "123456789012345678901234567890",
                                       "0.10",
                                       "1e-7",
                                       "[]",
                                       "{}",
                                       "\"\\u0001 \\\\ \\\" \\n é\"",
                                       "[1, [2, {\"a\": null}], \"x\"]",
                                       "{\"depth_m\": 0.40, \"kind\": \"clay over chalk\", "
                                       "\"horizons\": [[0, 0.25], [0.25, 0.9]]}"};
    Extras made;
    if (chance(0.2))
        for (std::size_t count = below(3); count > 0; --count)
            made.emplace("x_" + text(), kTexts[below(kTexts.size())]);
    return made;
}

std::chrono::year_month_day Maker::day()
{
    using namespace std::chrono;
    return sys_days{1990y / January / 1} + days{static_cast<int>(below(20000))};
}

Polygon Maker::outline() // a star round a middle: its edges never cross
{
    const Point2 middle{number(-500.0, 500.0), number(-500.0, 500.0)};
    const std::size_t corners = 3 + below(9);
    Polygon made;
    for (std::size_t i = 0; i < corners; ++i) {
        const double turn = (static_cast<double>(i) + 0.8 * unit()) / static_cast<double>(corners);
        const double reach = number(0.5, 8.0);
        made.push_back(middle + reach * Point2{std::cos(2.0 * std::numbers::pi * turn),
                                               std::sin(2.0 * std::numbers::pi * turn)});
    }
    return made;
}

Foliage Maker::foliage(double length)
{
    Foliage made;
    made.from_m = unit() * (length - 0.02);
    made.radius_m = number(0.05, 3.0);
    made.hanging_m = chance(0.5) ? 0.0 : number(0.0, 6.0);
    made.hem_m = maybe(0.0, 4.0);
    made.density = any<FoliageDensity>();
    made.thinned = chance(0.7) ? 0.0 : number(0.0, 0.9);
    made.extras = extras();
    return made;
}

Defect Maker::defect(double length)
{
    Defect made{any<DefectKind>(), unit() * length, maybe(0.0, 0.4), {},
                maybe(0.0, 360.0), note(),          extras()};
    if (made.kind == DefectKind::cavity && made.residualWall_m && chance(0.5))
        made.thickestWall_m = made.residualWall_m;
    return made;
}

Limb Maker::trunk()
{
    Limb made;
    made.id = id("limb", 0);
    Station here{{chance(0.5) ? 0.0 : -0.0, 0.01 * unit(), 0.0}, number(0.1, 1.5), extras()};
    made.stations.push_back(here);
    for (std::size_t more = 1 + below(4); more > 0; --more) {
        here.position_m += {number(-0.5, 0.5), number(-0.5, 0.5), number(0.3, 3.0)};
        here.diameter_m *= 0.6 + 0.4 * unit();
        made.stations.push_back(here);
    }
    return made;
}

Limb Maker::limbFrom(const Limb& parent, std::size_t i)
{
    Limb made;
    made.id = id("limb", i);
    made.parent = parent.id;
    made.attachedAt_m = unit() * length_m(parent);
    const auto there = axisPoint(parent, made.attachedAt_m);
    Station here{there.position_m, there.diameter_m * (0.2 + 0.8 * unit()), {}};
    made.stations.push_back(here);
    for (std::size_t more = 1 + below(5); more > 0; --more) {
        here.position_m += {number(-2.0, 2.0), number(-2.0, 2.0), 0.01 + unit()};
        here.diameter_m *= 0.5 + 0.5 * unit();
        here.extras = extras();
        made.stations.push_back(here);
    }
    return made;
}

Goal Maker::goal()
{
    Goal made;
    made.kind = any<GoalKind>();
    made.want = any<Want>();
    made.subject = id("limb", below(20));
    made.value = number(0.01, 1.0);
    for (std::size_t months = below(4); months > 0; --months)
        made.months.push_back(static_cast<int>(1 + below(12)));
    made.extras = extras();
    return made;
}

std::optional<Vec3> Maker::tip()
{
    return chance(0.5) ? std::optional(Vec3{number(-9.0, 9.0), number(-9.0, 9.0), number(0.0, 9.0)})
                       : std::nullopt;
}

void Maker::measured(Visit& visit)
{
    for (std::size_t records = below(3); records > 0; --records)
        visit.headroom.push_back(
            {id("strip", below(9)), maybe(0.0, 5.0), maybe(0.0, 5.0), extras()});
    for (std::size_t records = below(3); records > 0; --records)
        visit.tips.push_back({id("limb", below(20)), tip(), tip(), extras()});
    for (std::size_t wounds = below(3); wounds > 0; --wounds) {
        Wound wound{id("limb", below(20)), number(0.0, 5.0), number(0.01, 0.4), {}, extras()};
        if (chance(0.5))
            wound.closed = std::chrono::sys_days{visit.date} + std::chrono::days{below(900)};
        visit.wounds.push_back(std::move(wound));
    }
    if (chance(0.3))
        visit.limbsBefore.push_back(trunk());
    if (chance(0.5))
        visit.weather =
            VisitWeather{maybe(-20.0, 45.0), maybe(0.0, 1.0), maybe(0.0, 30.0), extras()};
    if (chance(0.3))
        visit.photos.push_back(
            {"visit.jpg", maybe(0.001, 0.1), maybe(0.0, 360.0), note(), extras()});
}

Visit Maker::visit(std::size_t i)
{
    Visit made;
    made.id = id("visit", i);
    made.date = day();
    made.by = text();
    for (std::size_t cuts = below(4); cuts > 0; --cuts)
        made.cuts.push_back(cut());
    for (std::size_t cuts = below(3); cuts > 0; --cuts)
        made.left.push_back(cut());
    made.leafShare = maybe(0.0, 1.0);
    measured(made);
    made.note = note();
    if (chance(0.5))
        made.nextDue = std::chrono::sys_days{made.date} + std::chrono::days{below(900)};
    made.extras = extras();
    return made;
}

LeafDates Maker::leafDates()
{
    using namespace std::chrono;
    LeafDates made;
    if (chance(0.5))
        made.on = month_day{month{static_cast<unsigned>(1 + below(12))},
                            std::chrono::day{static_cast<unsigned>(1 + below(28))}};
    if (made.on && chance(0.5)) {
        const auto off = year_month_day{sys_days{2001y / made.on->month() / made.on->day()} +
                                        days{static_cast<int>(28 + below(330))}};
        made.off = off.month() / off.day();
    }
    return made;
}

Neighbour Maker::neighbour(std::size_t i)
{
    Neighbour made;
    made.id = id("neighbour", i);
    made.name = text();
    made.species = "Fagus" + text();
    made.position_m = {number(-300.0, 300.0), 0.1};
    made.crownBase_m = number(0.0, 9.0);
    made.height_m = made.crownBase_m + number(0.2, 20.0);
    made.spread_m = number(0.2, 25.0);
    made.across_m = maybe(0.2, 25.0);
    made.bearing_deg = number(0.0, 360.0);
    made.stemDiameter_m = maybe(0.05, 2.0);
    made.density = any<FoliageDensity>();
    made.leafDates = leafDates();
    made.extras = extras();
    return made;
}

Tree Maker::tree(std::size_t i)
{
    Tree made;
    made.id = id("tree", i);
    made.name = text();
    made.species = "Betula" + text();
    made.position_m = {number(-100.0, 100.0), number(-100.0, 100.0)};
    if (chance(0.5))
        made.plantedYear = 1800 + static_cast<int>(below(225));
    made.vigour = any<Vigour>();
    made.protection = any<Protection>();
    made.leafDates = leafDates();
    made.limbs.push_back(trunk());
    for (std::size_t limb = 1 + below(12); limb > 0; --limb)
        made.limbs.push_back(limbFrom(made.limbs[below(made.limbs.size())], made.limbs.size()));
    for (auto& limb : made.limbs) {
        const double length = length_m(limb);
        limb.name = text();
        limb.unionKind = any<Union>();
        limb.measured = any<Measured>();
        if (chance(0.7) && length > 0.05)
            limb.foliage = foliage(length);
        for (std::size_t marks = below(3); marks > 0; --marks) {
            limb.defects.push_back(defect(length));
            limb.props.push_back({unit() * length, extras()});
        }
        limb.fruit_kg = chance(0.5) ? 0.0 : number(0.0, 80.0);
        limb.extras = extras();
    }
    if (chance(0.5)) // the trunk need not come first
        std::swap(made.limbs.front(), made.limbs.back());
    for (std::size_t more = below(3); more > 0; --more) {
        made.observations.push_back({any<Sign>(), note(), extras()});
        made.photos.push_back({"photo" + std::to_string(more) + ".jpg", maybe(0.001, 0.1),
                               maybe(0.0, 360.0), note(), extras()});
        if (chance(0.5))
            made.photos.back().underlay =
                Underlay{{number(-2000.0, 2000.0), number(-2000.0, 2000.0)},
                         number(-180.0, 180.0),
                         number(-60.0, 60.0),
                         number(0.0, 1.0),
                         extras()};
    }
    for (std::size_t goals = below(4); goals > 0; --goals)
        made.goals.push_back(goal());
    for (std::size_t visits = below(4); visits > 0; --visits)
        made.visits.push_back(visit(visits));
    made.extras = extras();
    return made;
}

Structure Maker::structure(std::size_t i)
{
    return {id("structure", i), text(),  any<StructureKind>(), outline(),
            number(0.0, 12.0),  extras()};
}

ElectricLine Maker::line(std::size_t i)
{
    ElectricLine made{id("line", i), text(), {}, maybe(0.1, 400.0), extras()};
    for (std::size_t points = 2 + below(4); points > 0; --points)
        made.path_m.push_back({number(-200.0, 200.0), number(-200.0, 200.0), number(3.0, 30.0)});
    return made;
}

Garden Maker::garden()
{
    Garden made;
    made.name = text();
    made.place = {number(-90.0, 90.0),
                  number(-180.0, 180.0),
                  number(-400.0, 5000.0),
                  chance(0.5) ? "" : "Pacific/Auckland",
                  {},
                  {},
                  extras()};
    for (std::size_t months = below(4); months > 0; --months)
        made.place.stormMonths.push_back(static_cast<int>(1 + below(12)));
    if (chance(0.5))
        for (int month = 0; month < 12; ++month)
            made.place.sunshineShare.push_back(number(0.0, 1.0));
    if (chance(0.5))
        made.slope = Slope{number(0.0, 1.0), number(0.0, 360.0), extras()};
    made.exposure = any<Exposure>();
    made.designGust_m_s = number(0.0, 60.0);
    for (std::size_t i = below(4); i > 0; --i)
        made.trees.push_back(tree(i));
    for (std::size_t i = below(4); i > 0; --i)
        made.neighbours.push_back(neighbour(i));
    for (std::size_t i = below(4); i > 0; --i)
        made.plantings.push_back({id("planting", i), text(), any<PlantingKind>(), "x" + text(),
                                  outline(), number(0.0, 4.0), extras()});
    for (std::size_t i = below(4); i > 0; --i)
        made.strips.push_back(
            {id("strip", i), text(), any<StripUse>(), outline(), maybe(0.5, 6.0), extras()});
    for (std::size_t i = below(3); i > 0; --i)
        made.lines.push_back(line(i));
    for (std::size_t i = below(3); i > 0; --i)
        made.structures.push_back(structure(i));
    made.extras = extras();
    return made;
}

} // namespace

Garden randomGarden(std::uint32_t seed)
{
    return Maker(seed).garden();
}
