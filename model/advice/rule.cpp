#include "model/advice/rule.hpp"

namespace model::advice {

RuleFacts ruleFacts(Rule rule)
{
    switch (rule) {
    case Rule::seasonShare:
        return {"1",
                "ANSI A300-1995 Pruning 5.3.1 (a quarter in a growing season); less for old or "
                "stressed trees: extension practice, no firm figure published; a peach half, as "
                "its wood is renewed (University of California, The Backyard Orchard; from "
                "memory)"};
    case Rule::stressedTree:
        return {"1", "Shigo's pruning dose (little live wood off over-mature trees); 10 % is often "
                     "said, no firm figure published"};
    case Rule::ordinaryShare:
        return {"1", "Colorado State University Extension, GardenNotes 616 (10-15 % in a season)"};
    case Rule::limbShare:
        return {"1", "ANSI A300-1995 5.3.1 (a quarter of a branch); USDA Forest Service "
                     "NA-FR-01-95 (over half: take the whole branch; from memory)"};
    case Rule::lowerTwoThirds:
        return {"1", "ANSI A300-1995 5.3.1 (half of the foliage in the lower two thirds)"};
    case Rule::liveCrownRatio:
        return {"1", "BS 3998:2010 clause 7.6 as quoted by practitioners (two thirds); 60 % from "
                     "arboriculture texts, from memory"};
    case Rule::raiseStep:
        return {"1", "BS 3998:2010 clause 7.6 as quoted by practitioners (15 % of the live crown's "
                     "height)"};
    case Rule::balance:
        return {"1", "common practice (keep the crown balanced); a tenth of its reach is assumed, "
                     "no source"};
    case Rule::topping:
        return {"", "ANSI A300 Part 1-2008 and 2017 (topping is not acceptable)"};
    case Rule::lateralThird:
        return {"1", "BS 3998:1989 (a lateral of a third of the cut); a half is better: Colorado "
                     "State University Extension"};
    case Rule::branchToStem:
        return {"1", "Colorado State Forest Service pruning leaflet; Gilman & Grabosky 2006, "
                     "Arboriculture & Urban Forestry 32(2):74-79"};
    case Rule::woundSum:
        return {"1", "BS 3998 draft 2008, annex E.1.3 (cut sections over a third of the stem's)"};
    case Rule::lionTail:
        return {"1", "ANSI A300-1995 5.3.1 (half of the foliage of each limb on its lower two "
                     "thirds); ANSI A300 Part 1-2008 and 2017 (lion's-tailing is not acceptable)"};
    case Rule::renewFruitWood:
        return {"1",
                "University of California, The Backyard Orchard, table of yearly pruning (last "
                "year's wood of bearing trees); from memory"};
    case Rule::rubbingLimbs:
        return {"m", "USDA Forest Service NA-FR-01-95 (take branches that cross or rub; from "
                     "memory); the distance is common practice, no source"};
    case Rule::openMiddle:
        return {"", "University of California, The California Backyard Orchard (open centre, three "
                    "or four scaffolds); UC Master Gardeners 2020"};
    case Rule::renewalShare:
        return {"1", "University of California, The Backyard Orchard, table of yearly pruning; "
                     "from memory"};
    case Rule::bareConifer:
        return {"", "four conifer-pruning pages agree that bare wood of most conifers does not "
                    "sprout; weak source"};
    case Rule::cutOver50mm:
        return {"m", "Colorado State University Extension, GardenNotes 612 and 613"};
    case Rule::cutOver100mm:
        return {"m", "Colorado State Forest Service pruning leaflet; GardenNotes 612"};
    case Rule::overHead:
        return {"m",
                "tree firms' advice to owners (saw from the ground only, 6-7 ft); weak source"};
    case Rule::beyondPoleSaw:
        return {"m", "reach of a hand-held pole saw, common practice, no source"};
    case Rule::heavyPiece:
        return {"kg",
                "HSE INDG143 manual handling guideline, 16 kg at knuckle height; from memory"};
    case Rule::veryHeavyPiece:
        return {"kg", "HSE INDG143, two people lift two thirds of 2 x 25 kg; from memory"};
    case Rule::nearLine:
        return {"m", "29 CFR 1910.269 (10 ft, more above 50 kV); HSE tree work page and "
                     "Arboricultural Association guide 2.4.7: within 10 m on plan ask the line's "
                     "operator first"};
    case Rule::targetBelow:
    case Rule::plantingBelow:
        return {"m", "common practice, no source"};
    case Rule::peopleBelow:
        return {"m", "OSHA storm-response matrix (20 ft beyond the drop zone); that a road is shut "
                     "by those who may: common practice, no source"};
    case Rule::deadWood:
        return {"m", "newspaper garden column (dead limbs in trees over 15 ft); weak source"};
    case Rule::brokenWood:
        return {"m", "USDA Forest Service NA-FR-01-96 (a hung-up branch: act at once); ANSI "
                     "A300-1995 5.3.1 (a limb too big to hold in one hand); tree-care trade "
                     "article (weight off a bent limb makes it jump)"};
    case Rule::crackedOrHollow:
    case Rule::warningSign:
        return {"", "USDA Forest Service NA-FR-01-96, How to recognize hazardous defects in trees"};
    case Rule::leaningStem:
        return {"deg", "general tree pages agree on 15-20 degrees; weak source"};
    case Rule::limbOverloaded:
        return {"1", "this tool's load model (docs/methods/load.md)"};
    case Rule::poorHealer:
        return {"m", "European Tree Pruning Standard EAS 01:2021 (5 cm for weak "
                     "compartmentalisers); from memory"};
    case Rule::nearChimney:
        return {"m", "California Public Resources Code 4291 (10 ft from the outlet of a chimney or "
                     "stovepipe)"};
    case Rule::protectedTree:
        return {"", "local law; ask the local authority"};
    case Rule::monthToAvoid:
        return {"month", "trees/practice.csv, timing of the species"};
    case Rule::dryWeather:
        return {"", "University of California Extension (Eutypa: no rain for six weeks after the "
                    "cut)"};
    case Rule::nestingSeason:
        return {"month",
                "Wildlife and Countryside Act 1981 s.1 and like laws; season March-August"};
    case Rule::oakWilt:
        return {"month", "Wisconsin DNR and Minnesota (April-July), Michigan DNR (seal at once if "
                         "an oak must be cut), Texas agencies (February-June); where wilt occurs: "
                         "from memory"};
    }
    return {"", ""};
}

} // namespace model::advice
