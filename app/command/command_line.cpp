#include "app/command/command_line.hpp"

#include "app/command/commands.hpp"
#include "app/document/garden_input.hpp"

#include <QFile>

#include <CLI/CLI.hpp>

#include <algorithm>

namespace app {
namespace {

using Verb = int (*)(const Job&);

constexpr const char* kAbout =
    "Underbough: what may I cut from my trees, where, how much, when, and who should do it?\n"
    "It works from a sketch of your garden, on your own computer.";

constexpr const char* kCaution =
    "The answers are estimates from a sketch. They never say that a tree is safe.";

constexpr const char* kExamples =
    "Examples:\n"
    "  underbough                                   open the window\n"
    "  underbough garden.json                       open the window on your garden\n"
    "  underbough check garden.json                 is anything wrong with the file?\n"
    "  underbough assess garden.json                the whole answer, to read\n"
    "  underbough assess garden.json --tree maple --gust \"110 km/h\"\n"
    "  underbough suggest garden.json --units us    only what to cut, in feet and pounds\n"
    "  underbough assess garden.json --json         the same for a program (SI units)\n"
    "\n"
    "The answers are estimates from a sketch. They never say that a tree is safe.\n"
    "\"underbough assess --help\" tells more about one command.\n"
    "\n"
    "Exit status: 0 fine, 2 input that can't be used, 1 only with --fail-on-attention.";

/// The command line as CLI11 knows it, and what was typed.
class CommandLine {
public:
    CommandLine()
    {
        app_.set_help_flag("-h,--help", "Show this help");
        app_.set_version_flag("--version", "underbough " UNDERBOUGH_VERSION, "Show the version");
        labels();
        app_.footer(kExamples);
        app_.require_subcommand(0, 1);
        app_.add_option("GARDEN", windowGarden_, "A garden file to open in the window")
            ->type_name("FILE");
        addGardenVerbs();
        addDay();
        addSun();
    }

    /// \throws CLI::ParseError
    void parse(const QStringList& typed)
    {
        std::vector<std::string> reversed; // as CLI11 wants them
        for (const QString& word : typed)
            reversed.insert(reversed.begin(), word.toStdString());
        app_.parse(std::move(reversed));
    }

