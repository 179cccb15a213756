#pragma once

#include "model/document/fields.hpp"
#include "model/document/json_value.hpp"
#include "model/document/limits.hpp"
#include "model/document/path.hpp"
#include "model/document/words.hpp"

#include <algorithm>
#include <chrono>
#include <vector>

namespace model {

/// Collects faults up to the limit; what comes after is not told.
using Faults = std::vector<Fault>;
inline void tell(Faults& faults, const Path& path, std::string found, std::string expected)
{
    if (faults.size() < limits::kFaults)
        faults.push_back({path.pointer(), std::move(found), std::move(expected)});
}

/// What stands in a value, for a fault: "a list", "\"oak\"", "true", "-3".
[[nodiscard]] std::string described(const JsonValue& value);

// One overload for each kind of member; a value of the wrong form is told and leaves `into` alone.
void readValue(const JsonValue& value, const Path& path, Faults& faults, double& into);
void readValue(const JsonValue& value, const Path& path, Faults& faults, int& into);
void readValue(const JsonValue& value, const Path& path, Faults& faults, std::string& into);
void readValue(const JsonValue& value, const Path& path, Faults& faults, Point2& into);
void readValue(const JsonValue& value, const Path& path, Faults& faults, Vec3& into);
/// Form only, "2024-05-31": whether there is such a day is validate()'s question.
void readValue(const JsonValue& value, const Path& path, Faults& faults,
               std::chrono::year_month_day& into);
/// Form only, "05-31".
void readValue(const JsonValue& value, const Path& path, Faults& faults,
               std::chrono::month_day& into);

template <typename Enum>
requires std::is_enum_v<Enum>
void readValue(const JsonValue& value, const Path& path, Faults& faults, Enum& into)
{
    const auto known =
        value.kind == JsonValue::Kind::text ? fromWord<Enum>(value.text) : std::optional<Enum>();
    if (known)
        into = *known;
    else
        tell(faults, path, described(value), "one of the words " + allWords<Enum>());
}

template <typename Object>
requires std::is_class_v<Object>
void readValue(const JsonValue& value, const Path& path, Faults& faults, Object& into);

template <typename Item>
void readValue(const JsonValue& value, const Path& path, Faults& faults, std::vector<Item>& into)
{
    if (value.kind != JsonValue::Kind::list)
        return tell(faults, path, described(value), "a list in [ ]");
    into.resize(value.items.size());
    for (std::size_t i = 0; i < into.size(); ++i)
        readValue(value.items[i], path / i, faults, into[i]);
}

/// Takes the fields of one object out of a document.
class FieldReader {
public:
    FieldReader(const JsonValue& object, const Path& path, Faults& faults)
        : object_(object), path_(path), faults_(faults), taken_(object.items.size(), false)
    {
    }

    void constant(std::string_view name, std::string_view value);
    void version(std::string_view name, int newest);
    template <typename T>
    void required(std::string_view name, T& member)
    {
        if (!take(name, member))
            tell(faults_, path_ / name, "nothing", "this field, which is required");
    }
    template <typename T>
    void defaulted(std::string_view name, T& member)
    {
        take(name, member);
    }
    template <typename T>
    void blank(std::string_view name, std::optional<T>& member)
    {
        T value{};
        if (take(name, value))
            member = std::move(value);
    }
    template <typename T>
    void list(std::string_view name, std::vector<T>& member)
    {
        take(name, member);
    }
    void extras(Extras& rest) const;

private:
    const JsonValue& object_;
    const Path& path_;
    Faults& faults_;
    std::vector<bool> taken_;

    const JsonValue* find(std::string_view name);
    template <typename T>
    bool take(std::string_view name, T& member)
    {
        const auto* value = find(name);
        if (value != nullptr)
            readValue(*value, path_ / name, faults_, member);
        return value != nullptr;
    }
};

template <typename Object>
requires std::is_class_v<Object>
void readValue(const JsonValue& value, const Path& path, Faults& faults, Object& into)
{
    if (value.kind != JsonValue::Kind::object)
        return tell(faults, path, described(value), "an object in { }");
    FieldReader reader(value, path, faults);
    fields(reader, into);
}

} // namespace model
