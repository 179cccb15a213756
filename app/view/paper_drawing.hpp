#pragma once

#include "app/view/paper_view_model.hpp"

#include <QQuickPaintedItem>

namespace app {

/// One page of the report, as large as the item is wide.
class PaperDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(app::PaperViewModel* paper READ paper WRITE setPaper NOTIFY paperChanged FINAL)
    Q_PROPERTY(int page READ page WRITE setPage NOTIFY pageChanged FINAL)

public:
    explicit PaperDrawing(QQuickItem* parent = nullptr);

    [[nodiscard]] PaperViewModel* paper() const { return paper_; }
    void setPaper(PaperViewModel* paper);
    [[nodiscard]] int page() const { return page_; } ///< from 0
    void setPage(int page);

    void paint(QPainter* painter) override;

signals:
    void paperChanged();
    void pageChanged();

private:
    PaperViewModel* paper_{};
    int page_{};
};

} // namespace app
