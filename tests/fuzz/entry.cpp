// What libFuzzer calls; UNDERBOUGH_FUZZ_TARGET is one of targets.hpp's functions.
#include "tests/fuzz/targets.hpp"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t count)
{
    fuzz::UNDERBOUGH_FUZZ_TARGET({reinterpret_cast<const char*>(bytes), count});
    return 0;
}
