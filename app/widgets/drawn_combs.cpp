// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/comb_edits.h"
#include "widgets/comb_drawing.h"
#include "models/words.h"

#include <QCoreApplication>

#include <cmath>

namespace winterlarder::desk {

namespace {

CombFilling fillingOf(const book::CombRecord& comb) {
    return {comb.built, comb.capped.value_or(0), comb.open.value_or(0), comb.brood.value_or(0), comb.pollen.value_or(0)};
}

QString tr(const char* text) {
    return QCoreApplication::translate("CombDrawing", text);
}

QString spokenOf(const DrawnComb& drawn, const book::CombRecord& comb) {
    const QString where = drawn.inSuper ? tr("Comb %1 of the super").arg(drawn.place + 1) : tr("Comb %1 of box %2").arg(drawn.place + 1).arg(drawn.box + 1);
    if (comb.facesSeen == 0) return tr("%1: not looked at").arg(where);
    return tr("%1: capped %2, open nectar %3, brood %4, bee bread %5, empty %6; %7")
        .arg(where, words::percent(shareOf(comb, Zone::Capped)), words::percent(shareOf(comb, Zone::Open)), words::percent(shareOf(comb, Zone::Brood)),
             words::percent(shareOf(comb, Zone::BeeBread)), words::percent(emptyShare(comb)), drawn.kilograms);
}

} // namespace

std::vector<DrawnComb> drawnCombs(const book::ColonyCase& record, const AnsweredColony* answered, bool current) {
    std::vector<DrawnComb> drawn;
    const auto* combs = std::get_if<std::vector<book::CombRecord>>(&record.combs);
    if (!combs || !answered) return drawn;
    const auto& known = answered->question.combs;
    for (std::size_t i = 0; i < combs->size() && i < known.size(); ++i) {
        const auto& comb = (*combs)[i];
        DrawnComb each;
        each.look = {known[i].format.outline, fillingOf(comb), comb.facesSeen == 0, false};
        each.box = known[i].box;
        each.place = known[i].place;
        each.widthMm = comb.width ? comb.width->value() : known[i].format.pitch.value();
        const auto box = static_cast<std::size_t>(known[i].box);
        each.inSuper = box < record.hive.boxes.size() && record.hive.boxes[box].super;
        if (current && answered->combs && i < answered->combs->size()) {
            const auto& stores = (*answered->combs)[i];
            each.kilograms = words::kilograms(stores.capped + stores.open);
        } else {
            each.kilograms = QStringLiteral("\u2026");
        }
        each.spoken = spokenOf(each, comb);
        drawn.push_back(std::move(each));
    }
    return drawn;
}

} // namespace winterlarder::desk
