#include "app/view/paper_view_model.hpp"

#include "app/language/language.hpp"
#include "app/paper/arborist_brief.hpp"
#include "app/paper/garden_sheets.hpp"
#include "app/paper/html_sheets.hpp"
#include "app/paper/paper_files.hpp"
#include "app/paper/pdf_sheets.hpp"
#include "app/paper/usual_paper.hpp"

#include <QDesktopServices>
#include <QDir>
#include <QPainter>
#include <QSaveFile>
#include <QStandardPaths>

#include <algorithm>

namespace app {
namespace {

/// A name that every file system takes.
QString plainName(QString title)
{
    for (QChar& letter : title)
        if (!letter.isLetterOrNumber())
            letter = QLatin1Char('-');
    return title.isEmpty() ? QStringLiteral("work") : title.toLower();
}

} // namespace

PaperWork modelPaperWork(const model::Tables& tables)
{
    return [&tables](const GardenSnapshot& garden, const model::Question& question,
                     const std::string& tree, const std::atomic<bool>& cancel) {
        return paperReport(garden, tables, question, tree, &cancel);
    };
}

PaperViewModel::PaperViewModel(Workspace& workspace, PaperWork work, QObject* parent)
    : QObject(parent), workspace_(workspace), work_(std::move(work)),
      paper_(usualPaper(workspace.units().locale())), worker_(std::chrono::milliseconds(0))
{
    connect(&worker_, &NewestWins::busyChanged, this, &PaperViewModel::busyChanged);
    connect(&worker_, &NewestWins::failed, this, &PaperViewModel::say);
}

double PaperViewModel::heightOfWidth() const
{
    const auto size = QPageSize(paper_).size(QPageSize::Point);
    return size.height() / size.width();
}

void PaperViewModel::setLetter(bool letter)
{
    if (letter == this->letter())
        return;
    paper_ = letter ? QPageSize::Letter : QPageSize::A4;
    layOut();
}

void PaperViewModel::setForArborist(bool forArborist)
{
    if (forArborist == forArborist_)
        return;
    forArborist_ = forArborist;
    layOut();
}

void PaperViewModel::setWholeGarden(bool whole)
{
    if (whole == wholeGarden_)
        return;
    wholeGarden_ = whole;
    prepare();
}

int PaperViewModel::treeCount() const
{
    return static_cast<int>(workspace_.garden().trees.size());
}

bool PaperViewModel::hire() const
{
    return report_ && std::ranges::any_of(report_->assessment.trees, [](const auto& of) {
               return of.labour.who == model::advice::Who::arborist;
           });
}

QUrl PaperViewModel::suggestedFile() const
{
    return suggested(QStringLiteral(".pdf"));
}

QUrl PaperViewModel::suggestedFolder() const
{
    return suggested({});
}

QUrl PaperViewModel::suggested(const QString& ending) const
{
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
    return QUrl::fromLocalFile(folder.filePath(plainName(laid_.title) + ending));
}

void PaperViewModel::prepare()
{
    report_.reset();
    layOut();
    say({});
    const auto* tree = workspace_.tree();
    if (!tree)
        return;
    model::Question question;
    question.date = workspace_.date();
    question.gust_m_s = workspace_.gust_m_s();
    const std::string id = wholeGarden_ ? std::string() : tree->id;
    auto photos =
        paperPhotos(workspace_.garden(), id, workspace_.units(),
                    [this](const std::string& name) { return workspace_.document().photo(name); });
    worker_.start(
        [this, garden = workspace_.document().garden(), question, id, photos = std::move(photos),
         weather = weather_ ? weather_()
                            : model::advice::DayWeather()](const NewestWins::Turn& turn) mutable {
            auto worked = work_(garden, question, id, turn.cancel());
            if (turn.cancel())
                return;
            drawPhotos(photos);
            worked.weather = weather;
            worked.photos = std::move(photos);
            auto report = std::make_shared<const PaperReport>(std::move(worked));
            turn.tell([this, report = std::move(report)] { take(report); });
        });
}

void PaperViewModel::take(std::shared_ptr<const PaperReport> report)
{
    report_ = std::move(report);
    layOut();
}

void PaperViewModel::layOut()
{
    sheet_ = {};
    laid_ = {};
    if (report_) {
        const auto& tables = workspace_.tables();
        sheet_ = forArborist_ ? arboristBrief(*report_, tables, workspace_.units())
                              : reportSheet(*report_, tables, workspace_.units());
        laid_ = laidOut(sheet_, paper_);
    }
    emit changed();
}

bool PaperViewModel::save(const QUrl& url)
{
    const QString path = url.toLocalFile();
    QSaveFile file(path);
    bool written = report_ && file.open(QIODevice::WriteOnly);
    if (written && path.endsWith(QLatin1String(".html"), Qt::CaseInsensitive)) {
        const auto bytes = htmlOf(sheet_, languageOfWords());
        written = file.write(bytes) == bytes.size();
    } else if (written) {
        written = writePdf(laid_, paper_, file);
    }
    written = written && file.commit();
    say(written ? tr("Saved as %1.").arg(QDir::toNativeSeparators(path))
                : tr("%1 could not be written: %2. Choose another place.")
                      .arg(QDir::toNativeSeparators(path), file.errorString()));
    return written;
}

bool PaperViewModel::saveParts(const QUrl& url)
{
    const QString folder = url.toLocalFile();
    QString problem = report_ ? writeFigures(sheet_, folder) : tr("There is nothing to write yet.");
    if (problem.isEmpty())
        problem = writeTables(*report_, workspace_.tables(), folder);
    say(problem.isEmpty()
            ? tr("Pictures, tables and plan are in %1.").arg(QDir::toNativeSeparators(folder))
            : tr("Not all of it could be written. %1. Choose another place.").arg(problem));
    return problem.isEmpty();
}

bool PaperViewModel::print()
{
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::TempLocation));
    const auto file = QUrl::fromLocalFile(folder.filePath(
        QStringLiteral("underbough-") + plainName(laid_.title) + QStringLiteral(".pdf")));
    if (!save(file))
        return false;
    if (!QDesktopServices::openUrl(file)) {
        say(tr("No program here opens PDF files: save the pages and print them elsewhere."));
        return false;
    }
    say(tr("Opened in your PDF viewer: print it from there."));
    return true;
}

void PaperViewModel::paint(QPainter& painter, int page, double width) const
{
    if (page < 0 || page >= pageCount())
        return;
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(width / laid_.page.width(), width / laid_.page.width());
    paintPage(painter, laid_.pages[static_cast<std::size_t>(page)]);
}

void PaperViewModel::say(const QString& said)
{
    said_ = said;
    emit saidChanged();
}

} // namespace app