    [[nodiscard]] std::string help() const
    {
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
    /// Plainer words than the library's own, for people who don't write programs.
    void labels()
    {
        const auto formatter = app_.get_formatter();
        formatter->label("Positionals", "Garden");
        formatter->label("Subcommands", "Commands");
        formatter->label("SUBCOMMAND", "COMMAND");
        formatter->label("REQUIRED", "(needed)");
    }

    CLI::App* addVerb(const char* name, const char* about, Verb run)
    {
        CLI::App* command = app_.add_subcommand(name, about);
        command->set_help_flag("-h,--help", "Show this help");
        command->footer(kCaution);
        command->callback([this, run] { verb_ = run; });
        return command;
    }

    CLI::App* addGardenVerb(const char* name, const char* about, Verb run)
    {
        CLI::App* command = addVerb(name, about, run);
        command->add_option("GARDEN", arguments_.garden, "A garden file, or - for standard input")
            ->required()
            ->type_name("FILE");
        command->add_flag("--json", arguments_.json,
                          "Write JSON for a program instead of text, in SI units\n"
                          "(docs/command-line.md tells its form)");
        return command;
    }

    void addMeasures(CLI::App* command)
    {
        command
            ->add_option("--units", arguments_.measures,
                         "Units to read; uk is metric with wind in mph;\n"
                         "else as your system is set")
            ->check(CLI::IsMember({"metric", "uk", "us"}))
            ->type_name("UNITS");
        command->add_flag("--fail-on-attention", arguments_.failOnAttention,
                          "Exit with status 1 if something needs attention");
    }

    void addTree(CLI::App* command)
    {
        command->add_option("--tree", arguments_.tree, "Only this tree, by its name or id")
            ->type_name("NAME");
    }

    void addDate(CLI::App* command)
    {
        command->add_option("--date", arguments_.date, "The day, such as 2025-07-14; else today")
            ->type_name("DATE");
    }

    void addGardenVerbs()
    {
        auto* assess = addGardenVerb(
            "assess", "All of it: headroom, loads, sun, what to cut, who cuts", &assessCommand);
        assess
            ->add_option("--gust", arguments_.gust,
                         "Gust as forecasts give it: \"90 km/h\", \"56 mph\",\n"
                         "25 (m/s), \"force 9\", \"gusts of force 9\",\n"
                         "\"severe thunderstorm\"; else the garden's own")
            ->type_name("GUST");
        assess
            ->add_option("--air", arguments_.air,
                         "Temperature of the air in that gust: \"5 C\", \"41 F\";\n"
                         "else 15 C. Cold air presses harder")
            ->type_name("DEGREES");
        assess
            ->add_option("--explain", arguments_.explain,
                         "Only this limb, by its name or id: every step from wind\n"
                         "and weight to its figures, with formulas and sources")
            ->type_name("LIMB");
        assess->add_flag("--rain", arguments_.rain, "Loads with leaf and twigs wet");
        assess
            ->add_option("--ice", arguments_.ice,
                         "Loads with glaze ice this thick all round:\n"
                         "\"12 mm\", \"0.5 in\"; else none")
            ->type_name("THICKNESS");
        auto* suggest =
            addGardenVerb("suggest", "What to cut for headroom, and who does it", &suggestCommand);
        auto* headroom =
            addGardenVerb("headroom", "Headroom over each strip of ground", &headroomCommand);
        auto* light = addGardenVerb("light", "A year of light on each planting, and who takes it",
                                    &lightCommand);
        light
            ->add_option("--month", arguments_.month,
                         "One month in place of the growing season: 7, July")
            ->type_name("MONTH");
        light
            ->add_option("--planting", arguments_.planting, "Only this planting, by its name or id")
            ->type_name("NAME");
        addGardenVerb("check", "Is anything wrong with a garden file?", &checkCommand);
        suggest
            ->add_option("--spare", arguments_.spare,
                         "Headroom beyond what is needed, to be grown into,\n"
                         "such as \"30 cm\" or \"1 ft\"")
            ->type_name("LENGTH");
        suggest
            ->add_option("--relief", arguments_.relief,
                         "Relieve every limb to this share of its expected strength\n"
                         "at the garden's gust, such as \"80 %\"")
            ->type_name("SHARE");
        suggest
            ->add_option("--sun", arguments_.sun,
                         "Give a planting so many hours of sun a day, such as\n"
                         "hedge=4; without a number: what its plant needs")
            ->type_name("PLANTING=HOURS");
        suggest->add_option("--keep", arguments_.keep, "A limb that stays, by its id")
            ->type_name("LIMB");
        suggest->add_option("--lose", arguments_.lose, "A limb that goes, by its id")
            ->type_name("LIMB");
        suggest->add_option("--leaf", arguments_.leaf, "Take no more of the leaf, such as \"15 %\"")
            ->type_name("SHARE");
        for (CLI::App* command : {assess, suggest, headroom})
            addTree(command);
        for (CLI::App* command : {assess, suggest, light})
            addDate(command);
        for (CLI::App* command : {assess, suggest, headroom, light})
            addMeasures(command);
    }

    void addSun()
    {
        CLI::App* sun = addVerb("sun", "Where the sun stands, as JSON", &sunCommand);
        sun->add_option("--lat", arguments_.latitude_deg, "Latitude in degrees, north positive")
            ->required()
            ->type_name("DEGREES");
        sun->add_option("--lon", arguments_.longitude_deg, "Longitude in degrees, east positive")
            ->required()
            ->type_name("DEGREES");
        sun->add_option("--at", arguments_.at,
                        "When, such as 2025-06-21T14:30:00+02:00; without a zone\n"
                        "UTC is meant; else now")
            ->type_name("TIME");
        sun->add_flag("--json", arguments_.json, "JSON, which it writes anyway");
        sun->footer("elevation_deg is without refraction, apparent_elevation_deg with it;\n"
                    "azimuth_deg counts clockwise from north.");
    }

    void addDay()
    {
        CLI::App* day = addVerb("day", "Does the weather speak against tree work?", &dayCommand);
        day->add_option("--air", arguments_.air,
                        "Warmth in the shade, such as \"33 C\" or \"91 F\"")
            ->type_name("TEMPERATURE");
        day->add_option("--humidity", arguments_.humidity,
                        "Of the air, such as \"55 %\"; else 50 %")
            ->type_name("SHARE");
        day->add_option("--gust", arguments_.gust, "Gusts while you work, such as \"30 km/h\"")
            ->type_name("SPEED");
        day->add_flag("--json", arguments_.json, "Write JSON for a program instead of text");
        addMeasures(day);
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

CommandResult windowOn(const std::string& garden, Streams streams)
{
    const QString file = QString::fromStdString(garden);
    if (!garden.empty() && !QFile::exists(file))
        return {refuse(streams, model::quoted(garden) +
                                    ": found neither a command nor a file of that name; "
                                    "\"underbough --help\" lists the commands"),
                std::nullopt};
    return {kFine, file};
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
        return {kFine, std::nullopt};
    } catch (const CLI::CallForVersion&) {
        streams.out << line.version() << '\n';
        return {kFine, std::nullopt};
    } catch (const CLI::ParseError& error) {
        const std::string verb = line.chosenVerb();
        const std::string command = verb.empty() ? "underbough" : "underbough " + verb;
        return {refuse(streams, command + ": " + error.what() + "; \"" + command +
                                    " --help\" shows how it is used"),
                std::nullopt};
    }
    if (!line.verb())
        return windowOn(line.windowGarden(), streams);
    return {runVerb(line, loadTables, streams), std::nullopt};
}

} // namespace app
