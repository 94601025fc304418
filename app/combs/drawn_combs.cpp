// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/drawn_combs.h"

#include "answer/hive_of_case.h"
#include "exchange/case/hive_room.h"
#include "models/words.h"
#include "text/contexts.h"

namespace winterlarder::desk {

namespace {

QString nameOf(const DrawnComb& drawn) {
    const auto told = words::styleOf(hive::hasFrames(drawn.format));
    if (drawn.inSuper) return text::worded(say::DrawnCombs::tr("%{Comb} %1 of the super"), told).arg(drawn.place + 1);
    return text::worded(say::DrawnCombs::tr("%{Comb} %1 of box %2"), told).arg(drawn.place + 1).arg(drawn.box + 1);
}

QString sureness(const DrawnComb& drawn) {
    switch (seenOf(drawn.record)) {
    case Seen::OneFace: return say::DrawnCombs::tr("one face seen");
    case Seen::ThroughWindow: return say::DrawnCombs::tr("seen through a window");
    default:
        return drawn.record.measured ? say::DrawnCombs::tr("measured on a photograph")
                                     : say::DrawnCombs::tr("both faces seen");
    }
}

QString spokenOf(const DrawnComb& drawn) {
    const auto& comb = drawn.record;
    if (comb.facesSeen == 0)
        return say::DrawnCombs::tr("%1: not looked at, taken as the mean of the others; %2")
            .arg(drawn.name, drawn.kilograms);
    return say::DrawnCombs::tr("%1: capped %2, open nectar %3, brood %4, bee bread %5, empty %6; %7; %8")
        .arg(drawn.name, words::percent(shareOf(comb, Zone::Capped)), words::percent(shareOf(comb, Zone::Open)),
             words::percent(shareOf(comb, Zone::Brood)), words::percent(shareOf(comb, Zone::BeeBread)),
             words::percent(emptyShare(comb)), sureness(drawn), drawn.kilograms);
}

void complete(DrawnComb& drawn, const std::optional<stores::CombStores>& honey) {
    drawn.look = {
        drawn.format.outline, fillingOf(drawn.record), seenOf(drawn.record), drawn.record.measured, false, {}};
    drawn.kilograms = honey ? text::mass(stores::spreadOf(*honey, storesComb(drawn), drawn.spreads), words::style())
                            : QStringLiteral("\u2013");
    drawn.name = nameOf(drawn);
    drawn.spoken = spokenOf(drawn);
}

void completeAll(std::vector<DrawnComb>& drawn, double openFactor) {
    std::vector<stores::Comb> combs;
    for (const auto& each : drawn) combs.push_back(storesComb(each));
    const auto honey = stores::storesOfCombs(combs, openFactor);
    for (std::size_t i = 0; i < drawn.size(); ++i)
        complete(drawn[i], honey ? std::optional((*honey)[i]) : std::nullopt);
}

void hangIn(DrawnComb& drawn, const hive::CombFormat& format) {
    drawn.format = format;
    drawn.usualSpacing = format.pitch;
    drawn.format.pitch = drawn.record.width.value_or(drawn.usualSpacing);
}

std::vector<DrawnComb> hung(const std::vector<book::CombRecord>& combs, const std::vector<exchange::CombAt>& places,
                            const std::vector<hive::CombFormat>& boxes, double openFactor,
                            const stores::CombSpreads& spreads) {
    std::vector<DrawnComb> drawn;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto& box = boxes[static_cast<std::size_t>(places[i].box)];
        DrawnComb each;
        each.record = combs[i];
        hangIn(each, box);
        each.box = places[i].box;
        each.place = places[i].place;
        each.inSuper = each.record.inSuper;
        each.longHive = box.combsPerBox >= hive::longHiveCombs;
        each.openFactor = openFactor;
        each.spreads = spreads;
        drawn.push_back(std::move(each));
    }
    return drawn;
}

} // namespace

stores::Comb storesComb(const DrawnComb& drawn) {
    auto comb = answer::combOf(drawn.record, drawn.format);
    comb.box = drawn.box;
    comb.place = drawn.place;
    comb.inSuper = drawn.inSuper;
    return comb;
}

std::vector<DrawnComb> drawnCombs(const std::vector<book::CombRecord>& combs,
                                  const std::vector<hive::CombFormat>& boxes, double openFactor,
                                  const stores::CombSpreads& spreads) {
    std::vector<exchange::BoxRoom> room;
    for (const auto& box : boxes) room.push_back({.places = box.combsPerBox});
    auto drawn = hung(combs, exchange::whereCombsHang(combs, room), boxes, openFactor, spreads);
    completeAll(drawn, openFactor);
    return drawn;
}

std::vector<DrawnComb> drawnCombs(const book::ColonyCase& record, const AnsweredColony* answered,
                                  const ReferenceData& reference) {
    const auto* combs = std::get_if<std::vector<book::CombRecord>>(&record.combs);
    if (!combs || record.hive.boxes.empty()) return {};
    const double openFactor = stores::openFactor(answered && answered->question.freshlyFilled);
    auto drawn = hung(*combs, exchange::whereCombsHang(*combs, record.hive, reference),
                      answer::boxesOf(record.hive, reference), openFactor, stores::combSpreads(reference.constants));
    for (auto& each : drawn) {
        each.inSuper = each.inSuper || record.hive.boxes[static_cast<std::size_t>(each.box)].super;
        // A comb of another format than its box's: another outline, and another spacing.
        const auto* own = each.record.format ? reference.format(*each.record.format) : nullptr;
        if (own) hangIn(each, hive::combFormat(*own));
    }
    completeAll(drawn, openFactor);
    return drawn;
}

DrawnComb redrawn(const DrawnComb& comb, const book::CombRecord& record) {
    auto changed = comb;
    changed.record = record;
    changed.format.pitch = record.width.value_or(comb.usualSpacing);
    changed.inSuper = comb.inSuper || record.inSuper;
    const auto honey = stores::storesOfCombs({storesComb(changed)}, comb.openFactor);
    complete(changed, honey ? std::optional(honey->front()) : std::nullopt);
    return changed;
}

std::vector<CombPlace> placesOf(const std::vector<DrawnComb>& combs) {
    std::vector<CombPlace> places;
    for (const auto& comb : combs) places.push_back({comb.format.outline, comb.box});
    return places;
}

} // namespace winterlarder::desk
