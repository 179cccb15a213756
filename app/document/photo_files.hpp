#pragma once

#include "model/garden/garden.hpp"

#include <QByteArray>
#include <QString>

#include <string>
#include <vector>

/// Photos of a garden in JSON form: files beside it, under the names that the garden gives them.
namespace app {

/// The names of all photos that a garden speaks of, each once, sorted.
[[nodiscard]] std::vector<std::string> photosOf(const model::Garden& garden);

/// A photo beside the garden document at `document`; null when there is none.
[[nodiscard]] QByteArray readPhotoFile(const QString& document, const std::string& name);

/// Writes one there, folders included, whole or not at all. A different file of that name stays.
/// Gives back why it failed, as a sentence fit to show.
[[nodiscard]] QString writePhotoFile(const QString& document, const std::string& name,
                                     const QByteArray& bytes);

} // namespace app
