#include "model/document/check.hpp"

#include <algorithm>
#include <array>
#include <charconv>

namespace model {

std::string rounded(double value)
{
    return plain(std::round(value * 1000.0) / 1000.0);
}

std::string counted(std::size_t count, std::string_view one)
{
    std::string words = std::to_string(count);
    (words += ' ') += one;
    return count == 1 ? words : words + 's';
}

bool Check::fault(const Path& path, std::string found, std::string expected)
{
    ++count_;
    if (faults_.size() < limits::kFaults)
        faults_.push_back({path.pointer(), std::move(found), std::move(expected)});
    return false;
}

bool Check::within(const Path& path, double value, double low, double high, const char* what)
{
    if (value >= low && value <= high)
        return true;
    // Limits that were worked out are told to the millimetre, never more than is allowed.
    const double told = std::floor(high * 1000.0 + 1e-6) / 1000.0;
    return fault(path, plain(value),
                 std::string(what) + " from " + plain(low) + " to " + plain(told));
}

bool Check::positive(const Path& path, double value, double high, const char* what)
{
    if (value > 0.0 && value <= high)
        return true;
    return fault(path, plain(value), std::string(what) + " over 0 and up to " + plain(high));
}

bool Check::drawnHeight(const Path& path, double height_m)
{
    if (height_m >= -limits::kIntoGround_m && height_m <= limits::kTreeHeight_m)
        return true;
    return fault(path, plain(height_m),
                 "a height from " + plain(100.0 * limits::kIntoGround_m) +
                     " cm below the ground to " + plain(limits::kTreeHeight_m) + " m above it");
}

bool Check::atMost(const Path& path, std::size_t count, std::size_t limit, const char* what)
{
    if (count <= limit)
        return true;
    return fault(path, std::to_string(count) + " " + what,
                 "at most " + std::to_string(limit) + " " + what);
}

bool Check::name(const Path& path, const std::string& text, bool required)
{
    if (required && text.empty())
        return fault(path, "an empty text", "a name of at least one letter");
    if (text.size() > limits::kNameBytes)
        return fault(path, "a text of " + std::to_string(text.size()) + " bytes",
                     "at most " + std::to_string(limits::kNameBytes));
    const auto control = [](char c) { return static_cast<unsigned char>(c) < 0x20; };
    if (std::ranges::any_of(text, control))
        return fault(path, inQuotes(text), "one line, without line breaks, tabs or control signs");
    return true;
}

bool Check::note(const Path& path, const std::string& text)
{
    if (text.size() <= limits::kNoteBytes)
        return true;
    return fault(path, "a text of " + std::to_string(text.size()) + " bytes",
                 "at most " + std::to_string(limits::kNoteBytes));
}

bool Check::id(const Path& path, const std::string& text, std::set<std::string>& taken)
{
    if (!name(path, text, true))
        return false;
    if (taken.insert(text).second)
        return true;
    return fault(path, inQuotes(text) + " a second time", "an id that nothing else here has");
}

bool Check::place(const Path& path, Point2 place)
{
    constexpr double kReach = limits::kGardenReach_m;
    const bool east = within(path / 0, place.x, -kReach, kReach, "metres east of the origin");
    return within(path / 1, place.y, -kReach, kReach, "metres north of the origin") && east;
}

bool Check::outline(const Path& path, const Polygon& outline)
{
    bool good = atMost(path, outline.size(), limits::kCorners, "corners");
    for (std::size_t i = 0; good && i < outline.size(); ++i)
        good = place(path / i, outline[i]);
    if (!good)
        return false;
    if (const auto reason = polygonFault(outline))
        return fault(path, "an outline that " + *reason,
                     "at least three corners in order round a patch of ground, without crossing");
    return true;
}

bool Check::date(const Path& path, std::chrono::year_month_day date)
{
    if (date.ok() && date.year() >= std::chrono::year(1800) &&
        date.year() <= std::chrono::year(2200))
        return true;
    const auto number = [](auto part) { return std::to_string(part); };
    return fault(path,
                 "year " + number(static_cast<int>(date.year())) + ", month " +
                     number(static_cast<unsigned>(date.month())) + ", day " +
                     number(static_cast<unsigned>(date.day())),
                 "a day of the calendar in the years 1800 to 2200");
}

bool Check::leafDates(const Path& path, const LeafDates& dates)
{
    const auto isDay = [&](std::string_view field, const auto& day) {
        return !day || day->ok() ||
               fault(path / field,
                     "month " + std::to_string(static_cast<unsigned>(day->month())) + ", day " +
                         std::to_string(static_cast<unsigned>(day->day())),
                     "a day of the calendar");
    };
    const bool on = isDay("leaf_on", dates.on);
    const bool off = isDay("leaf_off", dates.off);
    if (!on || !off || !dates.on || !dates.off)
        return on && off;
    const auto inLeaf = daysBetween(*dates.on, *dates.off);
    return inLeaf >= limits::kInLeaf_days ||
           fault(path / "leaf_off", std::to_string(inLeaf) + " days after leaf_on",
                 "a day at least " + std::to_string(limits::kInLeaf_days) +
                     " days after leaf_on, round the year");
}

} // namespace model
