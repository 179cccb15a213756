#pragma once

#include "app/drawing/side_scene.hpp"
#include "app/view/handle_model.hpp"
#include "app/view/workspace.hpp"
#include "model/sketch/grow.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <functional>

namespace app {

/// The side view of the chosen tree and what its handles and strokes do. Points are in pixels of
/// the drawing. One drag, from grab() to drop(), and one run of nudges of the same handle undo in
/// one step each.
class SideViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(app::HandleModel* handles READ handles CONSTANT FINAL)
    Q_PROPERTY(double bearing READ bearing WRITE setBearing NOTIFY sceneChanged FINAL)
    Q_PROPERTY(QString bearingText READ bearingText NOTIFY sceneChanged FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY sceneChanged FINAL)
    Q_PROPERTY(QString chosenLimb READ chosenLimb NOTIFY limbChanged FINAL)
    Q_PROPERTY(QString limbName READ limbName NOTIFY limbChanged FINAL)
    Q_PROPERTY(QString limbFacts READ limbFacts NOTIFY limbChanged FINAL)
    Q_PROPERTY(QString limbLoad READ limbLoad NOTIFY limbChanged FINAL)
    Q_PROPERTY(bool canDelete READ canDelete NOTIFY limbChanged FINAL)
    Q_PROPERTY(bool showsAfter READ showsAfter WRITE setShowsAfter NOTIFY sceneChanged FINAL)
    Q_PROPERTY(bool isFitted READ isFitted NOTIFY sceneChanged FINAL)
    Q_PROPERTY(bool hasAfter READ hasAfter NOTIFY sceneChanged FINAL)
    Q_PROPERTY(bool isSawing READ isSawing WRITE setSawing NOTIFY sawingChanged FINAL)
    Q_PROPERTY(QStringList loadWords READ loadWords CONSTANT FINAL)
    Q_PROPERTY(QStringList loadRanges READ loadRanges CONSTANT FINAL)
    Q_PROPERTY(QString loadSummary READ loadSummary CONSTANT FINAL)

public:
    explicit SideViewModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] HandleModel* handles() { return &handles_; }
    /// The way the gardener looks, degrees clockwise from north, 0 .. 360.
    [[nodiscard]] double bearing() const { return frame_.bearing_deg; }
    void setBearing(double bearing_deg);
    [[nodiscard]] QString bearingText() const;
    [[nodiscard]] const SideFrame& frame() const { return frame_; }
    /// To the gardener's right, garden frame, length one.
    [[nodiscard]] model::Vec3 across() const { return frame_.across(); }
    /// The drawing in words, for those who don't see it.
    [[nodiscard]] QString summary() const;
    [[nodiscard]] QString chosenLimb() const;
    [[nodiscard]] QString limbName() const;
    [[nodiscard]] QString limbFacts() const; ///< length, girth, where it joins
    [[nodiscard]] QString limbLoad() const;  ///< the load on it in a sentence
    [[nodiscard]] bool canDelete() const;
    [[nodiscard]] bool showsAfter() const { return workspace_.showsAfter(); }
    void setShowsAfter(bool after) { workspace_.setShowsAfter(after); }
    [[nodiscard]] bool hasAfter() const { return workspace_.treeAfter().has_value(); }
    /// A press on the drawing is a saw that tries a cut.
    [[nodiscard]] bool isSawing() const { return isSawing_; }
    void setSawing(bool sawing);
    [[nodiscard]] QStringList loadWords() const;
    [[nodiscard]] QStringList loadRanges() const;
    [[nodiscard]] QString loadSummary() const; ///< the legend in a sentence

    /// What lies beneath the drawing, asked for whenever it is drawn.
    void drawOver(std::function<SceneUnderlay()> underlay) { underlay_ = std::move(underlay); }
    void redraw() { emit sceneChanged(); }
    /// What to draw now; empty in a garden without trees.
    [[nodiscard]] SideScene scene() const;

    /// The whole tree is shown, and stays so; not since somebody zoomed or panned.
    [[nodiscard]] bool isFitted() const { return !moved_; }
    /// While it is held, the drawing doesn't rescale though the tree changes.
    void hold(bool held);
    /// Larger (over 1) or smaller about a point of the drawing; about its middle.
    Q_INVOKABLE void zoom(double x, double y, double factor);
    Q_INVOKABLE void zoomMiddle(double factor);
    Q_INVOKABLE void pan(double right, double down);
    Q_INVOKABLE void fit();
    Q_INVOKABLE void resize(double width, double height);
    Q_INVOKABLE void chooseLimb(const QString& limb);
    /// Chooses the limb drawn at a point, or none. While sawing: says where on it the saw is.
    Q_INVOKABLE void chooseLimbAt(double x, double y);

    Q_INVOKABLE void grab(const QString& limb, int station);
    Q_INVOKABLE void dragTo(double x, double y);
    Q_INVOKABLE void drop();
    /// Moves a station by whole steps of the reader's small length (5 cm or 2 inches), or of ten
    /// times that.
    Q_INVOKABLE void nudge(const QString& limb, int station, int stepsRight, int stepsUp,
                           bool far = false);
    /// Makes the wood at a station thicker or thinner by whole steps of 5 mm or a quarter inch.
    Q_INVOKABLE void thicken(const QString& limb, int station, int steps);

    /// A new limb in one stroke. Nothing comes of it if it starts away from all wood.
    Q_INVOKABLE void beginStroke(double x, double y);
    Q_INVOKABLE void extendStroke(double x, double y);
    Q_INVOKABLE bool endStroke();
    /// The stroke so far, as it is drawn.
    [[nodiscard]] QPolygonF stroke() const { return stroke_; }
    /// A short new limb that grows up and outwards from a place, to be moved by its end.
    Q_INVOKABLE void growLimb(const QString& limb, int station);

    Q_INVOKABLE void renameLimb(const QString& name);
    Q_INVOKABLE void deleteLimb();

signals:
    void sceneChanged();
    void limbChanged();
    void strokeChanged();
    void sawingChanged();
    void sawn(const QString& limb, double at_m);
    void limbGrown(const QString& limb, int station); ///< its end wants the keyboard's focus

private:
    void onTree();
    void refit();
    void refresh();
    void moveStation(const std::string& limb, std::size_t station, model::Vec3 to_m, int gesture);
    void takeRoot(const model::sketch::Grip& from, const model::sketch::Stroke& stroke);
    [[nodiscard]] double leafShare() const;
    [[nodiscard]] std::optional<LimbShade> shade(const std::string& limb) const;

    Workspace& workspace_;
    std::function<SceneUnderlay()> underlay_;
    HandleModel handles_;
    SideFrame frame_;
    QSizeF canvas_{800.0, 500.0};
    std::string fittedTree_;
    bool moved_{};          ///< zoomed or panned by hand
    bool isHeld_{};         ///< by hold()
    mutable KeptSide kept_; ///< how limbs were drawn last
    bool isSawing_{};

    struct Held {
        std::string limb;
        std::size_t station{};
        double depth_m{};
        int gesture{};
    };
    std::optional<Held> held_;
    std::optional<Held> nudged_; ///< so that a run of key presses is one step
    std::optional<model::sketch::Grip> strokeFrom_;
    QPolygonF stroke_;
};

} // namespace app
