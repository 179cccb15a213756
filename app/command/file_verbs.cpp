#include "app/command/verbs.hpp"

namespace app {
namespace {

void addTwoFiles(Verbs& verbs, const char* name, const char* about, Verb run, const char* from,
                 const char* to)
{
    Arguments& arguments = verbs.arguments();
    CLI::App* command = verbs.add(name, about, run);
    option(command, "FROM", arguments.garden, "FILE", from)->required();
    option(command, "TO", arguments.to, "FILE", to)->required();
    command->add_flag("--json", arguments.json,
                      QT_TRANSLATE_NOOP("Help", "Write JSON for a program instead of text"));
    command->footer(QT_TRANSLATE_NOOP(
        "Help", "FROM is left as it is; a TO that is there already is never written over."));
}

} // namespace

void addFileVerbs(Verbs& verbs)
{
    addTwoFiles(verbs, "export",
                QT_TRANSLATE_NOOP("Help", "Write a garden as JSON, its photos beside it"),
                &exportCommand, QT_TRANSLATE_NOOP("Help", "A garden file"),
                QT_TRANSLATE_NOOP("Help", "The JSON file to write"));
    addTwoFiles(verbs, "import",
                QT_TRANSLATE_NOOP("Help", "Make a garden file of a garden in JSON and its photos"),
                &importCommand, QT_TRANSLATE_NOOP("Help", "A garden in JSON, its photos beside it"),
                QT_TRANSLATE_NOOP("Help", "The garden file to write, such as garden.underbough"));
    addTwoFiles(verbs, "recover",
                QT_TRANSLATE_NOOP("Help", "Save what can be read of a damaged garden file"),
                &recoverCommand, QT_TRANSLATE_NOOP("Help", "The damaged garden file"),
                QT_TRANSLATE_NOOP("Help", "The garden file to write"));
}

} // namespace app
