#include "app/command/command_line.hpp"

#include "app/command/application.hpp"
#include "app/command/help_words.hpp"
#include "app/command/verbs.hpp"
#include "app/document/garden_input.hpp"
#include "app/language/language.hpp"

#include <QCoreApplication>
#include <QFile>

#include <algorithm>
#include <array>
#include <memory>

namespace app {
namespace {

constexpr const char* kAbout = QT_TRANSLATE_NOOP(
    "Help",
    "Underbough: what may I cut from my trees, where, how much, when, and who should do it?\n"
    "It works from a sketch of your garden, on your own computer.");

constexpr const char* kExamples = QT_TRANSLATE_NOOP(
    "Help", "Examples:\n"
            "  underbough                                   open the window\n"
            "  underbough garden.underbough                 open the window on your garden\n"
            "  underbough check garden.underbough           is anything wrong with the file?\n"
            "  underbough assess garden.json                the whole answer, to read\n"
            "  underbough assess garden.json --tree maple --gust \"110 km/h\"\n"
            "  underbough suggest garden.json --units us    only what to cut, in feet and pounds\n"
            "  underbough assess garden.json --json         the same for a program (SI units)\n"
            "  underbough due garden.json                   what is due, and when\n"
            "  underbough diary garden.json --add --cut plan --by me\n"
            "                                               write today's visit into the file\n"
            "  underbough report garden.json -o work.pdf    a work sheet to carry outside\n"
            "\n"
            "The answers are estimates from a sketch. They never say that a tree is safe.\n"
            "\"underbough assess --help\" tells more about one command.\n"
            "\n"
            "Exit status: 0 fine, 2 input that can't be used, 1 only with --fail-on-attention.");

/// The command line as CLI11 knows it, and what was typed.
class CommandLine {
public:
    CommandLine()
    {
        app_.set_help_flag("-h,--help", QT_TRANSLATE_NOOP("Help", "Show this help"));
        app_.set_version_flag("--version", "underbough " UNDERBOUGH_VERSION,
                              QT_TRANSLATE_NOOP("Help", "Show the version"));
        labels();
        app_.footer(kExamples);
        app_.require_subcommand(0, 1);
        app_.add_option("GARDEN", windowGarden_,
                        QT_TRANSLATE_NOOP("Help", "A garden file to open in the window"))
            ->type_name("FILE");
        Verbs verbs(app_, arguments_, verb_);
        verbs.addLanguage(&app_);
        addAnswers(verbs);
        addDiary(verbs);
        addFileVerbs(verbs);
        addReport(verbs);
        addDay(verbs);
        addSun(verbs);
    }

    /// \throws CLI::ParseError
    void parse(const QStringList& typed)
    {
        std::vector<std::string> reversed; // as CLI11 wants them
        for (const QString& word : typed)
            reversed.insert(reversed.begin(), word.toStdString());
        app_.parse(std::move(reversed));
    }

    /// In the language asked for on the same line, else the system's.
    [[nodiscard]] std::string help()
    {
        const Application application(Application::For::words, localeOf(languageAsked()));
        translateHelp(app_);
        const auto chosen = app_.get_subcommands();
        return chosen.empty() ? app_.help() : chosen.front()->help(app_.get_name());
    }
    [[nodiscard]] std::string version() const { return app_.version(); }
    [[nodiscard]] std::string chosenVerb() const
    {
        const auto chosen = app_.get_subcommands();
        return chosen.empty() ? std::string() : chosen.front()->get_name();
    }
    [[nodiscard]] Verb verb() const { return verb_; }
    [[nodiscard]] const Arguments& arguments() const { return arguments_; }
    [[nodiscard]] const std::string& windowGarden() const { return windowGarden_; }

private:
    /// CLI11 stops at --help, before it fills in the arguments.
    [[nodiscard]] QString languageAsked() const
    {
        for (const CLI::App* app : app_.get_subcommands())
            if (const auto asked = languageOf(*app); !asked.isEmpty())
                return asked;
        return languageOf(app_);
    }
    static QString languageOf(const CLI::App& app)
    {
        const auto* option = app.get_option_no_throw("--language");
        return option && option->count() > 0 ? QString::fromStdString(option->results().front())
                                             : QString();
    }

    /// Plainer words than the library's own, for people who don't write programs.
    void labels()
    {
        const auto formatter = app_.get_formatter();
        formatter->label("Positionals", "Garden");
        formatter->label("SUBCOMMAND", "COMMAND");
        formatter->label("REQUIRED", "(needed)");
    }

    CLI::App app_{kAbout, "underbough"};
    Arguments arguments_;
    std::string windowGarden_;
    Verb verb_{};
};

std::string inOneLine(std::string text)
{
    std::ranges::replace(text, '\n', ' ');
    return text;
}

std::string endedByNewline(std::string text)
{
    if (!text.ends_with('\n'))
        text += '\n';
    return text;
}

int refuse(Streams streams, const std::string& line)
{
    streams.err << inOneLine(line) << '\n';
    return kUnusable;
}

int runVerb(const CommandLine& line, const std::function<model::Tables()>& loadTables,
            Streams streams)
{
    const Application application(line.verb() == &reportCommand ? Application::For::drawings
                                                                : Application::For::words,
                                  localeOf(QString::fromStdString(line.arguments().language)));
    try {
        const model::Tables tables = line.verb() == &sunCommand || line.verb() == &dayCommand
                                         ? model::Tables{}
                                         : loadTables();
        const int status = line.verb()({line.arguments(), tables, streams});
        streams.out.flush();
        return streams.out ? status : refuse(streams, "underbough: the answer can't be written");
    } catch (const Refusal& refusal) {
        return refuse(streams, refusal.what());
    }
}

CommandResult windowOn(const CommandLine& line, Streams streams)
{
    const std::string& garden = line.windowGarden();
    const QString file = QString::fromStdString(garden);
    if (!garden.empty() && !QFile::exists(file))
        return {refuse(streams, model::inQuotes(garden) +
                                    ": found neither a command nor a file of that name; "
                                    "\"underbough --help\" lists the commands"),
                std::nullopt,
                {}};
    return {kFine, file, QString::fromStdString(line.arguments().language)};
}

} // namespace

model::Garden gardenOf(const Job& job)
{
    GardenInput input = readGardenInput(job.arguments.garden, job.tables, job.streams.in);
    if (!input.garden)
        throw Refusal(refusalLine(input.name, input.faults));
    return std::move(*input.garden);
}

int statusOf(const Job& job, bool attention)
{
    return attention && job.arguments.failOnAttention ? kAttention : kFine;
}

CommandResult runCommandLine(const QStringList& arguments,
                             const std::function<model::Tables()>& loadTables, Streams streams)
{
    CommandLine line;
    try {
        line.parse(arguments);
    } catch (const CLI::CallForHelp&) {
        streams.out << endedByNewline(line.help());
        return {kFine, std::nullopt, {}};
    } catch (const CLI::CallForVersion&) {
        streams.out << line.version() << '\n';
        return {kFine, std::nullopt, {}};
    } catch (const CLI::ParseError& error) {
        const std::string verb = line.chosenVerb();
        const std::string command = verb.empty() ? "underbough" : "underbough " + verb;
        return {refuse(streams, command + ": " + error.what() + "; \"" + command +
                                    " --help\" shows how it is used"),
                std::nullopt,
                {}};
    }
    if (!line.verb())
        return windowOn(line, streams);
    return {runVerb(line, loadTables, streams), std::nullopt, {}};
}

} // namespace app
