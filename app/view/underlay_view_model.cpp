#include "app/view/underlay_view_model.hpp"

#include "app/document/new_photo.hpp"
#include "app/drawing/photo_lay.hpp"
#include "app/store/picture.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

constexpr double kSeenWithin_deg = 12.0; // of the bearing that it was laid for

double apart_deg(double a, double b)
{
    return std::abs(std::remainder(a - b, 360.0));
}

bool liesUnder(const model::Photo& photo)
{
    return photo.underlay && photo.metresPerPixel && photo.viewBearing_deg;
}

} // namespace

UnderlayViewModel::UnderlayViewModel(Workspace& workspace, SideViewModel& side, QObject* parent)
    : QObject(parent), workspace_(workspace), side_(side)
{
    side_.drawOver([this] { return underlay(); });
    connect(&workspace_.document(), &Document::replaced, this, [this] { loaded_.clear(); });
    connect(&workspace_, &Workspace::treeChanged, this, &UnderlayViewModel::changed);
    connect(&side_, &SideViewModel::sceneChanged, this, &UnderlayViewModel::changed);
}

std::optional<std::size_t> UnderlayViewModel::current() const
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return std::nullopt;
    std::optional<std::size_t> nearest;
    double apart = kSeenWithin_deg;
    for (std::size_t i = 0; i < tree->photos.size(); ++i) {
        const auto& photo = tree->photos[i];
        if (!liesUnder(photo) || apart_deg(*photo.viewBearing_deg, side_.bearing()) > apart)
            continue;
        nearest = i;
        apart = apart_deg(*photo.viewBearing_deg, side_.bearing());
    }
    return nearest;
}

const model::Photo* UnderlayViewModel::photo() const
{
    const auto index = current();
    return index ? &workspace_.tree()->photos[*index] : nullptr;
}

QString UnderlayViewModel::elsewhere() const
{
    const auto* tree = workspace_.tree();
    if (!tree || isThere())
        return {};
    for (const auto& photo : tree->photos)
        if (liesUnder(photo))
            return tr("A photo lies under the view %1.")
                .arg(Units::bearing(*photo.viewBearing_deg));
    return {};
}

void UnderlayViewModel::lookThatWay()
{
    for (const auto& photo : workspace_.tree()->photos)
        if (liesUnder(photo))
            side_.setBearing(*photo.viewBearing_deg);
}

QStringList UnderlayViewModel::nameFilters() const
{
    return {tr("Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG *.webp *.tif *.tiff *.bmp)"),
            tr("All files (*)")};
}

void UnderlayViewModel::setTool(Tool tool)
{
    tool_ = tool;
    points_.clear();
    run_ = nullptr;
    emit changed();
    side_.redraw();
}

QString UnderlayViewModel::hint() const
{
    switch (tool()) {
    case Move:
        return tr("Drag the photo until its stem stands on the drawn one. Arrow keys move it too.");
    case Length:
        return points_.empty()      ? tr("Press one end of something whose length you know, "
                                              "beside the stem: a pole, a person, a door.")
               : points_.size() < 2 ? tr("Now the other end.")
                                    : tr("How long is it?");
    case Upright:
        return points_.empty() ? tr("Press a point low down on an edge that is upright in truth: "
                                    "a wall, a plumb line. Best far from the middle.")
                               : tr("Now a point high up on the same edge.");
    case None:
        break;
    }
    return isThere() ? QString()
                     : tr("Drop a picture on the drawing, or choose one. Look the way it was taken "
                          "first.");
}

QString UnderlayViewModel::lengthExample() const
{
    return workspace_.units().length(2.0);
}

double UnderlayViewModel::opacity() const
{
    return photo() ? photo()->underlay->opacity : 0.0;
}

QString UnderlayViewModel::opacityText() const
{
    return workspace_.units().share(opacity());
}

double UnderlayViewModel::turned() const
{
    return photo() ? photo()->underlay->turned_deg : 0.0;
}

QString UnderlayViewModel::turnedText() const
{
    return workspace_.units().angle(turned());
}

QString UnderlayViewModel::tiltText() const
{
    const double tilt = photo() ? photo()->underlay->tilt_deg : 0.0;
    const auto& units = workspace_.units();
    if (std::abs(tilt) < 0.5)
        return {};
    return tilt > 0.0 ? tr("The camera looked up by %1.").arg(units.angle(tilt))
                      : tr("The camera looked down by %1.").arg(units.angle(-tilt));
}

bool UnderlayViewModel::lay(const QUrl& file)
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return false;
    const auto picture = readNewPhoto(file.toLocalFile());
    if (!picture.problem.isEmpty()) {
        workspace_.say(picture.problem);
        return false;
    }
    workspace_.document().addPhoto(picture.name, picture.bytes);
    auto after = *tree;
    if (const auto index = current())
        after.photos[*index].underlay.reset();
    auto laid = std::ranges::find(after.photos, picture.name, &model::Photo::file);
    if (laid == after.photos.end())
        laid = after.photos.insert(laid, {picture.name, {}, {}, {}, {}});
    // Until two clicks say better: the tree fills four fifths of it, a tenth above its lower edge.
    const double height_px = pictureSize_px(picture.bytes).height();
    laid->viewBearing_deg = side_.bearing();
    laid->metresPerPixel = model::height_m(*tree) / (0.8 * height_px);
    laid->underlay.emplace().foot_px = {0.0, 0.4 * height_px};
    const bool done = workspace_.changeTree(tr("lay a photo under it"), std::move(after));
    setTool(Move);
    return done;
}

