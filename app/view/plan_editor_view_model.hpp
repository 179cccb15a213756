#pragma once

#include "app/view/plan_handle_model.hpp"
#include "app/view/plan_things.hpp"
#include "app/view/plan_view_model.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace app {

/// Drawing on the plan: corners clicked one by one, things chosen, moved whole or by a corner, and
/// taken away. Points are in pixels of the plan. A drag, and a run of nudges of one handle, undo in
/// one step each. What the chosen thing is, and its sizes, are ThingViewModel's.
class PlanEditorViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(bool editing READ editing WRITE setEditing NOTIFY changed FINAL)
    Q_PROPERTY(QStringList tools READ tools CONSTANT FINAL)
    Q_PROPERTY(int tool READ tool WRITE setTool NOTIFY changed FINAL)
    Q_PROPERTY(bool drawing READ drawing NOTIFY changed FINAL)
    Q_PROPERTY(bool canFinish READ canFinish NOTIFY changed FINAL)
    Q_PROPERTY(QString hint READ hint NOTIFY changed FINAL)
    Q_PROPERTY(app::PlanHandleModel* handles READ handles CONSTANT FINAL)
    Q_PROPERTY(QStringList things READ things NOTIFY changed FINAL)
    Q_PROPERTY(int thing READ thing NOTIFY changed FINAL)

public:
    PlanEditorViewModel(Workspace& workspace, PlanViewModel& plan, QObject* parent = nullptr);

    [[nodiscard]] bool editing() const { return editing_; }
    void setEditing(bool editing);
    [[nodiscard]] QStringList tools() const;
    [[nodiscard]] int tool() const { return tool_; } ///< -1: none, things are chosen and moved
    void setTool(int tool);
    [[nodiscard]] bool drawing() const { return tool_ >= 0; }
    [[nodiscard]] bool canFinish() const;
    [[nodiscard]] QString hint() const; ///< what to do next, in a sentence
    [[nodiscard]] PlanHandleModel* handles() { return &handles_; }
    [[nodiscard]] QStringList things() const; ///< everything on the plan, by name
    [[nodiscard]] int thing() const;          ///< the chosen one of them; -1: none

    [[nodiscard]] const std::string& chosenId() const { return chosen_; }
    [[nodiscard]] std::optional<ThingRef> chosen() const;

    Q_INVOKABLE void choose(int thing);
    Q_INVOKABLE void chooseAt(double x, double y);

    /// A corner of what is being drawn; on the first corner again it closes an outline.
    Q_INVOKABLE void addCorner(double x, double y);
    /// A box between two corners that lie opposite each other (a straight wire between two ends),
    /// as it is dragged and when it is let go. Nothing while corners are being clicked.
    Q_INVOKABLE void dragBox(double fromX, double fromY, double toX, double toY);
    Q_INVOKABLE void dropBox(double fromX, double fromY, double toX, double toY);
    /// Where the hand is, so that the next edge is seen.
    Q_INVOKABLE void hover(double x, double y);
    Q_INVOKABLE void takeBackCorner();
    /// Ends the drawing. Without any corners yet, a usual shape is put in the middle of the plan,
    /// to be moved and sized by keyboard.
    Q_INVOKABLE void finish();
    Q_INVOKABLE void cancel();

    /// \param corner  -1: the whole thing
    Q_INVOKABLE void grab(const QString& thing, int corner, double x, double y);
    Q_INVOKABLE void dragTo(double x, double y);
    Q_INVOKABLE void drop();
    /// By whole steps of the reader's small length, or of ten times that.
    Q_INVOKABLE void nudge(const QString& thing, int corner, int stepsEast, int stepsNorth,
                           bool far = false);
    Q_INVOKABLE void removeChosen();

signals:
    void changed();
    void chosenChanged();
    void drawn(); ///< something new is there and chosen

private:
    void refresh();
    void choose(const std::string& id);
    void move(const std::string& id, int corner, model::Point2 by, int gesture,
              const std::vector<model::Point2>& from);
    [[nodiscard]] std::vector<model::Point2> usualShape() const;
    void add(const std::vector<model::Point2>& corners);

    Workspace& workspace_;
    PlanViewModel& plan_;
    PlanHandleModel handles_;
    bool editing_{};
    int tool_{-1};
    std::vector<model::Point2> draft_;
    std::optional<model::Point2> hand_;
    std::string chosen_;

    struct Held {
        std::string thing;
        int corner{};
        model::Point2 from_m{};             ///< where the hand took hold
        std::vector<model::Point2> corners; ///< as they stood then
        int gesture{};
    };
    std::optional<Held> held_;
    std::optional<Held> nudged_; ///< so that a run of key presses is one step
};

} // namespace app
