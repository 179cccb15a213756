#pragma once

#include <string>

namespace model {

/// One thing wrong in a garden document: where, what stands there, what should.
struct Fault {
    std::string pointer;  ///< JSON pointer (RFC 6901) to the value; empty: the document
    std::string found;    ///< "-0.3", "a text", "nothing"
    std::string expected; ///< "a diameter in metres, over 0 and up to 5"
};

/// The fault as one line without a final full stop: "/trees/0/limbs/2: found ..., expected ...".
[[nodiscard]] std::string oneLine(const Fault& fault);

} // namespace model
