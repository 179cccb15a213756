#pragma once

#include "app/drawing/plan_scene.hpp"
#include "app/view/side_view_model.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <vector>

namespace app {

/// The plan of the garden: what is drawn, which tree is chosen, and from where the side view looks.
class PlanViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(QPointF eye READ eye NOTIFY sceneChanged FINAL)
    Q_PROPERTY(bool hasEye READ hasEye NOTIFY sceneChanged FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY sceneChanged FINAL)
    Q_PROPERTY(bool isFitted READ isFitted NOTIFY sceneChanged FINAL)

public:
    PlanViewModel(Workspace& workspace, SideViewModel& side, QObject* parent = nullptr);

    [[nodiscard]] PlanScene scene() const;
    [[nodiscard]] QPointF eye() const; ///< where the gardener stands on the canvas
    [[nodiscard]] bool hasEye() const { return workspace_.tree() != nullptr; }
    /// The drawing in words, for those who don't see it.
    [[nodiscard]] QString summary() const;

    /// The map in place of the hour's shadow; null: the shadow.
    void showMap(std::shared_ptr<const SunMap> map);

    /// The whole garden is shown, and follows it; not since somebody zoomed or panned.
    [[nodiscard]] bool isFitted() const { return !held_ && !moved_; }
    [[nodiscard]] const PlanFrame& frame() const { return frame_; }
    /// While it is held, the frame stays where it is though the garden changes: a plan that
    /// rescales under the hand can't be drawn on.
    void hold(bool held);
    /// What is being drawn or changed, garden frame: an outline to mark, and a draft.
    struct Overlay {
        std::vector<model::Point2> chosen_m;
        bool chosenCloses{};
        std::vector<model::Point2> draft_m;
        bool draftCloses{};
    };
    void showOverlay(Overlay overlay);

    /// Larger (over 1) or smaller about a point of the canvas.
    Q_INVOKABLE void zoom(double x, double y, double factor);
    /// The same about the middle.
    Q_INVOKABLE void zoomMiddle(double factor);
    Q_INVOKABLE void pan(double right, double down);
    /// The whole garden again.
    Q_INVOKABLE void fit();
    Q_INVOKABLE void resize(double width, double height);
    /// Walks to the side of the chosen tree on which this point of the canvas lies.
    Q_INVOKABLE void walkTo(double x, double y);
    Q_INVOKABLE void chooseTreeAt(double x, double y);

signals:
    void sceneChanged();
    void frameChanged(); ///< places lie elsewhere on the canvas

private:
    void refit();
    [[nodiscard]] const model::load::LimbLoad* worstWind() const;

    Workspace& workspace_;
    SideViewModel& side_;
    QSizeF canvas_{400.0, 300.0};
    PlanFrame frame_;
    bool held_{};
    bool moved_{}; ///< zoomed or panned by hand
    Overlay overlay_;
    std::shared_ptr<const SunMap> map_;
};

} // namespace app
