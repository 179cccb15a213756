#include "app/view/cut_lines.hpp"

#include "app/words/cut_words.hpp"
#include "app/words/finding_list.hpp"
#include "app/words/labour_words.hpp"
#include "app/words/work_words.hpp"

namespace app {

using model::advice::Who;

Tone::Value toneOf(Who who)
{
    switch (who) {
    case Who::oneself:
        return Tone::Plain;
    case Who::withHelper:
        return Tone::Mind;
    case Who::arborist:
        break;
    }
    return Tone::Grave;
}

std::vector<CutLine> cutLines(const model::advice::Suggestion& suggestion, const Wording& wording)
{
    std::vector<CutLine> lines;
    for (const auto& planned : suggestion.cuts)
        lines.push_back({capitalised(cutKindWords(planned)), instruction(planned, wording),
                         measures(planned, wording), whoWords(planned.labour.who),
                         reasons(planned.labour, wording),
                         workLines(planned, wording) + sentences(planned.notes, wording),
                         QString::fromStdString(planned.cut.limb), toneOf(planned.labour.who),
                         planned.cut.kind == model::CutKind::removal});
    return lines;
}

} // namespace app
