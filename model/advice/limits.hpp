#pragma once

/// The thresholds of the rules, SI. The publication behind each is ruleFacts(rule).source; how
/// they are read is told in docs/methods/advice.md.
namespace model::advice {

inline constexpr double kSeasonShare = 0.25;
inline constexpr double kSeasonShareWeak = 0.10; ///< old or stressed trees
inline constexpr double kOrdinaryShare = 0.15;
inline constexpr double kLimbShareWarn = 0.25;
inline constexpr double kLimbShareMost = 0.50;
inline constexpr double kLowerTwoThirdsLeast = 0.50;
inline constexpr double kLiveCrownRatioGood = 2.0 / 3.0;
inline constexpr double kLiveCrownRatioLeast = 0.60;
inline constexpr double kRaiseStep = 0.15; ///< of the live crown's height, in one visit
inline constexpr double kLateralLeast = 1.0 / 3.0;
inline constexpr double kLateralGood = 0.5;
inline constexpr double kBranchToStem = 0.5;
inline constexpr double kMovedAside = 0.10; ///< of the crown's reach
inline constexpr double kWoundSum = 1.0 / 3.0;
inline constexpr double kInnerLeafLeast = 0.50; ///< of a limb's leaf, on its inner two thirds
inline constexpr double kRubbing_m = 0.02;      ///< limbs so near rub in a breeze

inline constexpr double kWoundSmall_m = 0.05;
inline constexpr double kWoundLarge_m = 0.10;

inline constexpr double kReach_m = 2.1; ///< hand saw, both feet on the ground
inline constexpr double kPoleSawReach_m = 4.6;
inline constexpr double kSecateurs_m = 0.019;  ///< 3/4 in, the thickest wood they are meant for
inline constexpr double kLoppers_m = 0.038;    ///< 1 1/2 in
inline constexpr double kPolePruner_m = 0.032; ///< 1 1/4 in
inline constexpr double kThreeCuts_m = 0.025;  ///< CSFS leaflet; ANSI A300-1995 5.3.1
inline constexpr double kPieceLength_m = 2.0;  ///< that one person turns and carries
inline constexpr double kLog_m = 0.05;         ///< thicker is stacked, thinner is brush
inline constexpr double kHeavyPiece_kg = 16.0;
inline constexpr double kVeryHeavyPiece_kg = 33.0;
inline constexpr double kLineDistance_m = 3.05;
inline constexpr double kLineDistancePer10kV_m = 0.10; ///< for each 10 kV over 50 kV
inline constexpr double kLineAskFirst_m = 10.0;
inline constexpr double kFallZone_m = 6.0; ///< beyond the piece's own length
inline constexpr double kDeadWoodHeight_m = 4.6;
inline constexpr double kBrokenWood_m = 0.025; ///< thicker can't be held in one hand
inline constexpr double kChimney_m = 3.05;     ///< 10 ft from its mouth, any direction
inline constexpr double kLean_deg = 15.0;

} // namespace model::advice
