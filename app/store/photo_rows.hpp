#pragma once

#include "app/store/garden_store.hpp"

namespace app {

class Connection;

/// The longer side of a thumbnail, px.
inline constexpr int kThumbnail_px = 256;

/// The photo of that name as it came from the camera, or nothing.
/// \throws StoreError
[[nodiscard]] QByteArray loadPhoto(const QString& path, const std::string& name);
/// Any picture as a small JPEG; nothing when it can't be drawn.
[[nodiscard]] QByteArray smallPhoto(const QByteArray& bytes);

/// The photo of that name as a small JPEG; nothing when there is none or it could not be drawn.
/// \throws StoreError
[[nodiscard]] QByteArray loadThumbnail(const QString& path, const std::string& name);
/// The names of all photos in a file.
/// \throws StoreError
[[nodiscard]] std::vector<std::string> photoNames(const QString& path);

/// Within somebody's transaction.
/// \throws StoreError
void writePhoto(Connection& connection, const std::string& name, const QByteArray& bytes);
[[nodiscard]] QByteArray readPhoto(Connection& connection, const std::string& name);

/// Gives photos of an older file their thumbnails.
void addThumbnails(Connection& connection);

} // namespace app
