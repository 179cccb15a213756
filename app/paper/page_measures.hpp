#pragma once

#include "app/paper/page_flow.hpp"

#include <QColor>

namespace app {

constexpr double pt(double points)
{
    return points * kPerPoint;
}

inline constexpr double kMargin = pt(42.0); ///< 15 mm: inside what every printer reaches
inline constexpr double kFootLine = pt(30.0);
inline constexpr double kCellPad = pt(3.5);
inline constexpr double kGap = pt(10.0);  ///< between figures
inline constexpr double kLine = pt(21.0); ///< between lines to write on
inline constexpr double kBody = pt(9.5);  ///< sizes of letters
inline constexpr double kSmall = pt(8.0);
inline constexpr double kCell = pt(8.5);
inline constexpr double kHeading = pt(12.5);
inline constexpr double kTitle = pt(18.0);
inline const QColor kInk(0x1a, 0x1a, 0x1a);
inline const QColor kRule(0x88, 0x88, 0x88);

} // namespace app
