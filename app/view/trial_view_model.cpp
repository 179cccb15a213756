#include "app/view/trial_view_model.hpp"

#include "app/view/cut_lines.hpp"
#include "app/view/limb_title.hpp"
#include "app/words/finding_list.hpp"
#include "app/words/headroom_words.hpp"
#include "app/words/labour_words.hpp"
#include "model/advice/fruit_wood.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>

namespace app {
namespace {

using model::CutKind;

constexpr double kSamePlace_m = 1e-6;
constexpr double kToldSun_h = 0.05; // less than that is no change

bool isSame(const model::Cut& a, const model::Cut& b)
{
    return a.kind == b.kind && a.limb == b.limb && std::abs(a.at_m - b.at_m) < kSamePlace_m;
}

/// "3.26 m" and "5.11 m": of every strip that the tree hangs over.
void addRoom(std::vector<Fact>& facts, const model::Trial& trial, const Wording& wording)
{
    const auto& units = wording.units;
    const auto heightOf = [&](const model::headroom::StripHeadroom& strip) {
        const auto height = strip.worstHeight_m();
        return height ? units.length(*height) : TrialViewModel::tr("clear");
    };
    for (std::size_t i = 0; i < trial.judged.before.size(); ++i) {
        const auto& before = trial.judged.before[i];
        const auto& after = trial.judged.after[i];
        if (!before.worstHeight_m())
            continue;
        facts.push_back(
            {TrialViewModel::tr("Least room over %1").arg(thingName(wording.garden, before.strip)),
             heightOf(before),
             heightOf(after),
             sentence(after, wording),
             after.worstShortfall_m() > 0.0 ? Tone::Grave : Tone::Good,
             {},
             -1.0});
    }
}

const model::load::LimbLoad* hardest(const model::load::TreeLoad& load)
{
    const model::load::LimbLoad* worst = nullptr;
    for (const auto& limb : load.limbs)
        if (limb.hasStrength && (!worst || limb.utilisation > worst->utilisation))
            worst = &limb;
    return worst;
}

void addLoads(std::vector<Fact>& facts, const model::Trial& trial, const Wording& wording)
{
    const auto& units = wording.units;
    const auto* before = hardest(trial.load);
    const auto* after = hardest(trial.loadAfter);
    if (!before)
        return;
    const QString who = limbTitle(wording.tree.limbs[before->limb]);
    const QString then = after ? limbTitle(trial.standing.limbs[after->limb]) : QString();
    facts.push_back(
        {TrialViewModel::tr("Hardest pressed limb"), units.share(before->utilisation),
         after ? units.share(after->utilisation) : QString(),
         then.isEmpty() || then == who
             ? TrialViewModel::tr("%1, as a share of its expected strength.").arg(who)
             : TrialViewModel::tr("%1 now, %2 then, as a share of their expected strength.")
                   .arg(who, then),
         Tone::Plain, QString::fromStdString(wording.tree.limbs[before->limb].id), -1.0});
    facts.push_back({TrialViewModel::tr("Bending at the foot of the stem"),
                     units.moment(trial.load.baseMoment_Nm),
                     units.moment(trial.loadAfter.baseMoment_Nm),
                     TrialViewModel::tr("In the gust that is asked about, from the worst side."),
                     Tone::Plain,
                     {},
                     -1.0});
}

void addSun(std::vector<Fact>& facts, const model::Trial& trial, const Wording& wording)
{
    const auto& units = wording.units;
    for (std::size_t i = 0; i < trial.sun.size(); ++i) {
        if (trial.sunAfter[i].sun_h - trial.sun[i].sun_h < kToldSun_h)
            continue;
        facts.push_back(
            {TrialViewModel::tr("Sun on %1").arg(thingName(wording.garden, trial.sun[i].planting)),
             units.hours(trial.sun[i].sun_h),
             units.hours(trial.sunAfter[i].sun_h),
             TrialViewModel::tr("Direct sun on the day that is asked about."),
             Tone::Plain,
             {},
             -1.0});
    }
}

} // namespace

TrialViewModel::TrialViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace)
{
    connect(&workspace_, &Workspace::treeChanged, this, &TrialViewModel::onGarden);
    connect(&workspace_, &Workspace::askChanged, this, &TrialViewModel::reckon);
    connect(&workspace_, &Workspace::limbChosen, this, &TrialViewModel::chosenChanged);
    connect(&workspace_, &Workspace::fullChanged, this, &TrialViewModel::changed);
    connect(&worker_, &NewestWins::busyChanged, this, &TrialViewModel::changed);
    connect(&worker_, &NewestWins::failed, &workspace_, &Workspace::say);
}

QString TrialViewModel::chosenLimb() const
{
    const auto* limb = workspace_.limb();
    return limb && limb->parent ? limbTitle(*limb) : QString();
}

bool TrialViewModel::canRenew() const
{
    const auto* limb = workspace_.limb();
    const auto* tree = workspace_.tree();
    return limb && tree && limb->foliage && model::advice::yearlyRenewal(tree->species);
}

bool TrialViewModel::canOpenMiddle() const
{
    const auto* tree = workspace_.tree();
    return tree && model::advice::yearlyRenewal(tree->species) &&
           !model::advice::middleLimbs(*tree).empty();
}

bool TrialViewModel::hasSuggested() const
{
    const auto* full = workspace_.treeAssessment();
    return full && !full->suggestion.cuts.empty();
}

