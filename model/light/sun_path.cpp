#include "model/light/sun_path.hpp"

#include "model/light/sky.hpp"

#include <algorithm>
#include <cmath>

namespace model::light {
namespace {

using std::chrono::milliseconds;

/// How much sun there is: the times of a day are cut where this changes.
enum class Sun { down, low, shining };

struct Spell {
    Instant from;
    Instant to;
    Sun sun{};
};

class SunOfDay {
public:
    SunOfDay(const Place& place, std::chrono::year_month_day date)
        : latitude_deg_(place.latitude_deg), longitude_deg_(place.longitude_deg),
          altitude_m_(place.altitude_m), day_(dayOfYear(date)),
          midnight_(std::chrono::sys_days{date} -
                    milliseconds{std::llround(place.longitude_deg / 15.0 * 3600e3)})
    {
    }

    SunStep at(Instant when, double hours) const
    {
        const auto position = sunPosition(when, latitude_deg_, longitude_deg_);
        const auto sky = clearSky(position.elevation_deg, day_, altitude_m_);
        return {when,  towardsSun(position),          position, sky.beam_W_m2, sky.diffuse_W_m2,
                hours, sky.beam_W_m2 > kSunshine_W_m2};
    }

    std::vector<Spell> spells() const
    {
        constexpr std::chrono::minutes kLook{10};
        std::vector<Spell> found{{midnight_, midnight_, stateAt(midnight_)}};
        const Instant end = midnight_ + std::chrono::days{1};
        for (Instant now = midnight_; now < end; now += kLook)
            followTo(now + kLook, now, found);
        found.back().to = end;
        return found;
    }

private:
    Sun stateAt(Instant when) const
    {
        const auto step = at(when, 0.0);
        if (step.shines)
            return Sun::shining;
        return step.position.elevation_deg > 0.0 ? Sun::low : Sun::down;
    }

    /// Closes the last spell wherever the state changes between `since` and `now`.
    void followTo(Instant now, Instant since, std::vector<Spell>& found) const
    {
        const Sun then = stateAt(now);
        while (found.back().sun != then) {
            // One state at a time: from down to shining the sun is low in between.
            const bool rising = then > found.back().sun;
            const auto next =
                static_cast<Sun>(static_cast<int>(found.back().sun) + (rising ? 1 : -1));
            Instant before = since;
            Instant after = now;
            while (after - before > std::chrono::seconds{1}) {
                const Instant middle = before + (after - before) / 2;
                const Sun state = stateAt(middle);
                (rising ? state >= next : state <= next) ? after = middle : before = middle;
            }
            found.back().to = after;
            found.push_back({after, after, next});
        }
    }

    double latitude_deg_;
    double longitude_deg_;
    double altitude_m_;
    int day_;
    Instant midnight_;
};

} // namespace

int dayOfYear(std::chrono::year_month_day date)
{
    using namespace std::chrono;
    return static_cast<int>((sys_days{date} - sys_days{date.year() / January / 1}).count()) + 1;
}

std::vector<SunStep> sunPath(const Place& place, std::chrono::year_month_day date,
                             std::chrono::seconds step)
{
    const SunOfDay sun{place, date};
    std::vector<SunStep> steps;
    for (const auto& spell : sun.spells()) {
        if (spell.sun == Sun::down)
            continue;
        const auto length = spell.to - spell.from;
        const auto count = std::max<long>(1, (length + step - milliseconds{1}) / step);
        const double hours = std::chrono::duration<double, std::ratio<3600>>(length).count() /
                             static_cast<double>(count);
        for (long i = 0; i < count; ++i) {
            steps.push_back(sun.at(spell.from + length * (2 * i + 1) / (2 * count), hours));
            steps.back().shines = spell.sun == Sun::shining;
        }
    }
    return steps;
}

} // namespace model::light
