#pragma once

#include "model/document/fault.hpp"

#include <QString>

#include <string>

/// What model::Fault says in English, in the person's language. The model has no languages: its
/// texts are recognised by the phrases they are put together from. What none of them fits stays
/// English, and so does everything where the program speaks English.
namespace app {

/// As model::oneLine(): "/trees/0/limbs/2: found ..., expected ...".
[[nodiscard]] QString faultLine(const model::Fault& fault);

/// A part of it, as model::Fault::found and expected are, or what was lost of a damaged garden:
/// "a diameter in metres over 0 and up to 5".
[[nodiscard]] QString faultWords(const std::string& english);

} // namespace app
