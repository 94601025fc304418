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

bool flowStillUsual(const ColonyQuestion& question, const ReferenceData& reference) {
    const SeasonDay last = advice::phaseDays(question.season, reference.decisions).closing;
    if (question.asOf >= last) return false;
    const auto flows = advice::lateFlowsNear(question.place, question.winter.date(question.asOf + 1),
                                             question.winter.date(last), reference.lateFlows, reference.constants);
    return std::any_of(flows.begin(), flows.end(),
                       [](const advice::NearFlow& near) { return near.flow->typical != LateFlow::Typical::None; });
}

} // namespace

void fillUsual(ColonyQuestion& question, const ReferenceData& reference) {
    if (!question.site || !question.season.derivable()) return;
    const auto size = advice::sizeOfHive(question);
    const advice::UsualAsked asked{question.place, question.season.winterClass, size.size, size.moreThanTwoBoxes,
                                   withoutStores(question, reference.constants)};
    if (const auto figure = advice::usualHere(asked, reference.usualStores, reference.constants))
        question.usual = told(*figure, reference);
    question.lateFlowNear = flowStillUsual(question, reference);
}

} // namespace winterlarder::answer
