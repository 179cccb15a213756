#pragma once

#include "app/assess/newest_wins.hpp"
#include "app/paper/page_flow.hpp"
#include "app/paper/paper_report.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace app {

/// Works a report out on a thread of its own; tests put a scripted one in its place.
using PaperWork =
    std::function<PaperReport(const GardenSnapshot& garden, const model::Question& question,
                              const std::string& tree, const std::atomic<bool>& cancel)>;
/// The model's own. \param tables  outlives the result
[[nodiscard]] PaperWork modelPaperWork(const model::Tables& tables);

/// The work on paper, of the chosen tree or of the whole garden: pages to look at, to save and to
/// print, and tables and pictures for other programs.
class PaperViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(int pageCount READ pageCount NOTIFY changed FINAL)
    Q_PROPERTY(double heightOfWidth READ heightOfWidth NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)
    Q_PROPERTY(bool letter READ letter WRITE setLetter NOTIFY changed FINAL)
    Q_PROPERTY(bool forArborist READ forArborist WRITE setForArborist NOTIFY changed FINAL)
    Q_PROPERTY(bool wholeGarden READ wholeGarden WRITE setWholeGarden NOTIFY changed FINAL)
    Q_PROPERTY(int treeCount READ treeCount NOTIFY changed FINAL)
    Q_PROPERTY(bool hire READ hire NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QUrl suggestedFile READ suggestedFile NOTIFY changed FINAL)
    Q_PROPERTY(QUrl suggestedFolder READ suggestedFolder NOTIFY changed FINAL)
    Q_PROPERTY(QString said READ said NOTIFY saidChanged FINAL)

public:
    PaperViewModel(Workspace& workspace, PaperWork work, QObject* parent = nullptr);

    /// Where to ask for the weather of the day of work when pages are worked out.
    void setWeather(std::function<model::advice::DayWeather()> weather)
    {
        weather_ = std::move(weather);
    }

    [[nodiscard]] int pageCount() const { return static_cast<int>(laid_.pages.size()); }
    [[nodiscard]] double heightOfWidth() const; ///< of a page
    [[nodiscard]] bool busy() const { return worker_.isBusy(); }
    [[nodiscard]] bool letter() const { return paper_ == QPageSize::Letter; }
    void setLetter(bool letter);
    [[nodiscard]] bool forArborist() const { return forArborist_; }
    void setForArborist(bool forArborist);
    /// Every tree of the garden, not just the chosen one.
    [[nodiscard]] bool wholeGarden() const { return wholeGarden_; }
    void setWholeGarden(bool whole);
    [[nodiscard]] int treeCount() const; ///< of the garden
    [[nodiscard]] bool hire() const;     ///< some of the answer is to hire an arborist
    [[nodiscard]] QString title() const { return laid_.title; }
    [[nodiscard]] QUrl suggestedFile() const;
    [[nodiscard]] QUrl suggestedFolder() const;
    [[nodiscard]] QString said() const { return said_; } ///< what came of saving or printing

    /// Works the pages out for the tree as it is shown now.
    Q_INVOKABLE void prepare();
    /// Writes them, as HTML where the name ends so, else as PDF. \returns false: see said()
    Q_INVOKABLE bool save(const QUrl& file);
    /// Writes what other programs take into `folder`, made if it is not there: each figure as a
    /// picture, the trees, visits and loads as tables, the plan as GeoJSON. \returns false: see
    /// said()
    Q_INVOKABLE bool saveParts(const QUrl& folder);
    /// Hands them as a PDF to the desktop's viewer, which prints. \returns false: see said()
    Q_INVOKABLE bool print();

    void paint(QPainter& painter, int page, double width) const;

signals:
    void changed();
    void busyChanged();
    void saidChanged();

private:
    [[nodiscard]] QUrl suggested(const QString& ending) const;
    void take(std::shared_ptr<const PaperReport> report);
    void layOut();
    void say(const QString& said);

    Workspace& workspace_;
    PaperWork work_;
    std::function<model::advice::DayWeather()> weather_;
    QPageSize::PageSizeId paper_;
    bool forArborist_{};
    bool wholeGarden_{};
    std::shared_ptr<const PaperReport> report_;
    Sheet sheet_;
    LaidSheet laid_;
    QString said_;
    NewestWins worker_; ///< last, so that its thread ends first
};

} // namespace app
