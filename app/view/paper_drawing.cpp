#include "app/view/paper_drawing.hpp"

#include <QPainter>

namespace app {

PaperDrawing::PaperDrawing(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setFillColor(Qt::white);
    setOpaquePainting(true);
}

void PaperDrawing::setPaper(PaperViewModel* paper)
{
    if (paper == paper_)
        return;
    if (paper_)
        disconnect(paper_, nullptr, this, nullptr);
    paper_ = paper;
    if (paper_)
        connect(paper_, &PaperViewModel::changed, this, [this] { update(); });
    emit paperChanged();
    update();
}

void PaperDrawing::setPage(int page)
{
    if (page == page_)
        return;
    page_ = page;
    emit pageChanged();
    update();
}

void PaperDrawing::paint(QPainter* painter)
{
    if (paper_)
        paper_->paint(*painter, page_, width());
}

} // namespace app
