#pragma once

#include "model/document/fault.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace model {

/// Why a text need not be parsed at all: too long, empty, or in an encoding other than UTF-8.
[[nodiscard]] std::optional<Fault> unreadableText(std::string_view text);

/// A parser's complaint in a gardener's words, with line and column.
/// \param read       how many bytes it had read, the offending one included
/// \param complaint  its message; only known phrases in it are used
[[nodiscard]] Fault syntaxFault(std::string_view text, std::size_t read,
                                std::string_view complaint);

} // namespace model
