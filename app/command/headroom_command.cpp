#include "app/command/commands.hpp"
#include "app/report/suggestion_json.hpp"
#include "app/report/suggestion_text.hpp"
#include "model/load/sag.hpp"

#include <algorithm>

namespace app {
namespace {

/// One tree and the headroom under it.
struct TreeHeadroom {
    const model::Tree& tree;
    std::vector<model::headroom::StripHeadroom> strips;
};

/// As drawn, and when the tree hangs at its heaviest.
std::vector<model::headroom::StripHeadroom>
headroomOf(const model::Garden& garden, const model::Tree& tree, const model::Tables& tables)
{
    const auto& species = *findSpecies(tables, tree.species);
    const auto sag =
        model::load::sagUnder(tree, foliate(tree, species), species, model::load::kHeaviest);
    return model::headroom::treeHeadroom(garden, tree, sag.tree);
}

std::vector<TreeHeadroom> headroomOfAll(const Job& job, const model::Garden& garden)
{
    const std::string wanted = treeOf(job.arguments, garden);
    std::vector<TreeHeadroom> all;
    for (const model::Tree& tree : garden.trees)
        if (wanted.empty() || tree.id == wanted)
            all.push_back({tree, headroomOf(garden, tree, job.tables)});
    return all;
}

std::string text(const std::vector<TreeHeadroom>& all, const model::Garden& garden,
                 const model::Tables& tables, const Units& units)
{
    TextPage page;
    for (const TreeHeadroom& each : all) {
        const Wording wording{units, garden, each.tree, *findSpecies(tables, each.tree.species)};
        addTreeTitle(page, wording);
        addHeadroom(page, each.strips, wording);
    }
    addCautions(page);
    return page.text().toStdString();
}

Json json(const std::vector<TreeHeadroom>& all, const model::Garden& garden)
{
    Json trees = Json::array();
    for (const TreeHeadroom& each : all) {
        Json strips = Json::array();
        for (const auto& strip : each.strips)
            strips.push_back(toJson(strip));
        trees.push_back({{"id", each.tree.id},
                         {"name", each.tree.name},
                         {"species", each.tree.species},
                         {"headroom", std::move(strips)}});
    }
    return {
        {"format", "underbough-headroom"}, {"version", 1},
        {"garden", garden.name},           {"trees", std::move(trees)},
        {"cautions", cautionsJson()},
    };
}

bool fallsShort(const TreeHeadroom& tree)
{
    return std::ranges::any_of(tree.strips,
                               [](const auto& strip) { return strip.worstShortfall_m() > 0.0; });
}

} // namespace

int headroomCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    const model::Garden garden = gardenOf(job);
    const auto all = headroomOfAll(job, garden);
    if (job.arguments.json)
        job.streams.out << jsonText(json(all, garden));
    else
        job.streams.out << text(all, garden, job.tables, units);
    return statusOf(job, std::ranges::any_of(all, fallsShort));
}

} // namespace app
