#include "model/species/read_tables.hpp"

namespace model {
namespace {

constexpr Range kAngle_deg{0.0, 90.0};
constexpr Range kAngleX{0.05, 20.0};
constexpr Range kCount{1.0, 1.0e6};
constexpr Range kLai{0.05, 15.0};
constexpr Range kShare{0.0, 1.0};

void readAngle(const TableRow& row, Leaf& leaf)
{
    leaf.leafAngleX = row.maybeSourced("leaf_angle_x", kAngleX, "leaf_angle");
    row.needSources("leaf_angle", {"leaf_angle_x"});
    const auto mean = row.maybeNumber("leaf_angle_mean_deg", kAngle_deg);
    const auto leaves = row.maybeNumber("leaf_angle_leaves", kCount);
    if (mean.has_value() != leaf.leafAngleX.has_value())
        row.fault("leaf_angle_mean_deg", "a mean angle exactly where leaf_angle_x stands");
    if (leaves.has_value() != leaf.leafAngleX.has_value())
        row.fault("leaf_angle_leaves", "a number exactly where leaf_angle_x stands");
}

void readCrownLai(const TableRow& row, Leaf& leaf)
{
    leaf.crownLai = row.maybeSourced("crown_lai", kLai, "lai");
    row.needSources("lai", {"crown_lai"});
    leaf.laiSpecies = row.text("lai_species");
    if (!leaf.crownLai) {
        for (const auto* column :
             {"crown_lai_quartile1", "crown_lai_quartile3", "crown_lai_trees", "lai_species"})
            if (!row.blank(column))
                row.fault(column, "nothing, because crown_lai is blank");
        return;
    }
    leaf.laiQuartile1 = row.number("crown_lai_quartile1", {kLai.least, leaf.crownLai->value});
    leaf.laiQuartile3 = row.number("crown_lai_quartile3", {leaf.crownLai->value, kLai.greatest});
    static_cast<void>(row.number("crown_lai_trees", kCount));
    const bool own = row.filled("lai_species") == row.text("latin");
    if (own == (leaf.crownLai->evidence == Evidence::proxy))
        row.fault("lai_evidence", "proxy exactly where lai_species is another species");
}

} // namespace

std::vector<std::string> leafColumns()
{
    return {"latin",
            "leaf_angle_mean_deg",
            "leaf_angle_x",
            "leaf_angle_leaves",
            "leaf_angle_source",
            "leaf_angle_evidence",
            "crown_lai",
            "crown_lai_quartile1",
            "crown_lai_quartile3",
            "crown_lai_trees",
            "lai_species",
            "lai_source",
            "lai_evidence",
            "transmittance_leaf_on",
            "transmittance_leaf_off",
            "transmittance_source",
            "transmittance_evidence",
            "kept_dead_leaf",
            "kept_dead_leaf_source",
            "kept_dead_leaf_evidence",
            "note"};
}

Leaf readLeaf(const TableRow& row)
{
    Leaf leaf;
    readAngle(row, leaf);
    readCrownLai(row, leaf);
    leaf.transmittanceLeafOn = row.maybeSourced("transmittance_leaf_on", kShare, "transmittance");
    leaf.transmittanceLeafOff = row.maybeSourced("transmittance_leaf_off", kShare, "transmittance");
    row.needSources("transmittance", {"transmittance_leaf_on", "transmittance_leaf_off"});
    leaf.keptDeadLeaf = row.maybeSourced("kept_dead_leaf", kShare, "kept_dead_leaf");
    row.needSources("kept_dead_leaf", {"kept_dead_leaf"});
    leaf.note = row.text("note");
    return leaf;
}

} // namespace model
