#include "model/document/garden_json.hpp"
#include "tests/fuzz/targets.hpp"

namespace fuzz {

void garden(std::string_view bytes)
{
    const auto reading = model::readGarden(bytes);
    hold(reading.garden.has_value() == reading.faults.empty(), "a garden or faults, never both");
    for (const auto& fault : reading.faults)
        hold(isOneLine(model::oneLine(fault)), "a fault is one line");
    if (!reading.garden)
        return;
    const auto again = model::readGarden(model::writeGarden(*reading.garden));
    hold(again.garden.has_value(), "a garden that is written can be read");
    hold(*again.garden == *reading.garden, "a garden read back is the one that was written");
}

} // namespace fuzz