void UnderlayViewModel::takeAway()
{
    const auto index = current();
    if (!index)
        return;
    auto after = *workspace_.tree();
    after.photos[*index].underlay.reset();
    setTool(None);
    workspace_.changeTree(tr("take the photo away"), std::move(after));
}

void UnderlayViewModel::change(const QString& name, const model::Photo& photo, int gesture)
{
    auto after = *workspace_.tree();
    after.photos[*current()] = photo;
    workspace_.changeTree(name, std::move(after), gesture);
}

int UnderlayViewModel::runOf(const char* what)
{
    if (run_ != what)
        gesture_ = workspace_.document().newGesture();
    run_ = what;
    return gesture_;
}

QPointF UnderlayViewModel::toPicture(QPointF canvas) const
{
    return photoToCanvas(*photo(), picture_, side_.frame()).inverted().map(canvas);
}

void UnderlayViewModel::press(double x, double y)
{
    if (tool() == None)
        return;
    load();
    if (image_.isNull())
        return;
    if (tool_ == Move) {
        held_ = QPointF(x, y);
        run_ = nullptr;
        return;
    }
    if (points_.size() == 2)
        points_.clear();
    points_.push_back(toPicture({x, y}));
    if (tool_ == Upright && points_.size() == 2)
        setUpright();
    emit changed();
    side_.redraw();
}

void UnderlayViewModel::dragTo(double x, double y)
{
    if (!held_)
        return;
    const QPointF by = QPointF(x, y) - *held_;
    held_ = QPointF(x, y);
    nudge(by.x(), by.y());
}

void UnderlayViewModel::release()
{
    held_.reset();
}

void UnderlayViewModel::nudge(double right, double down)
{
    if (!isThere())
        return;
    auto moved = *photo();
    const double perPixel = side_.frame().pixelsPerMetre * *moved.metresPerPixel;
    moved.underlay->foot_px =
        moved.underlay->foot_px - model::Point2{right / perPixel, down / perPixel};
    change(tr("move the photo"), moved, runOf("move"));
}

void UnderlayViewModel::setUpright()
{
    auto straight = *photo();
    const auto lay = uprightBy(*straight.underlay, points_[0], points_[1], picture_);
    points_.clear();
    if (!lay) {
        workspace_.say(tr("That edge can't be stood upright: press two points of a wall's edge, "
                          "one above the other."));
        return;
    }
    straight.underlay = lay;
    setTool(None);
    change(tr("set the photo upright"), straight);
}

bool UnderlayViewModel::setLength(const QString& typed)
{
    const auto length_m = workspace_.units().parseLength_m(typed);
    if (!wantsLength())
        return false;
    if (!length_m || !(*length_m > 0.0)) {
        workspace_.say(tr("Found “%1”, expected a length such as %2.").arg(typed, lengthExample()));
        return false;
    }
    auto scaled = *photo();
    const auto perPixel = scaleBy(*scaled.underlay, points_[0], points_[1], *length_m, picture_);
    if (!perPixel) {
        workspace_.say(tr("The two points lie too close together."));
        return false;
    }
    scaled.metresPerPixel = perPixel;
    setTool(None);
    change(tr("scale the photo"), scaled);
    return true;
}

void UnderlayViewModel::setOpacity(double opacity)
{
    if (!isThere() || opacity == this->opacity())
        return;
    auto paler = *photo();
    paler.underlay->opacity = std::clamp(opacity, 0.0, 1.0);
    change(tr("change how strong the photo is"), paler, runOf("opacity"));
}

void UnderlayViewModel::setTurned(double degrees)
{
    if (!isThere() || degrees == turned())
        return;
    load();
    if (image_.isNull())
        return;
    auto turned = *photo();
    auto lay = *turned.underlay;
    lay.turned_deg = std::clamp(degrees, -180.0, 180.0);
    turned.underlay = keepingFoot(*turned.underlay, lay, picture_);
    change(tr("turn the photo"), turned, runOf("turn"));
}

void UnderlayViewModel::load()
{
    const auto* wanted = photo();
    const std::string name = wanted ? wanted->file : std::string();
    if (name == loaded_)
        return;
    loaded_ = name;
    points_.clear();
    const auto bytes = wanted ? workspace_.document().photo(name) : QByteArray();
    image_ = pictureOf(bytes, kLargePhoto_px);
    picture_ = pictureSize_px(bytes);
}

SceneUnderlay UnderlayViewModel::underlay()
{
    load();
    const auto* shown = photo();
    if (!shown || image_.isNull())
        return {};
    const auto toCanvas = photoToCanvas(*shown, picture_, side_.frame());
    SceneUnderlay under;
    under.image = image_;
    under.opacity = shown->underlay->opacity;
    under.toCanvas = QTransform::fromScale(picture_.width() / image_.width(),
                                           picture_.height() / image_.height()) *
                     toCanvas;
    for (const QPointF point : points_)
        under.marks.push_back(toCanvas.map(point));
    return under;
}

} // namespace app
