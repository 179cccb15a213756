#include "app/command/verbs.hpp"

#include "app/language/language.hpp"

namespace app {
namespace {

constexpr const char* kCaution = QT_TRANSLATE_NOOP(
    "Help", "The answers are estimates from a sketch. They never say that a tree is safe.");

CLI::App* addAssess(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    auto* assess = verbs.addOnGarden(
        "assess",
        QT_TRANSLATE_NOOP("Help", "All of it: headroom, loads, sun, what to cut, who cuts"),
        &assessCommand);
    option(assess, "--gust", arguments.gust, "GUST",
           QT_TRANSLATE_NOOP("Help", "Gust as forecasts give it: \"90 km/h\", \"56 mph\",\n"
                                     "25 (m/s), \"force 9\", \"gusts of force 9\",\n"
                                     "\"severe thunderstorm\"; else the garden's own"));
    option(assess, "--air", arguments.air, "DEGREES",
           QT_TRANSLATE_NOOP("Help", "Temperature of the air in that gust: \"5 C\", \"41 F\";\n"
                                     "else 15 C. Cold air presses harder"));
    option(assess, "--explain", arguments.explain, "LIMB",
           QT_TRANSLATE_NOOP("Help", "Only this limb, by its name or id: every step from wind\n"
                                     "and weight to its figures, with formulas and sources"));
    assess->add_flag("--rain", arguments.rain,
                     QT_TRANSLATE_NOOP("Help", "Loads with leaf and twigs wet"));
    option(assess, "--ice", arguments.ice, "THICKNESS",
           QT_TRANSLATE_NOOP("Help", "Loads with glaze ice this thick all round:\n"
                                     "\"12 mm\", \"0.5 in\"; else none"));
    return assess;
}

CLI::App* addSuggest(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    auto* suggest = verbs.addOnGarden(
        "suggest", QT_TRANSLATE_NOOP("Help", "What to cut for headroom, and who does it"),
        &suggestCommand);
    option(suggest, "--spare", arguments.spare, "LENGTH",
           QT_TRANSLATE_NOOP("Help", "Headroom beyond what is needed, to be grown into,\n"
                                     "such as \"30 cm\" or \"1 ft\""));
    option(suggest, "--relief", arguments.relief, "SHARE",
           QT_TRANSLATE_NOOP("Help", "Relieve every limb to this share of its expected strength\n"
                                     "at the garden's gust, such as \"80 %\""));
    option(suggest, "--sun", arguments.sun, "PLANTING=HOURS",
           QT_TRANSLATE_NOOP("Help", "Give a planting so many hours of sun a day, such as\n"
                                     "hedge=4; without a number: what its plant needs"));
    option(suggest, "--dli", arguments.dli, "PLANTING=MOL",
           QT_TRANSLATE_NOOP("Help", "Give a planting so many mol/m2 of light for growth a day,\n"
                                     "such as bed=12; without a number: what its plant needs"));
    option(suggest, "--bear", arguments.bear, "GUST",
           QT_TRANSLATE_NOOP("Help", "Relieve every limb until it is expected to bear this gust,\n"
                                     "such as \"90 km/h\" or \"56 mph\""));
    suggest->add_flag(
        "--trade-off", arguments.tradeOff,
        QT_TRANSLATE_NOOP("Help", "Also what 5, 10, 15 % of the leaf and more would buy"));
    option(suggest, "--keep", arguments.keep, "LIMB",
           QT_TRANSLATE_NOOP("Help", "A limb that stays, by its id"));
    option(suggest, "--lose", arguments.lose, "LIMB",
           QT_TRANSLATE_NOOP("Help", "A limb that goes, by its id"));
    suggest->add_flag(
        "--open-centre", arguments.openCentre,
        QT_TRANSLATE_NOOP("Help", "Fruit trees: the middle of the crown free of upright limbs"));
    option(suggest, "--leaf", arguments.leaf, "SHARE",
           QT_TRANSLATE_NOOP("Help", "Take no more of the leaf, such as \"15 %\""));
    return suggest;
}

CLI::App* addLight(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    auto* light = verbs.addOnGarden(
        "light", QT_TRANSLATE_NOOP("Help", "A year of light on each planting, and who takes it"),
        &lightCommand);
    option(light, "--month", arguments.month, "MONTH",
           QT_TRANSLATE_NOOP("Help", "One month in place of the growing season: 7, July"));
    option(light, "--planting", arguments.planting, "NAME",
           QT_TRANSLATE_NOOP("Help", "Only this planting, by its name or id"));
    return light;
}

} // namespace

Verbs::Verbs(CLI::App& app, Arguments& arguments, Verb& chosen)
    : app_(app), arguments_(arguments), chosen_(chosen)
{
}

CLI::App* Verbs::add(const char* name, const char* about, Verb run)
{
    CLI::App* command = app_.add_subcommand(name, about);
    command->group("Commands");
    command->set_help_flag("-h,--help", QT_TRANSLATE_NOOP("Help", "Show this help"));
    command->footer(kCaution);
    command->callback([&chosen = chosen_, run] { chosen = run; });
    addLanguage(command);
    return command;
}

void Verbs::addGarden(CLI::App* command)
{
    option(command, "GARDEN", arguments_.garden, "FILE",
           QT_TRANSLATE_NOOP("Help", "A garden file, or - for standard input"))
        ->required();
}

CLI::App* Verbs::addOnGarden(const char* name, const char* about, Verb run)
{
    CLI::App* command = add(name, about, run);
    addGarden(command);
    command->add_flag("--json", arguments_.json,
                      QT_TRANSLATE_NOOP("Help",
                                        "Write JSON for a program instead of text, in SI units\n"
                                        "(docs/command-line.md tells its form)"));
    return command;
}

void Verbs::addMeasures(CLI::App* command)
{
    option(command, "--units", arguments_.measures, "UNITS",
           QT_TRANSLATE_NOOP("Help", "Units to read; uk is metric with wind in mph;\n"
                                     "else as your system is set"))
        ->check(CLI::IsMember({"metric", "uk", "us"}));
    command->add_flag("--fail-on-attention", arguments_.failOnAttention,
                      QT_TRANSLATE_NOOP("Help", "Exit with status 1 if something needs attention"));
}

void Verbs::addLanguage(CLI::App* command)
{
    const QStringList known = languages();
    std::vector<std::string> codes;
    for (const QString& code : known)
        codes.push_back(code.toStdString());
    option(command, "--language", arguments_.language, "CODE",
           QT_TRANSLATE_NOOP("Help", "Language of the sentences: de, en;\n"
                                     "else as your system is set"))
        ->check(CLI::IsMember(codes));
}

void Verbs::addTree(CLI::App* command)
{
    option(command, "--tree", arguments_.tree, "NAME",
           QT_TRANSLATE_NOOP("Help", "Only this tree, by its name or id"));
}

void Verbs::addDate(CLI::App* command)
{
    option(command, "--date", arguments_.date, "DATE",
           QT_TRANSLATE_NOOP("Help", "The day, such as 2025-07-14; else today"));
}

void addAnswers(Verbs& verbs)
{
    CLI::App* assess = addAssess(verbs);
    CLI::App* suggest = addSuggest(verbs);
    CLI::App* headroom = verbs.addOnGarden(
        "headroom", QT_TRANSLATE_NOOP("Help", "Headroom over each strip of ground"),
        &headroomCommand);
    CLI::App* light = addLight(verbs);
    verbs.addOnGarden("check", QT_TRANSLATE_NOOP("Help", "Is anything wrong with a garden file?"),
                      &checkCommand);
    for (CLI::App* command : {assess, suggest, headroom})
        verbs.addTree(command);
    for (CLI::App* command : {assess, suggest, light})
        verbs.addDate(command);
    for (CLI::App* command : {assess, suggest, headroom, light})
        verbs.addMeasures(command);
}

void addReport(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    CLI::App* report = verbs.add(
        "report", QT_TRANSLATE_NOOP("Help", "The work on paper, and tables for other programs"),
        &reportCommand);
    verbs.addGarden(report);
    option(report, "-o,--output", arguments.output, "FILE",
           QT_TRANSLATE_NOOP("Help", "The file to write: work.pdf, work.html; with --csv or\n"
                                     "--geojson any name, or - for standard output"));
    option(report, "--paper", arguments.paper, "PAPER",
           QT_TRANSLATE_NOOP("Help", "Size of the pages; else as is usual where you are"))
        ->check(CLI::IsMember({"a4", "letter"}));
    report->add_flag("--for-arborist", arguments.forArborist,
                     QT_TRANSLATE_NOOP("Help",
                                       "One page for each tree with what an arborist asks for,\n"
                                       "and what to ask of one"));
    option(report, "--figures", arguments.figures, "FOLDER",
           QT_TRANSLATE_NOOP("Help", "Write every figure as a PNG to this folder"));
    option(report, "--csv", arguments.csv, "TABLE",
           QT_TRANSLATE_NOOP("Help", "A table instead: inventory of the trees, visits,\n"
                                     "or loads of all limbs"))
        ->check(CLI::IsMember({"inventory", "visits", "loads"}));
    report->add_flag("--geojson", arguments.geojson,
                     QT_TRANSLATE_NOOP("Help", "The plan as GeoJSON instead, in WGS 84"));
    option(report, "--gust", arguments.gust, "GUST",
           QT_TRANSLATE_NOOP("Help", "Gust for the loads; else the garden's own"));
    option(report, "--day-air", arguments.dayAir, "TEMPERATURE",
           QT_TRANSLATE_NOOP("Help", "Warmth on the day of work: \"33 C\""));
    option(report, "--day-humidity", arguments.dayHumidity, "SHARE",
           QT_TRANSLATE_NOOP("Help", "Of the air that day: \"55 %\""));
    option(report, "--day-gust", arguments.dayGust, "SPEED",
           QT_TRANSLATE_NOOP("Help", "Gusts that day: \"30 km/h\""));
    verbs.addTree(report);
    verbs.addDate(report);
    verbs.addMeasures(report);
}

void addDay(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    CLI::App* day = verbs.add(
        "day", QT_TRANSLATE_NOOP("Help", "Does the weather speak against tree work?"), &dayCommand);
    option(day, "--air", arguments.air, "TEMPERATURE",
           QT_TRANSLATE_NOOP("Help", "Warmth in the shade, such as \"33 C\" or \"91 F\""));
    option(day, "--humidity", arguments.humidity, "SHARE",
           QT_TRANSLATE_NOOP("Help", "Of the air, such as \"55 %\"; else 50 %"));
    option(day, "--gust", arguments.gust, "SPEED",
           QT_TRANSLATE_NOOP("Help", "Gusts while you work, such as \"30 km/h\""));
    day->add_flag("--json", arguments.json,
                  QT_TRANSLATE_NOOP("Help", "Write JSON for a program instead of text"));
    verbs.addMeasures(day);
}

void addSun(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    CLI::App* sun =
        verbs.add("sun", QT_TRANSLATE_NOOP("Help", "Where the sun stands, as JSON"), &sunCommand);
    option(sun, "--lat", arguments.latitude_deg, "DEGREES",
           QT_TRANSLATE_NOOP("Help", "Latitude in degrees, north positive"))
        ->required();
    option(sun, "--lon", arguments.longitude_deg, "DEGREES",
           QT_TRANSLATE_NOOP("Help", "Longitude in degrees, east positive"))
        ->required();
    option(sun, "--at", arguments.at, "TIME",
           QT_TRANSLATE_NOOP("Help", "When, such as 2025-06-21T14:30:00+02:00; without a zone\n"
                                     "UTC is meant; else now"));
    sun->add_flag("--json", arguments.json,
                  QT_TRANSLATE_NOOP("Help", "JSON, which it writes anyway"));
    sun->footer(QT_TRANSLATE_NOOP(
        "Help", "elevation_deg is without refraction, apparent_elevation_deg with it;\n"
                "azimuth_deg counts clockwise from north."));
}

} // namespace app
