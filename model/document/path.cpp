#include "model/document/path.hpp"

namespace model {

std::string escapedToken(std::string_view name)
{
    std::string token;
    for (const char c : name) {
        if (c == '~')
            token += "~0";
        else if (c == '/')
            token += "~1";
        else
            token += c;
    }
    return token;
}

std::string Path::pointer() const
{
    if (parent_ == nullptr)
        return {};
    std::string pointer = parent_->pointer();
    pointer += '/';
    pointer += index_ == kNoIndex ? escapedToken(name_) : std::to_string(index_);
    return pointer;
}

} // namespace model
