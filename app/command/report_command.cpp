#include "app/command/commands.hpp"
#include "app/language/language.hpp"
#include "app/paper/arborist_brief.hpp"
#include "app/paper/csv_table.hpp"
#include "app/paper/figures.hpp"
#include "app/paper/garden_geojson.hpp"
#include "app/paper/garden_sheets.hpp"
#include "app/paper/html_sheets.hpp"
#include "app/paper/inventory.hpp"
#include "app/paper/pdf_sheets.hpp"

#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QImage>
#include <QSaveFile>

#include <algorithm>

namespace app {
namespace {

/// Letters and drawings need Qt's painter, which needs no screen for paper.
class Drawing {
public:
    Drawing()
    {
        if (QCoreApplication::instance())
            return;
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        // What Qt has to say of the desktop is nothing to who prints.
        qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
        application_ = std::make_unique<QGuiApplication>(count_, words_.data());
        speak(QLocale());
    }

    ~Drawing()
    {
        if (application_)
            qInstallMessageHandler(nullptr);
    }
    Drawing(const Drawing&) = delete;
    Drawing& operator=(const Drawing&) = delete;

private:
    int count_{1};
    std::string name_{"underbough"};
    std::array<char*, 2> words_{name_.data(), nullptr};
    std::unique_ptr<QGuiApplication> application_;
};

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
    auto report = paperReport(std::move(garden), job.tables, question, tree);
    report.weather = weather;
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

void writeFigures(const Sheet& sheet, const QString& folder)
{
    const QDir to(folder);
    if (!to.mkpath(QStringLiteral(".")))
        throw Refusal(cantWrite(folder, QStringLiteral("no such folder")).toStdString());
    for (const auto& figure : figuresOf(sheet)) {
        const QString path = to.filePath(figure.name + QStringLiteral(".png"));
        QSaveFile file(path);
        if (!file.open(QIODevice::WriteOnly) || !picture(figure, 2.0).save(&file, "PNG") ||
            !file.commit())
            throw Refusal(cantWrite(path, file.errorString()).toStdString());
    }
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
        throw Refusal("-o: found " + model::quoted(arguments.output) +
                      ", expected a file that ends in .pdf or .html");
    const QFileInfo file(QString::fromStdString(arguments.output));
    if (!file.dir().exists())
        throw Refusal(
            cantWrite(file.filePath(), QStringLiteral("there is no such folder")).toStdString());
}

void writePaper(const Job& job, const PaperReport& report, const Units& units)
{
    const Drawing drawing;
    const auto& arguments = job.arguments;
    const Sheet sheet = arguments.forArborist ? arboristBrief(report, job.tables, units)
                                              : reportSheet(report, job.tables, units);
    if (!arguments.figures.empty())
        writeFigures(sheet, QString::fromStdString(arguments.figures));
    if (arguments.output.empty())
        return;
    write(job, formOf(arguments) == Form::html ? htmlOf(sheet, QLocale().bcp47Name())
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
