#include "app/paper/page_flow.hpp"

#include "app/paper/laid_blocks.hpp"
#include "app/paper/page_measures.hpp"
#include "app/words/wording.hpp"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <span>

namespace app {
namespace {

/// Puts blocks one under the other, page after page.
class PageFlow {
public:
    PageFlow(QSizeF page, Letters letters) : page_(page), letters_(letters)
    {
        sheet_.page = page;
        start();
    }

    /// Starts a page if a block and what it may not be parted from find no room on this one.
    void keepTogether(std::span<const SheetBlock> blocks)
    {
        double height = 0.0;
        for (const auto& block : blocks) {
            height += std::visit([&](const auto& each) { return least(each); }, block);
            const auto* paragraph = std::get_if<Paragraph>(&block);
            if (!std::holds_alternative<Heading>(block) && !std::holds_alternative<Title>(block) &&
                !(paragraph && paragraph->leadsIn))
                break;
        }
        if (height <= bodyHeight())
            keep(height);
    }

    void add(const Title& title)
    {
        const LaidText text(title.text, font(kTitle, true), width());
        write(text, 0.0);
        y_ += pt(4.0);
    }

    void add(const Heading& heading)
    {
        const LaidText text(heading.text, font(kHeading, true), width());
        if (!atTop())
            y_ += pt(8.0);
        write(text, 0.0);
        const double y = y_ + pt(1.0);
        mark([y, left = kMargin, right = page_.width() - kMargin](QPainter& painter) {
            painter.setPen(QPen(kRule, pt(0.6)));
            painter.drawLine(QPointF(left, y), QPointF(right, y));
        });
        y_ += pt(5.0);
    }

    void add(const Paragraph& paragraph)
    {
        write(LaidText(paragraph.text, font(kBody, paragraph.strong), width()), 0.0);
        y_ += pt(4.0);
    }

    void add(const Bullet& bullet)
    {
        constexpr double kIndent = pt(11.0);
        const LaidText text(bullet.text, font(kBody), width() - kIndent);
        keep(std::min(text.height(), text.bottom(0) * 2.0));
        const QPointF dot(kMargin + pt(3.5), y_ + text.bottom(0) * 0.5);
        mark([dot](QPainter& painter) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(kInk);
            painter.drawEllipse(dot, pt(1.4), pt(1.4));
        });
        write(text, kIndent);
        y_ += pt(2.0);
    }

    void add(const Table& table)
    {
        if (table.rows.empty())
            return;
        const auto head = laidRow(table.head, table, width(), letters_, true);
        keep(head.height + laidRow(table.rows.front(), table, width(), letters_, false).height);
        if (!table.head.isEmpty())
            drawRow(head, true);
        for (const auto& row : table.rows)
            addRow(row, table, head);
        y_ += pt(6.0);
    }

    void add(const Figures& row)
    {
        const auto laid = laidFigures(row, width(), bodyHeight(), letters_);
        keep(laid.height);
        for (std::size_t i = 0; i < row.figures.size(); ++i) {
            const double left = kMargin + static_cast<double>(i) * (laid.each + kGap);
            mark(figureMark(row.figures[i], {left, y_, laid.each, laid.tallest}));
            mark([text = laid.captions[i],
                  at = QPointF(left, y_ + laid.tallest + pt(3.0))](QPainter& painter) {
                painter.setPen(kInk);
                text.draw(painter, at, 0, text.lines());
            });
        }
        y_ += laid.height;
    }

    void add(const NoteLines& lines)
    {
        keep(kLine * lines.atLeast);
        for (double y = y_ + kLine; y <= bottom(); y += kLine)
            mark([y, left = kMargin, right = page_.width() - kMargin](QPainter& painter) {
                painter.setPen(QPen(kRule, pt(0.5)));
                painter.drawLine(QPointF(left, y), QPointF(right, y));
            });
        y_ = bottom();
    }

    void add(const NewPage&)
    {
        if (!atTop())
            start();
    }

    LaidSheet finished(const QString& foot)
    {
        const auto count = sheet_.pages.size();
        for (std::size_t i = 0; i < count; ++i)
            drawFoot(sheet_.pages[i], foot, Words::tr("Page %1 of %2").arg(i + 1).arg(count));
        return std::move(sheet_);
    }

private:
    /// The least room that a block takes before it may go on on another page.
    [[nodiscard]] double least(const Title& title) const
    {
        return LaidText(title.text, font(kTitle, true), width()).height() + pt(4.0);
    }
    [[nodiscard]] double least(const Heading& heading) const
    {
        return LaidText(heading.text, font(kHeading, true), width()).height() + pt(13.0);
    }
    [[nodiscard]] double least(const Paragraph& paragraph) const
    {
        const LaidText text(paragraph.text, font(kBody, paragraph.strong), width());
        return paragraph.leadsIn ? text.height() + pt(4.0) : std::min(text.height(), pt(24.0));
    }
    [[nodiscard]] double least(const Bullet&) const { return pt(24.0); }
    [[nodiscard]] double least(const Table& table) const
    {
        if (table.rows.empty())
            return 0.0;
        return laidRow(table.head, table, width(), letters_, true).height +
               laidRow(table.rows.front(), table, width(), letters_, false).height;
    }
    [[nodiscard]] double least(const Figures& row) const
    {
        return laidFigures(row, width(), bodyHeight(), letters_).height;
    }
    [[nodiscard]] double least(const NoteLines& lines) const { return kLine * lines.atLeast; }
    [[nodiscard]] double least(const NewPage&) const { return 0.0; }

