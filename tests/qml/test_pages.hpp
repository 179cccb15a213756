#pragma once

#include "app/window/pages.hpp"

#include <QObject>
#include <QQuickItem>
#include <QTemporaryDir>

#include <atomic>

/// The window's view-models over the small garden of the tests, on a fixed day, in English and
/// metric, for a test written in QML.
class TestPages : public QObject {
    Q_OBJECT
    Q_PROPERTY(app::GardenViewModel* garden READ garden CONSTANT FINAL)
    Q_PROPERTY(app::SideViewModel* side READ side CONSTANT FINAL)
    Q_PROPERTY(app::PlanViewModel* plan READ plan CONSTANT FINAL)
    Q_PROPERTY(app::RoundViewModel* round READ round CONSTANT FINAL)
    Q_PROPERTY(app::ConditionsViewModel* conditions READ conditions CONSTANT FINAL)
    Q_PROPERTY(app::AnswersViewModel* answers READ answers CONSTANT FINAL)
    Q_PROPERTY(app::WorkViewModel* work READ work CONSTANT FINAL)
    Q_PROPERTY(app::LightViewModel* light READ light CONSTANT FINAL)
    Q_PROPERTY(app::DiaryViewModel* diary READ diary CONSTANT FINAL)
    Q_PROPERTY(app::DayViewModel* day READ day CONSTANT FINAL)
    Q_PROPERTY(app::NewGardenViewModel* newGarden READ newGarden CONSTANT FINAL)
    Q_PROPERTY(app::AddTreeViewModel* addTree READ addTree CONSTANT FINAL)
    Q_PROPERTY(app::PlanEditorViewModel* planEditor READ planEditor CONSTANT FINAL)
    Q_PROPERTY(app::ThingViewModel* thing READ thing CONSTANT FINAL)
    Q_PROPERTY(app::TreeViewModel* tree READ tree CONSTANT FINAL)
    Q_PROPERTY(app::LimbViewModel* limb READ limb CONSTANT FINAL)
    Q_PROPERTY(app::LimbShapeViewModel* limbShape READ limbShape CONSTANT FINAL)
    Q_PROPERTY(app::PaperViewModel* paper READ paper CONSTANT FINAL)
    Q_PROPERTY(app::UnderlayViewModel* underlay READ underlay CONSTANT FINAL)
    Q_PROPERTY(app::GroundsViewModel* grounds READ grounds CONSTANT FINAL)
    Q_PROPERTY(app::WhyViewModel* why READ why CONSTANT FINAL)
    Q_PROPERTY(app::OffersViewModel* offers READ offers CONSTANT FINAL)
    Q_PROPERTY(app::StagesViewModel* stages READ stages CONSTANT FINAL)
    Q_PROPERTY(
        bool holdsSearch READ holdsSearch WRITE setHoldsSearch NOTIFY holdsSearchChanged FINAL)

public:
    explicit TestPages(QObject* parent = nullptr);

    [[nodiscard]] app::GardenViewModel* garden() { return &pages_.garden; }
    [[nodiscard]] app::SideViewModel* side() { return &pages_.side; }
    [[nodiscard]] app::PlanViewModel* plan() { return &pages_.plan; }
    [[nodiscard]] app::RoundViewModel* round() { return &pages_.round; }
    [[nodiscard]] app::ConditionsViewModel* conditions() { return &pages_.conditions; }
    [[nodiscard]] app::AnswersViewModel* answers() { return &pages_.answers; }
    [[nodiscard]] app::WorkViewModel* work() { return &pages_.work; }
    [[nodiscard]] app::LightViewModel* light() { return &pages_.light; }
    [[nodiscard]] app::DiaryViewModel* diary() { return &pages_.diary; }
    [[nodiscard]] app::DayViewModel* day() { return &pages_.day; }
    [[nodiscard]] app::NewGardenViewModel* newGarden() { return &pages_.newGarden; }
    [[nodiscard]] app::AddTreeViewModel* addTree() { return &pages_.addTree; }
    [[nodiscard]] app::PlanEditorViewModel* planEditor() { return &pages_.planEditor; }
    [[nodiscard]] app::ThingViewModel* thing() { return &pages_.thing; }
    [[nodiscard]] app::TreeViewModel* tree() { return &pages_.tree; }
    [[nodiscard]] app::LimbViewModel* limb() { return &pages_.limb; }
    [[nodiscard]] app::LimbShapeViewModel* limbShape() { return &pages_.limbShape; }
    [[nodiscard]] app::PaperViewModel* paper() { return &pages_.paper; }
    [[nodiscard]] app::UnderlayViewModel* underlay() { return &pages_.underlay; }
    [[nodiscard]] app::GroundsViewModel* grounds() { return &pages_.grounds; }
    [[nodiscard]] app::WhyViewModel* why() { return &pages_.why; }
    [[nodiscard]] app::OffersViewModel* offers() { return &pages_.offers; }
    [[nodiscard]] app::StagesViewModel* stages() { return &pages_.stages; }

    /// The search for cuts comes to no end until this is false again, or it is stopped.
    [[nodiscard]] bool holdsSearch() const { return holdsSearch_; }
    void setHoldsSearch(bool holds);

    /// The small garden anew, without a file.
    Q_INVOKABLE void restart();
    /// A file in a folder of the test's own.
    Q_INVOKABLE QUrl file(const QString& name) const;
    /// Where on the side view a station of the chosen tree is drawn.
    Q_INVOKABLE QPointF station(const QString& limb, int station) const;
    /// A photo in the test's folder.
    Q_INVOKABLE QUrl picture(const QString& name) const;
    /// Drags a file from another program onto the middle of an item. \returns whether it was taken
    Q_INVOKABLE bool drop(QQuickItem* onto, const QUrl& file) const;
    /// A stroke of a pen over an item, in its pixels. Qt gives what a pen does to the window as it
    /// is and, where nothing takes that, once more as if a mouse had done it: so does this.
    Q_INVOKABLE void pen(QQuickItem* over, const QList<QPointF>& places) const;
    Q_INVOKABLE int limbCount() const;
    Q_INVOKABLE double diameter_m(const QString& limb, int station) const;
    /// Share of its strength that a limb needs; less than 0: not known.
    Q_INVOKABLE double utilisation(const QString& limb) const;
    Q_INVOKABLE double height_m(const QString& limb, int station) const;

signals:
    void holdsSearchChanged();

private:
    QTemporaryDir folder_;
    std::atomic<bool> holdsSearch_{false};
    app::Pages pages_;
};
