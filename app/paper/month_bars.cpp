#include "app/paper/month_bars.hpp"

#include "app/words/wording.hpp"

#include <QPainter>

#include <algorithm>

namespace app {
namespace {

constexpr double kLeft = 34.0;      // pixels: the hours of the scale
constexpr double kTop = 26.0;       // the legend
constexpr double kMonthLine = 20.0; // the months

double mostHours(const MonthBars& bars)
{
    double most = bars.needed_h.value_or(0.0);
    for (std::size_t month = 0; month < 12; ++month) {
        most = std::max(most, bars.now.months[month].standing.sun_h);
        if (bars.after)
            most = std::max(most, bars.after->months[month].standing.sun_h);
    }
    return std::max(2.0, std::ceil(most / 2.0) * 2.0);
}

class BarPainter {
public:
    BarPainter(QPainter& painter, QSizeF canvas, const MonthBars& bars, const Units& units,
               const DrawingPalette& colours)
        : p_(painter), bars_(bars), units_(units), c_(colours),
          field_(kLeft, kTop, canvas.width() - kLeft - 4.0, canvas.height() - kTop - kMonthLine),
          most_(mostHours(bars))
    {
    }

    void paint()
    {
        scale();
        for (std::size_t month = 0; month < 12; ++month)
            drawMonth(month);
        need();
        legend();
    }

private:
    [[nodiscard]] double y(double hours) const
    {
        return field_.bottom() - hours / most_ * field_.height();
    }

    void scale()
    {
        const double step = most_ > 8.0 ? 4.0 : 2.0;
        for (double hours = 0.0; hours <= most_ + 0.01; hours += step) {
            p_.setPen(QPen(c_.faintInk, 0.5));
            p_.drawLine(QPointF(field_.left(), y(hours)), QPointF(field_.right(), y(hours)));
            p_.setPen(c_.ink);
            p_.drawText(QRectF(0.0, y(hours) - 8.0, kLeft - 6.0, 16.0),
                        Qt::AlignRight | Qt::AlignVCenter, units_.number(hours, 0));
        }
    }

    void drawMonth(std::size_t month)
    {
        const double width = field_.width() / 12.0;
        const double left = field_.left() + static_cast<double>(month) * width;
        const double share = bars_.after ? 0.36 : 0.6;
        const double from = left + width * (0.5 - (bars_.after ? share : share / 2.0));
        bar(from, width * share, bars_.now.months[month].standing.sun_h, QBrush(c_.faintInk));
        if (bars_.after)
            bar(from + width * share, width * share, bars_.after->months[month].standing.sun_h,
                QBrush(c_.ink, Qt::BDiagPattern));
        p_.setPen(c_.ink);
        p_.drawText(
            QRectF(left, field_.bottom() + 2.0, width, kMonthLine - 2.0), Qt::AlignCenter,
            units_.locale().standaloneMonthName(static_cast<int>(month) + 1, QLocale::ShortFormat));
    }

    void bar(double left, double width, double hours, const QBrush& brush)
    {
        p_.setPen(QPen(c_.ink, 0.8));
        p_.setBrush(brush);
        p_.drawRect(QRectF(QPointF(left, y(hours)), QPointF(left + width, field_.bottom())));
    }

    void need()
    {
        if (!bars_.needed_h)
            return;
        p_.setPen(QPen(c_.ink, 1.4, Qt::DashLine));
        p_.drawLine(QPointF(field_.left(), y(*bars_.needed_h)),
                    QPointF(field_.right(), y(*bars_.needed_h)));
    }

    void legend()
    {
        double x = field_.left();
        x = key(x, QBrush(c_.faintInk), Words::tr("now"));
        if (bars_.after)
            x = key(x, QBrush(c_.ink, Qt::BDiagPattern), Words::tr("after the cuts"));
        if (bars_.needed_h) {
            p_.setPen(QPen(c_.ink, 1.4, Qt::DashLine));
            p_.drawLine(QPointF(x, 9.0), QPointF(x + 22.0, 9.0));
            label(x + 27.0, Words::tr("needed: %1").arg(units_.hours(*bars_.needed_h)));
        }
    }

    double key(double x, const QBrush& brush, const QString& text)
    {
        p_.setPen(QPen(c_.ink, 0.8));
        p_.setBrush(brush);
        p_.drawRect(QRectF(x, 3.0, 12.0, 12.0));
        return label(x + 17.0, text) + 18.0;
    }

    double label(double x, const QString& text)
    {
        const double width = QFontMetricsF(p_.font()).horizontalAdvance(text);
        p_.setPen(c_.ink);
        p_.drawText(QRectF(x, 0.0, width + 4.0, 18.0), Qt::AlignVCenter, text);
        return x + width;
    }

    QPainter& p_;
    const MonthBars& bars_;
    const Units& units_;
    const DrawingPalette& c_;
    QRectF field_;
    double most_;
};

} // namespace

void paintMonthBars(QPainter& painter, QSizeF canvas, const MonthBars& bars, const Units& units,
                    const DrawingPalette& colours)
{
    painter.setRenderHint(QPainter::Antialiasing);
    BarPainter(painter, canvas, bars, units, colours).paint();
}

} // namespace app
