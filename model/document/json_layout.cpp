#include "model/document/json_value.hpp"

namespace model {
namespace {

using Kind = JsonValue::Kind;

constexpr std::size_t kColumns = 100;
constexpr std::size_t kIndent = 2;

bool isContainer(const JsonValue& value)
{
    return value.kind == Kind::list || value.kind == Kind::object;
}

std::string memberName(const JsonValue& object, std::size_t i)
{
    return object.kind == Kind::object ? quotedJson(object.names[i]) + ": " : std::string();
}

/// Appends the value on one line; stops early, and answers false, once `out` is over `room` bytes.
bool appendCompact(const JsonValue& value, std::size_t room, std::string& out)
{
    if (!isContainer(value)) {
        out += value.kind == Kind::text ? quotedJson(value.text) : value.text;
        return out.size() <= room;
    }
    out += value.kind == Kind::list ? '[' : '{';
    for (std::size_t i = 0; i < value.items.size(); ++i) {
        out += (i == 0 ? "" : ", ") + memberName(value, i);
        if (!appendCompact(value.items[i], room, out))
            return false;
    }
    out += value.kind == Kind::list ? ']' : '}';
    return out.size() <= room;
}

void appendLaidOut(const JsonValue& value, std::size_t indent, std::size_t taken, std::string& out)
{
    std::string line;
    // The document itself is always opened up, however small.
    const std::size_t room = taken + 1 < kColumns ? kColumns - taken - 1 : 0;
    if (!isContainer(value) || value.items.empty() ||
        (indent > 0 && appendCompact(value, room, line))) {
        out += line.empty() ? compactJson(value) : line;
        return;
    }
    const std::string start(indent + kIndent, ' ');
    out += value.kind == Kind::list ? "[\n" : "{\n";
    for (std::size_t i = 0; i < value.items.size(); ++i) {
        const std::string head = start + memberName(value, i);
        out += head;
        appendLaidOut(value.items[i], indent + kIndent, head.size(), out);
        out += i + 1 < value.items.size() ? ",\n" : "\n";
    }
    out += std::string(indent, ' ') + (value.kind == Kind::list ? "]" : "}");
}

} // namespace

std::string compactJson(const JsonValue& value)
{
    std::string out;
    appendCompact(value, std::string::npos, out);
    return out;
}

std::string laidOutJson(const JsonValue& value)
{
    std::string out;
    appendLaidOut(value, 0, 0, out);
    return out + "\n";
}

} // namespace model
