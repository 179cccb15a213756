#pragma once

#include <string>
#include <string_view>

namespace model {

/// One thing wrong in a garden document: where, what stands there, what should.
struct Fault {
    std::string pointer;  ///< JSON pointer (RFC 6901) to the value; empty: the document
    std::string found;    ///< "-0.3", "a text", "nothing"
    std::string expected; ///< "a diameter in metres, over 0 and up to 5"
    friend bool operator==(const Fault&, const Fault&) = default;
};

/// The fault as one line without a final full stop: "/trees/0/limbs/2: found ..., expected ...".
/// Control characters that a document brought in are escaped: it stays one line.
[[nodiscard]] std::string oneLine(const Fault& fault);

/// A text of the document in quotes, cut to a length that a line bears.
[[nodiscard]] std::string inQuotes(std::string_view text);

/// A number in its shortest exact form: "0.3", "-12", "1e+30", "NaN".
[[nodiscard]] std::string plain(double value);

} // namespace model
