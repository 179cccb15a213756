#include "app/paper/paper_files.hpp"

#include "app/paper/csv_table.hpp"
#include "app/paper/figures.hpp"
#include "app/paper/garden_geojson.hpp"
#include "app/paper/garden_sheets.hpp"
#include "app/paper/inventory.hpp"

#include <QDir>
#include <QImage>
#include <QSaveFile>

namespace app {
namespace {

QString problemWith(const QString& path, const QString& why)
{
    return QStringLiteral("%1: %2").arg(QDir::toNativeSeparators(path), why);
}

QString noFolder(const QString& folder)
{
    return problemWith(folder, Words::tr("the folder can't be made"));
}

QString written(const QString& path, const QByteArray& bytes)
{
    QSaveFile file(path);
    const bool good =
        file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
    return good ? QString() : problemWith(path, file.errorString());
}

} // namespace

QString writeFigures(const Sheet& sheet, const QString& folder)
{
    const QDir to(folder);
    if (!to.mkpath(QStringLiteral(".")))
        return noFolder(folder);
    for (const auto& figure : figuresOf(sheet)) {
        const QString path = to.filePath(figure.name + QStringLiteral(".png"));
        QSaveFile file(path);
        if (!file.open(QIODevice::WriteOnly) || !picture(figure, 2.0).save(&file, "PNG") ||
            !file.commit())
            return problemWith(path, file.errorString());
    }
    return {};
}

QString writeTables(const PaperReport& report, const model::Tables& tables, const QString& folder)
{
    const QDir to(folder);
    if (!to.mkpath(QStringLiteral(".")))
        return noFolder(folder);
    const auto& garden = *report.garden;
    const std::pair<QString, QByteArray> files[] = {
        {QStringLiteral("inventory.csv"), csvOf(inventoryRecords(garden, tables))},
        {QStringLiteral("visits.csv"), csvOf(visitRecords(garden))},
        {QStringLiteral("loads.csv"), csvOf(loadRecords(report))},
        {QStringLiteral("plan.geojson"),
         QByteArray::fromStdString(jsonText(gardenGeoJson(garden, tables)))}};
    for (const auto& [name, bytes] : files)
        if (const QString problem = written(to.filePath(name), bytes); !problem.isEmpty())
            return problem;
    return {};
}

} // namespace app
