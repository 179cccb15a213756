#pragma once

#include <QByteArray>
#include <QImage>
#include <QSize>

/// Pictures as cameras write them: JPEG, PNG and whatever else this Qt reads.
namespace app {

/// A picture turned as the camera was held (its EXIF orientation), its longer side at most
/// `longest_px`; never blown up. Null when it can't be drawn.
[[nodiscard]] QImage pictureOf(const QByteArray& bytes, int longest_px);

/// Its whole size, turned likewise; invalid when it can't be drawn.
[[nodiscard]] QSize pictureSize_px(const QByteArray& bytes);

/// "jpeg", "png", as Qt calls the format; empty when it is none that can be drawn.
[[nodiscard]] QByteArray pictureFormat(const QByteArray& bytes);

} // namespace app
