#pragma once

#include <QByteArray>

#include <cstdint>
#include <string_view>

namespace app {

/// The CRC-32 of a row's values (as in ISO-HDLC, ITU-T V.42), by which a flipped bit in a number is
/// noticed. Each value is followed by a byte 0x1f, so that values can't run into each other.
class Checksum {
public:
    Checksum();
    Checksum& add(std::string_view text);
    Checksum& add(std::int64_t number);
    Checksum& add(const QByteArray& bytes);
    [[nodiscard]] std::int64_t value() const;

private:
    void process(const char* bytes, std::size_t count);

    std::uint32_t remainder_;
};

} // namespace app
