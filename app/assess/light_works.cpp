#include "app/assess/light_assessor.hpp"

#include "model/light/daylight.hpp"
#include "model/light/light_study.hpp"
#include "model/light/sun_path.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

using model::Garden;
using model::Point2;

constexpr double kMapPoints = 500.0;
constexpr double kFinestMap_m = 0.25;
constexpr double kAround_m = 2.0;

/// The ground that the map covers: everything drawn, and a little more.
model::light::MapGrid gridOver(const Garden& garden)
{
    Point2 low{1e9, 1e9};
    Point2 high{-1e9, -1e9};
    const auto take = [&](Point2 p) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    };
    const auto takeAll = [&](const auto& things) {
        for (const auto& thing : things)
            std::ranges::for_each(thing.outline_m, take);
    };
    takeAll(garden.plantings);
    takeAll(garden.strips);
    takeAll(garden.structures);
    for (const auto& tree : garden.trees)
        take(tree.position_m);
    const Point2 around{kAround_m, kAround_m};
    low = low - around;
    high = high + around;
    const double area_m2 = (high.x - low.x) * (high.y - low.y);
    const double spacing_m = std::max(kFinestMap_m, std::sqrt(area_m2 / kMapPoints));
    return model::light::mapGrid(low, high, spacing_m, 0.0, model::Ground(garden.slope));
}

/// Keeps what all else lets through, so that the map follows one tree under the hand.
class MapKeeper {
public:
    explicit MapKeeper(const model::Tables& tables) : tables_(tables) {}

    SunMap map(const LightWanted& wanted)
    {
        const Garden& garden = *wanted.garden;
        const auto tree = std::ranges::find(garden.trees, wanted.tree, &model::Tree::id);
        if (tree == garden.trees.end())
            return {};
        const auto index = static_cast<std::size_t>(tree - garden.trees.begin());
        Garden rest = garden;
        rest.trees[index].limbs.clear();
        if (!study_ || rest != rest_ || wanted.year != year_ || wanted.tree != tree_) {
            grid_ = gridOver(garden);
            study_ = study(garden, index, wanted.year);
            rest_ = std::move(rest);
            year_ = wanted.year;
            tree_ = wanted.tree;
            open_h_ = openSky_h(garden, wanted.year);
        }
        const auto* species = model::findSpecies(tables_, tree->species);
        return {grid_, study_->with(*tree, foliate(*tree, *species)).front().points, open_h_};
    }

private:
    static model::light::StudyQuestion question(const Garden& garden, std::chrono::year year)
    {
        model::light::StudyQuestion question;
        question.days = model::light::daysOfGrowingSeason(garden.place, year, 4);
        question.step = std::chrono::minutes{20};
        question.skyDirections = 0;
        return question;
    }

    std::unique_ptr<model::light::LightStudy> study(const Garden& garden, std::size_t tree,
                                                    std::chrono::year year) const
    {
        return std::make_unique<model::light::LightStudy>(
            garden, model::light::foliations(garden, tables_), tables_, tree,
            std::vector{grid_.surface}, question(garden, year));
    }

    double openSky_h(const Garden& garden, std::chrono::year year) const
    {
        double hours = 0.0;
        for (const auto& [date, weight] : question(garden, year).days)
            for (const auto& step :
                 model::light::sunPath(garden.place, date, question(garden, year).step))
                hours += step.shines && model::light::facing(grid_.surface, step.towards) > 0.0
                             ? weight * step.hours
                             : 0.0;
        return hours;
    }

    const model::Tables& tables_;
    std::unique_ptr<model::light::LightStudy> study_;
    model::light::MapGrid grid_;
    Garden rest_;
    std::string tree_;
    std::chrono::year year_{};
    double open_h_{};
};

} // namespace

LightWorks modelLightWorks(const model::Tables& tables)
{
    const auto keeper = std::make_shared<MapKeeper>(tables);
    return {.map = [keeper](const LightWanted& wanted) { return keeper->map(wanted); },
            .year =
                [&tables](const LightWanted& wanted, const std::atomic<bool>& cancel) {
                    model::LightAsk ask;
                    ask.year = wanted.year;
                    ask.detail.threads = 1; // the other core is the window's and the assessor's
                    return model::lightYear(*wanted.garden, tables, ask, &cancel);
                }};
}

} // namespace app
