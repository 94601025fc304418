// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/named_numbers.h"
#include "reference/shipped_files.h"

#include <array>

namespace winterlarder {

namespace {

constexpr auto decisionsFile = "rules/decisions.csv";

struct DecisionNumber {
    std::string_view name;
    std::string_view unit;
    double DecisionConstants::*member;
};

constexpr std::array decisionNumbers = std::to_array<DecisionNumber>({
    {"closingBeforeFeedBy", "d", &DecisionConstants::closingBeforeFeedBy},
    {"incomePastDays", "d", &DecisionConstants::incomePastDays},
    {"lateDays", "d", &DecisionConstants::lateDays},
    {"reserveNucleus", "kg", &DecisionConstants::reserveNucleus},
    {"reserveOneBox", "kg", &DecisionConstants::reserveOneBox},
    {"reserveMoreBoxes", "kg", &DecisionConstants::reserveMoreBoxes},
    {"reserveInSpring", "kg", &DecisionConstants::reserveInSpring},
    {"quietBeforeForage", "d", &DecisionConstants::quietBeforeForage},
    {"riskVisited", "1", &DecisionConstants::riskVisited},
    {"riskUnvisited", "1", &DecisionConstants::riskUnvisited},
    {"lockedInShort", "d", &DecisionConstants::lockedInShort},
    {"lockedInLong", "d", &DecisionConstants::lockedInLong},
    {"lockedInBoard", "d", &DecisionConstants::lockedInBoard},
    {"capacityShare", "1", &DecisionConstants::capacityShare},
    {"fullShare", "1", &DecisionConstants::fullShare},
    {"combsNeedDays", "d", &DecisionConstants::combsNeedDays},
    {"heftLight", "1", &DecisionConstants::heftLight},
    {"heftFair", "1", &DecisionConstants::heftFair},
    {"heftHeavy", "1", &DecisionConstants::heftHeavy},
    {"heftFairFollowed", "1", &DecisionConstants::heftFairFollowed},
    {"heftFairFollowedSd", "1", &DecisionConstants::heftFairFollowedSd},
    {"heftBeyond", "kg", &DecisionConstants::heftBeyond},
    {"heftSugarInSummer", "kg", &DecisionConstants::heftSugarInSummer},
    {"heftSugar", "kg", &DecisionConstants::heftSugar},
    {"contradictionSugar", "kg", &DecisionConstants::contradictionSugar},
    {"worthLookingBand", "kg", &DecisionConstants::worthLookingBand},
    {"worthLookingGain", "kg", &DecisionConstants::worthLookingGain},
    {"deadLeast", "kg", &DecisionConstants::deadLeast},
    {"deadShareOfTarget", "1", &DecisionConstants::deadShareOfTarget},
    {"deadShareOfBand", "1", &DecisionConstants::deadShareOfBand},
    {"deadMost", "kg", &DecisionConstants::deadMost},
    {"harvestLeast", "kg", &DecisionConstants::harvestLeast},
    {"harvestCombFull", "1", &DecisionConstants::harvestCombFull},
    {"mostWater", "%", &DecisionConstants::mostWater},
    {"wettishFrom", "%", &DecisionConstants::wettishFrom},
    {"mostWaterHeather", "%", &DecisionConstants::mostWaterHeather},
    {"safetyLeast", "kg", &DecisionConstants::safetyLeast},
    {"safetyNucleus", "kg", &DecisionConstants::safetyNucleus},
    {"safetyBeyond", "kg", &DecisionConstants::safetyBeyond},
    {"summerLookDays", "d", &DecisionConstants::summerLookDays},
    {"leastLookDays", "d", &DecisionConstants::leastLookDays},
    {"summerPortionLeast", "kg", &DecisionConstants::summerPortionLeast},
    {"manyMites", "mites", &DecisionConstants::manyMites},
    {"weakBees", "bees", &DecisionConstants::weakBees},
    {"strongEnoughBees", "bees", &DecisionConstants::strongEnoughBees},
    {"fewestMeasuredBees", "bees", &DecisionConstants::fewestMeasuredBees},
    {"strongUntilDay", "d", &DecisionConstants::strongUntilDay},
    {"uniteColdest", "degC", &DecisionConstants::uniteColdest},
    {"keepAliveDays", "d", &DecisionConstants::keepAliveDays},
    {"queenTestDays", "d", &DecisionConstants::queenTestDays},
    {"keepAliveSugar", "kg", &DecisionConstants::keepAliveSugar},
    {"fondantVisit", "kg", &DecisionConstants::fondantVisit},
    {"fondantNucleus", "kg", &DecisionConstants::fondantNucleus},
    {"fondantLeast", "kg", &DecisionConstants::fondantLeast},
    {"fondantNucleusLeast", "kg", &DecisionConstants::fondantNucleusLeast},
    {"fondantLastsDays", "d", &DecisionConstants::fondantLastsDays},
    {"fondantFromDay", "d", &DecisionConstants::fondantFromDay},
    {"laterLeast", "kg", &DecisionConstants::laterLeast},
    {"portionsLookDays", "d", &DecisionConstants::portionsLookDays},
    {"lookSoonDays", "d", &DecisionConstants::lookSoonDays},
    {"uncountedBeesLeast", "bees", &DecisionConstants::uncountedBeesLeast},
    {"uncountedBeesMost", "bees", &DecisionConstants::uncountedBeesMost},
    {"uncountedBroodMost", "cells", &DecisionConstants::uncountedBroodMost},
    {"lateLookDays", "d", &DecisionConstants::lateLookDays},
    {"winterLookDays", "d", &DecisionConstants::winterLookDays},
    {"lateBoardDays", "d", &DecisionConstants::lateBoardDays},
    {"lateBoardStarve", "1", &DecisionConstants::lateBoardStarve},
    {"fondantBoard", "kg", &DecisionConstants::fondantBoard},
    {"actNowDays", "d", &DecisionConstants::actNowDays},
    {"dueDays", "d", &DecisionConstants::dueDays},
    {"hardUse", "1", &DecisionConstants::hardUse},
    {"lateLitres", "L", &DecisionConstants::lateLitres},
    {"lateUptake", "L/d", &DecisionConstants::lateUptake},
    {"unitedBees", "bees", &DecisionConstants::unitedBees},
    {"giftCombLeast", "kg", &DecisionConstants::giftCombLeast},
    {"previewWinters", "1", &DecisionConstants::previewWinters},
    {"foodElsewhere", "1", &DecisionConstants::foodElsewhere},
    {"gapCombs", "1", &DecisionConstants::gapCombs},
    {"dwindlingShare", "1", &DecisionConstants::dwindlingShare},
    {"fasterThan", "1", &DecisionConstants::fasterThan},
    {"moreCombs", "1", &DecisionConstants::moreCombs},
    {"moreCombsInSpring", "1", &DecisionConstants::moreCombsInSpring},
    {"moreSpringDays", "d", &DecisionConstants::moreSpringDays},
    {"flowTrickle", "1", &DecisionConstants::flowTrickle},
    {"flowFair", "1", &DecisionConstants::flowFair},
    {"flowStrong", "1", &DecisionConstants::flowStrong},
    {"strongFlowDays", "d", &DecisionConstants::strongFlowDays},
    {"openThinDays", "d", &DecisionConstants::openThinDays},
    {"oneWeighingIn", "d", &DecisionConstants::oneWeighingIn},
    {"laterStoresSdLeast", "kg", &DecisionConstants::laterStoresSdLeast},
    {"laterBeesSdLeast", "1", &DecisionConstants::laterBeesSdLeast},
    {"pastWinters", "1", &DecisionConstants::pastWinters},
    {"learningWinters", "1", &DecisionConstants::learningWinters},
    {"winterOverDay", "season day", &DecisionConstants::winterOverDay},
    {"handbookReserve", "kg", &DecisionConstants::handbookReserve},
    {"oldestSight", "d", &DecisionConstants::oldestSight},
    {"sightAtMostTimes", "1", &DecisionConstants::sightAtMostTimes},
    {"sightAtMostMore", "kg", &DecisionConstants::sightAtMostMore},
    {"syrupPerSugar", "L/kg", &DecisionConstants::syrupPerSugar},
    {"worthAskingLeast", "kg", &DecisionConstants::worthAskingLeast},
    {"askMites", "kg", &DecisionConstants::askMites},
    {"askQueen", "kg", &DecisionConstants::askQueen},
    {"askFoodBeside", "kg", &DecisionConstants::askFoodBeside},
    {"askFullCombs", "kg", &DecisionConstants::askFullCombs},
    {"beeBreadLow", "kg", &DecisionConstants::beeBreadLow},
    {"beeBreadDays", "d", &DecisionConstants::beeBreadDays},
    {"longColdDays", "d", &DecisionConstants::longColdDays},
    {"narrowMargin", "kg", &DecisionConstants::narrowMargin},
    {"waspsFrom", "degC", &DecisionConstants::waspsFrom},
    {"coldestDays", "d", &DecisionConstants::coldestDays},
    {"springUsualFrom", "season day", &DecisionConstants::springUsualFrom},
    {"springUsualTo", "season day", &DecisionConstants::springUsualTo},
    {"clusteredBelow", "degC", &DecisionConstants::clusteredBelow},
    {"wholeSuperShare", "1", &DecisionConstants::wholeSuperShare},
    {"earlyLookBefore", "season day", &DecisionConstants::earlyLookBefore},
    {"earlyLookSd", "kg", &DecisionConstants::earlyLookSd},
    {"useOnBees", "1", &DecisionConstants::useOnBees},
    {"countSdLeast", "kg", &DecisionConstants::countSdLeast},
    {"broodBoxShare", "1", &DecisionConstants::broodBoxShare},
    {"heightWorthSaying", "K", &DecisionConstants::heightWorthSaying},
});
static_assert(sizeof(DecisionConstants) == decisionNumbers.size() * sizeof(double),
              "every number is read from the file");

} // namespace

DecisionConstants readDecisions(ShippedFolder& folder, SourceUses& uses) {
    DecisionConstants values{};
    std::vector<NamedNumber> numbers;
    for (const DecisionNumber& number : decisionNumbers)
        numbers.push_back({number.name, number.unit, &(values.*(number.member))});
    readNumbers(folder, uses, decisionsFile, {"name", "value", "unit", "low", "high", "mark", "source", "meaning"},
                "number", numbers);
    return values;
}

} // namespace winterlarder
