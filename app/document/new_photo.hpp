#pragma once

#include <QByteArray>
#include <QString>

#include <string>

namespace app {

/// The longest side of a photo as a page or a window shows it large, px.
inline constexpr int kLargePhoto_px = 2048;
/// Larger files are refused: a garden file is to be carried about.
inline constexpr qint64 kMostPhotoBytes = qint64{40} * 1024 * 1024;

/// A picture that a person hands in to be kept.
struct NewPhoto {
    std::string name; ///< what the garden will call it: "photos/north-side-1f2e3d4c.jpg"
    QByteArray bytes; ///< as they came
    QString problem;  ///< why it can't be taken, a sentence fit to show; empty: it can
};

/// Reads a picture file. The same picture gets the same name, another one a name of its own.
[[nodiscard]] NewPhoto readNewPhoto(const QString& path);

} // namespace app
