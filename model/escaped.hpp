#pragma once

#include <string>
#include <string_view>

namespace model {

/// A text with each control character as \xNN, so that whatever a file brought in stays one line.
[[nodiscard]] inline std::string escaped(std::string_view text)
{
    constexpr std::string_view kHex = "0123456789abcdef";
    std::string line;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x20 || byte == 0x7f)
            line += {'\\', 'x', kHex[byte >> 4U], kHex[byte & 0x0FU]};
        else
            line += c;
    }
    return line;
}

} // namespace model
