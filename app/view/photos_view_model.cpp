#include "app/view/photos_view_model.hpp"

#include "app/store/photo_rows.hpp"
#include "app/store/picture.hpp"
#include "app/words/diary_words.hpp"

#include <algorithm>

namespace app {
namespace {

using PhotoList = std::vector<model::Photo>;

constexpr int kSmallKept = 400; // pictures
constexpr int kLargeKept = 4;

/// The photos of a tree's visit, or its own; null when there is no such visit.
template <typename Tree>
auto* photosIn(Tree& tree, const QString& visit)
{
    if (visit.isEmpty())
        return &tree.photos;
    const auto found = std::ranges::find(tree.visits, visit.toStdString(), &model::Visit::id);
    return found == tree.visits.end() ? nullptr : &found->photos;
}

template <typename List>
auto named(List& photos, const QString& file)
{
    return std::ranges::find(photos, file.toStdString(), &model::Photo::file);
}

QStringList texts(const PhotoList* photos, std::string model::Photo::*member)
{
    QStringList all;
    if (photos)
        for (const auto& photo : *photos)
            all << QString::fromStdString(photo.*member);
    return all;
}

template <typename Make>
QImage kept(QCache<QString, QImage>& cache, const QString& file, Make make)
{
    if (const auto* image = cache.object(file))
        return *image;
    QImage image = make();
    if (!image.isNull())
        cache.insert(file, new QImage(image));
    return image;
}

} // namespace

PhotosViewModel::PhotosViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace), small_(kSmallKept), large_(kLargeKept)
{
    connect(&workspace_, &Workspace::treeChanged, this, &PhotosViewModel::onTree);
    connect(&workspace_.document(), &Document::gardenChanged, this, &PhotosViewModel::onTree);
    connect(&workspace_.document(), &Document::replaced, this, [this] {
        small_.clear();
        large_.clear();
        release();
        close();
    });
}

/// What is shown may have gone, by an undo or with its tree.
void PhotosViewModel::onTree()
{
    if (isOpen() && !shown())
        close();
    emit changed();
    emit shownChanged();
}

const PhotoList* PhotosViewModel::photosOf(const QString& visit) const
{
    const auto* tree = workspace_.tree();
    return tree ? photosIn(*tree, visit) : nullptr;
}

const model::Photo* PhotosViewModel::shown() const
{
    const auto* photos = photosOf(visit_);
    if (!photos)
        return nullptr;
    const auto found = named(*photos, file_);
    return found == photos->end() ? nullptr : &*found;
}

QStringList PhotosViewModel::treeFiles() const
{
    return texts(photosOf({}), &model::Photo::file);
}

QStringList PhotosViewModel::treeNotes() const
{
    return texts(photosOf({}), &model::Photo::note);
}

QStringList PhotosViewModel::nameFilters() const
{
    return {tr("Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG *.webp *.tif *.tiff *.bmp)"),
            tr("All files (*)")};
}

QString PhotosViewModel::note() const
{
    const auto* photo = shown();
    return photo ? QString::fromStdString(photo->note) : QString();
}

QString PhotosViewModel::title() const
{
    const auto* tree = workspace_.tree();
    const auto* species = workspace_.species();
    if (!isOpen() || !tree || !species)
        return {};
    const QString name = capitalised(treeName(*tree, *species));
    const auto visit = std::ranges::find(tree->visits, visit_.toStdString(), &model::Visit::id);
    if (visit == tree->visits.end())
        return tr("%1: photo %2 of %3").arg(name).arg(place() + 1).arg(count());
    return tr("%1, visit of %2: photo %3 of %4")
        .arg(name, workspace_.units().date(visit->date))
        .arg(place() + 1)
        .arg(count());
}

int PhotosViewModel::place() const
{
    const auto* photo = shown();
    return photo ? static_cast<int>(photo - photosOf(visit_)->data()) : -1;
}

int PhotosViewModel::count() const
{
    const auto* photos = photosOf(visit_);
    return photos ? static_cast<int>(photos->size()) : 0;
}

bool PhotosViewModel::add(const QString& visit, const QList<QUrl>& files)
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return false;
    auto after = *tree;
    auto* photos = photosIn(after, visit);
    if (!photos)
        return false;
    QString problem;
    int added = 0;
    for (const auto& file : files) {
        auto photo = readNewPhoto(file.toLocalFile());
        if (problem.isEmpty())
            problem = photo.problem;
        if (!photo.problem.isEmpty() ||
            std::ranges::find(*photos, photo.name, &model::Photo::file) != photos->end())
            continue;
        workspace_.document().addPhoto(photo.name, photo.bytes);
        photos->push_back({std::move(photo.name), {}, {}, {}, {}});
        ++added;
    }
    const QString step = added == 1 ? tr("a photo", "a step of history")
                                    : tr("%1 photos", "a step of history").arg(added);
    const bool done = added == 0 || workspace_.changeTree(step, std::move(after));
    if (done && !problem.isEmpty())
        workspace_.say(problem);
    return done && problem.isEmpty();
}

void PhotosViewModel::show(const QString& visit, const QString& file)
{
    visit_ = visit;
    file_ = file;
    if (!shown())
        file_.clear();
    emit shownChanged();
}

void PhotosViewModel::step(int by)
{
    const auto* photos = photosOf(visit_);
    const int to = place() + by;
    if (!photos || place() < 0 || to < 0 || to >= count())
        return;
    file_ = QString::fromStdString((*photos)[static_cast<std::size_t>(to)].file);
    emit shownChanged();
}

void PhotosViewModel::close()
{
    if (!isOpen())
        return;
    file_.clear();
    visit_.clear();
    emit shownChanged();
}

void PhotosViewModel::setNote(const QString& note)
{
    const auto* tree = workspace_.tree();
    if (!tree || !shown() || note.trimmed() == this->note())
        return;
    auto after = *tree;
    named(*photosIn(after, visit_), file_)->note = note.trimmed().toStdString();
    workspace_.changeTree(tr("words under a photo", "a step of history"), std::move(after));
}

void PhotosViewModel::remove()
{
    const auto* tree = workspace_.tree();
    if (!tree || !shown())
        return;
    auto after = *tree;
    auto& photos = *photosIn(after, visit_);
    photos.erase(named(photos, file_));
    const int was = place();
    const QString visit = visit_;
    if (!workspace_.changeTree(tr("a photo taken away", "a step of history"), std::move(after)))
        return;
    const auto* left = photosOf(visit);
    if (left && !left->empty())
        show(visit, QString::fromStdString(
                        (*left)[std::min(static_cast<std::size_t>(was), left->size() - 1)].file));
}

QByteArray PhotosViewModel::bytesOf(const QString& file) const
{
    const auto found = held_.find(file.toStdString());
    return found != held_.end() ? found->second : workspace_.document().photo(file.toStdString());
}

QImage PhotosViewModel::small(const QString& file) const
{
    return kept(small_, file, [&] {
        const auto found = held_.find(file.toStdString());
        return found != held_.end()
                   ? pictureOf(found->second, kThumbnail_px)
                   : QImage::fromData(workspace_.document().thumbnail(file.toStdString()));
    });
}

QImage PhotosViewModel::large(const QString& file) const
{
    return kept(large_, file, [&] { return pictureOf(bytesOf(file), kLargePhoto_px); });
}

void PhotosViewModel::hold(const NewPhoto& photo)
{
    held_[photo.name] = photo.bytes;
}

void PhotosViewModel::release()
{
    held_.clear();
}

} // namespace app
