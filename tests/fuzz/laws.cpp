#include "tests/fuzz/targets.hpp"

#include <algorithm>
#include <cstdlib>
#include <iostream>

namespace fuzz {

void hold(bool law, std::string_view said)
{
    if (law)
        return;
    std::cerr << "Broken: " << said << std::endl; // flushed: the next line ends the program
    std::abort();
}

bool isOneLine(std::string_view text)
{
    return !text.empty() && std::ranges::none_of(text, [](char letter) {
        return static_cast<unsigned char>(letter) < 0x20 || letter == 0x7f;
    });
}

} // namespace fuzz
