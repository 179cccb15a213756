#pragma once

#include "app/assess/newest_wins.hpp"
#include "app/assess/outlook_works.hpp"
#include "app/view/offer_model.hpp"
#include "app/view/trial_view_model.hpp"
#include "app/view/workspace.hpp"
#include "app/words/wording.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <optional>

namespace app {

/// What more and less of the leaf would buy, one thing at a time, as a curve; a point of it can be
/// taken, which tries its cuts out. It is worked out only while it is looked at.
class OffersViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")
    Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY changed FINAL)
    Q_PROPERTY(QStringList subjects READ subjects NOTIFY changed FINAL)
    Q_PROPERTY(int subject READ subject WRITE setSubject NOTIFY changed FINAL)
    Q_PROPERTY(app::OfferModel* points READ points CONSTANT FINAL)
    Q_PROPERTY(QString headline READ headline NOTIFY changed FINAL)
    Q_PROPERTY(double wanted READ wanted NOTIFY changed FINAL)
    Q_PROPERTY(QString wantedText READ wantedText NOTIFY changed FINAL)
    Q_PROPERTY(QString lowText READ lowText NOTIFY changed FINAL)
    Q_PROPERTY(QString highText READ highText NOTIFY changed FINAL)
    Q_PROPERTY(QString axis READ axis NOTIFY changed FINAL)
    Q_PROPERTY(QString mostText READ mostText NOTIFY changed FINAL)
    Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged FINAL)
    Q_PROPERTY(bool isStale READ isStale NOTIFY changed FINAL)

public:
    OffersViewModel(Workspace& workspace, TrialViewModel& trial, OutlookWorks works,
                    QObject* parent = nullptr);

    [[nodiscard]] bool shown() const { return shown_; }
    void setShown(bool shown);
    [[nodiscard]] QStringList subjects() const { return subjects_; } ///< what can be bought
    [[nodiscard]] int subject() const { return subject_; }           ///< into subjects(); -1: none
    void setSubject(int subject);
    [[nodiscard]] OfferModel* points() { return &points_; }
    [[nodiscard]] QString headline() const { return headline_; }
    [[nodiscard]] double wanted() const
    {
        return wanted_;
    } ///< on the scale; less than 0: not known
    [[nodiscard]] QString wantedText() const { return wantedText_; }
    [[nodiscard]] QString lowText() const { return lowText_; } ///< at the scale's foot
    [[nodiscard]] QString highText() const { return highText_; }
    [[nodiscard]] QString axis() const { return axis_; } ///< what is bought, and its measure
    [[nodiscard]] QString mostText() const { return mostText_; } ///< the leaf at the scale's end
    [[nodiscard]] bool isBusy() const { return worker_.isBusy(); }
    /// What is shown is of the tree as it was before the last change, or was stopped half-way.
    [[nodiscard]] bool isStale() const { return stale_; }

    /// Tries out the cuts of a point. \param row  of points(); 0 puts all back
    Q_INVOKABLE void take(int row);
    /// Stops the search; what was found so far is shown.
    Q_INVOKABLE void stop();

signals:
    void changed();
    void busyChanged();

private:
    using TradeOffs = std::vector<model::advice::TradeOff>;
    /// One curve: a thing that is bought, and which of its subjects.
    struct Curve {
        std::size_t tradeOff{};
        std::size_t subject{};
    };
    void want();
    void takeAnswer(const OutlookAsk& ask, std::shared_ptr<const TradeOffs> tradeOffs, bool whole);
    void word();
    void wordCurve(const model::advice::TradeOff& tradeOff, std::size_t subject,
                   const Wording& wording);

    Workspace& workspace_;
    TrialViewModel& trial_;
    OutlookWorks works_;
    bool shown_{};
    bool stale_{};
    OutlookAsk asked_;  ///< last
    OutlookAsk answer_; ///< that tradeOffs_ is of
    std::shared_ptr<const TradeOffs> tradeOffs_;
    std::vector<Curve> curves_;
    std::vector<const model::advice::Offer*> offers_; ///< one for each point; null: as it stands
    QStringList subjects_;
    int subject_{-1};
    OfferModel points_;
    QString headline_, wantedText_, lowText_, highText_, mostText_, axis_;
    double wanted_{-1.0};
    NewestWins worker_; ///< last, so that its thread ends first
};

} // namespace app
