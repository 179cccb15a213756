#pragma once

#include <span>

namespace app {

/// The English of model::Fault and StoreError, as the code that refuses puts it, to be translated
/// in the context "Words". %1 stands for words or a text in quotes, %L1 for a figure.
[[nodiscard]] std::span<const char* const> faultPhrases();

} // namespace app
