#pragma once

#include "app/paper/block.hpp"
#include "app/paper/paper_report.hpp"
#include "app/words/wording.hpp"

namespace app {

/// The figures of one report. Each keeps what it draws from: it may outlive report and units.

/// The tree from the side as it stands, its limbs tinted by load, with the cuts numbered.
[[nodiscard]] Figure cutsFigure(const PaperReport& report, const model::TreeAssessment& of,
                                const Units& units, QSizeF canvas);
/// The same side after the cuts.
[[nodiscard]] Figure afterFigure(const PaperReport& report, const model::TreeAssessment& of,
                                 const Units& units, QSizeF canvas);
/// The garden from above. \param tree  the one that is marked; null: none
[[nodiscard]] Figure planFigure(const PaperReport& report, const model::Tree* tree,
                                const Units& units, QSizeF canvas);
/// A year of sun on each planting, level surfaces first.
[[nodiscard]] std::vector<Figure> lightFigures(const PaperReport& report,
                                               const model::Tables& tables, const Units& units,
                                               QSizeF canvas);

/// The figure as a picture, `scale` dots for each pixel of its canvas.
[[nodiscard]] QImage picture(const Figure& figure, double scale);

/// A name that a file may have, of any text: "old-pear".
[[nodiscard]] QString fileName(const std::string& text);

/// The letters that everything on paper is written in.
[[nodiscard]] QFont paperFont(int pixelSize, bool bold = false);

} // namespace app
