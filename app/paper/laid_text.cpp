#include "app/paper/laid_text.hpp"

#include <QPainter>
#include <QTextLayout>

#include <cmath>

namespace app {

LaidText::LaidText(const QString& text, const QFont& font, double width)
    : layout_(std::make_shared<QTextLayout>(
          QString(text).replace(QLatin1Char('\n'), QChar::LineSeparator), font))
{
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout_->setTextOption(option);
    layout_->setCacheEnabled(true);
    layout_->beginLayout();
    for (auto line = layout_->createLine(); line.isValid(); line = layout_->createLine()) {
        line.setLineWidth(width);
        line.setPosition({0.0, height_});
        height_ += std::ceil(line.height() * 1.08);
    }
    layout_->endLayout();
}

int LaidText::lines() const
{
    return layout_->lineCount();
}

double LaidText::top(int line) const
{
    return layout_->lineAt(line).y();
}

double LaidText::bottom(int line) const
{
    return line + 1 < lines() ? top(line + 1) : height_;
}

void LaidText::draw(QPainter& painter, QPointF at, int from, int to) const
{
    const double up = from < lines() ? top(from) : 0.0;
    for (int line = from; line < to; ++line)
        layout_->lineAt(line).draw(&painter, at - QPointF(0.0, up));
}

} // namespace app
