#pragma once

#include "app/assess/light_assessor.hpp"
#include "app/view/fact_model.hpp"
#include "app/view/month_model.hpp"
#include "app/view/plan_view_model.hpp"
#include "app/view/workspace.hpp"
#include "app/words/chain.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace app {

/// A year of light on one place at a time: month by month against what the plant there needs, who
/// takes it, and what a cut would give back. It also keeps the sun map of the plan.
class LightViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(QStringList places READ places NOTIFY changed FINAL)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY changed FINAL)
    Q_PROPERTY(QString headline READ headline NOTIFY changed FINAL)
    Q_PROPERTY(app::Tone::Value tone READ tone NOTIFY changed FINAL)
    Q_PROPERTY(QString weather READ weather NOTIFY changed FINAL)
    Q_PROPERTY(double need READ need NOTIFY changed FINAL)
    Q_PROPERTY(double good READ good NOTIFY changed FINAL)
    Q_PROPERTY(QString needText READ needText NOTIFY changed FINAL)
    Q_PROPERTY(app::MonthModel* months READ months CONSTANT FINAL)
    Q_PROPERTY(app::FactModel* taken READ taken CONSTANT FINAL)
    Q_PROPERTY(app::FactModel* cuts READ cuts CONSTANT FINAL)
    Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged FINAL)
    Q_PROPERTY(bool isStopped READ isStopped NOTIFY busyChanged FINAL)
    Q_PROPERTY(bool mapShown READ mapShown WRITE setMapShown NOTIFY mapShownChanged FINAL)

public:
    LightViewModel(Workspace& workspace, PlanViewModel& plan, LightWorks works,
                   QObject* parent = nullptr);

    [[nodiscard]] QStringList places() const { return places_; } ///< plantings, hedges part by part
    [[nodiscard]] int place() const { return place_; }           ///< into places(); -1: none
    void setPlace(int place);
    [[nodiscard]] QString headline() const { return headline_; }
    [[nodiscard]] Tone::Value tone() const { return tone_; }
    [[nodiscard]] QString weather() const { return weather_; } ///< whose sunshine it is
    [[nodiscard]] double need() const { return need_; } ///< on the bars' scale; less than 0: none
    [[nodiscard]] double good() const { return good_; } ///< the same
    [[nodiscard]] QString needText() const { return needText_; }
    [[nodiscard]] MonthModel* months() { return &months_; }
    [[nodiscard]] FactModel* taken() { return &taken_; }
    [[nodiscard]] FactModel* cuts() { return &cuts_; }
    [[nodiscard]] bool isBusy() const { return assessor_.isBusy() && !isStopped_; }
    /// The year was given up, and nothing has changed since.
    [[nodiscard]] bool isStopped() const { return isStopped_; }
    [[nodiscard]] bool mapShown() const { return mapShown_; }
    void setMapShown(bool shown);

    /// Why the chosen place has the light it has on a mean day. \param when  a month, "0" .. "11",
    /// or why::kSeason
    [[nodiscard]] std::optional<Chain> chain(const std::string& when) const;
    /// What there is to tell of a row of cuts(): copies, for a thread that explains it.
    struct Gain {
        GardenSnapshot garden;
        model::light::SurfaceLight surface;
        model::light::Weather weather;
        model::CutLight cut;
    };
    [[nodiscard]] std::optional<Gain> gain(std::size_t row) const;
    /// Points at the limb that a fact is about.
    Q_INVOKABLE void choose(const QString& id);
    /// Gives up the year that is being reckoned, until goOn() or the next change.
    Q_INVOKABLE void stop();
    Q_INVOKABLE void goOn();

signals:
    void changed();
    void busyChanged();
    void mapShownChanged();
    void mapRenewed(); ///< the plan shows a newer map

private:
    void want();
    void take(const LightWanted& wanted, const std::shared_ptr<const model::LightYear>& year);
    void word();
    void wordMonths(const model::light::SurfaceLight& light, const model::Plant* plant);
    void wordTaken(const model::light::MonthLight& season);
    void wordCuts(const model::SurfaceYear& surface);

    Workspace& workspace_;
    PlanViewModel& plan_;
    GardenSnapshot garden_; ///< that year_ is of
    std::shared_ptr<const model::LightYear> year_;
    QStringList places_;
    int place_{-1};
    QString headline_, weather_, needText_;
    Tone::Value tone_{};
    double need_{-1.0}, good_{-1.0};
    MonthModel months_;
    FactModel taken_, cuts_;
    bool mapShown_{};
    bool isStopped_{};
    LightAssessor assessor_; ///< last, so that its thread ends first
};

} // namespace app
