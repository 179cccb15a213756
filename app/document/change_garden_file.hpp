#pragma once

#include "app/document/new_photo.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <QString>

#include <functional>
#include <string>
#include <vector>

namespace app {

/// Changes a garden in its file, of either form, without a window: one named step, which the window
/// can undo later if it is a garden file. Refused while a window has the file open.
/// \param edit  gives back why it can't be done, as a sentence, or nothing
/// \param photos  that the edit names, to be kept with it
/// \returns why it was not done, as a sentence fit to show, or nothing
[[nodiscard]] QString changeGardenFile(const QString& path, const model::Tables& tables,
                                       const QString& step,
                                       const std::function<QString(model::Garden&)>& edit,
                                       const std::vector<NewPhoto>& photos = {});

/// What came of an export or an import.
struct Transfer {
    QString problem;                  ///< a sentence fit to show; empty: it was done
    std::vector<std::string> missing; ///< photos that the garden names and that were not found
    std::size_t photos{};             ///< taken along
};

/// Writes a garden of either form as JSON, its photos as files beside that.
[[nodiscard]] Transfer exportGarden(const QString& from, const QString& to,
                                    const model::Tables& tables);

/// Writes a garden of either form as a new garden file, with its photos in it. A file that is there
/// already is left alone.
[[nodiscard]] Transfer importGarden(const QString& from, const QString& to,
                                    const model::Tables& tables);

} // namespace app
