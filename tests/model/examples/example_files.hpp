#pragma once

#include "tests/model/species/table_files.hpp"

#include "model/document/garden_json.hpp"

#include <array>
#include <stdexcept>
#include <string>

inline constexpr std::array kExamples{"maple-drive", "apple-path", "birch-lawn"};

inline std::string exampleText(const std::string& name)
{
    return fileText(UNDERBOUGH_TREES "/examples/" + name + ".json");
}

inline model::Garden example(const std::string& name)
{
    auto reading = model::readGarden(exampleText(name));
    if (!reading.garden)
        throw std::runtime_error(name + ": " + oneLine(reading.faults.front()));
    return *std::move(reading.garden);
}
