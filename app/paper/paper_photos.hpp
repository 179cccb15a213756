#pragma once

#include "app/format/units.hpp"
#include "app/paper/block.hpp"
#include "model/garden/garden.hpp"

#include <QByteArray>
#include <QImage>

#include <functional>
#include <string>
#include <vector>

namespace app {

/// A photo that stands on a tree's page.
struct PaperPhoto {
    std::string tree; ///< id
    std::string file; ///< as the garden calls it
    QString words;    ///< under it
    QByteArray bytes;
    QImage image; ///< once drawPhotos() made it
};

/// Photos that go on one tree's page at the most.
inline constexpr std::size_t kPhotosOnPaper = 3;

/// For each tree its own photos, then those of the newest visits, as far as `fetch` has them.
/// \param onlyTree  id; empty: every tree
[[nodiscard]] std::vector<PaperPhoto>
paperPhotos(const model::Garden& garden, const std::string& onlyTree, const Units& units,
            const std::function<QByteArray(const std::string& file)>& fetch);

/// Makes pictures of bytes; what can't be drawn is dropped.
void drawPhotos(std::vector<PaperPhoto>& photos);

/// The photos of one tree side by side, in half-tone as they print; empty where there are none.
[[nodiscard]] Figures photoFigures(const std::vector<PaperPhoto>& photos, const std::string& tree,
                                   QSizeF canvas);

} // namespace app
