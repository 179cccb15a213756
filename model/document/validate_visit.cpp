#include "model/document/check.hpp"

namespace model {
namespace {

void checkCut(Check& check, const Path& path, const Cut& cut)
{
    check.name(path / "limb", cut.limb, true);
    check.within(path / "at_m", cut.at_m, 0.0, limits::kTreeHeight_m, "metres along the limb");
    if (cut.height_m)
        check.within(path / "height_m", *cut.height_m, 0.0, limits::kTreeHeight_m,
                     "metres above the ground");
    if (cut.share)
        check.within(path / "share", *cut.share, 0.0, 1.0, "a share");
}

void checkHeadroom(Check& check, const Path& path, const HeadroomRecord& record)
{
    check.name(path / "strip", record.strip, true);
    for (const auto& [field, height] :
         {std::pair("before_m", record.before_m), std::pair("after_m", record.after_m)})
        if (height)
            check.within(path / field, *height, 0.0, limits::kTreeHeight_m,
                         "metres above the ground");
}

void checkTipPlace(Check& check, const Path& path, Vec3 place)
{
    constexpr double kReach = limits::kTreeReach_m;
    check.within(path / 0, place.x, -kReach, kReach, "metres east of the tree's base");
    check.within(path / 1, place.y, -kReach, kReach, "metres north of the tree's base");
    check.drawnHeight(path / 2, place.z);
}

void checkTip(Check& check, const Path& path, const TipRecord& record)
{
    check.name(path / "limb", record.limb, true);
    if (record.before_m)
        checkTipPlace(check, path / "before_m", *record.before_m);
    if (record.after_m)
        checkTipPlace(check, path / "after_m", *record.after_m);
}

void checkWeather(Check& check, const Path& path, const VisitWeather& weather)
{
    if (weather.air_C)
        check.within(path / "air_degC", *weather.air_C, -50.0, 60.0, "degrees Celsius");
    if (weather.humidity)
        check.within(path / "humidity", *weather.humidity, 0.0, 1.0, "a share");
    if (weather.gust_m_s)
        check.within(path / "gust_m_s", *weather.gust_m_s, 0.0, limits::kGust_m_s,
                     "metres a second");
}

template <typename Item, typename CheckItem>
void checkAll(Check& check, const Path& path, const std::vector<Item>& items, std::size_t most,
              const char* what, CheckItem checkItem)
{
    check.atMost(path, items.size(), most, what);
    for (std::size_t i = 0; i < items.size(); ++i)
        checkItem(check, path / i, items[i]);
}

/// The limbs by themselves: what they grew from may be drawn otherwise by now.
void checkLimbsBefore(Check& check, const Path& path, const std::vector<Limb>& limbs)
{
    std::set<std::string> ids;
    checkAll(check, path, limbs, limits::kLimbs, "limbs",
             [&ids](Check& c, const Path& limb, const Limb& value) {
                 c.id(limb / "id", value.id, ids);
                 checkLimb(c, limb, value);
             });
}

} // namespace

void checkVisit(Check& check, const Path& path, const Visit& visit)
{
    const bool real = check.date(path / "date", visit.date);
    const auto notBefore = [&](const Path& field, std::chrono::year_month_day date) {
        if (check.date(field, date) && real && date < visit.date)
            check.fault(field, "a day before the visit", "a day after it");
    };
    check.name(path / "by", visit.by, false);
    checkAll(check, path / "cuts", visit.cuts, limits::kCuts, "cuts", checkCut);
    checkAll(check, path / "left", visit.left, limits::kCuts, "cuts", checkCut);
    if (visit.leafShare)
        check.within(path / "leaf_share", *visit.leafShare, 0.0, 1.0, "a share of the leaf");
    checkAll(check, path / "headroom", visit.headroom, limits::kCuts, "records", checkHeadroom);
    checkAll(check, path / "tips", visit.tips, limits::kCuts, "records", checkTip);
    checkAll(check, path / "wounds", visit.wounds, limits::kCuts, "wounds",
             [&](Check& c, const Path& at, const Wound& wound) {
                 c.name(at / "limb", wound.limb, true);
                 c.within(at / "at_m", wound.at_m, 0.0, limits::kTreeHeight_m,
                          "metres along the limb");
                 c.positive(at / "diameter_m", wound.diameter_m, limits::kDiameter_m,
                            "a diameter in metres");
                 if (wound.closed)
                     notBefore(at / "closed", *wound.closed);
             });
    checkLimbsBefore(check, path / "limbs_before", visit.limbsBefore);
    if (visit.weather)
        checkWeather(check, path / "weather", *visit.weather);
    checkAll(check, path / "photos", visit.photos, limits::kPhotos, "photos", checkPhoto);
    check.note(path / "note", visit.note);
    if (visit.nextDue)
        notBefore(path / "next_due", *visit.nextDue);
}

} // namespace model
