#include "model/light/sample_day.hpp"

namespace model::light {

bool inGrowingSeason(std::chrono::month month, const Place& place)
{
    const auto number = static_cast<unsigned>(month);
    return (number >= 4 && number <= 9) == (place.latitude_deg >= 0.0);
}

std::vector<SampleDay> daysOfMonth(std::chrono::year_month month, int count)
{
    using namespace std::chrono;
    const auto days = static_cast<unsigned>(year_month_day_last{month / last}.day());
    std::vector<SampleDay> sample;
    for (int i = 0; i < count; ++i) {
        const double middle = (i + 0.5) * days / count;
        sample.push_back({month / day{static_cast<unsigned>(middle) + 1}, 1.0 / count});
    }
    return sample;
}

std::vector<SampleDay> daysOfGrowingSeason(const Place& place, std::chrono::year year,
                                           int daysPerMonth)
{
    using namespace std::chrono;
    std::vector<SampleDay> sample;
    double all = 0.0;
    for (unsigned m = 1; m <= 12; ++m) {
        if (!inGrowingSeason(month{m}, place))
            continue;
        const double days = static_cast<unsigned>((year / month{m} / last).day());
        all += days;
        for (auto one : daysOfMonth(year / month{m}, daysPerMonth)) {
            one.weight *= days;
            sample.push_back(one);
        }
    }
    for (auto& one : sample)
        one.weight /= all;
    return sample;
}

} // namespace model::light
