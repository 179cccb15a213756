#include "app/command/commands.hpp"
#include "app/document/garden_file.hpp"
#include "app/language/language.hpp"
#include "app/paper/arborist_brief.hpp"
#include "app/paper/csv_table.hpp"
#include "app/paper/garden_geojson.hpp"
#include "app/paper/garden_sheets.hpp"
#include "app/paper/html_sheets.hpp"
#include "app/paper/inventory.hpp"
#include "app/paper/paper_files.hpp"
#include "app/paper/pdf_sheets.hpp"
#include "app/paper/usual_paper.hpp"

#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QSaveFile>

#include <algorithm>

namespace app {
namespace {

QString cantWrite(const QString& path, const QString& why)
{
    return QStringLiteral("%1: can't be written: %2; name another file with -o").arg(path, why);
}

/// The file whole or not at all; `-` is standard output.
void write(const Job& job, const QByteArray& bytes)
{
    const QString path = QString::fromStdString(job.arguments.output);
    if (path == QLatin1String("-")) {
        job.streams.out.write(bytes.constData(), bytes.size());
        return;
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        throw Refusal(cantWrite(path, file.errorString()).toStdString());
    job.streams.out << job.arguments.output << ": written.\n";
}

QPageSize::PageSizeId paperOf(const Arguments& arguments)
{
    if (arguments.paper == "a4")
        return QPageSize::A4;
    return arguments.paper == "letter" ? QPageSize::Letter : usualPaper(QLocale());
}

model::advice::DayWeather dayOf(const Arguments& typed, const Units& units)
{
    Arguments day;
    day.air = typed.dayAir;
    day.humidity = typed.dayHumidity;
    day.gust = typed.dayGust;
    return weatherOf(day, units);
}

PaperReport reportOf(const Job& job, std::shared_ptr<const model::Garden> garden,
                     const Units& units)
{
    const auto question = questionOf(job.arguments, *garden, units);
    const auto tree = treeOf(job.arguments, *garden);
    const auto weather = dayOf(job.arguments, units);
    auto report = paperReport(garden, job.tables, question, tree);
    report.weather = weather;
    const QString file = QString::fromStdString(job.arguments.garden);
    if (file != QLatin1String("-")) // a pipe has no photos beside it
        report.photos = paperPhotos(*garden, tree, units, [&](const std::string& name) {
            return readGardenPhoto(file, name);
        });
    drawPhotos(report.photos);
    return report;
}

QByteArray pdfOf(const Sheet& sheet, QPageSize::PageSizeId paper)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!writePdf(laidOut(sheet, paper), paper, buffer))
        throw Refusal("the pages can't be drawn");
    return bytes;
}

enum class Form { pdf, html, other };

Form formOf(const Arguments& arguments)
{
    const QString path = QString::fromStdString(arguments.output).toLower();
    if (path.endsWith(QLatin1String(".pdf")))
        return Form::pdf;
    const bool html = path.endsWith(QLatin1String(".html")) || path.endsWith(QLatin1String(".htm"));
    return html ? Form::html : Form::other;
}

/// Says what can't be written before anything is worked out.
void refuseUnwritable(const Arguments& arguments)
{
    if (arguments.output.empty() && arguments.figures.empty())
        throw Refusal("report: expected -o FILE, a .pdf or .html, or --figures FOLDER");
    const bool table = arguments.geojson || !arguments.csv.empty();
    if (arguments.output.empty() || (table && arguments.output == "-"))
        return;
    if (!table && formOf(arguments) == Form::other)
        throw Refusal("-o: found " + model::inQuotes(arguments.output) +
                      ", expected a file that ends in .pdf or .html");
    const QFileInfo file(QString::fromStdString(arguments.output));
    if (!file.dir().exists())
        throw Refusal(
            cantWrite(file.filePath(), QStringLiteral("there is no such folder")).toStdString());
}

void writePaper(const Job& job, const PaperReport& report, const Units& units)
{
    const auto& arguments = job.arguments;
    const Sheet sheet = arguments.forArborist ? arboristBrief(report, job.tables, units)
                                              : reportSheet(report, job.tables, units);
    if (!arguments.figures.empty())
        if (const QString problem = writeFigures(sheet, QString::fromStdString(arguments.figures));
            !problem.isEmpty())
            throw Refusal(problem.toStdString());
    if (!arguments.figures.empty() && arguments.output != "-")
        job.streams.out << arguments.figures << ": figures written.\n";
    if (arguments.output.empty())
        return;
    write(job, formOf(arguments) == Form::html ? htmlOf(sheet, languageOfWords())
                                               : pdfOf(sheet, paperOf(arguments)));
}

bool writeTable(const Job& job, const model::Garden& garden)
{
    if (job.arguments.geojson)
        write(job, QByteArray::fromStdString(jsonText(gardenGeoJson(garden, job.tables))));
    else if (job.arguments.csv == "inventory")
        write(job, csvOf(inventoryRecords(garden, job.tables)));
    else if (job.arguments.csv == "visits")
        write(job, csvOf(visitRecords(garden)));
    else
        return false;
    return true;
}

} // namespace

int reportCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    refuseUnwritable(job.arguments);
    const auto garden = std::make_shared<const model::Garden>(gardenOf(job));
    if (writeTable(job, *garden))
        return kFine;
    const auto report = reportOf(job, garden, units);
    if (job.arguments.csv == "loads")
        write(job, csvOf(loadRecords(report)));
    else
        writePaper(job, report, units);
    return statusOf(job, std::ranges::any_of(report.assessment.trees, [](const auto& of) {
                        return of.suggestion.outcome != model::advice::Outcome::nothingNeeded ||
                               of.labour.who == model::advice::Who::arborist;
                    }));
}

} // namespace app
