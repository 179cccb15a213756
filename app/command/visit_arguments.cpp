#include "app/command/visit_arguments.hpp"

#include "model/document/words.hpp"

#include <algorithm>

namespace app {
namespace {

using model::Cut;
using model::CutKind;

[[noreturn]] void refuse(const char* option, const std::string& found, const std::string& expected)
{
    throw Refusal(std::string(option) + ": found " + model::inQuotes(found) + ", expected " +
                  expected);
}

/// "limb=2.1 m" in two; `second` is empty without the sign.
std::pair<std::string, std::string> splitAt(const std::string& text, const char* sign)
{
    const auto at = text.rfind(sign);
    if (at == std::string::npos)
        return {text, {}};
    return {text.substr(0, at), text.substr(at + std::string(sign).size())};
}

double lengthOf(const char* option, const std::string& text, const std::string& whole,
                const Units& units)
{
    const auto length = units.parseLength_m(QString::fromStdString(text));
    if (!length || !(*length >= 0.0 && *length <= 120.0))
        refuse(option, whole, "a length such as \"2.1 m\" or \"7 ft\" after the =");
    return *length;
}

/// Id of the limb that is called so, else the words themselves: it may be gone.
std::string limbCalled(const model::Tree& tree, const std::string& name)
{
    for (const auto& limb : tree.limbs)
        if (isCalled(limb.name, limb.id, name))
            return limb.id;
    return name;
}

Cut freeCut(const std::string& text, const model::Tree& tree, const Units& units)
{
    const auto colon = text.find(':');
    const auto kind = model::fromWord<CutKind>(text.substr(0, colon));
    if (colon == std::string::npos || !kind)
        refuse("--cut", text,
               "plan, the number of a cut of the plan, or one such as \"removal:old limb\", "
               "\"reduction:limb=1.5 m\", \"thinning:limb=20 %\", \"renewal:limb=20 %\", "
               "\"lifting:limb=2.1 m\"");
    const auto [limb, amount] = splitAt(text.substr(colon + 1), "=");
    if (limb.empty())
        refuse("--cut", text, "the name of a limb after the colon");
    Cut cut;
    cut.kind = *kind;
    cut.limb = limbCalled(tree, limb);
    if (*kind == CutKind::reduction)
        cut.at_m = lengthOf("--cut", amount, text, units);
    if (*kind == CutKind::lifting && !amount.empty())
        cut.height_m = lengthOf("--cut", amount, text, units);
    if ((*kind == CutKind::thinning || *kind == CutKind::renewal) && !amount.empty()) {
        cut.share = units.parseShare(QString::fromStdString(amount));
        if (!cut.share || !(*cut.share >= 0.0 && *cut.share <= 1.0))
            refuse("--cut", text, "a share such as \"20 %\" after the =");
    }
    return cut;
}

/// The cuts typed, and what the plan says they take; blank once a free one is among them.
struct Typed {
    std::vector<Cut> cuts;
    std::vector<Cut> left;
    std::optional<double> leafShare{0.0};
};

Typed typedCuts(const Arguments& arguments, const model::Tree& tree,
                const model::advice::Suggestion& plan, const Units& units)
{
    Typed typed;
    std::vector<bool> made(plan.cuts.size());
    const auto make = [&](std::size_t index) {
        if (made[index])
            return;
        made[index] = true;
        typed.cuts.push_back(plan.cuts[index].cut);
        if (typed.leafShare)
            *typed.leafShare += plan.cuts[index].leafShare;
    };
    bool ofPlan = false;
    for (const auto& text : arguments.cuts) {
        bool isNumber = false;
        const auto number = QString::fromStdString(text).toUInt(&isNumber);
        ofPlan = ofPlan || isNumber || text == "plan";
        if (isNumber && (number < 1 || number > plan.cuts.size()))
            refuse("--cut", text,
                   "the number of one of the plan's " + std::to_string(plan.cuts.size()) +
                       " cuts on that day");
        if (isNumber)
            make(number - 1);
        else if (text == "plan")
            for (std::size_t i = 0; i < plan.cuts.size(); ++i)
                make(i);
        else {
            typed.cuts.push_back(freeCut(text, tree, units));
            typed.leafShare.reset();
        }
    }
    for (std::size_t i = 0; ofPlan && i < made.size(); ++i)
        if (!made[i])
            typed.left.push_back(plan.cuts[i].cut);
    if (typed.cuts.empty())
        typed.leafShare.reset();
    return typed;
}

model::HeadroomRecord headroomOf(const std::string& text, const model::Garden& garden,
                                 const Units& units)
{
    const auto [name, heights] = splitAt(text, "=");
    const auto strip = std::ranges::find_if(
        garden.strips, [&](const auto& s) { return isCalled(s.name, s.id, name); });
    if (strip == garden.strips.end() || heights.empty())
        refuse("--headroom", text,
               "a strip of the garden and its heights, such as \"path=1.9 m..2.4 m\" (before and "
               "after) or \"path=1.9 m\" (before)");
    const auto [before, after] = splitAt(heights, "..");
    model::HeadroomRecord record;
    record.strip = strip->id;
    if (!before.empty())
        record.before_m = lengthOf("--headroom", before, text, units);
    if (!after.empty())
        record.after_m = lengthOf("--headroom", after, text, units);
    return record;
}

/// "1.2 m,0.4 m,3.1 m": east, north and up.
model::Vec3 placeOf(const QString& places, const std::string& whole, const Units& units)
{
    const QStringList parts = places.split(QLatin1Char(','));
    std::vector<double> lengths;
    for (const QString& part : parts)
        if (const auto length = units.parseLength_m(part))
            lengths.push_back(*length);
    if (parts.size() != 3 || lengths.size() != 3)
        refuse("--tip", whole,
               "a limb that is drawn, or its name and three lengths such as "
               "\"north limb=1.2 m,0.4 m,3.1 m\": east, north and up from the tree's base");
    return {lengths[0], lengths[1], lengths[2]};
}

model::TipRecord tipOf(const std::string& text, const model::Tree& tree, const Units& units)
{
    const auto [name, place] = splitAt(text, "=");
    model::TipRecord record;
    record.limb = limbCalled(tree, name);
    const auto index = model::limbIndex(tree, record.limb);
    if (!place.empty() || index == model::kNoLimb)
        record.before_m = placeOf(QString::fromStdString(place), text, units);
    else
        record.before_m = tree.limbs[index].stations.back().position_m;
    return record;
}

std::optional<model::VisitWeather> visitWeather(const Arguments& arguments, const Units& units)
{
    const auto weather = weatherOf(arguments, units);
    if (!weather.air_C && !weather.humidity && !weather.gust_m_s)
        return std::nullopt;
    model::VisitWeather noted;
    noted.air_C = weather.air_C;
    noted.humidity = weather.humidity;
    noted.gust_m_s = weather.gust_m_s;
    return noted;
}

} // namespace

model::Visit visitOf(const Arguments& arguments, const Units& units, const model::Garden& garden,
                     const model::Tree& tree, const model::advice::Suggestion& plan)
{
    model::Visit visit;
    visit.date = dateOf(arguments);
    visit.by = arguments.by;
    auto typed = typedCuts(arguments, tree, plan, units);
    visit.cuts = std::move(typed.cuts);
    visit.left = std::move(typed.left);
    visit.leafShare = typed.leafShare;
    if (!arguments.leaf.empty()) {
        visit.leafShare = units.parseShare(QString::fromStdString(arguments.leaf));
        if (!visit.leafShare || !(*visit.leafShare >= 0.0 && *visit.leafShare <= 1.0))
            refuse("--leaf", arguments.leaf, "a share such as \"15 %\"");
    }
    for (const auto& text : arguments.headroom)
        visit.headroom.push_back(headroomOf(text, garden, units));
    for (const auto& text : arguments.tips)
        visit.tips.push_back(tipOf(text, tree, units));
    visit.weather = visitWeather(arguments, units);
    visit.note = arguments.note;
    if (!arguments.nextDue.empty())
        visit.nextDue = dayOf("--next-due", arguments.nextDue);
    if (visit.nextDue && *visit.nextDue < visit.date)
        refuse("--next-due", arguments.nextDue, "a day after the visit");
    return visit;
}

} // namespace app
