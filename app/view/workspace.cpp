#include "app/view/workspace.hpp"

#include "app/view/clock.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>

namespace app {
namespace {

const model::Tree* findTree(const model::Garden& garden, const std::string& id)
{
    const auto found = std::ranges::find(garden.trees, id, &model::Tree::id);
    return found == garden.trees.end() ? nullptr : &*found;
}

const model::load::LimbLoad* findLoad(const model::load::TreeLoad& loads, const model::Tree& tree,
                                      const std::string& limb)
{
    const auto index = model::limbIndex(tree, limb);
    const auto found = std::ranges::find(loads.limbs, index, &model::load::LimbLoad::limb);
    return index == model::kNoLimb || found == loads.limbs.end() ? nullptr : &*found;
}

} // namespace

Workspace::Workspace(const model::Tables& tables, Units units, Works works,
                     std::chrono::year_month_day today, QObject* parent)
    : QObject(parent), tables_(tables), units_(std::move(units)), document_(tables), date_(today),
      assessor_(std::move(works))
{
    connect(&document_, &Document::replaced, this, &Workspace::onReplaced);
    connect(&document_, &Document::gardenChanged, this, &Workspace::onGarden);
    connect(&document_, &Document::fileProblemChanged, this, [this] {
        fileProblem_ = document_.fileProblem();
        emit problemChanged();
    });
    connect(&assessor_, &Assessor::busyChanged, this, &Workspace::busyChanged);
    connect(&assessor_, &Assessor::failed, this, &Workspace::say);
    connect(&assessor_, &Assessor::quickReady, this, [this](const Ask& ask, const auto& answer) {
        quick_ = answer;
        quickAsk_ = ask;
        emit quickChanged();
    });
    connect(&assessor_, &Assessor::shadowReady, this, [this](const Ask&, const auto& answer) {
        shadow_ = answer;
        emit shadowChanged();
    });
    connect(&assessor_, &Assessor::fullReady, this, &Workspace::takeFull);
}

void Workspace::setMeasures(Measures measures)
{
    if (measures == units_.measures())
        return;
    units_ = Units(units_.locale(), measures);
    emit unitsChanged();
    emit document_.gardenChanged();
    for (const auto signal :
         {&Workspace::askChanged, &Workspace::limbChosen, &Workspace::quickChanged,
          &Workspace::shadowChanged, &Workspace::fullChanged})
        emit(this->*signal)();
}

const model::Tree* Workspace::tree() const
{
    return findTree(garden(), tree_);
}

const model::Species* Workspace::species() const
{
    const auto* chosen = tree();
    return chosen ? model::findSpecies(tables_, chosen->species) : nullptr;
}

void Workspace::chooseTree(const std::string& id)
{
    if (id == tree_ || !findTree(garden(), id))
        return;
    tree_ = id;
    forget();
    emit treeChanged();
    ask();
}

const model::Limb* Workspace::limb() const
{
    const auto* chosen = tree();
    const auto index = chosen ? model::limbIndex(*chosen, limb_) : model::kNoLimb;
    return index == model::kNoLimb ? nullptr : &chosen->limbs[index];
}

void Workspace::chooseLimb(const std::string& id)
{
    if (id == limb_)
        return;
    limb_ = id;
    emit limbChosen();
}

double Workspace::gust_m_s() const
{
    return gust_m_s_.value_or(garden().designGust_m_s);
}

void Workspace::setGust_m_s(double gust_m_s)
{
    if (gust_m_s == this->gust_m_s())
        return;
    gust_m_s_ = gust_m_s;
    emit askChanged();
    ask();
}

void Workspace::setDate(std::chrono::year_month_day date)
{
    if (date == date_)
        return;
    date_ = date;
    emit askChanged();
    ask();
}

void Workspace::setHour(double hour)
{
    if (hour == hour_)
        return;
    hour_ = hour;
    emit askChanged();
    ask();
}

model::light::Instant Workspace::instant() const
{
    return instantAt(garden().place, date_, hour_);
}

void Workspace::setShowsAfter(bool after)
{
    if (after == showsAfter_)
        return;
    showsAfter_ = after;
    emit showsAfterChanged();
}

const model::TreeAssessment* Workspace::treeAssessment() const
{
    if (!full_ || fullAsk_.tree != tree_)
        return nullptr;
    const auto found = std::ranges::find(full_->trees, tree_, &model::TreeAssessment::tree);
    return found == full_->trees.end() ? nullptr : &*found;
}

const model::Tree* Workspace::quickTree() const
{
    return quick_ && quickAsk_.tree == tree_ ? findTree(*quickAsk_.garden, tree_) : nullptr;
}

const model::Garden* Workspace::assessedGarden() const
{
    return treeAssessment() ? fullAsk_.garden.get() : nullptr;
}

const model::Tree* Workspace::assessedTree() const
{
    return treeAssessment() ? findTree(*fullAsk_.garden, tree_) : nullptr;
}

bool Workspace::isCurrent() const
{
    return full_ && fullAsk_.garden == document_.garden() && fullAsk_.tree == tree_ &&
           fullAsk_.question.date == date_ && fullAsk_.question.gust_m_s == gust_m_s();
}

const model::load::LimbLoad* Workspace::load(const std::string& limb) const
{
    const auto* asked = quickTree();
    return asked ? findLoad(quick_->load, *asked, limb) : nullptr;
}

const model::load::LimbLoad* Workspace::loadAfter(const std::string& limb) const
{
    if (trial_)
        return findLoad(trial_->loadAfter, trial_->standing, limb);
    const auto* full = treeAssessment();
    return full && treeAfter_ ? findLoad(full->loadAfter, *treeAfter_, limb) : nullptr;
}

const std::vector<model::advice::PlannedCut>* Workspace::shownCuts() const
{
    if (trial_)
        return &trial_->judged.cuts;
    const auto* full = treeAssessment();
    return full ? &full->suggestion.cuts : nullptr;
}

void Workspace::setTrial(std::shared_ptr<const model::Trial> trial)
{
    trial_ = std::move(trial);
    trialTree_ = trial_ ? std::optional(trial_->standing) : std::nullopt;
    emit fullChanged();
}

bool Workspace::changeTree(const QString& name, model::Tree after, int gesture)
{
    model::Garden changed = garden();
    const auto found = std::ranges::find(changed.trees, tree_, &model::Tree::id);
    if (found == changed.trees.end())
        return false;
    *found = std::move(after);
    const QString refusal = document_.change(name, std::move(changed), gesture);
    say(refusal);
    return refusal.isEmpty();
}

void Workspace::say(const QString& problem)
{
    if (problem == problem_)
        return;
    problem_ = problem;
    emit problemChanged();
}

void Workspace::dismissProblem()
{
    problem_.clear();
    fileProblem_.clear();
    emit problemChanged();
}

void Workspace::stop()
{
    if (!isAssessing() || isStopped_)
        return;
    isStopped_ = true;
    assessor_.stop();
    emit fullChanged();
}

void Workspace::goOn()
{
    if (isStopped())
        ask();
}

void Workspace::ask()
{
    isStopped_ = false;
    if (tree()) {
        Ask ask; // field by field: GCC 12 takes a braced one for uninitialised at -O3
        ask.garden = document_.garden();
        ask.tree = tree_;
        ask.question.date = date_;
        ask.question.gust_m_s = gust_m_s();
        ask.instant = instant();
        assessor_.ask(std::move(ask));
    }
    emit fullChanged();
}

/// What belonged to another tree or another garden.
void Workspace::forget()
{
    limb_.clear();
    quick_.reset();
    shadow_.reset();
    full_.reset();
    treeAfter_.reset();
    trial_.reset();
    trialTree_.reset();
    showsAfter_ = false;
    emit limbChosen();
    emit showsAfterChanged();
}

void Workspace::onReplaced()
{
    gust_m_s_.reset();
    tree_ = garden().trees.empty() ? std::string() : garden().trees.front().id;
    say({});
    forget();
    emit askChanged();
}

void Workspace::onGarden()
{
    if (!tree())
        tree_ = garden().trees.empty() ? std::string() : garden().trees.front().id;
    if (!limb() && !limb_.empty())
        chooseLimb({});
    emit treeChanged();
    ask();
}

void Workspace::takeFull(const Ask& ask, const std::shared_ptr<const model::Assessment>& assessment)
{
    full_ = assessment;
    fullAsk_ = ask;
    treeAfter_.reset();
    const auto* full = treeAssessment();
    const auto* asked = findTree(*ask.garden, ask.tree);
    if (full && asked && !full->suggestion.cuts.empty()) {
        treeAfter_ = model::advice::afterCuts(*asked, model::advice::cutsOf(full->suggestion));
    }
    if (full && isCurrent()) { // to the last digit, which a drag leaves a millionth off
        quick_ = std::make_shared<const QuickAnswer>(QuickAnswer{full->load, full->headroom});
        quickAsk_ = ask;
        emit quickChanged();
    }
    emit fullChanged();
}

} // namespace app
