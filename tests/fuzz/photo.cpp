#include "app/store/picture.hpp"
#include "tests/fuzz/targets.hpp"

#include <algorithm>

namespace fuzz {

void photo(std::string_view bytes)
{
    constexpr int kLongest_px = 200;
    const auto photo = QByteArray(bytes.data(), static_cast<qsizetype>(bytes.size()));
    const auto format = app::pictureFormat(photo);
    const auto whole = app::pictureSize_px(photo);
    const auto image = app::pictureOf(photo, kLongest_px);
    if (image.isNull())
        return;
    hold(!format.isEmpty(), "what can be drawn has a format");
    hold(std::max(image.width(), image.height()) <= kLongest_px, "no longer than was asked");
    hold(!whole.isValid() || (image.width() <= whole.width() && image.height() <= whole.height()),
         "never blown up");
}

} // namespace fuzz
