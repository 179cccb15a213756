#include "app/command/verbs.hpp"

namespace app {
namespace {

void addTwoFiles(Verbs& verbs, const char* name, const char* about, Verb run, const char* from,
                 const char* to)
{
    Arguments& arguments = verbs.arguments();
    CLI::App* command = verbs.add(name, about, run);
    command->add_option("FROM", arguments.garden, from)->required()->type_name("FILE");
    command->add_option("TO", arguments.to, to)->required()->type_name("FILE");
    command->add_flag("--json", arguments.json, "Write JSON for a program instead of text");
    command->footer("FROM is left as it is; a TO that is there already is never written over.");
}

} // namespace

void addFileVerbs(Verbs& verbs)
{
    addTwoFiles(verbs, "export", "Write a garden as JSON, its photos beside it", &exportCommand,
                "A garden file", "The JSON file to write");
    addTwoFiles(verbs, "import", "Make a garden file of a garden in JSON and its photos",
                &importCommand, "A garden in JSON, its photos beside it",
                "The garden file to write, such as garden.underbough");
    addTwoFiles(verbs, "recover", "Save what can be read of a damaged garden file", &recoverCommand,
                "The damaged garden file", "The garden file to write");
}

} // namespace app
