// What libFuzzer calls; UNDERBOUGH_FUZZ_TARGET is one of targets.hpp's functions.
#include "tests/fuzz/targets.hpp"

#include <csignal>
#include <cstddef>
#include <cstdint>

#include <sys/time.h>

namespace {

// libFuzzer's own limits go by the clock: on a busy machine every input would look slow.
void limitProcessorTime(int seconds)
{
    const itimerval limit = {.it_interval = {}, .it_value = {.tv_sec = seconds, .tv_usec = 0}};
    setitimer(ITIMER_PROF, &limit, nullptr);
}

} // namespace

extern "C" int LLVMFuzzerInitialize(int*, char***)
{
    std::signal(SIGPROF, [](int) { fuzz::hold(false, "one input takes less than 20 s"); });
    // What `ulimit -t` sends; libFuzzer takes the other as the wish to end with its figures told.
    std::signal(SIGXCPU, [](int) { std::raise(SIGUSR1); });
    return 0;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t count)
{
    limitProcessorTime(20);
    fuzz::UNDERBOUGH_FUZZ_TARGET({reinterpret_cast<const char*>(bytes), count});
    limitProcessorTime(0);
    return 0;
}
