#pragma once

#include "app/words/wording.hpp"

namespace app {

inline model::Limb limb(const char* id, const char* name, std::vector<model::Station> stations)
{
    model::Limb made;
    made.id = id;
    made.name = name;
    made.stations = std::move(stations);
    return made;
}

inline model::Station station(double x_m, double y_m, double z_m, double diameter_m)
{
    model::Station made;
    made.position_m = {x_m, y_m, z_m};
    made.diameter_m = diameter_m;
    return made;
}

/// An apple of three limbs, the last without a name, that was visited once.
inline model::Tree smallTree()
{
    using namespace std::chrono_literals;
    model::Tree tree;
    tree.id = "apple";
    tree.name = "Old apple";
    tree.species = "Malus domestica";
    tree.limbs = {limb("stem", "Stem", {station(0, 0, 0, 0.3), station(0, 0, 6, 0.1)}),
                  limb("west", "West limb", {station(0, 0, 2, 0.12), station(-3, 0, 3, 0.04)}),
                  limb("l3", "", {station(-1.4, 0, 2.5, 0.05), station(-2, 1, 3, 0.02)})};
    tree.limbs[1].parent = "stem";
    tree.limbs[1].attachedAt_m = 2.0;
    tree.limbs[2].parent = "west";
    tree.limbs[2].attachedAt_m = 1.5;
    tree.visits.resize(1);
    tree.visits[0].id = "v1";
    tree.visits[0].date = 2025y / 2 / 3;
    return tree;
}

template <class Thing>
Thing named(const char* id, const char* name)
{
    Thing made;
    made.id = id;
    made.name = name;
    return made;
}

/// A garden with one tree, a strip, a wire and a bed: enough to speak of.
inline model::Garden toldGarden()
{
    model::Garden garden;
    garden.name = "Test garden";
    garden.trees = {smallTree()};
    garden.strips = {named<model::Strip>("path", "Path to the gate")};
    garden.lines = {named<model::ElectricLine>("wire", "House wire")};
    garden.plantings = {named<model::Planting>("bed", "Bean bed")};
    garden.plantings[0].plant = "Phaseolus vulgaris";
    return garden;
}

inline model::Species apple()
{
    model::Species species;
    species.latin = "Malus domestica";
    species.common = "apple";
    species.practice.avoidReason = "sap bleeding; soft leaves";
    return species;
}

/// A garden and all that a sentence about its tree needs.
struct Told {
    explicit Told(const char* locale) : units(QLocale(QLatin1String(locale))) {}

    Units units;
    model::Garden garden = toldGarden();
    model::Species species = apple();
    Wording wording{units, garden, garden.trees.front(), species};
};

/// With plain spaces, as a terminal shows it.
inline std::string shown(QString text)
{
    return text.replace(QChar::Nbsp, QLatin1Char(' ')).toStdString();
}

/// Tables that know one plant.
inline model::Tables beans()
{
    model::Tables tables;
    model::Plant bean;
    bean.latin = "Phaseolus vulgaris";
    bean.common = "French bean";
    bean.minSun_h = 6.0;
    bean.goodSun_h = 8.0;
    tables.plants = {bean};
    return tables;
}

} // namespace app
