#pragma once

#include "model/document/fault.hpp"

#include <QString>

/// What model::Fault says in English, in the person's language. The model has no languages: its
/// texts are recognised by the phrases they are put together from. What none of them fits stays
/// English, and so does everything where the program speaks English.
namespace app {

/// As model::oneLine(): "/trees/0/limbs/2: found ..., expected ...".
[[nodiscard]] QString faultLine(const model::Fault& fault);

/// What is needed there: "a diameter in metres over 0 and up to 5".
[[nodiscard]] QString neededWords(const model::Fault& fault);

} // namespace app
