#include "app/view/why_view_model.hpp"

#include "app/words/cut_words.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>

namespace app {
namespace {

using why::Kind;

template <typename Things>
bool holds(const Things& things, const std::string& id)
{
    return std::ranges::any_of(things, [&](const auto& thing) { return thing.id == id; });
}

/// Cuts to be explained, and those made before them.
struct CutsAsked {
    std::vector<model::Cut> made;
    std::vector<model::Cut> cuts;
    QString what;
};

CutsAsked oneOf(const std::vector<model::advice::PlannedCut>& planned, std::size_t row,
                const Wording& wording)
{
    CutsAsked asked;
    for (std::size_t i = 0; i < row; ++i)
        asked.made.push_back(planned[i].cut);
    asked.cuts = {planned[row].cut};
    asked.what = instruction(planned[row], wording);
    if (asked.what.endsWith(QLatin1Char('.')))
        asked.what.chop(1);
    return asked;
}

CutsAsked allOf(const std::vector<model::advice::PlannedCut>& planned)
{
    CutsAsked asked;
    for (const auto& each : planned)
        asked.cuts.push_back(each.cut);
    asked.what = WhyViewModel::tr("All %1 cuts together").arg(planned.size());
    return asked;
}

} // namespace

WhyViewModel::WhyViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace)
{
    connect(&workspace_, &Workspace::treeChanged, this, &WhyViewModel::refresh);
    connect(&workspace_, &Workspace::askChanged, this, &WhyViewModel::refresh);
    connect(&workspace_, &Workspace::fullChanged, this, [this] {
        if (isOfCuts())
            refresh();
    });
    connect(&worker_, &NewestWins::failed, &workspace_, &Workspace::say);
}

void WhyViewModel::follow(LightViewModel& light)
{
    light_ = &light;
    connect(light_, &LightViewModel::changed, this, [this] {
        if (asked_ && (asked_->kind == Kind::year || asked_->kind == Kind::gain))
            refresh();
    });
}

void WhyViewModel::ask(const QString& key)
{
    asked_ = why::question(key);
    chain_ = {};
    refresh();
}

void WhyViewModel::askCut(int row)
{
    ask(why::key(Kind::cut, std::to_string(row)));
}

void WhyViewModel::askTried(int row)
{
    ask(why::key(Kind::tried, std::to_string(row)));
}

void WhyViewModel::close()
{
    asked_.reset();
    worker_.start([](const NewestWins::Turn&) {}); // stops what is under way
    steps_.show({});
    chain_ = {};
    emit changed();
}

/// Whether the answer hangs on the full assessment, or on cuts that are tried.
bool WhyViewModel::isOfCuts() const
{
    return asked_ && asked_->kind >= Kind::cut;
}

void WhyViewModel::refresh()
{
    if (!asked_)
        return;
    auto work = this->work();
    if (!work) {
        // Cuts are worked out anew after each change: the old chain stays in sight meanwhile.
        if (!isOfCuts() || workspace_.isCurrent())
            close();
        return;
    }
    emit changed();
    worker_.start([this, work = std::move(work), asked = *asked_](const NewestWins::Turn& turn) {
        auto chain = work();
        if (turn.cancel())
            return;
        turn.tell([this, asked, chain = std::move(chain)] {
            if (asked_ != asked)
                return;
            chain_ = chain;
            steps_.show(chain_.parts);
            emit changed();
        });
    });
}

WhyViewModel::Work WhyViewModel::work() const
{
    if (!workspace_.tree() || !workspace_.species())
        return {};
    switch (asked_->kind) {
    case Kind::limb:
        return limbWork();
    case Kind::strip:
        return stripWork();
    case Kind::planting:
        return plantingWork();
    case Kind::year:
        return yearWork();
    case Kind::gain:
        return gainWork();
    case Kind::cut:
    case Kind::cuts:
    case Kind::tried:
    case Kind::allTried:
        return cutWork();
    case Kind::who:
        break;
    }
    return whoWork();
}

