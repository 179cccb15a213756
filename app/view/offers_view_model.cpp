#include "app/view/offers_view_model.hpp"

#include "app/words/trade_off_words.hpp"

#include <algorithm>

namespace app {
namespace {

using model::advice::Lack;
using model::advice::Offer;
using model::advice::TradeOff;

constexpr std::chrono::milliseconds kSettle{300};

/// What is bought, on a scale from the worst to the best that is seen, the better the higher.
class Scale {
public:
    Scale(const TradeOff& tradeOff, std::size_t subject) : isLoad_(tradeOff.lack == Lack::relief)
    {
        take(tradeOff.now[subject]);
        take(tradeOff.wanted[subject]);
        for (const auto& offer : tradeOff.offers)
            take(offer.reached[subject]);
        if (high_ - low_ < kLeast) // else nothing would be told apart
            high_ = low_ + kLeast;
    }
    /// Blank: nothing overhead, or no load: as good as can be.
    [[nodiscard]] double up(const std::optional<double>& value) const
    {
        if (!value)
            return 1.0;
        const double share = (*value - low_) / (high_ - low_);
        return isLoad_ ? 1.0 - share : share;
    }
    [[nodiscard]] double worst() const { return isLoad_ ? high_ : low_; }
    [[nodiscard]] double best() const { return isLoad_ ? low_ : high_; }

private:
    static constexpr double kLeast = 1e-3;
    void take(const std::optional<double>& value)
    {
        if (!value)
            return;
        low_ = any_ ? std::min(low_, *value) : *value;
        high_ = any_ ? std::max(high_, *value) : *value;
        any_ = true;
    }
    bool isLoad_;
    bool any_{};
    double low_{};
    double high_{};
};

bool isTried(const model::Trial* trial, const std::vector<model::Cut>& cuts)
{
    if (!trial || trial->judged.cuts.size() != cuts.size())
        return false;
    return std::ranges::all_of(cuts, [&](const model::Cut& cut) {
        return std::ranges::any_of(trial->judged.cuts,
                                   [&](const auto& planned) { return planned.cut == cut; });
    });
}

} // namespace

OffersViewModel::OffersViewModel(Workspace& workspace, TrialViewModel& trial, OutlookWorks works,
                                 QObject* parent)
    : QObject(parent), workspace_(workspace), trial_(trial), works_(std::move(works)),
      worker_(kSettle)
{
    connect(&workspace_, &Workspace::treeChanged, this, &OffersViewModel::want);
    connect(&workspace_, &Workspace::askChanged, this, &OffersViewModel::want);
    connect(&trial_, &TrialViewModel::changed, this, &OffersViewModel::word);
    connect(&worker_, &NewestWins::failed, &workspace_, &Workspace::say);
    connect(&worker_, &NewestWins::busyChanged, this, &OffersViewModel::busyChanged);
}

void OffersViewModel::setShown(bool shown)
{
    if (shown == shown_)
        return;
    shown_ = shown;
    if (!shown)
        worker_.start([](const NewestWins::Turn&) {}); // stops what is under way
    asked_ = {};
    want();
    emit changed();
}

void OffersViewModel::want()
{
    const auto* tree = workspace_.tree();
    if (!shown_ || !tree)
        return;
    OutlookAsk ask{workspace_.document().garden(), tree->id, workspace_.date()};
    if (ask == asked_)
        return;
    asked_ = ask;
    stale_ = tradeOffs_ != nullptr;
    emit changed();
    worker_.start([this, ask](const NewestWins::Turn& turn) {
        if (!turn.settles())
            return;
        auto found = std::make_shared<const TradeOffs>(works_.offers(ask, turn.cancel()));
        const bool whole = !turn.cancel();
        turn.tell([this, ask, found, whole] { takeAnswer(ask, found, whole); });
    });
}

void OffersViewModel::stop()
{
    worker_.start([](const NewestWins::Turn&) {});
}

void OffersViewModel::takeAnswer(const OutlookAsk& ask, std::shared_ptr<const TradeOffs> tradeOffs,
                                 bool whole)
{
    if (ask != asked_) // a newer one is on its way, or nobody looks any more
        return;
    answer_ = ask;
    tradeOffs_ = std::move(tradeOffs);
    stale_ = !whole;
    curves_.clear();
    for (std::size_t t = 0; t < tradeOffs_->size(); ++t)
        for (std::size_t s = 0; s < (*tradeOffs_)[t].now.size(); ++s)
            curves_.push_back({t, s});
    subject_ = curves_.empty() ? -1 : std::clamp(subject_, 0, static_cast<int>(curves_.size()) - 1);
    word();
}

void OffersViewModel::setSubject(int subject)
{
    if (subject == subject_ || subject < 0 || subject >= static_cast<int>(curves_.size()))
        return;
    subject_ = subject;
    word();
}

void OffersViewModel::word()
{
    subjects_.clear();
    headline_.clear();
    const auto* tree = workspace_.tree();
    const auto* species = workspace_.species();
    if (!tradeOffs_ || !tree || !species || answer_.tree != tree->id) {
        points_.show({});
        emit changed();
        return;
    }
    const auto& garden = *answer_.garden;
    const auto drawn = std::ranges::find(garden.trees, answer_.tree, &model::Tree::id);
    const Wording wording{workspace_.units(), garden, *drawn, *species};
    for (const auto& curve : curves_)
        subjects_ << tradeOffSubject((*tradeOffs_)[curve.tradeOff], curve.subject, wording);
    if (subject_ < 0) {
        points_.show({});
        headline_ = tr("Nothing is lacking that leaf could buy.");
    } else {
        const auto& curve = curves_.at(static_cast<std::size_t>(subject_));
        wordCurve((*tradeOffs_)[curve.tradeOff], curve.subject, wording);
    }
    emit changed();
}

void OffersViewModel::wordCurve(const TradeOff& tradeOff, std::size_t subject,
                                const Wording& wording)
{
    const auto& units = workspace_.units();
    const Scale scale(tradeOff, subject);
    const double most = tradeOff.offers.back().leafMost;
    const auto figure = [&](const std::optional<double>& value) {
        return tradeOffFigure(tradeOff.lack, value, units);
    };
    std::vector<OfferPoint> points;
    offers_ = {nullptr};
    points.push_back({0.0, scale.up(tradeOff.now[subject]), units.share(0.0),
                      figure(tradeOff.now[subject]),
                      tr("As it is: %1.").arg(figure(tradeOff.now[subject])),
                      workspace_.trial() == nullptr, true});
    for (const auto& offer : tradeOff.offers) {
        if (offer.leafShare <= 0.0 || (offers_.back() && offer.cuts == offers_.back()->cuts))
            continue;
        const auto& value = offer.reached[subject];
        points.push_back(
            {most > 0.0 ? std::min(1.0, offer.leafShare / most) : 0.0, scale.up(value),
             units.share(offer.leafShare), figure(value),
             (offer.proven ? tr("For %1 of the leaf: %2. Nothing does as much for less.")
                           : tr("For %1 of the leaf: %2. Less leaf may do, too."))
                 .arg(units.share(offer.leafShare), figure(value)),
             isTried(workspace_.trial(), offer.cuts), offer.proven});
        offers_.push_back(&offer);
    }
    const auto& wanted = tradeOff.wanted[subject];
    wanted_ = wanted ? scale.up(*wanted) : -1.0;
    wantedText_ = wanted ? tr("wanted: %1").arg(figure(*wanted)) : QString();
    lowText_ = figure(scale.worst());
    highText_ = figure(scale.best());
    mostText_ = units.share(most);
    axis_ = tradeOffAxis(tradeOff.lack);
    headline_ = points.size() < 2
                    ? tr("Nothing inside the guideline changes %1.")
                          .arg(tradeOffSubject(tradeOff, subject, wording))
                    : tr("%1: %2 as it is, %3 for %4 of the leaf.")
                          .arg(tradeOffSubject(tradeOff, subject, wording), points.front().reached,
                               points.back().reached, points.back().leaf);
    points_.show(std::move(points));
}

void OffersViewModel::take(int row)
{
    if (row < 0 || row >= static_cast<int>(offers_.size()) || isStale())
        return;
    const auto* offer = offers_[static_cast<std::size_t>(row)];
    if (offer)
        trial_.tryOut(offer->cuts);
    else
        trial_.clear();
}

} // namespace app
