#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace model {

/// A name as a token of a JSON pointer (RFC 6901): ~ and / escaped.
[[nodiscard]] std::string escapedToken(std::string_view name);

/// A place in a garden document, as a chain of steps that live on the stack of whoever walks it:
/// nothing is spelt out until a fault needs it.
class Path {
public:
    Path() = default; ///< the whole document

    [[nodiscard]] Path operator/(std::string_view name) const& { return {this, name, kNoIndex}; }
    [[nodiscard]] Path operator/(std::size_t index) const& { return {this, {}, index}; }
    Path operator/(std::string_view) && = delete; // a step from a passing place would dangle
    Path operator/(std::size_t) && = delete;

    /// As a JSON pointer (RFC 6901); empty for the whole document.
    [[nodiscard]] std::string pointer() const;

private:
    static constexpr std::size_t kNoIndex = static_cast<std::size_t>(-1);
    Path(const Path* parent, std::string_view name, std::size_t index)
        : parent_(parent), name_(name), index_(index)
    {
    }

    const Path* parent_{nullptr};
    std::string_view name_;
    std::size_t index_{kNoIndex};
};

} // namespace model
