#pragma once

#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <QString>

#include <optional>

namespace app {

/// A garden as a file gave it, or why it could not be used.
struct GardenFile {
    std::optional<model::Garden> garden; ///< present exactly when `problem` is empty
    QString problem;                     ///< a sentence fit to show: what, where, how to mend it
};

/// Reads a garden of either form, told by the file's first bytes, and checks that it can be
/// reckoned with; leaves the file alone.
[[nodiscard]] GardenFile readGardenFile(const QString& path, const model::Tables& tables);

/// A photo of the garden of either form at `garden`; null when it can't be had.
[[nodiscard]] QByteArray readGardenPhoto(const QString& garden, const std::string& name);

/// Writes a garden in JSON form whole or not at all: a full disk or a crash leaves the old file.
/// Gives back why it failed, as a sentence fit to show; empty when the file is safely written.
[[nodiscard]] QString writeGardenFile(const QString& path, const model::Garden& garden);

} // namespace app
