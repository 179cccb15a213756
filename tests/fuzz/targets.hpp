#pragma once

#include <string>
#include <string_view>

/// What a stranger's bytes are put through, one function for each way in. Each may refuse them as
/// its reader says it does; anything else (another exception, a result that breaks the law written
/// beside it) ends the program, which is how a fuzzer is told. `tests/fuzz/run` has them fuzzed;
/// replay_test.cpp puts all seeds and all that was ever found through them in the ordinary suite.
namespace fuzz {

/// A JSON text: refused in one line, or written in both layouts and read back the same.
void json(std::string_view bytes);

/// A garden in JSON: refused in lines, or written and read back equal.
void garden(std::string_view bytes);

/// The five tables of trees/, one after the other, each but the last closed by kNextTable.
void tables(std::string_view bytes);
inline constexpr char kNextTable = '\f';

/// A garden file: it opens or is refused, is checked, and what is recovered of it opens.
void gardenFile(std::string_view bytes);

/// A photo: its format, its size, and itself no longer than was asked.
void photo(std::string_view bytes);

/// Ends the program, saying which law was broken, unless it holds.
void hold(bool law, std::string_view said);

/// One line that a person can read: not empty, no line break or other control character.
[[nodiscard]] bool isOneLine(std::string_view text);

} // namespace fuzz
