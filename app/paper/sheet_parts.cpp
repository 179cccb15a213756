#include "app/paper/sheet_parts.hpp"

#include "app/words/cautions.hpp"

namespace app {
namespace {

QString vigourWords(model::Vigour vigour)
{
    switch (vigour) {
    case model::Vigour::young:
        return Words::tr("young");
    case model::Vigour::mature:
        return Words::tr("mature");
    case model::Vigour::old:
        return Words::tr("old");
    case model::Vigour::stressed:
        return Words::tr("under stress");
    }
    return {};
}

} // namespace

void addBullets(SheetBlocks& blocks, const QStringList& sentences)
{
    for (const QString& sentence : sentences)
        blocks.emplace_back(Bullet{sentence});
}

QString treeFacts(const Wording& wording)
{
    const auto& tree = wording.tree;
    const Units& units = wording.units;
    QString facts =
        Words::tr("%1, %2 tall, stem %3 thick at breast height, %4")
            .arg(capitalised(speciesName(wording.species)), units.roughLength(height_m(tree)),
                 units.diameter(stemDiameter_m(tree)), vigourWords(tree.vigour));
    if (tree.plantedYear)
        facts += Words::tr(", planted %1").arg(*tree.plantedYear);
    return facts + QLatin1Char('.');
}

void addCautions(SheetBlocks& blocks)
{
    blocks.emplace_back(Heading{Words::tr("Before you trust or touch anything")});
    addBullets(blocks, cautions());
}

QString footWords(const PaperReport& report, const QString& tree, const Units& units)
{
    QStringList parts;
    if (!tree.isEmpty())
        parts << tree;
    parts << QString::fromStdString(report.garden->name)
          << units.date(report.assessment.question.date);
    return parts.join(QStringLiteral(" – "));
}

} // namespace app