double TrialViewModel::leafShare() const
{
    return trial_ ? trial_->judged.leafShare : 0.0;
}

double TrialViewModel::allowance() const
{
    return trial_ ? trial_->judged.allowance : 0.0;
}

QString TrialViewModel::leafText() const
{
    const auto& units = workspace_.units();
    return tr("%1 of the leaf, of %2 that may go now")
        .arg(units.share(leafShare()), units.share(allowance()));
}

void TrialViewModel::sawAt(const QString& limb, double at_m)
{
    const auto* tree = workspace_.tree();
    const auto index = tree ? model::limbIndex(*tree, limb.toStdString()) : model::kNoLimb;
    if (index != model::kNoLimb)
        add(model::cutAt(*tree, index, at_m));
}

void TrialViewModel::takeChosenLimb()
{
    if (!chosenLimb().isEmpty())
        add({CutKind::removal, workspace_.limbId(), 0.0, {}, {}, {}});
}

void TrialViewModel::renewChosenLimb()
{
    if (canRenew())
        add({CutKind::renewal,
             workspace_.limbId(),
             0.0,
             {},
             model::advice::yearlyRenewal(workspace_.tree()->species)->most,
             {}});
}

void TrialViewModel::openMiddle()
{
    if (!canOpenMiddle())
        return;
    const auto& tree = *workspace_.tree();
    std::vector<model::Cut> cuts;
    for (const auto limb : model::advice::middleLimbs(tree))
        cuts.push_back({CutKind::removal, tree.limbs[limb].id, 0.0, {}, {}, {}});
    tryOut(std::move(cuts));
}

void TrialViewModel::takeSuggested()
{
    const auto* full = workspace_.treeAssessment();
    if (!full)
        return;
    tryOut(model::advice::cutsOf(full->suggestion));
}

void TrialViewModel::tryOut(std::vector<model::Cut> cuts)
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return;
    wanted_ = model::advice::madeInTurn(*tree, cuts);
    tree_ = tree->id;
    reckon();
}

void TrialViewModel::putBack(int row)
{
    if (!trial_ || row < 0 || row >= static_cast<int>(trial_->judged.cuts.size()))
        return;
    const auto& cut = trial_->judged.cuts[static_cast<std::size_t>(row)].cut;
    std::erase_if(wanted_, [&](const model::Cut& other) { return isSame(other, cut); });
    reckon();
}

void TrialViewModel::clear()
{
    wanted_.clear();
    reckon();
}

void TrialViewModel::add(const model::Cut& cut)
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return;
    if (tree_ != tree->id)
        wanted_.clear();
    tree_ = tree->id;
    if (std::erase_if(wanted_, [&](const model::Cut& other) { return isSame(other, cut); }) == 0)
        wanted_.push_back(cut);
    // What can't be made after it, or instead of it, is no longer tried.
    wanted_ = model::advice::madeInTurn(*tree, wanted_);
    reckon();
}

void TrialViewModel::onGarden()
{
    const auto* tree = workspace_.tree();
    if (!tree || tree->id != tree_)
        wanted_.clear();
    else
        wanted_ = model::advice::madeInTurn(*tree, wanted_);
    reckon();
}

void TrialViewModel::reckon()
{
    if (wanted_.empty()) {
        if (!trial_ && !workspace_.trial())
            return;
        worker_.start([](const NewestWins::Turn&) {}); // stops what is under way
        trial_.reset();
        cuts_.show({});
        effects_.show({});
        headline_.clear();
        broken_.clear();
        who_.clear();
        workspace_.setTrial(nullptr);
        emit changed();
        return;
    }
    const auto garden = workspace_.document().garden();
    model::Question question;
    question.date = workspace_.date();
    question.gust_m_s = workspace_.gust_m_s();
    worker_.start([this, garden, question, tree = tree_, cuts = wanted_,
                   &tables = workspace_.tables()](const NewestWins::Turn& turn) {
        auto trial =
            std::make_shared<const model::Trial>(tryCuts(*garden, tables, question, tree, cuts));
        if (turn.cancel())
            return;
        turn.tell([this, garden, trial] {
            if (garden != workspace_.document().garden() || wanted_.empty())
                return; // of a garden that is no longer shown
            trial_ = trial;
            take(*trial, *garden);
            workspace_.setTrial(trial);
            emit changed();
        });
    });
}

void TrialViewModel::take(const model::Trial& trial, const model::Garden& garden)
{
    const auto tree = std::ranges::find(garden.trees, tree_, &model::Tree::id);
    const auto* species = workspace_.species();
    if (tree == garden.trees.end() || !species)
        return;
    const Wording wording{workspace_.units(), garden, *tree, *species};
    const auto& judged = trial.judged;
    cuts_.show(cutLines(judged, wording));
    std::vector<Fact> facts;
    addRoom(facts, trial, wording);
    addLoads(facts, trial, wording);
    addSun(facts, trial, wording);
    effects_.show(std::move(facts));
    broken_ = sentences(judged.binding, wording);
    who_ = whoWords(judged.labour.who);
    const bool enough = judged.outcome == model::advice::Outcome::met;
    headline_ = !judged.binding.empty() ? tr("The guideline will not have this.")
                : enough                ? tr("This does all that is wanted, inside the guideline.")
                                        : tr("Inside the guideline, but not all that is wanted.");
    tone_ = !judged.binding.empty() ? Tone::Grave : enough ? Tone::Good : Tone::Mind;
}

} // namespace app
