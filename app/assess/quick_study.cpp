#include "app/assess/quick_study.hpp"

#include <algorithm>
#include <stdexcept>

namespace app {

QuickAnswer QuickStudy::answer(const Ask& ask)
{
    const model::Garden& garden = *ask.garden;
    const auto tree = std::ranges::find(garden.trees, ask.tree, &model::Tree::id);
    if (tree == garden.trees.end())
        return {};
    const auto* species = model::findSpecies(tables_, tree->species);
    if (!species)
        throw std::domain_error("no species called " + tree->species + " in the tables");
    const auto conditions =
        model::conditionsOn(ask.question.date, *tree, *species, garden.place,
                            ask.question.gust_m_s.value_or(garden.designGust_m_s));
    auto loads =
        load(*tree, *species, {tree->id, tree->species, garden.place, garden.exposure, conditions});
    const auto sag =
        model::load::sagUnder(*tree, foliation_, *species, model::load::kHeaviest, rest_);
    return {std::move(loads), model::headroom::treeHeadroom(garden, *tree, sag.tree,
                                                            model::headroom::Overhang::leftOut)};
}

const model::load::TreeLoad& QuickStudy::load(const model::Tree& tree,
                                              const model::Species& species, const Asked& asked)
{
    if (!asked_ || asked_->tree != asked.tree || asked_->species != asked.species) {
        leaf_.emplace(species);
        rest_ = {}; // another tree hangs otherwise
    }
    const bool keep = asked_ == asked;
    asked_.reset(); // a refusal below leaves the studies half told
    foliation_ = leaf_->redraw(tree);
    if (keep)
        load_->redraw(tree, foliation_);
    else
        load_.emplace(tree, foliation_, species, asked.place, asked.exposure, asked.conditions);
    asked_ = asked;
    return load_->load();
}

} // namespace app
