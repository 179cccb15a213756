#include "app/paper/laid_blocks.hpp"

#include "app/paper/figures.hpp"
#include "app/paper/page_measures.hpp"

#include <QPainter>

#include <algorithm>

namespace app {

QFont Letters::font(double size, bool bold) const
{
    return paperFont(static_cast<int>(size * scale), bold);
}

LaidRow laidRow(const QStringList& cells, const Table& table, double width, const Letters& letters,
                bool head)
{
    LaidRow row;
    double left = kMargin;
    for (qsizetype i = 0; i < cells.size(); ++i) {
        const double wide = width * table.widths[static_cast<std::size_t>(i)];
        row.lefts.push_back(left + kCellPad);
        row.cells.emplace_back(cells[i], letters.font(kCell, head), wide - 2.0 * kCellPad);
        row.height = std::max(row.height, row.cells.back().height() + 2.0 * kCellPad);
        left += wide;
    }
    return row;
}

void paintRow(QPainter& painter, const LaidRow& row, const QRectF& box, bool head)
{
    if (head)
        painter.fillRect(box, QColor(0xe9, 0xe9, 0xe9));
    painter.setPen(kInk);
    for (std::size_t i = 0; i < row.cells.size(); ++i)
        row.cells[i].draw(painter, {row.lefts[i], box.top() + kCellPad}, 0, row.cells[i].lines());
    painter.setPen(QPen(kRule, pt(head ? 0.9 : 0.5)));
    painter.drawLine(box.bottomLeft(), box.bottomRight());
}

LaidFigures laidFigures(const Figures& row, double width, double room, const Letters& letters)
{
    LaidFigures laid;
    const auto count = static_cast<double>(row.figures.size());
    laid.each = (width - kGap * (count - 1.0)) / count;
    double words = 0.0;
    for (const auto& figure : row.figures) {
        laid.tallest =
            std::max(laid.tallest, laid.each * figure.canvas.height() / figure.canvas.width());
        laid.captions.emplace_back(figure.caption, letters.font(kSmall), laid.each);
        words = std::max(words, laid.captions.back().height());
    }
    laid.tallest = std::min(laid.tallest, room - words - pt(14.0));
    laid.height = laid.tallest + words + pt(14.0);
    return laid;
}

std::function<void(QPainter&)> figureMark(const Figure& figure, const QRectF& room)
{
    const double scale =
        std::min(room.width() / figure.canvas.width(), room.height() / figure.canvas.height());
    const QSizeF size = figure.canvas * scale;
    const QPointF at = room.topLeft() + QPointF((room.width() - size.width()) / 2.0, 0.0);
    return [figure, scale, size, at](QPainter& painter) {
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
        painter.translate(at);
        painter.scale(scale, scale);
        painter.setClipRect(QRectF(QPointF(0, 0), figure.canvas));
        painter.setFont(paperFont(12));
        figure.paint(painter);
        painter.restore();
        painter.setPen(QPen(kRule, pt(0.5)));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(at, size));
    };
}

} // namespace app
