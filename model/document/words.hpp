#pragma once

#include "model/garden/garden.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace model {

/// The words that garden documents, reports and the command line's JSON use for an enumeration.
template <typename Enum>
struct Words; // known for the enumerations below only

template <typename Enum, std::size_t Count>
using WordTable = std::array<std::pair<Enum, std::string_view>, Count>;

template <>
struct Words<Exposure> {
    static constexpr WordTable<Exposure, 4> table{{{Exposure::open, "open"},
                                                   {Exposure::scattered, "scattered"},
                                                   {Exposure::builtUp, "built_up"},
                                                   {Exposure::walled, "walled"}}};
};
template <>
struct Words<Vigour> {
    static constexpr WordTable<Vigour, 4> table{{{Vigour::young, "young"},
                                                 {Vigour::mature, "mature"},
                                                 {Vigour::old, "old"},
                                                 {Vigour::stressed, "stressed"}}};
};
template <>
struct Words<Protection> {
    static constexpr WordTable<Protection, 3> table{{{Protection::unknown, "unknown"},
                                                     {Protection::none, "none"},
                                                     {Protection::listed, "listed"}}};
};
template <>
struct Words<Sign> {
    static constexpr WordTable<Sign, 10> table{{{Sign::fungus, "fungus"},
                                                {Sign::oozing, "oozing"},
                                                {Sign::heavingSoil, "heaving_soil"},
                                                {Sign::newLean, "new_lean"},
                                                {Sign::hungBranch, "hung_branch"},
                                                {Sign::deadTop, "dead_top"},
                                                {Sign::rootsCut, "roots_cut"},
                                                {Sign::cavityAtBase, "cavity_at_base"},
                                                {Sign::batsOrHole, "bats_or_hole"},
                                                {Sign::nest, "nest"}}};
};
template <>
struct Words<Union> {
    static constexpr WordTable<Union, 3> table{{{Union::sound, "sound"},
                                                {Union::codominant, "codominant"},
                                                {Union::includedBark, "included_bark"}}};
};
template <>
struct Words<Measured> {
    static constexpr WordTable<Measured, 3> table{{{Measured::taped, "taped"},
                                                   {Measured::sighted, "sighted"},
                                                   {Measured::guessed, "guessed"}}};
};
template <>
struct Words<DefectKind> {
    static constexpr WordTable<DefectKind, 6> table{{{DefectKind::cavity, "cavity"},
                                                     {DefectKind::openCavity, "open_cavity"},
                                                     {DefectKind::crack, "crack"},
                                                     {DefectKind::dead, "dead"},
                                                     {DefectKind::broken, "broken"},
                                                     {DefectKind::rubbing, "rubbing"}}};
};
template <>
struct Words<FoliageDensity> {
    static constexpr WordTable<FoliageDensity, 3> table{{{FoliageDensity::sparse, "sparse"},
                                                         {FoliageDensity::medium, "medium"},
                                                         {FoliageDensity::dense, "dense"}}};
};
template <>
struct Words<CutKind> {
    static constexpr WordTable<CutKind, 5> table{{{CutKind::removal, "removal"},
                                                  {CutKind::reduction, "reduction"},
                                                  {CutKind::thinning, "thinning"},
                                                  {CutKind::lifting, "lifting"},
                                                  {CutKind::renewal, "renewal"}}};
};
template <>
struct Words<GoalKind> {
    static constexpr WordTable<GoalKind, 8> table{{{GoalKind::relief, "relief"},
                                                   {GoalKind::gust, "gust"},
                                                   {GoalKind::light, "light"},
                                                   {GoalKind::dli, "dli"},
                                                   {GoalKind::keep, "keep"},
                                                   {GoalKind::lose, "lose"},
                                                   {GoalKind::leaf, "leaf"},
                                                   {GoalKind::openCentre, "open_centre"}}};
};
template <>
struct Words<Want> {
    static constexpr WordTable<Want, 2> table{{{Want::must, "must"}, {Want::wish, "wish"}}};
};
template <>
struct Words<PlantingKind> {
    static constexpr WordTable<PlantingKind, 4> table{{{PlantingKind::hedge, "hedge"},
                                                       {PlantingKind::bed, "bed"},
                                                       {PlantingKind::lawn, "lawn"},
                                                       {PlantingKind::shrub, "shrub"}}};
};
template <>
struct Words<StripUse> {
    static constexpr WordTable<StripUse, 10> table{{{StripUse::path, "path"},
                                                    {StripUse::mower, "mower"},
                                                    {StripUse::rideOnMower, "ride_on_mower"},
                                                    {StripUse::drive, "drive"},
                                                    {StripUse::seat, "seat"},
                                                    {StripUse::play, "play"},
                                                    {StripUse::road, "road"},
                                                    {StripUse::sight, "sight"},
                                                    {StripUse::fireZone, "fire_zone"},
                                                    {StripUse::other, "other"}}};
};
template <>
struct Words<StructureKind> {
    static constexpr WordTable<StructureKind, 6> table{{{StructureKind::building, "building"},
                                                        {StructureKind::fence, "fence"},
                                                        {StructureKind::glasshouse, "glasshouse"},
                                                        {StructureKind::pond, "pond"},
                                                        {StructureKind::chimney, "chimney"},
                                                        {StructureKind::other, "other"}}};
};

/// The word for a value: word(Union::includedBark) is "included_bark".
template <typename Enum>
[[nodiscard]] constexpr std::string_view word(Enum value)
{
    for (const auto& [known, name] : Words<Enum>::table)
        if (known == value)
            return name;
    return {};
}

/// The value for a word; nothing when no value has it.
template <typename Enum>
[[nodiscard]] constexpr std::optional<Enum> fromWord(std::string_view name)
{
    for (const auto& [known, itsName] : Words<Enum>::table)
        if (itsName == name)
            return known;
    return std::nullopt;
}

/// Every word, for a sentence: "sound, codominant or included_bark".
template <typename Enum>
[[nodiscard]] std::string allWords()
{
    const auto& table = Words<Enum>::table;
    std::string all;
    for (std::size_t i = 0; i < table.size(); ++i) {
        all += i == 0 ? "" : i + 1 == table.size() ? " or " : ", ";
        all += table[i].second;
    }
    return all;
}

} // namespace model
