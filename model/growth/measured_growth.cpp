#include "model/growth/measured_growth.hpp"

#include "model/growth/shoot_rate.hpp"
#include "model/growth/shoot_season.hpp"

#include <algorithm>

namespace model::growth {
namespace {

using std::chrono::sys_days;
using std::chrono::year_month_day;

// Years of growth that are too few to learn from.
constexpr double kLeastYears = 0.05;

/// How something was left, if that is known. A visit without cuts leaves it as it found it.
template <typename Record>
auto leftAt(const Visit& visit, const Record& record)
{
    return record.after_m || !visit.cuts.empty() ? record.after_m : record.before_m;
}

/// What a visit left behind of a strip's headroom or a tip's place.
template <typename Value>
struct Left {
    std::string subject;
    year_month_day date;
    Value value;
};

double moved_m(double left_m, double found_m)
{
    return left_m - found_m;
}

double moved_m(Vec3 left_m, Vec3 found_m)
{
    return norm(found_m - left_m);
}

const std::string& subjectOf(const HeadroomRecord& record)
{
    return record.strip;
}

const std::string& subjectOf(const TipRecord& record)
{
    return record.limb;
}

/// One kind of record followed through the visits.
template <typename Record, typename Value>
class Follower {
public:
    Follower(MeasuredAt at, double share, ShootPattern pattern, const Place& place,
             const LeafDates& seen)
        : at_(at), share_(share), pattern_(pattern), place_(place), seen_(seen)
    {
    }

    void follow(const Visit& visit, const std::vector<Record>& records,
                std::vector<MeasuredGrowth>& all)
    {
        for (const auto& record : records) {
            const auto last = std::ranges::find(left_, subjectOf(record), &Left<Value>::subject);
            if (last != left_.end() && record.before_m)
                add(*last, visit.date, *record.before_m, all);
            if (last != left_.end())
                left_.erase(last);
            if (const auto now = leftAt(visit, record))
                left_.push_back({subjectOf(record), visit.date, *now});
        }
        // A cut that nobody measured leaves all else at a place nobody knows.
        if (!visit.cuts.empty())
            std::erase_if(left_, [&](const Left<Value>& left) {
                return std::ranges::none_of(records, [&](const Record& record) {
                    return subjectOf(record) == left.subject;
                });
            });
    }

private:
    void add(const Left<Value>& left, year_month_day date, const Value& found,
             std::vector<MeasuredGrowth>& all) const
    {
        const double years = growthClock(pattern_, place_, sys_days{date}, seen_) -
                             growthClock(pattern_, place_, sys_days{left.date}, seen_);
        if (years >= kLeastYears)
            all.push_back(
                {at_, left.subject, left.date, date, years, moved_m(left.value, found), share_});
    }

    MeasuredAt at_;
    double share_;
    ShootPattern pattern_;
    const Place& place_;
    const LeafDates& seen_;
    std::vector<Left<Value>> left_;
};

} // namespace

std::vector<const Visit*> visitsByDate(const Tree& tree)
{
    std::vector<const Visit*> visits;
    for (const auto& visit : tree.visits)
        visits.push_back(&visit);
    std::ranges::stable_sort(visits, {}, [](const Visit* v) { return v->date; });
    return visits;
}

std::vector<MeasuredGrowth> measuredGrowth(const Tree& tree, ShootPattern pattern,
                                           const Place& place)
{
    std::vector<MeasuredGrowth> all;
    Follower<HeadroomRecord, double> strips(MeasuredAt::strip, undersideShare(tree), pattern, place,
                                            tree.leafDates);
    Follower<TipRecord, Vec3> tips(MeasuredAt::tip, 1.0, pattern, place, tree.leafDates);
    for (const auto* visit : visitsByDate(tree)) {
        strips.follow(*visit, visit->headroom, all);
        tips.follow(*visit, visit->tips, all);
    }
    return all;
}

std::optional<LeftOver> leftOver(const Tree& tree, const std::string& strip, year_month_day date)
{
    std::optional<LeftOver> left;
    for (const auto* visit : visitsByDate(tree)) {
        if (visit->date > date)
            break;
        const auto record = std::ranges::find(visit->headroom, strip, &HeadroomRecord::strip);
        if (record == visit->headroom.end()) {
            if (!visit->cuts.empty())
                left.reset();
            continue;
        }
        const auto height = leftAt(*visit, *record);
        left = height ? std::optional(LeftOver{visit->date, *height}) : std::nullopt;
    }
    return left;
}

} // namespace model::growth
