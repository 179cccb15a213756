#pragma once

#include "model/document/fields.hpp"
#include "model/document/json_value.hpp"
#include "model/document/words.hpp"

#include <chrono>
#include <vector>

namespace model {

[[nodiscard]] JsonValue written(double value);
[[nodiscard]] JsonValue written(int value);
[[nodiscard]] JsonValue written(const std::string& value);
[[nodiscard]] JsonValue written(Point2 value);
[[nodiscard]] JsonValue written(Vec3 value);
[[nodiscard]] JsonValue written(std::chrono::year_month_day value);
[[nodiscard]] JsonValue written(std::chrono::month_day value);

template <typename Enum>
requires std::is_enum_v<Enum> JsonValue written(Enum value)
{
    return {JsonValue::Kind::text, std::string(word(value)), {}, {}};
}

template <typename Object>
requires std::is_class_v<Object> JsonValue written(const Object& value);

template <typename Item>
JsonValue written(const std::vector<Item>& items)
{
    JsonValue list{JsonValue::Kind::list, {}, {}, {}};
    list.items.reserve(items.size());
    for (const auto& item : items)
        list.items.push_back(written(item));
    return list;
}

/// Puts the fields of one object into a document.
class FieldWriter {
public:
    JsonValue object{JsonValue::Kind::object, {}, {}, {}};

    void constant(std::string_view name, std::string_view value)
    {
        put(name, written(std::string(value)));
    }
    void version(std::string_view name, int newest) { put(name, written(newest)); }
    template <typename T>
    void required(std::string_view name, const T& member)
    {
        put(name, written(member));
    }
    template <typename T>
    void defaulted(std::string_view name, const T& member)
    {
        put(name, written(member));
    }
    template <typename T>
    void blank(std::string_view name, const std::optional<T>& member)
    {
        if (member)
            put(name, written(*member));
    }
    template <typename T>
    void list(std::string_view name, const std::vector<T>& member)
    {
        if (!member.empty())
            put(name, written(member));
    }
    /// \throws std::domain_error  on a name that the object has already, or text that is not JSON
    void extras(const Extras& rest);

private:
    void put(std::string_view name, JsonValue value)
    {
        object.names.emplace_back(name);
        object.items.push_back(std::move(value));
    }
};

template <typename Object>
requires std::is_class_v<Object> JsonValue written(const Object& value)
{
    FieldWriter writer;
    fields(writer, value);
    return std::move(writer.object);
}

} // namespace model
