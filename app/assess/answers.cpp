#include "app/assess/answers.hpp"

#include "model/crown/foliage.hpp"

#include <algorithm>
#include <stdexcept>

namespace app {
namespace {

using model::Garden;
using model::Tables;

const model::Species& speciesOf(const model::Tree& tree, const Tables& tables)
{
    const auto* species = model::findSpecies(tables, tree.species);
    if (!species)
        throw std::domain_error("no species called " + tree.species + " in the tables");
    return *species;
}

QuickAnswer quick(const Ask& ask, const Tables& tables)
{
    const Garden& garden = *ask.garden;
    const auto tree = std::ranges::find(garden.trees, ask.tree, &model::Tree::id);
    if (tree == garden.trees.end())
        return {};
    const auto& species = speciesOf(*tree, tables);
    const auto foliation = model::foliate(*tree, species);
    const auto conditions =
        model::conditionsOn(ask.question.date, species, garden.place,
                            ask.question.gust_m_s.value_or(garden.designGust_m_s));
    return {
        foliation,
        model::load::treeLoad(*tree, foliation, species, garden.place, garden.exposure, conditions),
        model::headroom::treeHeadroom(garden, *tree)};
}

ShadowAnswer shadow(const Ask& ask)
{
    const auto& place = ask.garden->place;
    ShadowAnswer answer{
        model::light::sunPosition(ask.instant, place.latitude_deg, place.longitude_deg), {}};
    for (const auto& tree : ask.garden->trees)
        answer.byTree.push_back(model::light::shadow(tree, answer.sun));
    return answer;
}

} // namespace

Works modelWorks(const Tables& tables)
{
    return {.quick = [&tables](const Ask& ask) { return quick(ask, tables); },
            .shadow = shadow,
            .full =
                [&tables](const Ask& ask, const std::atomic<bool>& cancel) {
                    return model::assess(*ask.garden, tables, ask.question, ask.tree, &cancel);
                }};
}

} // namespace app
