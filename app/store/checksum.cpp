#include "app/store/checksum.hpp"

#include <boost/crc.hpp>

#include <string>

namespace app {
namespace {

constexpr char kEnd = '\x1f';

using Crc = boost::crc_32_type;

} // namespace

Checksum::Checksum() : remainder_(Crc().get_interim_remainder()) {}

void Checksum::process(const char* bytes, std::size_t count)
{
    Crc crc(remainder_);
    crc.process_bytes(bytes, count);
    crc.process_byte(static_cast<unsigned char>(kEnd));
    remainder_ = crc.get_interim_remainder();
}

Checksum& Checksum::add(std::string_view text)
{
    process(text.data(), text.size());
    return *this;
}

Checksum& Checksum::add(std::int64_t number)
{
    return add(std::string_view(std::to_string(number)));
}

Checksum& Checksum::add(const QByteArray& bytes)
{
    process(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    return *this;
}

std::int64_t Checksum::value() const
{
    return Crc(remainder_).checksum();
}

} // namespace app
