#include "model/document/json_value.hpp"
#include "tests/fuzz/targets.hpp"

namespace fuzz {

void json(std::string_view bytes)
{
    const auto parsed = model::parseJson(bytes);
    if (const auto* fault = std::get_if<model::Fault>(&parsed))
        return hold(isOneLine(model::oneLine(*fault)), "a fault is one line");
    const std::string compact = model::compactJson(std::get<model::JsonValue>(parsed));
    for (const auto& text : {compact, model::laidOutJson(std::get<model::JsonValue>(parsed))}) {
        const auto again = model::parseJson(text);
        hold(std::holds_alternative<model::JsonValue>(again), "what is written can be read");
        hold(model::compactJson(std::get<model::JsonValue>(again)) == compact,
             "what is read back is what was written");
    }
}

} // namespace fuzz
