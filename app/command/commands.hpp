#pragma once

#include "app/command/arguments.hpp"
#include "app/command/streams.hpp"
#include "model/species/species.hpp"

/// The verbs of the command line. Each writes its answer to `streams.out` and gives back the exit
/// status.
namespace app {

/// What a verb works on.
struct Job {
    const Arguments& arguments;
    const model::Tables& tables;
    Streams streams;
};

/// \throws Refusal  on input that can't be used
[[nodiscard]] int assessCommand(const Job& job);
[[nodiscard]] int suggestCommand(const Job& job);
[[nodiscard]] int headroomCommand(const Job& job);
[[nodiscard]] int lightCommand(const Job& job);
[[nodiscard]] int dayCommand(const Job& job);
[[nodiscard]] int exportCommand(const Job& job);
[[nodiscard]] int importCommand(const Job& job);
[[nodiscard]] int recoverCommand(const Job& job);
[[nodiscard]] int sunCommand(const Job& job);
/// The only verb that writes to a garden file, and only when asked to add a visit.
[[nodiscard]] int diaryCommand(const Job& job);
[[nodiscard]] int dueCommand(const Job& job);
[[nodiscard]] int calendarCommand(const Job& job);
[[nodiscard]] int reportCommand(const Job& job);

/// Says every fault of a garden file, not only the first.
[[nodiscard]] int checkCommand(const Job& job);

/// The garden that a verb was given.
/// \throws Refusal  when it can't be used
[[nodiscard]] model::Garden gardenOf(const Job& job);

/// kAttention when something needs attention and the caller wants to know by the exit status.
[[nodiscard]] int statusOf(const Job& job, bool attention);

} // namespace app
