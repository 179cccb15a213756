#include "app/command/commands.hpp"
#include "app/command/unknown_fields.hpp"
#include "app/document/garden_input.hpp"
#include "app/report/suggestion_json.hpp"

namespace app {
namespace {

/// More lines than this help nobody: mend these, then check again.
constexpr std::size_t kFaultsShown = 20;

void writeFaults(const GardenInput& input, std::ostream& err)
{
    const std::size_t shown = std::min(kFaultsShown, input.faults.size());
    for (std::size_t i = 0; i < shown; ++i)
        err << input.name << ": " << oneLine(input.faults[i]) << '\n';
    if (shown < input.faults.size())
        err << input.name << ": and " << input.faults.size() - shown << " more faults\n";
}

std::size_t limbCount(const model::Garden& garden)
{
    std::size_t count = 0;
    for (const model::Tree& tree : garden.trees)
        count += tree.limbs.size();
    return count;
}

void writeFine(const GardenInput& input, std::ostream& out)
{
    const model::Garden& garden = *input.garden;
    out << input.name << ": can be used. Trees: " << garden.trees.size()
        << ", limbs: " << limbCount(garden) << ", plantings: " << garden.plantings.size()
        << ", strips of ground: " << garden.strips.size() << ", wires: " << garden.lines.size()
        << ", structures: " << garden.structures.size() << ".\n";
    for (const std::string& pointer : unknownFields(garden))
        out << input.name << ": " << pointer
            << ": a field that this version doesn't know; it is kept as it is, but may be misspelt"
            << '\n';
}

Json checkJson(const GardenInput& input)
{
    Json faults = Json::array();
    for (const model::Fault& fault : input.faults)
        faults.push_back(
            {{"pointer", fault.pointer}, {"found", fault.found}, {"expected", fault.expected}});
    Json unknown = Json::array();
    if (input.garden)
        for (const std::string& pointer : unknownFields(*input.garden))
            unknown.push_back(pointer);
    return {
        {"format", "underbough-check"},         {"version", 1},
        {"usable", input.garden.has_value()},   {"faults", std::move(faults)},
        {"unknown_fields", std::move(unknown)},
    };
}

} // namespace

int checkCommand(const Job& job)
{
    const GardenInput input = readGardenInput(job.arguments.garden, job.tables, job.streams.in);
    if (job.arguments.json)
        job.streams.out << jsonText(checkJson(input));
    else if (input.garden)
        writeFine(input, job.streams.out);
    if (input.garden)
        return kFine;
    writeFaults(input, job.streams.err);
    return kUnusable;
}

} // namespace app
