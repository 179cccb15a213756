#include "app/command/help_words.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace app {
namespace {

// What CLI11 puts in by itself or what the options want, none of it with letters of two bytes: they
// would shift the columns.
constexpr std::array kLabels = {
    QT_TRANSLATE_NOOP("Help", "Usage"),
    QT_TRANSLATE_NOOP("Help", "OPTIONS"),
    QT_TRANSLATE_NOOP("Help", "COMMAND"),
    QT_TRANSLATE_NOOP("Help", "(needed)"),
    QT_TRANSLATE_NOOP("Help", "Garden"),
    QT_TRANSLATE_NOOP("Help", "Needs"),
    QT_TRANSLATE_NOOP("Help", "Excludes"),
    QT_TRANSLATE_NOOP("Help", "CODE"),
    QT_TRANSLATE_NOOP("Help", "CUT"),
    QT_TRANSLATE_NOOP("Help", "DATE"),
    QT_TRANSLATE_NOOP("Help", "DEGREES"),
    QT_TRANSLATE_NOOP("Help", "FILE"),
    QT_TRANSLATE_NOOP("Help", "FOLDER"),
    QT_TRANSLATE_NOOP("Help", "GUST"),
    QT_TRANSLATE_NOOP("Help", "LENGTH"),
    QT_TRANSLATE_NOOP("Help", "LIMB"),
    QT_TRANSLATE_NOOP("Help", "MONTH"),
    QT_TRANSLATE_NOOP("Help", "NAME"),
    QT_TRANSLATE_NOOP("Help", "NUMBER"),
    QT_TRANSLATE_NOOP("Help", "PAPER"),
    QT_TRANSLATE_NOOP("Help", "PLANTING=HOURS"),
    QT_TRANSLATE_NOOP("Help", "PLANTING=MOL"),
    QT_TRANSLATE_NOOP("Help", "SHARE"),
    QT_TRANSLATE_NOOP("Help", "SPEED"),
    QT_TRANSLATE_NOOP("Help", "STRIP=HEIGHTS"),
    QT_TRANSLATE_NOOP("Help", "TABLE"),
    QT_TRANSLATE_NOOP("Help", "TEMPERATURE"),
    QT_TRANSLATE_NOOP("Help", "TEXT"),
    QT_TRANSLATE_NOOP("Help", "THICKNESS"),
    QT_TRANSLATE_NOOP("Help", "TIME"),
    QT_TRANSLATE_NOOP("Help", "TIP"),
    QT_TRANSLATE_NOOP("Help", "UNITS"),
    QT_TRANSLATE_NOOP("Help", "Options"),
    QT_TRANSLATE_NOOP("Help", "Commands"),
};

std::string spoken(const std::string& english)
{
    return english.empty() ? english
                           : QCoreApplication::translate("Help", english.c_str()).toStdString();
}

/// "UNITS:{metric,uk,us}": the words that may be typed are the same in every language.
std::string spokenType(const std::string& type)
{
    const auto end = std::min(type.find(':'), type.size());
    return spoken(type.substr(0, end)) + type.substr(end);
}

void translateTexts(CLI::App& app)
{
    const auto formatter = app.get_formatter();
    app.description(spoken(app.get_description()));
    app.footer(spoken(app.get_footer()));
    app.group(spoken(app.get_group()));
    for (CLI::Option* option : app.get_options()) {
        option->description(spoken(option->get_description()));
        option->group(spoken(option->get_group()));
        formatter->label(option->get_type_name(), spokenType(option->get_type_name()));
    }
}

} // namespace

void translateHelp(CLI::App& app)
{
    translateTexts(app);
    for (CLI::App* command : app.get_subcommands([](CLI::App*) { return true; }))
        translateTexts(*command);
    for (const char* label : kLabels)
        app.get_formatter()->label(label, spoken(label));
    for (const char* key : {"Positionals", "SUBCOMMAND", "REQUIRED"})
        app.get_formatter()->label(key, spoken(app.get_formatter()->get_label(key)));
}

} // namespace app
