#pragma once

#include "app/view/fact_model.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace app {

/// The answers to the gardener's first three questions about the chosen tree: is there room
/// beneath it, what would a storm ask of it, and do the plants get their sun. Each is a headline
/// and a list of facts; what the suggested cuts would change stands beside.
class AnswersViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(QString roomHeadline READ roomHeadline NOTIFY changed FINAL)
    Q_PROPERTY(app::Tone::Value roomTone READ roomTone NOTIFY changed FINAL)
    Q_PROPERTY(app::FactModel* room READ room CONSTANT FINAL)
    Q_PROPERTY(QString stormHeadline READ stormHeadline NOTIFY changed FINAL)
    Q_PROPERTY(app::Tone::Value stormTone READ stormTone NOTIFY changed FINAL)
    Q_PROPERTY(QString stormNote READ stormNote NOTIFY changed FINAL)
    Q_PROPERTY(app::FactModel* storm READ storm CONSTANT FINAL)
    Q_PROPERTY(QString sunHeadline READ sunHeadline NOTIFY changed FINAL)
    Q_PROPERTY(app::Tone::Value sunTone READ sunTone NOTIFY changed FINAL)
    Q_PROPERTY(app::FactModel* sun READ sun CONSTANT FINAL)
    Q_PROPERTY(bool isCurrent READ isCurrent NOTIFY changed FINAL)
    Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged FINAL)
    Q_PROPERTY(bool isStopped READ isStopped NOTIFY busyChanged FINAL)

public:
    explicit AnswersViewModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] QString roomHeadline() const { return roomHeadline_; }
    [[nodiscard]] Tone::Value roomTone() const { return roomTone_; }
    [[nodiscard]] FactModel* room() { return &room_; }
    [[nodiscard]] QString stormHeadline() const { return stormHeadline_; }
    [[nodiscard]] Tone::Value stormTone() const { return stormTone_; }
    [[nodiscard]] QString stormNote() const { return stormNote_; } ///< weight of the whole tree
    [[nodiscard]] FactModel* storm() { return &storm_; }
    [[nodiscard]] QString sunHeadline() const { return sunHeadline_; }
    [[nodiscard]] Tone::Value sunTone() const { return sunTone_; }
    [[nodiscard]] FactModel* sun() { return &sun_; }
    /// False while sun and cuts are being worked out anew.
    [[nodiscard]] bool isCurrent() const { return workspace_.isCurrent(); }

    /// Sun, cuts and ranges are being worked out; stop() gives that up, goOn() takes it up again.
    [[nodiscard]] bool isBusy() const { return workspace_.isAssessing() && !isStopped(); }
    [[nodiscard]] bool isStopped() const { return workspace_.isStopped(); }

    Q_INVOKABLE void choose(const QString& limb) { workspace_.chooseLimb(limb.toStdString()); }
    Q_INVOKABLE void stop() { workspace_.stop(); }
    Q_INVOKABLE void goOn() { workspace_.goOn(); }

signals:
    void changed();
    void busyChanged();

private:
    void refreshQuick();
    void refreshFull();
    void wordRoom();
    void wordStorm();
    void wordSun();

    Workspace& workspace_;
    QString roomHeadline_, stormHeadline_, stormNote_, sunHeadline_;
    Tone::Value roomTone_{}, stormTone_{}, sunTone_{};
    FactModel room_, storm_, sun_;
};

} // namespace app
