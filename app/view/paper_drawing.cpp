#include "app/view/paper_drawing.hpp"

#include "app/view/hear.hpp"

#include <QPainter>

namespace app {

PaperDrawing::PaperDrawing(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setFillColor(Qt::white);
    setOpaquePainting(true);
}

void PaperDrawing::setPaper(PaperViewModel* paper)
{
    const auto anew = [this] { update(); };
    if (!hear(paper_, paper, this, anew, &PaperViewModel::changed))
        return;
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
