#include "model/species/read_tables.hpp"

#include <algorithm>
#include <array>

namespace model {
namespace {

constexpr std::array<Word<LeafHabit>, 3> kLeafHabit{{{"deciduous", LeafHabit::deciduous},
                                                     {"evergreen", LeafHabit::evergreen},
                                                     {"semi_evergreen", LeafHabit::semiEvergreen}}};

constexpr std::array<Word<std::string_view>, 4> kRole{
    {{"shade", "shade"}, {"fruit", "fruit"}, {"ornamental", "ornamental"}, {"conifer", "conifer"}}};

constexpr std::array<Word<std::string_view>, 7> kCrownHabit{{{"vase", "vase"},
                                                             {"spreading", "spreading"},
                                                             {"rounded", "rounded"},
                                                             {"upright", "upright"},
                                                             {"weeping", "weeping"},
                                                             {"conical", "conical"},
                                                             {"columnar", "columnar"}}};

constexpr std::array<Word<ShootPattern>, 3> kShootPattern{
    {{"short_flush", ShootPattern::shortFlush},
     {"spring_flush", ShootPattern::springFlush},
     {"long_season", ShootPattern::longSeason}}};

constexpr std::array<Word<Growth>, 4> kGrowth{{{"slow", Growth::slow},
                                               {"medium", Growth::medium},
                                               {"fast", Growth::fast},
                                               {"very_fast", Growth::veryFast}}};

constexpr std::array<Word<Flowering>, 4> kFlowering{{{"none", Flowering::none},
                                                     {"before_leaves", Flowering::beforeLeaves},
                                                     {"spring", Flowering::spring},
                                                     {"summer", Flowering::summer}}};

constexpr std::array<Word<Decay>, 3> kDecay{
    {{"poor", Decay::poor}, {"moderate", Decay::moderate}, {"good", Decay::good}}};

constexpr std::array<Word<Rating>, 3> kStrength{
    {{"weak", Rating::low}, {"medium", Rating::medium}, {"strong", Rating::high}}};

constexpr std::array<Word<Rating>, 3> kRating{
    {{"low", Rating::low}, {"medium", Rating::medium}, {"high", Rating::high}}};

constexpr Range kHeight_m{0.5, 120.0};
constexpr Range kSpread_m{0.5, 60.0};
constexpr Range kShoot_m{0.01, 5.0};
constexpr Range kRemoval{0.0, 1.0};

struct Span {
    double low{};
    double high{};
};

Span readSpan(const TableRow& row, std::string_view low, std::string_view high, Range range)
{
    const Span span{row.number(low, range), row.number(high, range)};
    if (span.low > span.high)
        row.fault(high, "no less than " + std::string(low));
    return span;
}

template <typename Value>
std::optional<Value> maybeWord(const TableRow& row, std::string_view column,
                               std::span<const Word<Value>> words)
{
    if (row.blank(column))
        return std::nullopt;
    return row.word<Value>(column, words);
}

void readSize(const TableRow& row, Practice& practice)
{
    const auto height = readSpan(row, "height_low_m", "height_high_m", kHeight_m);
    const auto spread = readSpan(row, "spread_low_m", "spread_high_m", kSpread_m);
    const auto shoot = readSpan(row, "shoot_low_m", "shoot_high_m", kShoot_m);
    practice.heightLow_m = height.low;
    practice.heightHigh_m = height.high;
    practice.spreadLow_m = spread.low;
    practice.spreadHigh_m = spread.high;
    practice.shootLow_m = shoot.low;
    practice.shootHigh_m = shoot.high;
    practice.shootPattern = row.word<ShootPattern>("shoot_pattern", kShootPattern);
    practice.growth = row.word<Growth>("growth_class", kGrowth);
}

void readTiming(const TableRow& row, Practice& practice)
{
    practice.flowering = row.word<Flowering>("flowering", kFlowering);
    practice.bestMonthsNorth = row.months("best_months_north");
    practice.avoidMonthsNorth = row.months("avoid_months_north");
    practice.avoidReason = row.text("avoid_reason");
    for (const int month : practice.bestMonthsNorth)
        if (std::ranges::count(practice.avoidMonthsNorth, month) > 0)
            row.fault("avoid_months_north", "no month that is among the best");
    if (practice.avoidMonthsNorth.empty() != practice.avoidReason.empty())
        row.fault("avoid_reason", "a reason exactly where there are months to avoid");
}

void readSources(const TableRow& row, Practice& practice)
{
    row.cite(practice.sources, "form", {"leaf_habit", "role", "crown_habit"});
    row.cite(practice.sources, "size",
             {"height_low_m", "height_high_m", "spread_low_m", "spread_high_m"});
    row.cite(practice.sources, "shoot_low", {"shoot_low_m"});
    row.cite(practice.sources, "shoot_high", {"shoot_high_m"});
    row.cite(practice.sources, "shoot_pattern", {"shoot_pattern"});
    row.cite(practice.sources, "growth", {"growth_class"});
    row.cite(practice.sources, "timing", {"flowering", "best_months_north", "avoid_months_north"});
    row.cite(practice.sources, "decay", {"decay_resistance"});
    row.cite(practice.sources, "wood_strength", {"wood_strength"});
    row.cite(practice.sources, "sprouting", {"sprouting"});
    row.cite(practice.sources, "removal", {"max_annual_removal"});
    row.cite(practice.sources, "regrowth", {"regrowth_note"});
    row.cite(practice.sources, "note", {"note"});
}

} // namespace

std::vector<std::string> practiceColumns()
{
    return {"latin",
            "leaf_habit",
            "role",
            "crown_habit",
            "form_source",
            "form_evidence",
            "height_low_m",
            "height_high_m",
            "spread_low_m",
            "spread_high_m",
            "size_source",
            "size_evidence",
            "shoot_low_m",
            "shoot_low_source",
            "shoot_low_evidence",
            "shoot_high_m",
            "shoot_high_source",
            "shoot_high_evidence",
            "shoot_pattern",
            "shoot_pattern_source",
            "shoot_pattern_evidence",
            "growth_class",
            "growth_source",
            "growth_evidence",
            "flowering",
            "best_months_north",
            "avoid_months_north",
            "avoid_reason",
            "timing_source",
            "timing_evidence",
            "decay_resistance",
            "decay_source",
            "decay_evidence",
            "wood_strength",
            "wood_strength_source",
            "wood_strength_evidence",
            "sprouting",
            "sprouting_source",
            "sprouting_evidence",
            "max_annual_removal",
            "removal_source",
            "removal_evidence",
            "regrowth_note",
            "regrowth_source",
            "regrowth_evidence",
            "note",
            "note_source",
            "note_evidence"};
}

Practice readPractice(const TableRow& row)
{
    Practice practice;
    practice.leafHabit = row.word<LeafHabit>("leaf_habit", kLeafHabit);
    practice.role = row.word<std::string_view>("role", kRole);
    practice.crownHabit = row.word<std::string_view>("crown_habit", kCrownHabit);
    readSize(row, practice);
    readTiming(row, practice);
    practice.decayResistance = maybeWord<Decay>(row, "decay_resistance", kDecay);
    practice.woodStrength = maybeWord<Rating>(row, "wood_strength", kStrength);
    practice.sprouting = maybeWord<Rating>(row, "sprouting", kRating);
    practice.maxAnnualRemoval = row.maybeNumber("max_annual_removal", kRemoval);
    practice.regrowthNote = row.text("regrowth_note");
    practice.note = row.text("note");
    readSources(row, practice);
    return practice;
}

} // namespace model
