#pragma once

#include "app/paper/block.hpp"
#include "app/paper/laid_text.hpp"

#include <functional>
#include <vector>

class QPainter;

namespace app {

/// The letters of a sheet, all larger or smaller by one factor.
struct Letters {
    double scale{1.0};
    [[nodiscard]] QFont font(double size, bool bold = false) const;
};

/// A row of a table, broken to the widths of its columns.
struct LaidRow {
    std::vector<LaidText> cells;
    std::vector<double> lefts; ///< of the cells, from the left edge of the page
    double height{};
};

[[nodiscard]] LaidRow laidRow(const QStringList& cells, const Table& table, double width,
                              const Letters& letters, bool head);
void paintRow(QPainter& painter, const LaidRow& row, const QRectF& box, bool head);

/// Figures side by side, as high as the highest.
struct LaidFigures {
    double each{};    ///< width of one
    double tallest{}; ///< without its caption
    double height{};  ///< all in all
    std::vector<LaidText> captions;
};

/// \param room  the height of a page
[[nodiscard]] LaidFigures laidFigures(const Figures& row, double width, double room,
                                      const Letters& letters);

/// Draws a figure as large as fits, in the middle of the top of its room, with a frame.
[[nodiscard]] std::function<void(QPainter&)> figureMark(const Figure& figure, const QRectF& room);

} // namespace app
