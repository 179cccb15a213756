#include "model/species/read_tables.hpp"

#include <array>

namespace model {
namespace {

constexpr std::array<Word<WoodClass>, 2> kWoodClass{
    {{"conifer", WoodClass::conifer}, {"hardwood", WoodClass::hardwood}}};

constexpr std::array<Word<BiomassGroup>, 10> kBiomassGroup{
    {{"cedar_larch", BiomassGroup::cedarLarch},
     {"douglas_fir", BiomassGroup::douglasFir},
     {"fir_hemlock", BiomassGroup::firHemlock},
     {"pine", BiomassGroup::pine},
     {"spruce", BiomassGroup::spruce},
     {"aspen_willow", BiomassGroup::aspenWillow},
     {"maple_birch", BiomassGroup::mapleBirch},
     {"mixed_hardwood", BiomassGroup::mixedHardwood},
     {"hard_maple_oak", BiomassGroup::hardMapleOak},
     {"woodland", BiomassGroup::woodland}}};

constexpr std::array<Word<DragGroup>, 6> kDragGroup{{{"flexible", DragGroup::flexible},
                                                     {"fine_leaved", DragGroup::fineLeaved},
                                                     {"medium", DragGroup::medium},
                                                     {"stiff", DragGroup::stiff},
                                                     {"scale_conifer", DragGroup::scaleConifer},
                                                     {"needle_conifer", DragGroup::needleConifer}}};

// What no green wood of a tree lies outside of: a slip of the pen by a power of ten is caught.
constexpr Range kGravity{0.1, 1.3};
constexpr Range kDensity_kg_m3{300.0, 1500.0};
constexpr Range kMor_Pa{1.0e7, 2.0e8};
constexpr Range kMoe_Pa{1.0e9, 3.0e10};
constexpr Range kWork_J_m3{1.0e4, 5.0e5};

} // namespace

std::vector<std::string> woodColumns()
{
    return {"latin",
            "common",
            "wood_class",
            "basic_specific_gravity",
            "gravity_species",
            "gravity_source",
            "gravity_evidence",
            "stem_density_kg_m3",
            "stem_density_source",
            "stem_density_evidence",
            "limb_density_kg_m3",
            "limb_density_source",
            "limb_density_evidence",
            "strength_species",
            "green_mor_Pa",
            "mor_source",
            "mor_evidence",
            "green_moe_Pa",
            "moe_source",
            "moe_evidence",
            "green_work_J_m3",
            "work_source",
            "work_evidence",
            "biomass_group",
            "biomass_source",
            "biomass_evidence",
            "drag_group",
            "drag_source",
            "drag_evidence",
            "note"};
}

Wood readWood(const TableRow& row)
{
    Wood wood;
    wood.woodClass = row.word<WoodClass>("wood_class", kWoodClass);
    wood.gravitySpecies = row.filled("gravity_species");
    wood.basicSpecificGravity = row.sourced("basic_specific_gravity", kGravity, "gravity");
    wood.stemDensity_kg_m3 = row.sourced("stem_density_kg_m3", kDensity_kg_m3, "stem_density");
    wood.limbDensity_kg_m3 = row.sourced("limb_density_kg_m3", kDensity_kg_m3, "limb_density");
    wood.strengthSpecies = row.text("strength_species");
    wood.greenMor_Pa = row.sourced("green_mor_Pa", kMor_Pa, "mor");
    wood.greenMoe_Pa = row.sourced("green_moe_Pa", kMoe_Pa, "moe");
    wood.greenWork_J_m3 = row.maybeSourced("green_work_J_m3", kWork_J_m3, "work");
    row.needSources("work", {"green_work_J_m3"});
    wood.biomassGroup = row.word<BiomassGroup>("biomass_group", kBiomassGroup);
    wood.dragGroup = row.word<DragGroup>("drag_group", kDragGroup);
    row.cite(wood.sources, "biomass", {"biomass_group"});
    row.cite(wood.sources, "drag", {"drag_group"});
    wood.note = row.text("note");
    if (wood.limbDensity_kg_m3.value < wood.stemDensity_kg_m3.value - 0.5)
        row.fault("limb_density_kg_m3", "no less than the density of the stem");
    return wood;
}

} // namespace model
