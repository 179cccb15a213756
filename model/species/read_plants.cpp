#include "model/species/read_tables.hpp"

#include <array>

namespace model {
namespace {

constexpr std::array<Word<ShadeTolerance>, 3> kShadeTolerance{{{"low", ShadeTolerance::low},
                                                               {"medium", ShadeTolerance::medium},
                                                               {"high", ShadeTolerance::high}}};

constexpr std::array<Word<std::string_view>, 7> kKind{{{"hedge", "hedge"},
                                                       {"shrub", "shrub"},
                                                       {"vegetable", "vegetable"},
                                                       {"fruit", "fruit"},
                                                       {"perennial", "perennial"},
                                                       {"flower", "flower"},
                                                       {"lawn", "lawn"}}};

constexpr Range kHours{0.0, 24.0};
constexpr Range kDli_mol_m2{0.0, 70.0};

void checkOrder(const TableRow& row, std::optional<double> least, std::optional<double> good,
                std::string_view goodColumn)
{
    if (least && good && *least > *good)
        row.fault(goodColumn, "no less than the least");
}

} // namespace

std::vector<std::string> plantColumns()
{
    return {"latin",
            "common",
            "kind",
            "min_sun_h",
            "min_sun_source",
            "min_sun_evidence",
            "good_sun_h",
            "good_sun_source",
            "good_sun_evidence",
            "min_dli_mol_m2",
            "good_dli_mol_m2",
            "dli_source",
            "dli_evidence",
            "shade_tolerance",
            "shade_source",
            "shade_evidence",
            "note",
            "note_source",
            "note_evidence"};
}

Plant readPlant(const TableRow& row)
{
    Plant plant;
    plant.latin = row.filled("latin");
    plant.common = row.filled("common");
    plant.kind = row.word<std::string_view>("kind", kKind);
    plant.minSun_h = row.maybeNumber("min_sun_h", kHours);
    plant.goodSun_h = row.maybeNumber("good_sun_h", kHours);
    plant.minDli_mol = row.maybeNumber("min_dli_mol_m2", kDli_mol_m2);
    plant.goodDli_mol = row.maybeNumber("good_dli_mol_m2", kDli_mol_m2);
    checkOrder(row, plant.minSun_h, plant.goodSun_h, "good_sun_h");
    checkOrder(row, plant.minDli_mol, plant.goodDli_mol, "good_dli_mol_m2");
    if (!row.blank("shade_tolerance"))
        plant.shadeTolerance = row.word<ShadeTolerance>("shade_tolerance", kShadeTolerance);
    plant.note = row.text("note");
    row.cite(plant.sources, "min_sun", {"min_sun_h"});
    row.cite(plant.sources, "good_sun", {"good_sun_h"});
    row.cite(plant.sources, "dli", {"min_dli_mol_m2", "good_dli_mol_m2"});
    row.cite(plant.sources, "shade", {"shade_tolerance"});
    row.cite(plant.sources, "note", {"note"});
    return plant;
}

} // namespace model
