#include "app/store/carve.hpp"

#include <QFile>

#include <algorithm>
#include <array>
#include <bit>
#include <optional>
#include <span>

namespace app {
namespace {

using Bytes = std::span<const unsigned char>;

constexpr qint64 kFileHeader = 100;
constexpr std::uint64_t kUsualPage = 4096;
constexpr unsigned char kTableLeaf = 0x0d;
constexpr std::size_t kLeafHeader = 8;

std::uint64_t bigEndian(Bytes bytes)
{
    std::uint64_t value = 0;
    for (const auto byte : bytes)
        value = value << 8U | byte;
    return value;
}

/// Reads from the front of some bytes; past their end all is nothing.
class Reader {
public:
    explicit Reader(Bytes bytes) : bytes_(bytes) {}

    std::optional<Bytes> take(std::uint64_t count)
    {
        if (count > bytes_.size())
            return std::nullopt;
        const Bytes taken = bytes_.first(count);
        bytes_ = bytes_.subspan(count);
        return taken;
    }
    /// One to nine bytes, seven bits in each but the ninth, which has eight.
    std::optional<std::uint64_t> varint()
    {
        std::uint64_t value = 0;
        for (int i = 0; i < 9; ++i) {
            const auto byte = take(1);
            if (!byte)
                return std::nullopt;
            const std::uint64_t bits = (*byte)[0];
            if (i == 8)
                return value << 8U | bits;
            value = value << 7U | (bits & 0x7fU);
            if (bits < 0x80U)
                break;
        }
        return value;
    }
    [[nodiscard]] bool isEmpty() const { return bytes_.empty(); }

private:
    Bytes bytes_;
};

std::int64_t signedNumber(Bytes bytes)
{
    const auto bits = 64U - 8U * static_cast<unsigned>(bytes.size());
    return static_cast<std::int64_t>(bigEndian(bytes) << bits) >> bits;
}

QByteArray copied(Bytes bytes)
{
    return {reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size())};
}

std::optional<CarvedValue> valueOf(std::uint64_t type, Reader& body)
{
    constexpr std::array<std::uint64_t, 7> kWidths{0, 1, 2, 3, 4, 6, 8};
    if (type == 0)
        return CarvedValue();
    if (type == 8 || type == 9)
        return CarvedValue(static_cast<std::int64_t>(type - 8));
    if (type == 7 || type == 10 || type == 11) // a fraction, which no table of ours has; reserved
        return std::nullopt;
    const auto bytes = body.take(type < kWidths.size() ? kWidths.at(type) : (type - 12) / 2);
    if (!bytes)
        return std::nullopt;
    if (type < kWidths.size())
        return CarvedValue(signedNumber(*bytes));
    return type % 2 == 0 ? CarvedValue(copied(*bytes)) : CarvedValue(CarvedText{copied(*bytes)});
}

std::optional<CarvedRow> rowOf(Bytes payload)
{
    Reader sizes(payload);
    const auto headerSize = sizes.varint();
    if (!headerSize || *headerSize > payload.size())
        return std::nullopt;
    Reader header(payload.first(*headerSize));
    (void)header.varint(); // the size again
    Reader body(payload.subspan(*headerSize));
    CarvedRow row;
    while (!header.isEmpty()) {
        const auto type = header.varint();
        auto value = type ? valueOf(*type, body) : std::nullopt;
        if (!value)
            return std::nullopt;
        row.push_back(std::move(*value));
    }
    return row;
}

/// The pages of a file, by number from 1.
class Pages {
public:
    explicit Pages(Bytes file) : file_(file)
    {
        const auto told = file.size() >= kFileHeader ? bigEndian(file.subspan(16, 2)) : 0;
        const auto size = told == 1 ? 65536U : told;
        if (size >= 512 && std::has_single_bit(size))
            size_ = size;
    }

    [[nodiscard]] std::uint64_t count() const { return (file_.size() + size_ - 1) / size_; }
    [[nodiscard]] std::uint64_t size() const { return size_; }
    [[nodiscard]] Bytes page(std::uint64_t number) const
    {
        if (number < 1 || number > count())
            return {};
        const auto rest = file_.subspan((number - 1) * size_);
        return rest.first(std::min<std::size_t>(size_, rest.size()));
    }
    [[nodiscard]] std::size_t fileSize() const { return file_.size(); }

private:
    Bytes file_;
    std::uint64_t size_{kUsualPage};
};

/// How much of a payload stands in its cell; the rest is on overflow pages (1.6).
std::uint64_t localSize(std::uint64_t payload, std::uint64_t usable)
{
    const auto most = usable - 35;
    if (payload <= most)
        return payload;
    const auto least = (usable - 12) * 32 / 255 - 23;
    const auto fitting = least + (payload - least) % (usable - 4);
    return fitting <= most ? fitting : least;
}

std::optional<std::vector<unsigned char>> payloadOf(const Pages& pages, Bytes cell)
{
    Reader reader(cell);
    const auto size = reader.varint();
    const auto row = reader.varint();
    if (!size || !row || *size > pages.fileSize())
        return std::nullopt;
    const auto local = reader.take(localSize(*size, pages.size()));
    if (!local)
        return std::nullopt;
    std::vector<unsigned char> payload(local->begin(), local->end());
    auto pointer = payload.size() < *size ? reader.take(4) : std::optional(Bytes());
    while (payload.size() < *size) {
        const Bytes page = pointer ? pages.page(bigEndian(*pointer)) : Bytes();
        if (page.size() <= 4)
            return std::nullopt;
        const Bytes piece =
            page.subspan(4).first(std::min<std::size_t>(page.size() - 4, *size - payload.size()));
        payload.insert(payload.end(), piece.begin(), piece.end());
        pointer = page.first(4);
    }
    return payload;
}

void carvePage(const Pages& pages, std::uint64_t number,
               const std::function<void(const CarvedRow&)>& take)
{
    const Bytes page = pages.page(number);
    const std::size_t start = number == 1 ? kFileHeader : 0;
    if (page.size() < start + kLeafHeader || page[start] != kTableLeaf)
        return;
    const auto cells = bigEndian(page.subspan(start + 3, 2));
    for (std::size_t i = 0; i < cells; ++i) {
        const auto at = start + kLeafHeader + 2 * i;
        if (at + 2 > page.size())
            return;
        const auto cell = bigEndian(page.subspan(at, 2));
        if (cell >= page.size())
            continue;
        const auto payload = payloadOf(pages, page.subspan(cell));
        const auto row = payload ? rowOf(*payload) : std::nullopt;
        if (row)
            take(*row);
    }
}

} // namespace

void carveRows(const QString& path, const std::function<void(const CarvedRow&)>& take)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() == 0)
        return;
    const auto* bytes = file.map(0, file.size());
    if (bytes == nullptr)
        return;
    const Pages pages(Bytes(bytes, static_cast<std::size_t>(file.size())));
    for (std::uint64_t number = 1; number <= pages.count(); ++number)
        carvePage(pages, number, take);
}

} // namespace app
