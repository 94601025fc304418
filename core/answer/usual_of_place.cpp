// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/usual_of_place.h"

#include "advice/phases.h"
#include "advice/usual_here.h"
#include "stores/weighing.h"

#include <algorithm>

namespace winterlarder::answer {

namespace {

using advice::ColonyQuestion;

Mass withoutStores(const ColonyQuestion& question, const ModelConstants& constants) {
    const double bees = question.bees ? question.bees->count : 0;
    return question.tare + kilograms(constants.beeMass) * bees +
           question.beeBread.value_or(stores::HiveLoad{}.beeBread) +
           stores::broodMass(question.brood.value_or(BeeCount{0}));
}

advice::UsualHere told(const advice::UsualFigure& figure, const ReferenceData& reference) {
    advice::UsualHere usual{figure.low, figure.high, figure.row ? figure.row->source : "common-practice",
                            advice::placeOf(figure, reference.stations), 'C'};
    usual.ofElsewhere = figure.from == advice::UsualFigure::From::Neighbour;
    if (usual.place.empty()) usual.place = "places with such winters";
    if (figure.holdsBackHarvest && figure.row) usual.quality = figure.row->quality;
    return usual;
}

std::vector<advice::NearFlow> flowsStillUsual(const ColonyQuestion& question, const ReferenceData& reference) {
    const SeasonDay last = advice::phaseDays(question.season, reference.decisions).closing;
    if (question.asOf >= last) return {};
    auto flows = advice::lateFlowsNear(question.place, question.winter.date(question.asOf + 1),
                                       question.winter.date(last), reference.lateFlows, reference.constants);
    std::erase_if(flows, [](const advice::NearFlow& near) { return near.flow->typical == LateFlow::Typical::None; });
    return flows;
}

// "Calluna vulgaris (heather, ling)": heather. Empty where the row names no plant that way.
std::string commonName(const std::string& plant) {
    const auto open = plant.find('(');
    if (open == std::string::npos) return {};
    const std::string name = plant.substr(open + 1, plant.find_first_of(",)", open) - open - 1);
    for (const char* noPlant : {"late ", "cover crops", "plants "})
        if (name.rfind(noPlant, 0) == 0) return {};
    return name;
}

std::vector<std::string> namesOf(const std::vector<advice::NearFlow>& flows) {
    constexpr std::size_t most = 2;
    std::vector<std::string> names;
    for (const auto& near : flows) {
        const std::string name = commonName(near.flow->plant);
        const bool told = std::find(names.begin(), names.end(), name) != names.end();
        if (!name.empty() && !told && names.size() < most) names.push_back(name);
    }
    return names;
}

} // namespace

void fillUsual(ColonyQuestion& question, const ReferenceData& reference) {
    if (!question.site || !question.season.derivable()) return;
    const auto size = advice::sizeOfHive(question);
    const advice::UsualAsked asked{question.place, question.season.winterClass, size.size, size.moreThanTwoBoxes,
                                   withoutStores(question, reference.constants)};
    if (const auto figure = advice::usualHere(asked, reference.usualStores, reference.constants))
        question.usual = told(*figure, reference);
    const auto flows = flowsStillUsual(question, reference);
    question.lateFlowNear = !flows.empty();
    question.lateFlows = namesOf(flows);
}

} // namespace winterlarder::answer