    [[nodiscard]] QFont font(double size, bool bold = false) const
    {
        return letters_.font(size, bold);
    }
    [[nodiscard]] double width() const { return page_.width() - 2.0 * kMargin; }
    [[nodiscard]] double bottom() const { return page_.height() - kMargin - kFootLine; }
    [[nodiscard]] double bodyHeight() const { return bottom() - kMargin; }
    [[nodiscard]] bool atTop() const { return y_ <= kMargin + 0.5; }

    void start()
    {
        sheet_.pages.emplace_back();
        y_ = kMargin;
    }

    void keep(double height)
    {
        if (y_ + height > bottom() && !atTop())
            start();
    }

    void mark(std::function<void(QPainter&)> draw)
    {
        sheet_.pages.back().marks.push_back(std::move(draw));
    }

    /// Lines that find no room on this page go on to the next.
    void write(const LaidText& text, double indent)
    {
        int from = 0;
        while (from < text.lines()) {
            int to = from;
            while (to < text.lines() && y_ + text.bottom(to) - text.top(from) <= bottom())
                ++to;
            if (to == from) {
                if (atTop())
                    to = from + 1;
                else {
                    start();
                    continue;
                }
            }
            mark([text, from, to, at = QPointF(kMargin + indent, y_)](QPainter& painter) {
                painter.setPen(kInk);
                text.draw(painter, at, from, to);
            });
            y_ += text.bottom(to - 1) - text.top(from);
            from = to;
        }
    }

    void addRow(const QStringList& cells, const Table& table, const LaidRow& head)
    {
        const auto row = laidRow(cells, table, width(), letters_, false);
        if (y_ + row.height > bottom() && !atTop()) {
            start();
            if (!table.head.isEmpty())
                drawRow(head, true);
        }
        drawRow(row, false);
    }

    void drawRow(const LaidRow& row, bool head)
    {
        const QRectF box(kMargin, y_, width(), row.height);
        mark([row, box, head](QPainter& painter) { paintRow(painter, row, box, head); });
        y_ += row.height;
    }

    void drawFoot(LaidPage& page, const QString& foot, const QString& number)
    {
        const double y = page_.height() - kMargin - kFootLine + pt(12.0);
        const QFont small = font(kSmall);
        const double numberWide = QFontMetricsF(small).horizontalAdvance(number) + pt(2.0);
        const LaidText left(foot, small, width() - numberWide - pt(12.0));
        const LaidText right(number, small, numberWide);
        page.marks.emplace_back([left, right, y, numberWide,
                                 wide = page_.width()](QPainter& painter) {
            painter.setPen(QPen(kRule, pt(0.5)));
            painter.drawLine(QPointF(kMargin, y - pt(3.0)), QPointF(wide - kMargin, y - pt(3.0)));
            painter.setPen(kInk);
            left.draw(painter, {kMargin, y}, 0, std::min(2, left.lines()));
            right.draw(painter, {wide - kMargin - numberWide, y}, 0, 1);
        });
    }

    QSizeF page_;
    Letters letters_;
    LaidSheet sheet_;
    double y_{};
};

LaidSheet laidWith(const Sheet& sheet, QSizeF page, Letters letters)
{
    PageFlow flow(page, letters);
    for (std::size_t i = 0; i < sheet.blocks.size(); ++i) {
        flow.keepTogether(std::span(sheet.blocks).subspan(i));
        std::visit([&](const auto& each) { flow.add(each); }, sheet.blocks[i]);
    }
    return flow.finished(sheet.foot);
}

} // namespace

LaidSheet laidOut(const Sheet& sheet, QPageSize::PageSizeId paper)
{
    const QSizeF page = QPageSize(paper).size(QPageSize::Point) * kPerPoint;
    auto laid = laidWith(sheet, page, {});
    for (int percent = 95; percent >= 70; percent -= 5) {
        if (sheet.mostPages == 0 || laid.pages.size() <= sheet.mostPages)
            break;
        laid = laidWith(sheet, page, {percent / 100.0});
    }
    laid.title = sheet.title;
    return laid;
}

void paintPage(QPainter& painter, const LaidPage& page)
{
    for (const auto& mark : page.marks)
        mark(painter);
}

} // namespace app
