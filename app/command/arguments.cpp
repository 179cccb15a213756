#include "app/command/arguments.hpp"

#include "app/words/fault_words.hpp"
#include "app/words/wording.hpp"
#include "model/document/limits.hpp"

#include <QDate>
#include <QLocale>
#include <QStringList>

namespace app {
namespace {

constexpr int kFirstYear = 2000;
constexpr int kLastYear = 2100;

[[noreturn]] void refuse(const std::string& option, const std::string& found,
                         const std::string& expected)
{
    throw Refusal(option + ": found " + model::inQuotes(found) + ", expected " + expected);
}

template <class Thing>
bool isCalled(const Thing& thing, const std::string& wanted)
{
    return app::isCalled(thing.name, thing.id, wanted);
}

template <class Things>
QStringList namesOf(const Things& things)
{
    QStringList names;
    for (const auto& thing : things)
        names << QString::fromStdString(thing.name.empty() ? thing.id : thing.name);
    return names;
}

/// Id of the one thing with this name or id; empty when nothing was asked for.
template <class Things>
std::string chosen(const char* option, const std::string& wanted, const Things& things)
{
    if (wanted.empty())
        return {};
    std::vector<std::string> matching;
    for (const auto& thing : things)
        if (isCalled(thing, wanted))
            matching.push_back(thing.id);
    if (matching.size() > 1)
        refuse(option, wanted, "a name that only one of them has, or its id");
    if (matching.empty())
        refuse(option, wanted,
               "one of: " + namesOf(things).join(QLatin1String(", ")).toStdString());
    return matching.front();
}

std::string allLimbs(const model::Garden& garden, const std::string& onlyTree)
{
    QStringList trees;
    for (const model::Tree& tree : garden.trees)
        if (onlyTree.empty() || tree.id == onlyTree)
            trees << namesOf(tree.limbs).join(QLatin1String(", "));
    return trees.join(QLatin1String("; ")).toStdString();
}

double airOf(const Arguments& arguments, const Units& units)
{
    constexpr double kColdest_C = -50.0;
    constexpr double kHottest_C = 60.0;
    if (arguments.air.empty())
        return model::load::kStandardAir_C;
    const auto air_C = units.parseTemperature_C(QString::fromStdString(arguments.air));
    if (!air_C || !(*air_C >= kColdest_C && *air_C <= kHottest_C))
        refuse("--air", arguments.air, "a temperature such as \"5 C\" or \"41 F\", -50 to 60 C");
    return *air_C;
}

double gustOf(const Arguments& arguments, const Units& units)
{
    const QString text = QString::fromStdString(arguments.gust);
    bool isNumber = false;
    const double number = text.toDouble(&isNumber);
    const auto gust_m_s = isNumber ? std::optional(number) : units.parseSpeed_m_s(text);
    if (!gust_m_s || !(*gust_m_s >= 0.0 && *gust_m_s <= model::limits::kGust_m_s))
        refuse("--gust", arguments.gust,
               "a speed such as \"25 m/s\", \"90 km/h\" or \"56 mph\", up to 100 m/s, or \"force "
               "9\", \"gusts of force 9\", \"strong gale\", \"severe thunderstorm\"");
    return *gust_m_s;
}

} // namespace

std::string refusalLine(const std::string& name, const std::vector<model::Fault>& faults)
{
    QString line = QString::fromStdString(name) + QStringLiteral(": ") + faultLine(faults.front());
    if (faults.size() == 2)
        line += QLatin1Char(' ') + Words::tr("(and 1 more fault)");
    if (faults.size() > 2)
        line += QLatin1Char(' ') + Words::tr("(and %1 more faults)").arg(faults.size() - 1);
    return line.toStdString();
}

Units unitsOf(const Arguments& arguments)
{
    const QLocale locale;
    if (arguments.measures == "metric")
        return {locale, Measures::metric};
    if (arguments.measures == "uk")
        return {locale, Measures::unitedKingdom};
    if (arguments.measures == "us")
        return {locale, Measures::unitedStates};
    return Units(locale);
}

bool isCalled(const std::string& name, const std::string& id, const std::string& wanted)
{
    const auto same = [&](const std::string& one) {
        return QString::fromStdString(one).compare(QString::fromStdString(wanted),
                                                   Qt::CaseInsensitive) == 0;
    };
    return same(id) || same(name);
}

std::chrono::year_month_day dayOf(const char* option, const std::string& text)
{
    const QDate day = QDate::fromString(QString::fromStdString(text), Qt::ISODate);
    if (!day.isValid() || day.year() < kFirstYear || day.year() > kLastYear)
        refuse(option, text, "a day such as 2025-07-14, from 2000 to 2100");
    return std::chrono::year(day.year()) / day.month() / day.day();
}

std::chrono::year_month_day dateOf(const Arguments& arguments)
{
    const QDate today = QDate::currentDate();
    return arguments.date.empty() ? std::chrono::year(today.year()) / today.month() / today.day()
                                  : dayOf("--date", arguments.date);
}

model::Question questionOf(const Arguments& arguments, const model::Garden& garden,
                           const Units& units)
{
    model::Question question{.date = dateOf(arguments)};
    question.air_C = airOf(arguments, units);
    question.inRain = arguments.rain;
    question.glaze_m = glazeOf(arguments, units);
    if (arguments.gust.empty())
        return question;
    question.forecast = model::load::forecastGust(arguments.gust, garden.place.timeZone);
    question.gust_m_s = question.forecast ? question.forecast->gust_m_s : gustOf(arguments, units);
    return question;
}

std::optional<std::chrono::month> monthOf(const Arguments& arguments)
{
    if (arguments.month.empty())
        return std::nullopt;
    const QString text = QString::fromStdString(arguments.month).trimmed();
    const auto isName = [&](const QLocale& locale, int month) {
        for (const auto format : {QLocale::LongFormat, QLocale::ShortFormat})
            for (const auto& name :
                 {locale.monthName(month, format), locale.standaloneMonthName(month, format)})
                if (name.compare(text, Qt::CaseInsensitive) == 0)
                    return true;
        return false;
    };
    for (int month = 1; month <= 12; ++month)
        if (text == QString::number(month) || isName(QLocale(QLocale::English), month) ||
            isName(QLocale(), month))
            return std::chrono::month{static_cast<unsigned>(month)};
    refuse("--month", arguments.month, "a month such as 7 or July");
}

double glazeOf(const Arguments& arguments, const Units& units)
{
    constexpr double kMost_m = 0.1;
    constexpr double kMillimetre_m = 0.001;
    if (arguments.ice.empty())
        return 0.0;
    const QString text = QString::fromStdString(arguments.ice);
    bool isNumber = false;
    const double number = text.toDouble(&isNumber);
    const auto glaze_m =
        isNumber ? std::optional(number * kMillimetre_m) : units.parseLength_m(text);
    if (!glaze_m || !(*glaze_m >= 0.0 && *glaze_m <= kMost_m))
        refuse("--ice", arguments.ice, "a thickness such as \"12 mm\" or \"0.5 in\", up to 100 mm");
    return *glaze_m;
}

double spareOf(const Arguments& arguments, const Units& units)
{
    if (arguments.spare.empty())
        return 0.0;
    constexpr double kMost_m = 10.0;
    const auto spare_m = units.parseLength_m(QString::fromStdString(arguments.spare));
    if (!spare_m || !(*spare_m >= 0.0 && *spare_m <= kMost_m))
        refuse("--spare", arguments.spare, "a length such as \"30 cm\" or \"1 ft\", up to 10 m");
    return *spare_m;
}

namespace {

double shareOf(const char* option, const std::string& text, const Units& units, double most)
{
    const auto share = units.parseShare(QString::fromStdString(text));
    if (!share || !(*share > 0.0 && *share <= most))
        refuse(option, text, "a share such as \"15 %\"");
    return *share;
}

/// How an option that asks for light is written.
struct LightOption {
    const char* name;
    model::GoalKind kind;
    double most;
    const char* expected;
};
constexpr LightOption kSunOption{"--sun", model::GoalKind::light, 24.0,
                                 "hours of sun a day after the =, such as \"hedge=4\""};
constexpr LightOption kDliOption{"--dli", model::GoalKind::dli, 100.0,
                                 "mol/m2 of light a day after the =, such as \"bed=12\""};

model::Goal lightGoal(const LightOption& option, const std::string& text,
                      const model::Garden& garden)
{
    const auto equals = text.rfind('=');
    model::Goal goal{option.kind, model::Want::must, {}, {}, {}, {}};
    goal.subject = chosen(option.name, text.substr(0, equals), garden.plantings);
    if (equals == std::string::npos)
        return goal;
    bool isNumber = false;
    goal.value = QString::fromStdString(text.substr(equals + 1)).toDouble(&isNumber);
    if (!isNumber || !(*goal.value >= 0.0 && *goal.value <= option.most))
        refuse(option.name, text, option.expected);
    return goal;
}

double borneGust(const std::string& text, const Units& units)
{
    const auto gust_m_s = units.parseSpeed_m_s(QString::fromStdString(text));
    if (!gust_m_s || !(*gust_m_s > 0.0 && *gust_m_s <= model::limits::kGust_m_s))
        refuse("--bear", text, "a speed such as \"25 m/s\", \"90 km/h\" or \"56 mph\"");
    return *gust_m_s;
}

} // namespace

model::advice::DayWeather weatherOf(const Arguments& arguments, const Units& units)
{
    model::advice::DayWeather weather;
    if (!arguments.gust.empty())
        weather.gust_m_s = gustOf(arguments, units);
    if (!arguments.air.empty())
        weather.air_C = airOf(arguments, units);
    if (!arguments.humidity.empty())
        weather.humidity = shareOf("--humidity", arguments.humidity, units, 1.0);
    return weather;
}

std::vector<model::Goal> goalsOf(const Arguments& arguments, const Units& units,
                                 const model::Garden& garden)
{
    using model::GoalKind;
    using model::Want;
    std::vector<model::Goal> goals;
    if (!arguments.relief.empty())
        goals.push_back({GoalKind::relief,
                         Want::must,
                         {},
                         shareOf("--relief", arguments.relief, units, 10.0),
                         {},
                         {}});
    if (!arguments.bear.empty())
        goals.push_back({GoalKind::gust, Want::must, {}, borneGust(arguments.bear, units), {}, {}});
    for (const auto& text : arguments.sun)
        goals.push_back(lightGoal(kSunOption, text, garden));
    for (const auto& text : arguments.dli)
        goals.push_back(lightGoal(kDliOption, text, garden));
    for (const auto& limb : arguments.keep)
        goals.push_back({GoalKind::keep, Want::must, limb, {}, {}, {}});
    for (const auto& limb : arguments.lose)
        goals.push_back({GoalKind::lose, Want::must, limb, {}, {}, {}});
    if (arguments.openCentre)
        goals.push_back({GoalKind::openCentre, Want::must, {}, {}, {}, {}});
    if (!arguments.leaf.empty())
        goals.push_back({GoalKind::leaf,
                         Want::must,
                         {},
                         shareOf("--leaf", arguments.leaf, units, 1.0),
                         {},
                         {}});
    return goals;
}

std::string treeOf(const Arguments& arguments, const model::Garden& garden)
{
    return chosen("--tree", arguments.tree, garden.trees);
}

std::string plantingOf(const Arguments& arguments, const model::Garden& garden)
{
    return chosen("--planting", arguments.planting, garden.plantings);
}

ChosenLimb limbOf(const Arguments& arguments, const model::Garden& garden)
{
    const std::string onlyTree = treeOf(arguments, garden);
    std::vector<ChosenLimb> matching;
    for (const model::Tree& tree : garden.trees)
        for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb)
            if ((onlyTree.empty() || tree.id == onlyTree) &&
                isCalled(tree.limbs[limb], arguments.explain))
                matching.push_back({tree.id, limb});
    if (matching.size() > 1)
        refuse("--explain", arguments.explain,
               "a limb's name that only one limb has, or its id, with --tree if trees share it");
    if (matching.empty())
        refuse("--explain", arguments.explain, "one of: " + allLimbs(garden, onlyTree));
    return matching.front();
}

} // namespace app
