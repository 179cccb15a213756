#pragma once

#include "app/drawing/side_painter.hpp"
#include "app/view/drawing_colours.hpp"
#include "app/view/plan_view_model.hpp"
#include "app/view/side_view_model.hpp"

#include <QFont>
#include <QQuickPaintedItem>

namespace app {

/// A drawing that is made anew whenever its view-model, its colours or its size change.
class Drawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(app::DrawingColours* colours READ colours WRITE setColours NOTIFY coloursChanged
                   REQUIRED FINAL)
    Q_PROPERTY(QFont font READ font WRITE setFont NOTIFY fontChanged FINAL)

public:
    explicit Drawing(QQuickItem* parent = nullptr);

    [[nodiscard]] DrawingColours* colours() const { return colours_; }
    void setColours(DrawingColours* colours);
    [[nodiscard]] const QFont& font() const { return font_; }
    void setFont(const QFont& font);

    void paint(QPainter* painter) final;

signals:
    void coloursChanged();
    void fontChanged();

protected:
    void geometryChange(const QRectF& to, const QRectF& from) override;
    virtual void draw(QPainter& painter, const DrawingPalette& colours) = 0;
    virtual void resized(QSizeF size); ///< draws it anew, unless the view-model lays it out

private:
    DrawingColours* colours_{};
    QFont font_;
};

/// The side view, drawn.
class SideDrawing : public app::Drawing {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(app::SideViewModel* side READ side WRITE setSide NOTIFY sideChanged REQUIRED FINAL)

public:
    using Drawing::Drawing;

    [[nodiscard]] SideViewModel* side() const { return side_; }
    void setSide(SideViewModel* side);

signals:
    void sideChanged();

protected:
    void draw(QPainter& painter, const DrawingPalette& colours) override;
    void resized(QSizeF size) override;

private:
    SideViewModel* side_{};
    SidePictures pictures_;
};

/// The plan, drawn.
class PlanDrawing : public app::Drawing {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(app::PlanViewModel* plan READ plan WRITE setPlan NOTIFY planChanged REQUIRED FINAL)

public:
    using Drawing::Drawing;

    [[nodiscard]] PlanViewModel* plan() const { return plan_; }
    void setPlan(PlanViewModel* plan);

signals:
    void planChanged();

protected:
    void draw(QPainter& painter, const DrawingPalette& colours) override;
    void resized(QSizeF size) override;

private:
    PlanViewModel* plan_{};
};

} // namespace app
