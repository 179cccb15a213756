#pragma once

namespace model {

/// Standard acceleration of free fall, m/s2: exact by definition (3rd CGPM, 1901).
inline constexpr double kGravity_m_s2 = 9.80665;

} // namespace model
