#pragma once

#include <QFont>
#include <QPointF>
#include <QString>

#include <memory>

class QPainter;
class QTextLayout;

namespace app {

/// Text broken into lines of one width, lengths as on the page (page_flow.hpp).
class LaidText {
public:
    LaidText(const QString& text, const QFont& font, double width);

    [[nodiscard]] double height() const { return height_; }
    [[nodiscard]] int lines() const;
    [[nodiscard]] double top(int line) const;
    [[nodiscard]] double bottom(int line) const;
    /// Draws the lines [from, to) with the first of them at `at`.
    void draw(QPainter& painter, QPointF at, int from, int to) const;

private:
    std::shared_ptr<QTextLayout> layout_;
    double height_{};
};

} // namespace app
