#include "app/command/verbs.hpp"

namespace app {
namespace {

/// The options that say what a visit was, all of them only with --add.
void addVisit(CLI::App* diary, Arguments& arguments)
{
    auto* add = diary->add_flag(
        "--add", arguments.add,
        QT_TRANSLATE_NOOP("Help", "Write a visit of --date to --tree into the file"));
    // One value each time, so that the file may stand behind it.
    const auto only = [&](const char* name, auto& value, const char* type, const char* help) {
        option(diary, name, value, type, help)->needs(add)->allow_extra_args(false);
    };
    only("--cut", arguments.cuts, "CUT",
         QT_TRANSLATE_NOOP("Help", "A cut made: plan, the number of one of the plan's,\n"
                                   "\"removal:LIMB\", \"reduction:LIMB=1.5 m\",\n"
                                   "\"thinning:LIMB=20 %\", \"lifting:LIMB=2.1 m\""));
    only("--leaf", arguments.leaf, "SHARE",
         QT_TRANSLATE_NOOP("Help", "Share of the leaf that went, such as \"8 %\"; else\n"
                                   "that of the plan's cuts"));
    only("--headroom", arguments.headroom, "STRIP=HEIGHTS",
         QT_TRANSLATE_NOOP("Help", "Headroom over a strip before and after, such as\n"
                                   "\"path=1.9 m..2.4 m\""));
    only("--tip", arguments.tips, "TIP",
         QT_TRANSLATE_NOOP("Help", "Tip of a limb before the cuts: where it is drawn, or\n"
                                   "\"LIMB=EAST,NORTH,UP\" from the tree's base"));
    only("--by", arguments.by, "NAME", QT_TRANSLATE_NOOP("Help", "Who did it"));
    only("--note", arguments.note, "TEXT", QT_TRANSLATE_NOOP("Help", "In your words"));
    only("--next-due", arguments.nextDue, "DATE", QT_TRANSLATE_NOOP("Help", "When to come again"));
    only("--air", arguments.air, "TEMPERATURE",
         QT_TRANSLATE_NOOP("Help", "Warmth in the shade, such as \"21 C\""));
    only("--humidity", arguments.humidity, "SHARE", QT_TRANSLATE_NOOP("Help", "Such as \"55 %\""));
    only("--gust", arguments.gust, "SPEED",
         QT_TRANSLATE_NOOP("Help", "Gusts, such as \"20 km/h\""));
    only("--photo", arguments.photos, "FILE",
         QT_TRANSLATE_NOOP("Help", "A photo to keep with the visit"));
    option(diary, "--closed", arguments.closed, "NUMBER",
           QT_TRANSLATE_NOOP("Help", "Note that a wound, by its number in this list, was\n"
                                     "seen closed on --date"))
        ->excludes(add);
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
    verbs.addGarden(calendar);
    option(
        calendar, "-o,--output", arguments.output, "FILE",
        QT_TRANSLATE_NOOP("Help", "Where to write it, such as garden.ics; - for standard output"))
        ->required();
    for (CLI::App* command : {diary, due, calendar}) {
        verbs.addTree(command);
        verbs.addDate(command);
        verbs.addMeasures(command);
    }
    addVisit(diary, arguments);
}

} // namespace app