WhyViewModel::Work WhyViewModel::limbWork() const
{
    const auto& tree = *workspace_.tree();
    const auto limb = model::limbIndex(tree, asked_->id);
    if (limb == model::kNoLimb)
        return {};
    model::Question question;
    question.date = workspace_.date();
    question.gust_m_s = workspace_.gust_m_s();
    // The snapshot keeps the tree alive.
    return [garden = workspace_.document().garden(), &tables = workspace_.tables(),
            units = workspace_.units(), &tree, &species = *workspace_.species(), question, limb] {
        return chainOf(model::explainLimb(*garden, tables, question, tree.id, limb),
                       {units, *garden, tree, species}, tables.sources);
    };
}

WhyViewModel::Work WhyViewModel::stripWork() const
{
    if (!holds(workspace_.garden().strips, asked_->id))
        return {};
    return [garden = workspace_.document().garden(), &tables = workspace_.tables(),
            units = workspace_.units(), &tree = *workspace_.tree(),
            &species = *workspace_.species(), strip = asked_->id] {
        return chainOf(model::explainStrip(*garden, tables, tree.id, strip),
                       {units, *garden, tree, species});
    };
}

WhyViewModel::Work WhyViewModel::plantingWork() const
{
    if (!holds(workspace_.garden().plantings, asked_->id))
        return {};
    return [garden = workspace_.document().garden(), &tables = workspace_.tables(),
            units = workspace_.units(), planting = asked_->id, date = workspace_.date()] {
        return chainOf(model::explainSun(*garden, tables, planting, date), *garden, tables, units);
    };
}

WhyViewModel::Work WhyViewModel::yearWork() const
{
    const auto chain = light_ ? light_->chain(asked_->id) : std::nullopt;
    if (!chain)
        return {};
    return [chain = *chain] { return chain; };
}

WhyViewModel::Work WhyViewModel::gainWork() const
{
    auto gain = light_ ? light_->gain(std::stoul(asked_->id)) : std::nullopt;
    if (!gain)
        return {};
    const auto tree = std::ranges::find(gain->garden->trees, gain->cut.tree, &model::Tree::id);
    if (tree == gain->garden->trees.end())
        return {};
    const auto* species = model::findSpecies(workspace_.tables(), tree->species);
    if (!species)
        return {};
    return [gain = std::move(*gain), &tables = workspace_.tables(), units = workspace_.units(),
            &tree = *tree, species, date = workspace_.date()] {
        const auto taken =
            model::explainCuts(*gain.garden, tables, tree.id, {}, {gain.cut.cut}, date);
        return chainOf(GainAsked{gain.surface, gain.weather, gain.cut, taken}, *gain.garden, tables,
                       {units, *gain.garden, tree, *species});
    };
}

WhyViewModel::Work WhyViewModel::cutWork() const
{
    const bool tried = asked_->kind == Kind::tried || asked_->kind == Kind::allTried;
    const auto* full = workspace_.treeAssessment();
    const auto* planned = tried ? (workspace_.trial() ? &workspace_.trial()->judged.cuts : nullptr)
                          : full && workspace_.isCurrent() ? &full->suggestion.cuts
                                                           : nullptr;
    if (!planned || planned->empty())
        return {};
    const bool all = asked_->kind == Kind::cuts || asked_->kind == Kind::allTried;
    const std::size_t row = all ? 0 : std::stoul(asked_->id);
    if (row >= planned->size())
        return {};
    const Wording wording{workspace_.units(), workspace_.garden(), *workspace_.tree(),
                          *workspace_.species()};
    auto asked = all ? allOf(*planned) : oneOf(*planned, row, wording);
    return [garden = workspace_.document().garden(), &tables = workspace_.tables(),
            units = workspace_.units(), &tree = *workspace_.tree(),
            &species = *workspace_.species(), asked = std::move(asked), date = workspace_.date()] {
        return chainOf(model::explainCuts(*garden, tables, tree.id, asked.made, asked.cuts, date),
                       asked.what, {units, *garden, tree, species}, tables.sources);
    };
}

WhyViewModel::Work WhyViewModel::whoWork() const
{
    const auto* full = workspace_.treeAssessment();
    if (!full || !workspace_.isCurrent())
        return {};
    return [garden = workspace_.document().garden(), units = workspace_.units(),
            &tree = *workspace_.tree(), &species = *workspace_.species(), labour = full->labour] {
        return chainOf(labour, {units, *garden, tree, species});
    };
}

} // namespace app
