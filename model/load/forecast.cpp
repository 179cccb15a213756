#include "model/load/forecast.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <stdexcept>
#include <utility>

namespace model::load {
namespace {

constexpr double kMph_m_s = 0.44704;
constexpr double kKmh_m_s = 1.0 / 3.6;

/// The scale's names, and those that forecasts use beside them.
constexpr std::array<std::pair<std::string_view, int>, 19> kNames{{
    {"calm", 0},
    {"light air", 1},
    {"light breeze", 2},
    {"gentle breeze", 3},
    {"moderate breeze", 4},
    {"fresh breeze", 5},
    {"strong breeze", 6},
    {"near gale", 7},
    {"moderate gale", 7},
    {"gale", 8},
    {"fresh gale", 8},
    {"strong gale", 9},
    {"severe gale", 9},
    {"storm", 10},
    {"whole gale", 10},
    {"violent storm", 11},
    {"hurricane", 12},
    {"hurricane force", 12},
    {"hurricane force wind", 12},
}};

/// A nation's least gust of a severe thunderstorm (L41).
struct Threshold {
    std::string_view nation;
    double gust_m_s;
    const char* source;
};
constexpr std::array kSevereThunderstorm{
    Threshold{"us", 58.0 * kMph_m_s, "US National Weather Service: 58 mph or more"},
    Threshold{"au", 90.0 * kKmh_m_s, "Bureau of Meteorology, Australia: 90 km/h or more"},
    Threshold{"ca", 90.0 * kKmh_m_s, "Environment Canada: 90 km/h or more"},
    Threshold{"nz", 110.0 * kKmh_m_s, "MetService, New Zealand: 110 km/h or more"},
    Threshold{"uk", 55.0 * kMph_m_s, "TORRO, United Kingdom: 55 mph or more"},
};

constexpr std::array kCanadianZones{
    std::string_view("America/Toronto"),  std::string_view("America/Montreal"),
    std::string_view("America/Halifax"),  std::string_view("America/St_Johns"),
    std::string_view("America/Winnipeg"), std::string_view("America/Regina"),
    std::string_view("America/Edmonton"), std::string_view("America/Vancouver"),
    std::string_view("America/Moncton"),  std::string_view("America/Whitehorse")};

std::string_view nationOf(std::string_view timeZone)
{
    if (timeZone.starts_with("Australia/"))
        return "au";
    if (timeZone == "Pacific/Auckland" || timeZone == "Pacific/Chatham")
        return "nz";
    if (timeZone == "Europe/London" || timeZone == "Europe/Belfast")
        return "uk";
    if (timeZone.starts_with("Canada/") ||
        std::ranges::find(kCanadianZones, timeZone) != kCanadianZones.end())
        return "ca";
    return "us";
}

/// In small letters, single blanks between words.
std::string simplified(std::string_view words)
{
    std::string plain;
    for (const char letter : words) {
        const auto code = static_cast<unsigned char>(letter);
        const bool blank = std::isspace(code) != 0;
        if (blank && (plain.empty() || plain.back() == ' '))
            continue;
        plain += blank ? ' ' : static_cast<char>(std::tolower(code));
    }
    if (plain.ends_with(' '))
        plain.pop_back();
    return plain;
}

bool dropFront(std::string_view& words, std::string_view front)
{
    if (!words.starts_with(front))
        return false;
    words.remove_prefix(front.size());
    return true;
}

bool dropBack(std::string_view& words, std::string_view back)
{
    if (!words.ends_with(back))
        return false;
    words.remove_suffix(back.size());
    return true;
}

/// "force 9", "beaufort 9", "bft 9", "9 bft", or a name of the scale.
std::optional<int> forceNamed(std::string_view words)
{
    for (const auto& [name, force] : kNames)
        if (words == name)
            return force;
    const bool marked = dropFront(words, "force ") || dropFront(words, "beaufort ") ||
                        dropFront(words, "bft ") || dropBack(words, " bft") ||
                        dropBack(words, " beaufort");
    if (!marked || words.empty() || words.size() > 2 ||
        !std::ranges::all_of(words, [](char letter) { return letter >= '0' && letter <= '9'; }))
        return std::nullopt;
    const int force = std::stoi(std::string(words));
    return force <= kGreatestForce ? std::optional(force) : std::nullopt;
}

std::optional<ForecastGust> thunderstorm(std::string_view words, std::string_view timeZone)
{
    if (!dropFront(words, "severe thunderstorm"))
        return std::nullopt;
    dropFront(words, "s");
    const bool named = dropFront(words, " ");
    if (!named && !words.empty())
        return std::nullopt;
    const auto nation = named ? words : nationOf(timeZone);
    const auto found = std::ranges::find(kSevereThunderstorm, nation, &Threshold::nation);
    if (found == kSevereThunderstorm.end())
        return std::nullopt;
    return ForecastGust{Said::warning, found->gust_m_s, forceBringing(found->gust_m_s),
                        found->source};
}

} // namespace

double meanOfForce_m_s(int force)
{
    if (force < 0 || force > kGreatestForce)
        throw std::domain_error("meanOfForce_m_s: a force is 0 to 12");
    return 0.836 * std::pow(force, 1.5); // (L40)
}

int forceOfMean(double mean_m_s)
{
    if (!(mean_m_s >= 0.0))
        throw std::domain_error("forceOfMean: wind can't be negative");
    const auto above = std::ranges::upper_bound(kLeastMeanOfForce_m_s, mean_m_s);
    return static_cast<int>(above - kLeastMeanOfForce_m_s.begin()) - 1;
}

double gustOfForce_m_s(int force)
{
    return kGustOverMean * meanOfForce_m_s(force);
}

int forceBringing(double gust_m_s)
{
    return forceOfMean(gust_m_s / kGustOverMean);
}

std::optional<ForecastGust> forecastGust(std::string_view words, std::string_view timeZone)
{
    const std::string plain = simplified(words);
    if (const auto warned = thunderstorm(plain, timeZone))
        return warned;
    std::string_view rest = plain;
    const bool gusts = dropFront(rest, "gusts of ") || dropFront(rest, "gusts ") ||
                       dropFront(rest, "gust ") || dropBack(rest, " gusts");
    const auto force = forceNamed(rest);
    if (!force)
        return std::nullopt;
    if (gusts)
        return ForecastGust{Said::gustForce, meanOfForce_m_s(*force), *force,
                            "Beaufort scale, WMO"};
    return ForecastGust{Said::meanForce, gustOfForce_m_s(*force), *force,
                        "Beaufort scale, WMO; ASCE 7-16, Fig. C26.5-1"};
}

} // namespace model::load
