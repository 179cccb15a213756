#include "app/view/day_view_model.hpp"

#include "app/words/day_words.hpp"

namespace app {

using model::advice::Severity;

DayViewModel::DayViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace)
{
    // A bare "30" means other wind now.
    connect(&workspace_, &Workspace::unitsChanged, this, &DayViewModel::read);
}

void DayViewModel::setAir(const QString& air)
{
    air_ = air;
    read();
}

void DayViewModel::setHumidity(const QString& humidity)
{
    humidity_ = humidity;
    read();
}

void DayViewModel::setGust(const QString& gust)
{
    gust_ = gust;
    read();
}

void DayViewModel::read()
{
    const auto& units = workspace_.units();
    weather_ = {};
    unread_.clear();
    const auto field = [this](const QString& text, auto parse, double least, double most,
                              const QString& problem) -> std::optional<double> {
        if (text.trimmed().isEmpty())
            return std::nullopt;
        const auto value = parse(text);
        if (value && *value >= least && *value <= most)
            return value;
        unread_ = problem;
        return std::nullopt;
    };
    weather_.air_C = field(
        air_, [&](const QString& text) { return units.parseTemperature_C(text); }, -50.0, 60.0,
        tr("The warmth can't be read: write it such as %1.").arg(airExample()));
    weather_.humidity = field(
        humidity_, [&](const QString& text) { return units.parseShare(text); }, 0.0, 1.0,
        tr("The humidity can't be read: write it such as 55 %."));
    weather_.gust_m_s = field(
        gust_, [&](const QString& text) { return units.parseSpeed_m_s(text); }, 0.0, 100.0,
        tr("The gusts can't be read: write them such as %1.").arg(gustExample()));
    found_ = model::advice::dayCheck(weather_);
    emit changed();
}

QString DayViewModel::airExample() const
{
    return workspace_.units().temperature(24.0);
}

QString DayViewModel::gustExample() const
{
    return workspace_.units().speed(25.0 / 3.6).section(QLatin1String(" ("), 0, 0);
}

QString DayViewModel::headline() const
{
    if (!unread_.isEmpty())
        return unread_;
    if (!weather_.air_C && !weather_.gust_m_s)
        return tr("Write down warmth and gusts as you expect them while you work.");
    if (!weather_.gust_m_s && found_.empty())
        return tr("The warmth does not speak against it. How strong are the gusts?");
    if (!weather_.air_C && found_.empty())
        return tr("The wind does not speak against it. How warm is it in the shade?");
    return dayAnswer(found_);
}

Tone::Value DayViewModel::tone() const
{
    if (!unread_.isEmpty())
        return Tone::Mind;
    if (found_.empty())
        return Tone::Plain;
    return found_.front().severity == Severity::block ? Tone::Grave : Tone::Mind;
}

QStringList DayViewModel::findings() const
{
    QStringList lines;
    for (const auto& finding : found_)
        lines << sentence(finding, workspace_.units());
    return lines;
}

QStringList DayViewModel::checks() const
{
    return {tr("Before every job look for nests, bats and other animals in the tree. If there are "
               "any, wait."),
            tr("Not in rain, thunder or poor light, and never alone."),
            tr("The weather is not the whole of it: who may do the work is told above, and your "
               "local rules come first.")};
}

} // namespace app
