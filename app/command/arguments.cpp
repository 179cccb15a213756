#include "app/command/arguments.hpp"

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
    throw Refusal(option + ": found " + model::quoted(found) + ", expected " + expected);
}

bool isCalled(const model::Tree& tree, const QString& wanted)
{
    const auto same = [&](const std::string& name) {
        return QString::fromStdString(name).compare(wanted, Qt::CaseInsensitive) == 0;
    };
    return same(tree.id) || same(tree.name);
}

std::string allTrees(const model::Garden& garden)
{
    QStringList names;
    for (const model::Tree& tree : garden.trees)
        names << QString::fromStdString(tree.name.empty() ? tree.id : tree.name);
    return names.join(QLatin1String(", ")).toStdString();
}

} // namespace

std::string refusalLine(const std::string& name, const std::vector<model::Fault>& faults)
{
    std::string line = name + ": " + oneLine(faults.front());
    if (faults.size() == 2)
        line += " (and 1 more fault)";
    if (faults.size() > 2)
        line += " (and " + std::to_string(faults.size() - 1) + " more faults)";
    return line;
}

Units unitsOf(const Arguments& arguments)
{
    const QLocale locale = QLocale::system();
    if (arguments.measures == "metric")
        return {locale, Measures::metric};
    if (arguments.measures == "uk")
        return {locale, Measures::unitedKingdom};
    if (arguments.measures == "us")
        return {locale, Measures::unitedStates};
    return Units(locale);
}

std::chrono::year_month_day dateOf(const Arguments& arguments)
{
    const QDate day = arguments.date.empty()
                          ? QDate::currentDate()
                          : QDate::fromString(QString::fromStdString(arguments.date), Qt::ISODate);
    if (!day.isValid() || day.year() < kFirstYear || day.year() > kLastYear)
        refuse("--date", arguments.date, "a day such as 2025-07-14, from 2000 to 2100");
    return std::chrono::year(day.year()) / day.month() / day.day();
}

std::optional<double> gustOf(const Arguments& arguments, const Units& units)
{
    if (arguments.gust.empty())
        return std::nullopt;
    const QString text = QString::fromStdString(arguments.gust);
    bool isNumber = false;
    const double number = text.toDouble(&isNumber);
    const auto gust_m_s = isNumber ? std::optional(number) : units.parseSpeed_m_s(text);
    if (!gust_m_s || !(*gust_m_s >= 0.0 && *gust_m_s <= model::limits::kGust_m_s))
        refuse("--gust", arguments.gust,
               "a speed such as \"25 m/s\", \"90 km/h\" or \"56 mph\", up to 100 m/s");
    return gust_m_s;
}

std::string treeOf(const Arguments& arguments, const model::Garden& garden)
{
    if (arguments.tree.empty())
        return {};
    std::vector<std::string> matching;
    for (const model::Tree& tree : garden.trees)
        if (isCalled(tree, QString::fromStdString(arguments.tree)))
            matching.push_back(tree.id);
    if (matching.size() > 1)
        refuse("--tree", arguments.tree, "a name that only one tree has, or its id");
    if (matching.empty())
        refuse("--tree", arguments.tree, "one of: " + allTrees(garden));
    return matching.front();
}

} // namespace app
