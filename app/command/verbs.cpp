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
    assess
        ->add_option("--gust", arguments.gust,
                     QT_TRANSLATE_NOOP("Help",
                                       "Gust as forecasts give it: \"90 km/h\", \"56 mph\",\n"
                                       "25 (m/s), \"force 9\", \"gusts of force 9\",\n"
                                       "\"severe thunderstorm\"; else the garden's own"))
        ->type_name("GUST");
    assess
        ->add_option("--air", arguments.air,
                     QT_TRANSLATE_NOOP("Help",
                                       "Temperature of the air in that gust: \"5 C\", \"41 F\";\n"
                                       "else 15 C. Cold air presses harder"))
        ->type_name("DEGREES");
    assess
        ->add_option("--explain", arguments.explain,
                     QT_TRANSLATE_NOOP("Help",
                                       "Only this limb, by its name or id: every step from wind\n"
                                       "and weight to its figures, with formulas and sources"))
        ->type_name("LIMB");
    assess->add_flag("--rain", arguments.rain,
                     QT_TRANSLATE_NOOP("Help", "Loads with leaf and twigs wet"));
    assess
        ->add_option("--ice", arguments.ice,
                     QT_TRANSLATE_NOOP("Help", "Loads with glaze ice this thick all round:\n"
                                               "\"12 mm\", \"0.5 in\"; else none"))
        ->type_name("THICKNESS");
    return assess;
}

CLI::App* addSuggest(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    auto* suggest = verbs.addOnGarden(
        "suggest", QT_TRANSLATE_NOOP("Help", "What to cut for headroom, and who does it"),
        &suggestCommand);
    suggest
        ->add_option("--spare", arguments.spare,
                     QT_TRANSLATE_NOOP("Help", "Headroom beyond what is needed, to be grown into,\n"
                                               "such as \"30 cm\" or \"1 ft\""))
        ->type_name("LENGTH");
    suggest
        ->add_option("--relief", arguments.relief,
                     QT_TRANSLATE_NOOP("Help",
                                       "Relieve every limb to this share of its expected strength\n"
                                       "at the garden's gust, such as \"80 %\""))
        ->type_name("SHARE");
    suggest
        ->add_option("--sun", arguments.sun,
                     QT_TRANSLATE_NOOP("Help",
                                       "Give a planting so many hours of sun a day, such as\n"
                                       "hedge=4; without a number: what its plant needs"))
        ->type_name("PLANTING=HOURS");
    suggest
        ->add_option("--dli", arguments.dli,
                     QT_TRANSLATE_NOOP("Help",
                                       "Give a planting so many mol/m2 of light for growth a day,\n"
                                       "such as bed=12; without a number: what its plant needs"))
        ->type_name("PLANTING=MOL");
    suggest
        ->add_option(
            "--bear", arguments.bear,
            QT_TRANSLATE_NOOP("Help", "Relieve every limb until it is expected to bear this gust,\n"
                                      "such as \"90 km/h\" or \"56 mph\""))
        ->type_name("GUST");
    suggest->add_flag(
        "--trade-off", arguments.tradeOff,
        QT_TRANSLATE_NOOP("Help", "Also what 5, 10, 15 % of the leaf and more would buy"));
    suggest
        ->add_option("--keep", arguments.keep,
                     QT_TRANSLATE_NOOP("Help", "A limb that stays, by its id"))
        ->type_name("LIMB");
    suggest
        ->add_option("--lose", arguments.lose,
                     QT_TRANSLATE_NOOP("Help", "A limb that goes, by its id"))
        ->type_name("LIMB");
    suggest->add_flag(
        "--open-centre", arguments.openCentre,
        QT_TRANSLATE_NOOP("Help", "Fruit trees: the middle of the crown free of upright limbs"));
    suggest
        ->add_option("--leaf", arguments.leaf,
                     QT_TRANSLATE_NOOP("Help", "Take no more of the leaf, such as \"15 %\""))
        ->type_name("SHARE");
    return suggest;
}

CLI::App* addLight(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    auto* light = verbs.addOnGarden(
        "light", QT_TRANSLATE_NOOP("Help", "A year of light on each planting, and who takes it"),
        &lightCommand);
    light
        ->add_option("--month", arguments.month,
                     QT_TRANSLATE_NOOP("Help", "One month in place of the growing season: 7, July"))
        ->type_name("MONTH");
    light
        ->add_option("--planting", arguments.planting,
                     QT_TRANSLATE_NOOP("Help", "Only this planting, by its name or id"))
        ->type_name("NAME");
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
    return command;
}

CLI::App* Verbs::addOnGarden(const char* name, const char* about, Verb run)
{
    CLI::App* command = add(name, about, run);
    command
        ->add_option("GARDEN", arguments_.garden,
                     QT_TRANSLATE_NOOP("Help", "A garden file, or - for standard input"))
        ->required()
        ->type_name("FILE");
    command->add_flag("--json", arguments_.json,
                      QT_TRANSLATE_NOOP("Help",
                                        "Write JSON for a program instead of text, in SI units\n"
                                        "(docs/command-line.md tells its form)"));
    return command;
}

void Verbs::addMeasures(CLI::App* command)
{
    command
        ->add_option("--units", arguments_.measures,
                     QT_TRANSLATE_NOOP("Help", "Units to read; uk is metric with wind in mph;\n"
                                               "else as your system is set"))
        ->check(CLI::IsMember({"metric", "uk", "us"}))
        ->type_name("UNITS");
    addLanguage(command);
    command->add_flag("--fail-on-attention", arguments_.failOnAttention,
                      QT_TRANSLATE_NOOP("Help", "Exit with status 1 if something needs attention"));
}

