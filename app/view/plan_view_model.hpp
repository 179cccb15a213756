#pragma once

#include "app/drawing/plan_scene.hpp"
#include "app/view/side_view_model.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace app {

/// The plan of the garden: what is drawn, which tree is chosen, and from where the side view looks.
class PlanViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(QPointF eye READ eye NOTIFY sceneChanged FINAL)
    Q_PROPERTY(bool hasEye READ hasEye NOTIFY sceneChanged FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY sceneChanged FINAL)

public:
    PlanViewModel(Workspace& workspace, SideViewModel& side, QObject* parent = nullptr);

    [[nodiscard]] PlanScene scene() const;
    [[nodiscard]] QPointF eye() const; ///< where the gardener stands on the canvas
    [[nodiscard]] bool hasEye() const { return workspace_.tree() != nullptr; }
    /// The drawing in words, for those who don't see it.
    [[nodiscard]] QString summary() const;

    /// The map in place of the hour's shadow; null: the shadow.
    void showMap(std::shared_ptr<const SunMap> map);

    Q_INVOKABLE void resize(double width, double height);
    /// Walks to the side of the chosen tree on which this point of the canvas lies.
    Q_INVOKABLE void walkTo(double x, double y);
    Q_INVOKABLE void chooseTreeAt(double x, double y);

signals:
    void sceneChanged();

private:
    void refit();

    Workspace& workspace_;
    SideViewModel& side_;
    QSizeF canvas_{400.0, 300.0};
    PlanFrame frame_;
    std::shared_ptr<const SunMap> map_;
};

} // namespace app
