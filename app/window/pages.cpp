#include "app/window/pages.hpp"

#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTimeZone>

namespace app {

Pages::Pages(const model::Tables& tables, Units units, Works works,
             std::chrono::year_month_day today, std::vector<Example> examples)
    : workspace(tables, std::move(units), std::move(works), today),
      garden(workspace, std::move(examples)), side(workspace), plan(workspace, side),
      round(workspace, side), conditions(workspace), answers(workspace), work(workspace),
      light(workspace, plan, modelLightWorks(tables)), diary(workspace, modelDiaryWork(tables)),
      day(workspace), paper(workspace, modelPaperWork(tables)),
      newGarden(workspace, systemCities(), QString::fromUtf8(QTimeZone::systemTimeZoneId())),
      addTree(workspace), planEditor(workspace, plan), thing(workspace, planEditor),
      tree(workspace), limb(workspace, side), limbShape(workspace, side), underlay(workspace, side),
      grounds(workspace), why(workspace),
      offers(workspace, *work.trial(), modelOutlookWorks(tables)),
      stages(workspace, modelOutlookWorks(tables))
{
    why.follow(light);
    paper.setWeather([this] { return day.weather(); });
    QObject::connect(&side, &SideViewModel::sawn, work.trial(), &TrialViewModel::sawAt);
    QObject::connect(&round, &RoundViewModel::sawn, work.trial(), &TrialViewModel::sawAt);
}

QVariantMap Pages::properties()
{
    return {{QStringLiteral("garden"), QVariant::fromValue(&garden)},
            {QStringLiteral("side"), QVariant::fromValue(&side)},
            {QStringLiteral("plan"), QVariant::fromValue(&plan)},
            {QStringLiteral("round"), QVariant::fromValue(&round)},
            {QStringLiteral("conditions"), QVariant::fromValue(&conditions)},
            {QStringLiteral("answers"), QVariant::fromValue(&answers)},
            {QStringLiteral("work"), QVariant::fromValue(&work)},
            {QStringLiteral("light"), QVariant::fromValue(&light)},
            {QStringLiteral("diary"), QVariant::fromValue(&diary)},
            {QStringLiteral("day"), QVariant::fromValue(&day)},
            {QStringLiteral("newGarden"), QVariant::fromValue(&newGarden)},
            {QStringLiteral("addTree"), QVariant::fromValue(&addTree)},
            {QStringLiteral("planEditor"), QVariant::fromValue(&planEditor)},
            {QStringLiteral("thing"), QVariant::fromValue(&thing)},
            {QStringLiteral("tree"), QVariant::fromValue(&tree)},
            {QStringLiteral("limb"), QVariant::fromValue(&limb)},
            {QStringLiteral("limbShape"), QVariant::fromValue(&limbShape)},
            {QStringLiteral("paper"), QVariant::fromValue(&paper)},
            {QStringLiteral("underlay"), QVariant::fromValue(&underlay)},
            {QStringLiteral("grounds"), QVariant::fromValue(&grounds)},
            {QStringLiteral("why"), QVariant::fromValue(&why)},
            {QStringLiteral("offers"), QVariant::fromValue(&offers)},
            {QStringLiteral("stages"), QVariant::fromValue(&stages)}};
}

std::vector<Example> builtInExamples()
{
    std::vector<Example> examples;
    const QDir folder(QStringLiteral(":/examples"));
    for (const auto& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            continue;
        const auto title =
            QJsonDocument::fromJson(file.readAll()).object().value(QStringLiteral("name"));
        examples.push_back({title.toString(name), file.fileName()});
    }
    return examples;
}

QString qmlImportPath()
{
    return QStringLiteral(":/qt/qml");
}

} // namespace app
