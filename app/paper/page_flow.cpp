#include "app/paper/page_flow.hpp"

#include "app/paper/figures.hpp"
#include "app/words/wording.hpp"

#include <QLocale>
#include <QTextLayout>

#include <algorithm>
#include <cmath>
#include <memory>
#include <span>

namespace app {
namespace {

constexpr double pt(double points)
{
    return points * kPerPoint;
}

constexpr double kMargin = pt(42.0); // 15 mm: inside what every printer reaches
constexpr double kFootLine = pt(30.0);
constexpr double kCellPad = pt(3.5);
constexpr double kGap = pt(10.0);  // between figures
constexpr double kLine = pt(21.0); // between lines to write on
constexpr double kBody = pt(9.5);  // sizes of letters
constexpr double kSmall = pt(8.0);
constexpr double kCell = pt(8.5);
constexpr double kHeading = pt(12.5);
constexpr double kTitle = pt(18.0);
const QColor kInk(0x1a, 0x1a, 0x1a);
const QColor kRule(0x88, 0x88, 0x88);

/// Text broken into lines of one width.
class LaidText {
public:
    LaidText(const QString& text, const QFont& font, double width)
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
    [[nodiscard]] double height() const { return height_; }
    [[nodiscard]] int lines() const { return layout_->lineCount(); }
    [[nodiscard]] double top(int line) const { return layout_->lineAt(line).y(); }
    [[nodiscard]] double bottom(int line) const
    {
        return line + 1 < lines() ? top(line + 1) : height_;
    }
    /// Draws the lines [from, to) with the first of them at `at`.
    void draw(QPainter& painter, QPointF at, int from, int to) const
    {
        const double up = from < lines() ? top(from) : 0.0;
        for (int line = from; line < to; ++line)
            layout_->lineAt(line).draw(&painter, at - QPointF(0.0, up));
    }

private:
    std::shared_ptr<QTextLayout> layout_;
    double height_{};
};

/// Puts blocks one under the other, page after page.
class PageFlow {
public:
    /// \param letters  size of the letters, 1 as usual
    PageFlow(QSizeF page, double letters) : page_(page), letters_(letters)
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
        const auto head = laidRow(table.head, table, true);
        keep(head.height + laidRow(table.rows.front(), table, false).height);
        if (!table.head.isEmpty())
            drawRow(head, true);
        for (const auto& row : table.rows)
            addRow(row, table, head);
        y_ += pt(6.0);
    }

    void add(const Figures& row)
    {
        const auto laid = laidFigures(row);
        keep(laid.height);
        for (std::size_t i = 0; i < row.figures.size(); ++i) {
            const double left = kMargin + static_cast<double>(i) * (laid.each + kGap);
            draw(row.figures[i], {left, y_, laid.each, laid.tallest});
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
    struct LaidRow {
        std::vector<LaidText> cells;
        std::vector<double> lefts;
        double height{};
    };

    struct LaidFigures {
        double each{};    ///< width of one
        double tallest{}; ///< without its caption
        double height{};  ///< all in all
        std::vector<LaidText> captions;
    };

    [[nodiscard]] LaidFigures laidFigures(const Figures& row) const
    {
        LaidFigures laid;
        const auto count = static_cast<double>(row.figures.size());
        laid.each = (width() - kGap * (count - 1.0)) / count;
        double words = 0.0;
        for (const auto& figure : row.figures) {
            laid.tallest =
                std::max(laid.tallest, laid.each * figure.canvas.height() / figure.canvas.width());
            laid.captions.emplace_back(figure.caption, font(kSmall), laid.each);
            words = std::max(words, laid.captions.back().height());
        }
        laid.tallest = std::min(laid.tallest, bodyHeight() - words - pt(14.0));
        laid.height = laid.tallest + words + pt(14.0);
        return laid;
    }

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
        return laidRow(table.head, table, true).height +
               laidRow(table.rows.front(), table, false).height;
    }
    [[nodiscard]] double least(const Figures& row) const { return laidFigures(row).height; }
    [[nodiscard]] double least(const NoteLines& lines) const { return kLine * lines.atLeast; }
    [[nodiscard]] double least(const NewPage&) const { return 0.0; }

    [[nodiscard]] QFont font(double size, bool bold = false) const
    {
        return paperFont(static_cast<int>(size * letters_), bold);
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

    [[nodiscard]] LaidRow laidRow(const QStringList& cells, const Table& table, bool head) const
    {
        LaidRow row;
        double left = kMargin;
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const double wide = width() * table.widths[static_cast<std::size_t>(i)];
            row.lefts.push_back(left + kCellPad);
            row.cells.emplace_back(cells[i], font(kCell, head), wide - 2.0 * kCellPad);
            row.height = std::max(row.height, row.cells.back().height() + 2.0 * kCellPad);
            left += wide;
        }
        return row;
    }

    void addRow(const QStringList& cells, const Table& table, const LaidRow& head)
    {
        const auto row = laidRow(cells, table, false);
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
        mark([row, box, head](QPainter& painter) {
            if (head)
                painter.fillRect(box, QColor(0xe9, 0xe9, 0xe9));
            painter.setPen(kInk);
            for (std::size_t i = 0; i < row.cells.size(); ++i)
                row.cells[i].draw(painter, {row.lefts[i], box.top() + kCellPad}, 0,
                                  row.cells[i].lines());
            painter.setPen(QPen(kRule, pt(head ? 0.9 : 0.5)));
            painter.drawLine(box.bottomLeft(), box.bottomRight());
        });
        y_ += row.height;
    }

    void draw(const Figure& figure, const QRectF& room)
    {
        const double scale =
            std::min(room.width() / figure.canvas.width(), room.height() / figure.canvas.height());
        const QSizeF size = figure.canvas * scale;
        const QPointF at = room.topLeft() + QPointF((room.width() - size.width()) / 2.0, 0.0);
        mark([figure, scale, size, at](QPainter& painter) {
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
        });
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
    double letters_;
    LaidSheet sheet_;
    double y_{};
};

LaidSheet laidWith(const Sheet& sheet, QSizeF page, double letters)
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
    auto laid = laidWith(sheet, page, 1.0);
    for (int percent = 95; percent >= 70; percent -= 5) {
        if (sheet.mostPages == 0 || laid.pages.size() <= sheet.mostPages)
            break;
        laid = laidWith(sheet, page, percent / 100.0);
    }
    laid.title = sheet.title;
    return laid;
}

void paintPage(QPainter& painter, const LaidPage& page)
{
    for (const auto& mark : page.marks)
        mark(painter);
}

QPageSize::PageSizeId usualPaper(const QLocale& locale)
{
    using L = QLocale;
    switch (locale.territory()) {
    case L::UnitedStates:
    case L::Canada:
    case L::Mexico:
    case L::Belize:
    case L::Chile:
    case L::Colombia:
    case L::CostaRica:
    case L::ElSalvador:
    case L::Guatemala:
    case L::Nicaragua:
    case L::Panama:
    case L::Philippines:
    case L::PuertoRico:
    case L::Venezuela:
        return QPageSize::Letter;
    default:
        return QPageSize::A4;
    }
}

} // namespace app
