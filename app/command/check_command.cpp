#include "app/command/commands.hpp"
#include "app/command/unknown_fields.hpp"
#include "app/document/garden_input.hpp"
#include "app/document/photo_files.hpp"
#include "app/report/suggestion_json.hpp"
#include "app/store/photo_rows.hpp"
#include "app/words/fault_words.hpp"
#include "app/words/wording.hpp"

#include <algorithm>

namespace app {
namespace {

/// More lines than this help nobody: mend these, then check again.
constexpr std::size_t kFaultsShown = 20;

void writeFaults(const GardenInput& input, std::ostream& err)
{
    const std::size_t shown = std::min(kFaultsShown, input.faults.size());
    for (std::size_t i = 0; i < shown; ++i)
        err << input.name << ": " << faultLine(input.faults[i]).toStdString() << '\n';
    if (shown < input.faults.size())
        err << input.name << ": "
            << Words::tr("and %1 more faults").arg(input.faults.size() - shown).toStdString()
            << '\n';
}

std::size_t limbCount(const model::Garden& garden)
{
    std::size_t count = 0;
    for (const model::Tree& tree : garden.trees)
        count += tree.limbs.size();
    return count;
}

/// Of a garden file every page, every photo and the way back through its history too.
GardenInput inputOf(const Job& job)
{
    GardenInput input = readGardenInput(job.arguments.garden, job.tables, job.streams.in);
    const QString path = QString::fromStdString(job.arguments.garden);
    if (!input.garden || !isGardenStore(path))
        return input;
    for (const std::string& line : checkStore(path))
        input.faults.push_back(
            {{}, line, "a garden file as it was written; \"underbough recover\" helps"});
    if (!input.faults.empty())
        input.garden.reset();
    return input;
}

/// Photos that a usable garden names and that nobody finds.
std::vector<std::string> missingPhotos(const Job& job, const GardenInput& input)
{
    std::vector<std::string> missing;
    if (!input.garden || job.arguments.garden == "-")
        return missing;
    const QString path = QString::fromStdString(job.arguments.garden);
    const bool isStore = isGardenStore(path);
    const auto there = isStore ? photoNames(path) : std::vector<std::string>();
    for (const std::string& name : photosOf(*input.garden))
        if (isStore ? std::ranges::find(there, name) == there.end()
                    : readPhotoFile(path, name).isNull())
            missing.push_back(name);
    return missing;
}

void writeFine(const GardenInput& input, const std::vector<std::string>& missing, std::ostream& out)
{
    const model::Garden& garden = *input.garden;
    const auto line = [&](const QString& words) {
        out << input.name << ": " << words.toStdString() << '\n';
    };
    line(Words::tr("can be used. Trees: %1, limbs: %2, plantings: %3, strips of ground: %4, wires: "
                   "%5, structures: %6.")
             .arg(garden.trees.size())
             .arg(limbCount(garden))
             .arg(garden.plantings.size())
             .arg(garden.strips.size())
             .arg(garden.lines.size())
             .arg(garden.structures.size()));
    for (const std::string& pointer : unknownFields(garden))
        line(Words::tr("%1: a field that this version doesn't know; it is kept as it is, but may "
                       "be misspelt")
                 .arg(QString::fromStdString(pointer)));
    for (const std::string& name : missing)
        line(Words::tr("%1: a photo that can't be found")
                 .arg(QString::fromStdString(model::inQuotes(name))));
}

Json checkJson(const GardenInput& input, const std::vector<std::string>& missing)
{
    Json faults = Json::array();
    for (const model::Fault& fault : input.faults)
        faults.push_back(
            {{"pointer", fault.pointer}, {"found", fault.found}, {"expected", fault.expected}});
    Json unknown = Json::array();
    if (input.garden)
        for (const std::string& pointer : unknownFields(*input.garden))
            unknown.push_back(pointer);
    Json photos = Json::array();
    for (const std::string& name : missing)
        photos.push_back(name);
    return {
        {"format", "underbough-check"},         {"version", 1},
        {"usable", input.garden.has_value()},   {"faults", std::move(faults)},
        {"unknown_fields", std::move(unknown)}, {"missing_photos", std::move(photos)},
    };
}

} // namespace

int checkCommand(const Job& job)
{
    const GardenInput input = inputOf(job);
    const auto missing = missingPhotos(job, input);
    if (job.arguments.json)
        job.streams.out << jsonText(checkJson(input, missing));
    else if (input.garden)
        writeFine(input, missing, job.streams.out);
    if (input.garden)
        return kFine;
    writeFaults(input, job.streams.err);
    return kUnusable;
}

} // namespace app
