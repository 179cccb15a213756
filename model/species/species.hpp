#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace model {

/// How sure a published figure is, as trees/sources.csv and the tables say.
enum class Evidence {
    found,   ///< read in the named source
    derived, ///< worked out from found figures by a named formula
    proxy,   ///< the figure of a related species, which is named
    memory,  ///< recalled, not read again
    assumed, ///< a judgement
};

/// A number with where it comes from: a key into trees/sources.csv.
struct Sourced {
    double value{};
    std::string source;
    Evidence evidence{Evidence::found};
};
using MaybeSourced = std::optional<Sourced>;

/// Where a small group of values comes from: a key into trees/sources.csv, and how sure.
struct Citation {
    std::string source;
    Evidence evidence{Evidence::found};
};
/// By topic, which is the name of its column in trees/ without "_source".
using CitationsByTopic = std::map<std::string, std::vector<Citation>>;

enum class LeafHabit { deciduous, evergreen, semiEvergreen };
enum class WoodClass { conifer, hardwood };

/// The groups of Jenkins et al. 2003, for whole-tree biomass.
enum class BiomassGroup {
    cedarLarch,
    douglasFir,
    firHemlock,
    pine,
    spruce,
    aspenWillow,
    mapleBirch,
    mixedHardwood,
    hardMapleOak,
    woodland,
};

/// How a crown gives way to wind; the laws are in model/load/drag.hpp.
enum class DragGroup { flexible, fineLeaved, medium, stiff, scaleConifer, needleConifer };

enum class Rating { low, medium, high };
enum class Decay { poor, moderate, good };
enum class Growth { slow, medium, fast, veryFast };
/// How the year's extension of shoots is spread over the season (docs/methods/growth.md, G1).
enum class ShootPattern { shortFlush, springFlush, longSeason };
enum class Flowering { none, beforeLeaves, spring, summer };

/// Green wood of one species.
struct Wood {
    WoodClass woodClass{};
    std::string gravitySpecies;     ///< whose specific gravity it is: the species or a proxy
    Sourced basicSpecificGravity{}; ///< oven-dry mass over green volume
    Sourced stemDensity_kg_m3{};    ///< green, of stems, heartwood and all
    Sourced limbDensity_kg_m3{};    ///< green, of limbs (mostly sapwood)
    std::string strengthSpecies;    ///< whose strength it is: the species, a proxy, or empty:
                                    ///< a regression on specific gravity
    Sourced greenMor_Pa{};          ///< bending strength of green clear wood
    Sourced greenMoe_Pa{};          ///< bending stiffness of green clear wood
    MaybeSourced greenWork_J_m3;    ///< work to maximum load, green clear wood
    BiomassGroup biomassGroup{};
    DragGroup dragGroup{};
    CitationsByTopic sources; ///< of the groups: "biomass", "drag"
    std::string note;
};

/// How the species answers to the saw, and when to cut it.
struct Practice {
    LeafHabit leafHabit{};
    std::string role;       ///< shade, fruit, ornamental, conifer...
    std::string crownHabit; ///< vase, spreading, weeping, conical...
    double heightLow_m{};   ///< mature, lower and upper end
    double heightHigh_m{};
    double spreadLow_m{};
    double spreadHigh_m{};
    double shootLow_m{}; ///< yearly shoot extension, lower and upper end
    double shootHigh_m{};
    ShootPattern shootPattern{ShootPattern::longSeason};
    Growth growth{};
    Flowering flowering{};
    std::vector<int> bestMonthsNorth;  ///< 1..12, northern hemisphere
    std::vector<int> avoidMonthsNorth; ///< 1..12
    std::string avoidReason;
    std::optional<Decay> decayResistance; ///< how well wounds are walled off; blank = not known
    std::optional<Rating> woodStrength;
    std::optional<Rating> sprouting;
    std::optional<double> maxAnnualRemoval; ///< share of leaf (peach: of one-year wood), where a
                                            ///< source gives one
    std::string regrowthNote;
    std::string note;
    CitationsByTopic sources; ///< "size", "shoot_low", "timing"...; none for a blank value
};

/// Leaves as light and weight see them.
struct Leaf {
    MaybeSourced crownLai;   ///< leaf area over the crown's area on plan, median of those surveyed
    std::string laiSpecies;  ///< whose it is: the species or a proxy
    double laiQuartile1{};   ///< 0 where the LAI is blank
    double laiQuartile3{};   ///< 0 where the LAI is blank
    MaybeSourced leafAngleX; ///< Campbell's x of the leaf angle distribution
    MaybeSourced transmittanceLeafOn; ///< of a whole crown, measured
    MaybeSourced transmittanceLeafOff;
    MaybeSourced keptDeadLeaf; ///< share of its leaf that the tree holds dead until spring
    std::string note;
};

/// One species, joined from the wood, practice and leaf tables by its Latin name.
struct Species {
    std::string latin;
    std::string common;
    Wood wood;
    Practice practice;
    Leaf leaf;
};

enum class ShadeTolerance { low, medium, high };

/// What a plant under trees needs.
struct Plant {
    std::string latin;
    std::string common;
    std::string kind;                ///< hedge, shrub, vegetable, lawn...
    std::optional<double> minSun_h;  ///< direct sun a day, least
    std::optional<double> goodSun_h; ///< direct sun a day, for good growth
    std::optional<double> minDli_mol;
    std::optional<double> goodDli_mol;
    std::optional<ShadeTolerance> shadeTolerance;
    CitationsByTopic sources; ///< "min_sun", "good_sun", "dli", "shade", "note"
    std::string note;
};

/// Full references by key.
using Sources = std::map<std::string, std::string>;

/// All tables, as read by readTables (tables.hpp).
struct Tables {
    Sources sources;
    std::vector<Species> species;
    std::vector<Plant> plants;
};

/// The species with this Latin name, or null.
[[nodiscard]] const Species* findSpecies(const Tables& tables, const std::string& latin);

/// The plant with this Latin name, or null.
[[nodiscard]] const Plant* findPlant(const Tables& tables, const std::string& latin);

} // namespace model
