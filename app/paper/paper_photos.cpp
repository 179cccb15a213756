#include "app/paper/paper_photos.hpp"

#include "app/paper/figures.hpp"
#include "app/store/picture.hpp"
#include "app/words/wording.hpp"
#include "model/growth/measured_growth.hpp"

#include <algorithm>

namespace app {
namespace {

constexpr int kPrinted_px = 1200; // 200 dots to the inch on 15 cm

QString wordsOf(const model::Photo& photo, const QString& when)
{
    QStringList parts;
    if (!photo.note.empty())
        parts << QString::fromStdString(photo.note);
    if (!when.isEmpty())
        parts << when;
    if (photo.viewBearing_deg)
        parts << Words::tr("looking %1").arg(Units::bearing(*photo.viewBearing_deg));
    return capitalised(parts.isEmpty() ? Words::tr("photo") : parts.join(QStringLiteral(", ")));
}

class Gathering {
public:
    Gathering(const model::Tree& tree, const std::function<QByteArray(const std::string&)>& fetch,
              std::vector<PaperPhoto>& all)
        : tree_(tree), fetch_(fetch), all_(all)
    {
    }

    void add(const std::vector<model::Photo>& photos, const QString& when)
    {
        for (const auto& photo : photos) {
            if (taken_ == kPhotosOnPaper)
                return;
            if (const QByteArray bytes = fetch_(photo.file); !bytes.isEmpty()) {
                all_.push_back({tree_.id, photo.file, wordsOf(photo, when), bytes, {}});
                ++taken_;
            }
        }
    }

private:
    const model::Tree& tree_;
    const std::function<QByteArray(const std::string&)>& fetch_;
    std::vector<PaperPhoto>& all_;
    std::size_t taken_{};
};

} // namespace

std::vector<PaperPhoto> paperPhotos(const model::Garden& garden, const std::string& onlyTree,
                                    const Units& units,
                                    const std::function<QByteArray(const std::string& file)>& fetch)
{
    std::vector<PaperPhoto> all;
    for (const auto& tree : garden.trees) {
        if (!onlyTree.empty() && tree.id != onlyTree)
            continue;
        Gathering gathering(tree, fetch, all);
        gathering.add(tree.photos, {});
        auto visits = model::growth::visitsByDate(tree);
        std::ranges::reverse(visits);
        for (const auto* visit : visits)
            gathering.add(visit->photos, units.date(visit->date));
    }
    return all;
}

void drawPhotos(std::vector<PaperPhoto>& photos)
{
    for (auto& photo : photos)
        photo.image = pictureOf(photo.bytes, kPrinted_px);
    std::erase_if(photos, [](const PaperPhoto& photo) { return photo.image.isNull(); });
}

Figures photoFigures(const std::vector<PaperPhoto>& photos, const std::string& tree, QSizeF canvas)
{
    Figures row;
    for (const auto& photo : photos) {
        if (photo.tree != tree)
            continue;
        const auto paint = [image = photo.image, canvas](QPainter& painter) {
            QRectF at(QPointF(), QSizeF(image.size()).scaled(canvas, Qt::KeepAspectRatio));
            at.moveCenter(QRectF(QPointF(), canvas).center());
            painter.setRenderHint(QPainter::SmoothPixmapTransform);
            painter.drawImage(at, image);
        };
        const auto number = QString::number(row.figures.size() + 1);
        row.figures.push_back({QStringLiteral("%1-photo-%2").arg(fileName(tree), number),
                               photo.words, photo.words, canvas, paint});
    }
    return row;
}

} // namespace app
