#include "app/paper/pdf_sheets.hpp"

#include <QPdfWriter>

namespace app {

bool writePdf(const LaidSheet& sheet, QPageSize::PageSizeId paper, QIODevice& to)
{
    QPdfWriter writer(&to);
    writer.setTitle(sheet.title);
    writer.setCreator(QStringLiteral("Underbough"));
    writer.setResolution(static_cast<int>(72.0 * kPerPoint));
    writer.setPageSize(QPageSize(paper));
    writer.setPageMargins(QMarginsF());
    QPainter painter;
    if (!painter.begin(&writer))
        return false;
    for (std::size_t page = 0; page < sheet.pages.size(); ++page) {
        if (page > 0 && !writer.newPage())
            return false;
        paintPage(painter, sheet.pages[page]);
    }
    return painter.end();
}

} // namespace app
