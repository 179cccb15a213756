#include "app/command/verbs.hpp"

namespace app {
namespace {

/// The options that say what a visit was, all of them only with --add.
void addVisit(CLI::App* diary, Arguments& arguments)
{
    auto* add = diary->add_flag(
        "--add", arguments.add,
        QT_TRANSLATE_NOOP("Help", "Write a visit of --date to --tree into the file"));
    const auto only = [&](CLI::Option* option, const char* type) {
        option->needs(add)->type_name(type);
    };
    // One value each time, so that the file may stand behind it.
    only(diary
             ->add_option("--cut", arguments.cuts,
                          QT_TRANSLATE_NOOP("Help",
                                            "A cut made: plan, the number of one of the plan's,\n"
                                            "\"removal:LIMB\", \"reduction:LIMB=1.5 m\",\n"
                                            "\"thinning:LIMB=20 %\", \"lifting:LIMB=2.1 m\""))
             ->allow_extra_args(false),
         "CUT");
    only(diary->add_option("--leaf", arguments.leaf,
                           QT_TRANSLATE_NOOP("Help",
                                             "Share of the leaf that went, such as \"8 %\"; else\n"
                                             "that of the plan's cuts")),
         "SHARE");
    only(diary
             ->add_option("--headroom", arguments.headroom,
                          QT_TRANSLATE_NOOP("Help",
                                            "Headroom over a strip before and after, such as\n"
                                            "\"path=1.9 m..2.4 m\""))
             ->allow_extra_args(false),
         "STRIP=HEIGHTS");
    only(diary
             ->add_option("--tip", arguments.tips,
                          QT_TRANSLATE_NOOP("Help",
                                            "Tip of a limb before the cuts: where it is drawn, or\n"
                                            "\"LIMB=EAST,NORTH,UP\" from the tree's base"))
             ->allow_extra_args(false),
         "TIP");
    only(diary->add_option("--by", arguments.by, QT_TRANSLATE_NOOP("Help", "Who did it")), "NAME");
    only(diary->add_option("--note", arguments.note, QT_TRANSLATE_NOOP("Help", "In your words")),
         "TEXT");
    only(diary->add_option("--next-due", arguments.nextDue,
                           QT_TRANSLATE_NOOP("Help", "When to come again")),
         "DATE");
    only(diary->add_option("--air", arguments.air,
                           QT_TRANSLATE_NOOP("Help", "Warmth in the shade, such as \"21 C\"")),
         "TEMPERATURE");
    only(diary->add_option("--humidity", arguments.humidity,
                           QT_TRANSLATE_NOOP("Help", "Such as \"55 %\"")),
         "SHARE");
    only(diary->add_option("--gust", arguments.gust,
                           QT_TRANSLATE_NOOP("Help", "Gusts, such as \"20 km/h\"")),
         "SPEED");
    only(diary
             ->add_option("--photo", arguments.photos,
                          QT_TRANSLATE_NOOP("Help", "A photo to keep with the visit"))
             ->allow_extra_args(false),
         "FILE");
    diary
        ->add_option("--closed", arguments.closed,
                     QT_TRANSLATE_NOOP("Help",
                                       "Note that a wound, by its number in this list, was\n"
                                       "seen closed on --date"))
        ->excludes(add)
        ->type_name("NUMBER");
    diary
        ->add_flag("--apply", arguments.apply,
                   QT_TRANSLATE_NOOP("Help", "Make the cuts on the sketch too"))
        ->needs(add);
}

} // namespace

void addDiary(Verbs& verbs)
{
    Arguments& arguments = verbs.arguments();
    CLI::App* diary = verbs.addOnGarden(
        "diary",
        QT_TRANSLATE_NOOP("Help", "Visits, leaf by season, growth, wounds, next due; adds a visit"),
        &diaryCommand);
    CLI::App* due = verbs.addOnGarden(
        "due", QT_TRANSLATE_NOOP("Help", "What is due in the garden, and when"), &dueCommand);
    CLI::App* calendar =
        verbs.add("calendar", QT_TRANSLATE_NOOP("Help", "What is due, as a file for your calendar"),
                  &calendarCommand);
    calendar
        ->add_option("GARDEN", arguments.garden,
                     QT_TRANSLATE_NOOP("Help", "A garden file, or - for standard input"))
        ->required()
        ->type_name("FILE");
    calendar
        ->add_option("-o,--output", arguments.output,
                     QT_TRANSLATE_NOOP(
                         "Help", "Where to write it, such as garden.ics; - for standard output"))
        ->required()
        ->type_name("FILE");
    for (CLI::App* command : {diary, due, calendar}) {
        verbs.addTree(command);
        verbs.addDate(command);
        verbs.addMeasures(command);
    }
    addVisit(diary, arguments);
}

} // namespace app
