#pragma once

#include "app/paper/block.hpp"

#include <QPageSize>

namespace app {

/// Lengths on a laid-out page are twentieths of a point from its upper left corner: fine enough
/// for letters to stand where they are measured.
inline constexpr double kPerPoint = 20.0;

/// One page: what is drawn on it.
struct LaidPage {
    std::vector<std::function<void(QPainter&)>> marks;
};

/// A sheet laid out on paper. Text is broken to the width and never cut off; a row of a table, a
/// figure with its caption, and a heading with what follows stay together.
struct LaidSheet {
    QString title;
    QSizeF page; ///< size of each, twentieths of a point
    std::vector<LaidPage> pages;
};

[[nodiscard]] LaidSheet laidOut(const Sheet& sheet, QPageSize::PageSizeId paper);

/// Draws one page; the painter's unit is a twentieth of a point.
void paintPage(QPainter& painter, const LaidPage& page);

} // namespace app
