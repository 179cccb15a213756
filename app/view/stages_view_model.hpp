#pragma once

#include "app/assess/newest_wins.hpp"
#include "app/assess/outlook_works.hpp"
#include "app/view/stage_model.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace app {

/// The visits that a job takes which one visit can't do inside the guideline.
class StagesViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")
    Q_PROPERTY(bool isNeeded READ isNeeded NOTIFY changed FINAL)
    Q_PROPERTY(QString headline READ headline NOTIFY changed FINAL)
    Q_PROPERTY(app::StageModel* visits READ visits CONSTANT FINAL)
    Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged FINAL)

public:
    StagesViewModel(Workspace& workspace, OutlookWorks works, QObject* parent = nullptr);

    /// One visit is not enough.
    [[nodiscard]] bool isNeeded() const { return needed_; }
    [[nodiscard]] QString headline() const { return headline_; }
    [[nodiscard]] StageModel* visits() { return &visits_; }
    [[nodiscard]] bool isBusy() const { return worker_.isBusy(); }

    /// Stops the search.
    Q_INVOKABLE void stop();

signals:
    void changed();
    void busyChanged();

private:
    void want();
    void show(const OutlookAsk& ask, const model::advice::Stages& stages);

    Workspace& workspace_;
    OutlookWorks works_;
    bool needed_{};
    OutlookAsk asked_;
    QString headline_;
    StageModel visits_;
    NewestWins worker_; ///< last, so that its thread ends first
};

} // namespace app