void Verbs::addLanguage(CLI::App* command)
{
    const QStringList known = languages();
    std::vector<std::string> codes;
    for (const QString& code : known)
        codes.push_back(code.toStdString());
    command
        ->add_option("--language", arguments_.language,
                     QT_TRANSLATE_NOOP("Help", "Language of the sentences: de, en;\n"
                                               "else as your system is set"))
        ->check(CLI::IsMember(codes))
        ->type_name("CODE");
}

void Verbs::addTree(CLI::App* command)
{
    command
        ->add_option("--tree", arguments_.tree,
                     QT_TRANSLATE_NOOP("Help", "Only this tree, by its name or id"))
        ->type_name("NAME");
}

void Verbs::addDate(CLI::App* command)
{
    command
        ->add_option("--date", arguments_.date,
                     QT_TRANSLATE_NOOP("Help", "The day, such as 2025-07-14; else today"))
        ->type_name("DATE");
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
    report
        ->add_option("GARDEN", arguments.garden,
                     QT_TRANSLATE_NOOP("Help", "A garden file, or - for standard input"))
        ->required()
        ->type_name("FILE");
    report
        ->add_option("-o,--output", arguments.output,
                     QT_TRANSLATE_NOOP("Help",
                                       "The file to write: work.pdf, work.html; with --csv or\n"
                                       "--geojson any name, or - for standard output"))
        ->type_name("FILE");
    report
        ->add_option("--paper", arguments.paper,
                     QT_TRANSLATE_NOOP("Help", "Size of the pages; else as is usual where you are"))
        ->check(CLI::IsMember({"a4", "letter"}))
        ->type_name("PAPER");
    report->add_flag("--for-arborist", arguments.forArborist,
                     QT_TRANSLATE_NOOP("Help",
                                       "One page for each tree with what an arborist asks for,\n"
                                       "and what to ask of one"));
    report
        ->add_option("--figures", arguments.figures,
                     QT_TRANSLATE_NOOP("Help", "Write every figure as a PNG to this folder"))
        ->type_name("FOLDER");
    report
        ->add_option("--csv", arguments.csv,
                     QT_TRANSLATE_NOOP("Help", "A table instead: inventory of the trees, visits,\n"
                                               "or loads of all limbs"))
        ->check(CLI::IsMember({"inventory", "visits", "loads"}))
        ->type_name("TABLE");
    report->add_flag("--geojson", arguments.geojson,
                     QT_TRANSLATE_NOOP("Help", "The plan as GeoJSON instead, in WGS 84"));
    report
        ->add_option("--gust", arguments.gust,
                     QT_TRANSLATE_NOOP("Help", "Gust for the loads; else the garden's own"))
        ->type_name("GUST");
    report
        ->add_option("--day-air", arguments.dayAir,
                     QT_TRANSLATE_NOOP("Help", "Warmth on the day of work: \"33 C\""))
        ->type_name("TEMPERATURE");
    report
        ->add_option("--day-humidity", arguments.dayHumidity,
                     QT_TRANSLATE_NOOP("Help", "Of the air that day: \"55 %\""))
        ->type_name("SHARE");
    report
        ->add_option("--day-gust", arguments.dayGust,
                     QT_TRANSLATE_NOOP("Help", "Gusts that day: \"30 km/h\""))
        ->type_name("SPEED");
    verbs.addTree(report);
    verbs.addDate(report);
    verbs.addMeasures(report);
}

void addDay(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    CLI::App* day = verbs.add(
        "day", QT_TRANSLATE_NOOP("Help", "Does the weather speak against tree work?"), &dayCommand);
    day->add_option("--air", arguments.air,
                    QT_TRANSLATE_NOOP("Help", "Warmth in the shade, such as \"33 C\" or \"91 F\""))
        ->type_name("TEMPERATURE");
    day->add_option("--humidity", arguments.humidity,
                    QT_TRANSLATE_NOOP("Help", "Of the air, such as \"55 %\"; else 50 %"))
        ->type_name("SHARE");
    day->add_option("--gust", arguments.gust,
                    QT_TRANSLATE_NOOP("Help", "Gusts while you work, such as \"30 km/h\""))
        ->type_name("SPEED");
    day->add_flag("--json", arguments.json,
                  QT_TRANSLATE_NOOP("Help", "Write JSON for a program instead of text"));
    verbs.addMeasures(day);
}

void addSun(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    CLI::App* sun =
        verbs.add("sun", QT_TRANSLATE_NOOP("Help", "Where the sun stands, as JSON"), &sunCommand);
    sun->add_option("--lat", arguments.latitude_deg,
                    QT_TRANSLATE_NOOP("Help", "Latitude in degrees, north positive"))
        ->required()
        ->type_name("DEGREES");
    sun->add_option("--lon", arguments.longitude_deg,
                    QT_TRANSLATE_NOOP("Help", "Longitude in degrees, east positive"))
        ->required()
        ->type_name("DEGREES");
    sun->add_option("--at", arguments.at,
                    QT_TRANSLATE_NOOP("Help",
                                      "When, such as 2025-06-21T14:30:00+02:00; without a zone\n"
                                      "UTC is meant; else now"))
        ->type_name("TIME");
    sun->add_flag("--json", arguments.json,
                  QT_TRANSLATE_NOOP("Help", "JSON, which it writes anyway"));
    sun->footer(QT_TRANSLATE_NOOP(
        "Help", "elevation_deg is without refraction, apparent_elevation_deg with it;\n"
                "azimuth_deg counts clockwise from north."));
}

} // namespace app
