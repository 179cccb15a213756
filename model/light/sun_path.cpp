#include "model/light/sun_path.hpp"

#include "model/light/sky.hpp"

#include <cmath>

namespace model::light {
namespace {

using std::chrono::duration_cast;
using std::chrono::milliseconds;

struct Spell {
    Instant from;
    Instant to;
};

class SunOfDay {
public:
    SunOfDay(const Place& place, std::chrono::year_month_day date)
        : place_(place), day_(dayOfYear(date)),
          midnight_(std::chrono::sys_days{date} -
                    milliseconds{std::llround(place.longitude_deg / 15.0 * 3600e3)})
    {
    }

    SunStep at(Instant when, double hours) const
    {
        const auto position = sunPosition(when, place_.latitude_deg, place_.longitude_deg);
        const double beam = clearSky(position.elevation_deg, day_, place_.altitude_m).beam_W_m2;
        return {when, towardsSun(position), position, beam, hours};
    }

    bool shines(Instant when) const { return at(when, 0.0).beam_W_m2 > kSunshine_W_m2; }

    /// The second in (dark, light] or [light, dark) when the sun begins or ends to shine.
    Instant threshold(Instant dark, Instant light) const
    {
        while (std::chrono::abs(light - dark) > std::chrono::seconds{1}) {
            const Instant middle = dark + (light - dark) / 2;
            (shines(middle) ? light : dark) = middle;
        }
        return light;
    }

    std::vector<Spell> spells() const
    {
        constexpr std::chrono::minutes kLook{10};
        std::vector<Spell> found;
        bool shone = shines(midnight_);
        Instant since = midnight_;
        for (Instant now = midnight_ + kLook; now <= midnight_ + std::chrono::days{1};
             now += kLook) {
            const bool lit = shines(now);
            if (lit && !shone)
                since = threshold(now - kLook, now);
            if (!lit && shone)
                found.push_back({since, threshold(now, now - kLook)});
            shone = lit;
        }
        if (shone)
            found.push_back({since, midnight_ + std::chrono::days{1}});
        return found;
    }

private:
    Place place_;
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
        const auto length = spell.to - spell.from;
        const auto count = (length + step - milliseconds{1}) / step;
        for (long i = 0; i < count; ++i) {
            const auto middle = spell.from + length * (2 * i + 1) / (2 * count);
            const double hours = std::chrono::duration<double, std::ratio<3600>>(length).count() /
                                 static_cast<double>(count);
            steps.push_back(sun.at(middle, hours));
        }
    }
    return steps;
}

} // namespace model::light
