#include "app/paper/usual_paper.hpp"

namespace app {

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
