#pragma once

#include "app/paper/page_flow.hpp"

class QIODevice;

namespace app {

/// The pages as one PDF, letters embedded and text in it. \returns false: it can't be written
[[nodiscard]] bool writePdf(const LaidSheet& sheet, QPageSize::PageSizeId paper, QIODevice& to);

} // namespace app
