#include "app/report/plan_text.hpp"

#include "app/words/stage_words.hpp"
#include "app/words/trade_off_words.hpp"

namespace app {

void addStages(TextPage& page, const model::advice::Stages& stages, const Wording& wording)
{
    if (stages.visits.empty())
        return;
    page.heading(Words::tr("Over several visits"));
    page.paragraph(stagesWords(stages, wording));
    int number = 0;
    for (const auto& visit : stages.visits)
        page.numbered(++number, stageLine(visit, wording));
}

void addTradeOffs(TextPage& page, const std::vector<model::advice::TradeOff>& tradeOffs,
                  const Wording& wording)
{
    if (tradeOffs.empty())
        return;
    page.heading(Words::tr("What more and less of the leaf buys"));
    page.paragraph(Words::tr("Each by itself, with the cuts that are best for it; what one set of "
                             "cuts does for all of them is under “What to cut”."));
    for (const auto& tradeOff : tradeOffs) {
        page.paragraph(tradeOffTitle(tradeOff, wording));
        for (const QString& line : tradeOffLines(tradeOff, wording))
            page.bullet(line);
    }
}

} // namespace app
