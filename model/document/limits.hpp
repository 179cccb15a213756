#pragma once

#include <cstddef>

/// What a garden document may hold. Far above any real garden; they keep a broken or hostile file
/// from taking the machine's memory and time. Stated for people in docs/methods/document.md.
namespace model::limits {

// Of the text
inline constexpr std::size_t kDocumentBytes = std::size_t{32} * 1024 * 1024;
inline constexpr std::size_t kNesting = 32;       ///< lists and objects inside each other
inline constexpr std::size_t kValues = 2'000'000; ///< numbers, texts, lists and objects, all told
inline constexpr std::size_t kFaults = 100;       ///< told of one document; more help nobody

// Of the garden, in pieces
inline constexpr std::size_t kTrees = 200;
inline constexpr std::size_t kThings =
    500; ///< plantings, strips, lines, structures, neighbours: each
inline constexpr std::size_t kCorners = 500;     ///< per outline, and points per electric line
inline constexpr std::size_t kLimbs = 500;       ///< per tree
inline constexpr std::size_t kStations = 200;    ///< per limb
inline constexpr std::size_t kMarks = 50;        ///< defects and props: of each, per limb
inline constexpr std::size_t kObservations = 50; ///< per tree
inline constexpr std::size_t kPhotos = 100;      ///< per tree
inline constexpr std::size_t kGoals = 100;       ///< per tree
inline constexpr std::size_t kVisits = 1000;     ///< per tree
inline constexpr std::size_t kCuts = 500;        ///< per visit, and headroom records

// Of texts, in bytes of UTF-8
inline constexpr std::size_t kNameBytes = 200; ///< names, ids, species, plants, files, time zone
inline constexpr std::size_t kNoteBytes = 10'000;

// Of measures
inline constexpr double kGardenReach_m = 2000.0;     ///< of any place on plan from the origin
inline constexpr double kPlantingArea_m2 = 10'000.0; ///< light is reckoned point by point
inline constexpr double kTreeReach_m = 60.0;         ///< of a station on plan from the tree's base
inline constexpr double kTreeHeight_m = 120.0;       ///< the tallest known tree stands 116 m
inline constexpr double kIntoGround_m = 0.01;        ///< a base drawn a little into the grass
inline constexpr double kDiameter_m = 5.0;
inline constexpr int kInLeaf_days = 28;      ///< least, from leaf_on to leaf_off
inline constexpr double kCrownDepth_m = 0.1; ///< least, of a neighbour drawn as one crown
inline constexpr double kLeafyRadius_m = 20.0;
inline constexpr double kHanging_m = 30.0;
inline constexpr double kFruit_kg = 2000.0; ///< per limb
inline constexpr double kFoot_px = 1e6;     ///< of a photo, from its middle
inline constexpr double kTurned_deg = 180.0;
inline constexpr double kTilt_deg = 60.0; ///< a camera that looks up more sees no stem
inline constexpr double kGust_m_s = 100.0;

} // namespace model::limits
