#include "app/report/explanation_text.hpp"

#include "app/report/suggestion_text.hpp"
#include "app/report/text_page.hpp"
#include "app/words/chain.hpp"

namespace app {
namespace {

void addPart(TextPage& page, const ChainPart& part)
{
    page.heading(part.heading);
    for (const auto& step : part.steps) {
        const QString origin =
            step.origin.isEmpty() ? QString() : QStringLiteral(" [%1]").arg(step.origin);
        page.bullet(Words::tr("%1: %2").arg(step.name, step.value) + origin);
    }
    for (qsizetype i = 0; i < part.remarks.size(); ++i) {
        if (i == 0 && part.steps.empty())
            page.paragraph(part.remarks[i]);
        else
            page.bullet(part.remarks[i]);
    }
}

} // namespace

QString explanationText(const model::LimbExplanation& of, const Wording& wording,
                        const model::Sources& sources)
{
    const auto chain = chainOf(of, wording, sources);
    TextPage page;
    page.title(chain.title);
    page.paragraph(chain.answer);
    page.paragraph(
        chain.about + QLatin1Char(' ') +
        Words::tr("In brackets: the formula's number in %1, and the source.").arg(chain.method));
    for (const auto& part : chain.parts)
        addPart(page, part);
    addCautions(page);
    return page.text();
}

} // namespace app
