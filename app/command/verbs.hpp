#pragma once

#include "app/command/commands.hpp"

#include <CLI/CLI.hpp>

namespace app {

/// What a command of the command line runs.
using Verb = int (*)(const Job&);

/// An option with what to type behind it ("GUST") and its line of help.
template <typename Value>
CLI::Option* option(CLI::App* of, const char* name, Value& value, const char* type,
                    const char* help)
{
    return of->add_option(name, value, help)->type_name(type);
}

/// The commands as CLI11 knows them, with the options that several share.
class Verbs {
public:
    /// All outlive the Verbs and what they add. \param chosen  set to what was typed
    Verbs(CLI::App& app, Arguments& arguments, Verb& chosen);

    [[nodiscard]] Arguments& arguments() { return arguments_; }

    CLI::App* add(const char* name, const char* about, Verb run);
    /// One that reads a garden and can answer in JSON.
    CLI::App* addOnGarden(const char* name, const char* about, Verb run);

    /// The file that it reads, typed without a name of an option.
    void addGarden(CLI::App* command);
    /// The measures and the language of the answer.
    void addMeasures(CLI::App* command);
    void addLanguage(CLI::App* command);
    void addTree(CLI::App* command);
    void addDate(CLI::App* command);

private:
    CLI::App& app_;
    Arguments& arguments_;
    Verb& chosen_;
};

/// assess, suggest, headroom, light, check.
void addAnswers(Verbs& verbs);
/// diary, due, calendar.
void addDiary(Verbs& verbs);
/// export, import, recover.
void addFileVerbs(Verbs& verbs);
void addReport(Verbs& verbs);
void addDay(Verbs& verbs);
void addSun(Verbs& verbs);

} // namespace app
