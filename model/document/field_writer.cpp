#include "model/document/field_writer.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace model {
namespace {

using Kind = JsonValue::Kind;

std::string padded(unsigned number, std::size_t width)
{
    const auto digits = std::to_string(number);
    return std::string(width - std::min(width, digits.size()), '0') + digits;
}

} // namespace

JsonValue written(double value)
{
    if (!std::isfinite(value))
        throw std::domain_error("writeGarden: JSON has no " + plain(value));
    return {Kind::number, plain(value), {}, {}};
}

JsonValue written(int value)
{
    return {Kind::number, std::to_string(value), {}, {}};
}

JsonValue written(const std::string& value)
{
    return {Kind::text, value, {}, {}};
}

JsonValue written(Point2 value)
{
    return {Kind::list, {}, {written(value.x), written(value.y)}, {}};
}

JsonValue written(Vec3 value)
{
    return {Kind::list, {}, {written(value.x), written(value.y), written(value.z)}, {}};
}

JsonValue written(std::chrono::year_month_day value)
{
    const auto year = static_cast<unsigned>(static_cast<int>(value.year()));
    return written(padded(year, 4) + "-" + padded(static_cast<unsigned>(value.month()), 2) + "-" +
                   padded(static_cast<unsigned>(value.day()), 2));
}

JsonValue written(std::chrono::month_day value)
{
    return written(padded(static_cast<unsigned>(value.month()), 2) + "-" +
                   padded(static_cast<unsigned>(value.day()), 2));
}

void FieldWriter::extras(const Extras& rest)
{
    for (const auto& [name, text] : rest) {
        auto value = parseJson(text);
        if (!std::holds_alternative<JsonValue>(value))
            throw std::domain_error("writeGarden: the kept field " + inQuotes(name) +
                                    " is not JSON");
        if (std::ranges::find(object.names, name) != object.names.end())
            throw std::domain_error("writeGarden: the kept field " + inQuotes(name) +
                                    " has the name of a known one");
        put(name, std::get<JsonValue>(std::move(value)));
    }
}

} // namespace model
