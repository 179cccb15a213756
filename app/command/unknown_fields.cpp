#include "app/command/unknown_fields.hpp"

#include "model/document/fields.hpp"
#include "model/document/path.hpp"

#include <string_view>

namespace app {
namespace {

/// Walks the document's form (model/document/fields.hpp) and notes what lies outside it.
class UnknownFields {
public:
    UnknownFields(const model::Path& path, std::vector<std::string>& found)
        : path_(path), found_(found)
    {
    }

    void constant(std::string_view, std::string_view) {}
    void version(std::string_view, int) {}
    template <typename Member>
    void required(std::string_view name, const Member& member)
    {
        descend(path_ / name, member);
    }
    template <typename Member>
    void defaulted(std::string_view, const Member&)
    {
    }
    template <typename Member>
    void blank(std::string_view name, const std::optional<Member>& member)
    {
        if (member)
            descend(path_ / name, *member);
    }
    template <typename Member>
    void list(std::string_view name, const std::vector<Member>& members)
    {
        descend(path_ / name, members);
    }
    void extras(const model::Extras& extras)
    {
        for (const auto& [name, json] : extras)
            found_.push_back((path_ / std::string_view(name)).pointer());
    }

private:
    template <typename Member>
    void descend(const model::Path& path, const Member& member)
    {
        UnknownFields inside(path, found_);
        if constexpr (requires { model::fields(inside, member); })
            model::fields(inside, member);
    }
    template <typename Item>
    void descend(const model::Path& path, const std::vector<Item>& items)
    {
        for (std::size_t i = 0; i < items.size(); ++i)
            descend(path / i, items[i]);
    }

    const model::Path& path_;
    std::vector<std::string>& found_;
};

} // namespace

std::vector<std::string> unknownFields(const model::Garden& garden)
{
    std::vector<std::string> found;
    const model::Path whole;
    UnknownFields visitor(whole, found);
    model::fields(visitor, garden);
    return found;
}

} // namespace app
