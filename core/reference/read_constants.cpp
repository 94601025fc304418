// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/named_numbers.h"
#include "reference/shipped_files.h"

#include <array>

namespace winterlarder {

namespace {

constexpr auto constantsFile = "model/constants.csv";

struct Constant {
    std::string_view name;
    std::string_view unit;
    double ModelConstants::*member;
};

constexpr std::array constants = std::to_array<Constant>({
    {"honeyEnergy", "J/g", &ModelConstants::honeyEnergy},
    {"beeMass", "kg", &ModelConstants::beeMass},
    {"restingFloor", "W/kg", &ModelConstants::restingFloor},
    {"sizeLawMass", "kg", &ModelConstants::sizeLawMass},
    {"sizeExponent", "1", &ModelConstants::sizeExponent},
    {"restlessFrom", "degC", &ModelConstants::restlessFrom},
    {"restlessSlope", "W/kg/K", &ModelConstants::restlessSlope},
    {"restlessCeiling", "W/kg", &ModelConstants::restlessCeiling},
    {"clusterConductance", "W/kg/K", &ModelConstants::clusterConductance},
    {"coreTemperature", "degC", &ModelConstants::coreTemperature},
    {"broodTemperature", "degC", &ModelConstants::broodTemperature},
    {"broodConductance", "W/K/cell^(2/3)", &ModelConstants::broodConductance},
    {"broodForFullCore", "cells", &ModelConstants::broodForFullCore},
    {"honeyPerWorker", "g", &ModelConstants::honeyPerWorker},
    {"broodSurvival", "1", &ModelConstants::broodSurvival},
    {"larvaFedAge", "d", &ModelConstants::larvaFedAge},
    {"autumnLaying", "eggs/bee/day", &ModelConstants::autumnLaying},
    {"autumnDecline", "d", &ModelConstants::autumnDecline},
    {"broodAge", "d", &ModelConstants::broodAge},
    {"stoppedBelow", "1", &ModelConstants::stoppedBelow},
    {"winterLaying", "eggs/day", &ModelConstants::winterLaying},
    {"winterLayingBees", "bees", &ModelConstants::winterLayingBees},
    {"springLayingPerBee", "eggs/bee/day", &ModelConstants::springLayingPerBee},
    {"queenLimit", "eggs/day", &ModelConstants::queenLimit},
    {"springRamp", "d", &ModelConstants::springRamp},
    {"shortestRamp", "d", &ModelConstants::shortestRamp},
    {"winterLayingStart", "1", &ModelConstants::winterLayingStart},
    {"burstStrength", "1", &ModelConstants::burstStrength},
    {"burstShare", "1", &ModelConstants::burstShare},
    {"burstFrom", "degC", &ModelConstants::burstFrom},
    {"burstFullOver", "K", &ModelConstants::burstFullOver},
    {"warmthMemory", "d", &ModelConstants::warmthMemory},
    {"eggFloor", "1", &ModelConstants::eggFloor},
    {"winterDeath", "1/d", &ModelConstants::winterDeath},
    {"broodDeath", "1/d", &ModelConstants::broodDeath},
    {"fullBroodNest", "cells/bee", &ModelConstants::fullBroodNest},
    {"summerDeath", "1/d", &ModelConstants::summerDeath},
    {"summerDeathByBrood", "1", &ModelConstants::summerDeathByBrood},
    {"summerFullNest", "cells/bee", &ModelConstants::summerFullNest},
    {"springDeath", "1/d", &ModelConstants::springDeath},
    {"mostDeath", "1/d", &ModelConstants::mostDeath},
    {"shortLivedNest", "cells/bee", &ModelConstants::shortLivedNest},
    {"longLivedGain", "bees/cell", &ModelConstants::longLivedGain},
    {"longLivedFrom", "d", &ModelConstants::longLivedFrom},
    {"longLivedAll", "d", &ModelConstants::longLivedAll},
    {"income", "g/d per 10,000 bees", &ModelConstants::income},
    {"incomeFrom", "degC", &ModelConstants::incomeFrom},
    {"incomeFullOver", "K", &ModelConstants::incomeFullOver},
    {"bloomHalfWidth", "d", &ModelConstants::bloomHalfWidth},
    {"autumnTrickle", "1", &ModelConstants::autumnTrickle},
    {"backgroundIncome", "1", &ModelConstants::backgroundIncome},
    {"diurnalHalfRange", "K", &ModelConstants::diurnalHalfRange},
    {"springShift", "d/K", &ModelConstants::springShift},
    {"daysPastForage", "d", &ModelConstants::daysPastForage},
    {"lockedInBelow", "degC", &ModelConstants::lockedInBelow},
    {"incomeEndTemperature", "degC", &ModelConstants::incomeEndTemperature},
    {"incomeEndDayLength", "h", &ModelConstants::incomeEndDayLength},
    {"incomeEndSd", "d", &ModelConstants::incomeEndSd},
    {"feedByTemperature", "degC", &ModelConstants::feedByTemperature},
    {"feedBySd", "d", &ModelConstants::feedBySd},
    {"syrupTemperature", "degC", &ModelConstants::syrupTemperature},
    {"syrupSd", "d", &ModelConstants::syrupSd},
    {"syrupRefusedTemperature", "degC", &ModelConstants::syrupRefusedTemperature},
    {"syrupRefusedSd", "d", &ModelConstants::syrupRefusedSd},
    {"broodlessBelow", "degC", &ModelConstants::broodlessBelow},
    {"broodlessGap", "d", &ModelConstants::broodlessGap},
    {"broodStopTemperature", "degC", &ModelConstants::broodStopTemperature},
    {"broodStopDayLength", "h", &ModelConstants::broodStopDayLength},
    {"broodStopSd", "d", &ModelConstants::broodStopSd},
    {"broodRestartDay", "season day", &ModelConstants::broodRestartDay},
    {"broodRestartSd", "d", &ModelConstants::broodRestartSd},
    {"buildupTemperature", "degC", &ModelConstants::buildupTemperature},
    {"buildupDayLength", "h", &ModelConstants::buildupDayLength},
    {"buildupSd", "d", &ModelConstants::buildupSd},
    {"forageTemperature", "degC", &ModelConstants::forageTemperature},
    {"forageDayLength", "h", &ModelConstants::forageDayLength},
    {"forageSd", "d", &ModelConstants::forageSd},
    {"datesApart", "d", &ModelConstants::datesApart},
    {"forageWithBuildup", "1", &ModelConstants::forageWithBuildup},
    {"forageOwn", "1", &ModelConstants::forageOwn},
    {"confinedBelow", "degC", &ModelConstants::confinedBelow},
    {"beesSd", "1", &ModelConstants::beesSd},
    {"beesCountedSd", "1", &ModelConstants::beesCountedSd},
    {"beesSeamsSd", "1", &ModelConstants::beesSeamsSd},
    {"combAreaSd", "1", &ModelConstants::combAreaSd},
    {"photographAreaSd", "1", &ModelConstants::photographAreaSd},
    {"unseenFaceSd", "1", &ModelConstants::unseenFaceSd},
    {"combFillSd", "1", &ModelConstants::combFillSd},
    {"combUnseenSd", "1", &ModelConstants::combUnseenSd},
    {"quickCountSd", "1", &ModelConstants::quickCountSd},
    {"combRoundingSd", "kg", &ModelConstants::combRoundingSd},
    {"heatSd", "1", &ModelConstants::heatSd},
    {"broodSd", "1", &ModelConstants::broodSd},
    {"broodCountSd", "1", &ModelConstants::broodCountSd},
    {"deathSd", "1", &ModelConstants::deathSd},
    {"scaleReadingSd", "kg", &ModelConstants::scaleReadingSd},
    {"liftTwoSidesSd", "kg", &ModelConstants::liftTwoSidesSd},
    {"liftOneSideSd", "1", &ModelConstants::liftOneSideSd},
    {"liftOneSideLongHiveSd", "1", &ModelConstants::liftOneSideLongHiveSd},
    {"heftSd", "1", &ModelConstants::heftSd},
    {"lastingErrorShare", "1", &ModelConstants::lastingErrorShare},
    {"wetHiveExtra", "kg", &ModelConstants::wetHiveExtra},
    {"wetHiveSd", "kg", &ModelConstants::wetHiveSd},
    {"clusterSeenSd", "1", &ModelConstants::clusterSeenSd},
    {"flyingThoughDead", "1", &ModelConstants::flyingThoughDead},
    {"glimpseHalf", "kg", &ModelConstants::glimpseHalf},
    {"glimpseSd", "kg", &ModelConstants::glimpseSd},
    {"feedStepSd", "1", &ModelConstants::feedStepSd},
    {"equipmentSd", "kg", &ModelConstants::equipmentSd},
    {"unexplainedSd", "kg", &ModelConstants::unexplainedSd},
    {"contradictionLimit", "1", &ModelConstants::contradictionLimit},
    {"redrawBelow", "1", &ModelConstants::redrawBelow},
    {"lastingUseSd", "1", &ModelConstants::lastingUseSd},
    {"lastingDeathSd", "1", &ModelConstants::lastingDeathSd},
    {"lastingForageSd", "d", &ModelConstants::lastingForageSd},
    {"lastingKeeperShare", "1", &ModelConstants::lastingKeeperShare},
    {"lastingYardShare", "1", &ModelConstants::lastingYardShare},
    {"forageSeenSd", "d", &ModelConstants::forageSeenSd},
    {"usualRegionKm", "km", &ModelConstants::usualRegionKm},
    {"usualNeighbourKm", "km", &ModelConstants::usualNeighbourKm},
    {"lateFlowKm", "km", &ModelConstants::lateFlowKm},
    {"entryImpossibleAbove", "1", &ModelConstants::entryImpossibleAbove},
    {"entryImpossibleBelow", "1", &ModelConstants::entryImpossibleBelow},
    {"entrySameScaleDays", "d", &ModelConstants::entrySameScaleDays},
    {"entryFlowPerDay", "kg/d", &ModelConstants::entryFlowPerDay},
    {"entryGainPerColdDay", "kg/d", &ModelConstants::entryGainPerColdDay},
    {"entryFeedDays", "d", &ModelConstants::entryFeedDays},
    {"entrySyrupAtOnce", "L", &ModelConstants::entrySyrupAtOnce},
    {"entrySolidFeedAtOnce", "kg", &ModelConstants::entrySolidFeedAtOnce},
    {"entryBeesOver", "1", &ModelConstants::entryBeesOver},
    {"entryBroodShare", "1", &ModelConstants::entryBroodShare},
    {"entryDriestHoney", "%", &ModelConstants::entryDriestHoney},
    {"entryWettestHoney", "%", &ModelConstants::entryWettestHoney},
});
static_assert(sizeof(ModelConstants) == constants.size() * sizeof(double), "every constant is read from the file");

} // namespace

ModelConstants readConstants(ShippedFolder& folder, SourceUses& uses) {
    ModelConstants values{};
    std::vector<NamedNumber> numbers;
    for (const Constant& constant : constants) numbers.push_back({constant.name, constant.unit, &(values.*(constant.member))});
    readNumbers(folder, uses, constantsFile, {"name", "symbol", "value", "unit", "low", "high", "mark", "source", "meaning"},
                "constant", numbers);
    return values;
}

} // namespace winterlarder
