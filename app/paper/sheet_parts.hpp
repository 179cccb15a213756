#pragma once

#include "app/paper/block.hpp"
#include "app/paper/paper_report.hpp"
#include "app/words/wording.hpp"

namespace app {

using SheetBlocks = std::vector<SheetBlock>;

/// What is told on paper about one tree.
struct TreeOnPaper {
    const PaperReport& report;
    const model::TreeAssessment& of;
    const model::Tables& tables;
    Wording wording;
};

void addBullets(SheetBlocks& blocks, const QStringList& sentences);

/// Species, height, stem, vigour, planting year: one line.
[[nodiscard]] QString treeFacts(const Wording& wording);

/// The cautions that stand under everything, with their heading.
void addCautions(SheetBlocks& blocks);

/// "maple at the gate – Cedar Drive – 25 November 2026".
[[nodiscard]] QString footWords(const PaperReport& report, const QString& tree, const Units& units);

} // namespace app
