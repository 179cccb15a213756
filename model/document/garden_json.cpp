#include "model/document/garden_json.hpp"

#include "model/document/field_reader.hpp"
#include "model/document/field_writer.hpp"
#include "model/document/validate.hpp"

#include <algorithm>

namespace model {
namespace {

/// Of a text that is no garden, or a newer one's, only that is worth telling.
void keepOnlyTheHead(Faults& faults)
{
    const auto head = std::ranges::find_if(faults, [](const Fault& fault) {
        return fault.pointer == "/format" || fault.pointer == "/version";
    });
    if (head != faults.end())
        faults = {*head};
}

} // namespace

GardenReading readGarden(std::string_view text)
{
    const auto parsed = parseJson(text);
    if (const auto* fault = std::get_if<Fault>(&parsed))
        return {std::nullopt, {*fault}};
    Garden garden;
    Faults faults;
    readValue(std::get<JsonValue>(parsed), Path(), faults, garden);
    keepOnlyTheHead(faults);
    if (faults.empty())
        faults = validate(garden);
    if (!faults.empty())
        return {std::nullopt, std::move(faults)};
    return {std::move(garden), {}};
}

std::string writeGarden(const Garden& garden)
{
    return laidOutJson(written(garden));
}

} // namespace model
