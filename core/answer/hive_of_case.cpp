// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/hive_of_case.h"

#include "exchange/case/hive_room.h"
#include "stores/bees.h"
#include "support/require.h"

#include <algorithm>

namespace winterlarder::answer {

namespace {

// ---- the hive -----------------------------------------------------------------------------------------------------

hive::CombFormat ownFormat(const book::OwnFormat& own) {
    hive::CombFormat format;
    format.outline = {own.combWidth, own.bottomWidth.value_or(own.combWidth), own.combHeight};
    format.pitch = own.pitch;
    format.beesPerSide = hive::beesPerFace(format.outline);
    format.combsPerBox = own.combsPerBox;
    return format;
}

hive::CombFormat shippedFormat(const std::string& id, const ReferenceData& reference) {
    const HiveFormat* format = reference.format(id);
    require(format != nullptr, "no hive format {}", id);
    return hive::combFormat(*format);
}

hive::CombFormat boxFormat(const book::BoxRecord& box, const ReferenceData& reference) {
    const auto* id = std::get_if<std::string>(&box.format);
    hive::CombFormat format = id ? shippedFormat(*id, reference) : ownFormat(std::get<book::OwnFormat>(box.format));
    if (box.combs) format.combsPerBox = *box.combs;
    return format;
}

stores::Walls walls(book::Shell shell) {
    if (shell == book::Shell::Polystyrene) return stores::Walls::Polystyrene;
    return shell == book::Shell::Straw ? stores::Walls::Other : stores::Walls::Timber;
}

// ---- combs --------------------------------------------------------------------------------------------------------

stores::Comb combAt(exchange::CombAt at, const hive::CombFormat& format) {
    stores::Comb comb;
    comb.format = format;
    comb.box = at.box;
    comb.place = at.place;
    return comb;
}

// Combs listed of supers alone leave the boxes of the nest as they were: full of combs nobody looked at.
void addUnseenNest(std::vector<stores::Comb>& combs, const std::vector<hive::CombFormat>& boxes,
                   const std::vector<book::BoxRecord>& uses) {
    if (combs.empty() || !std::all_of(combs.begin(), combs.end(), [](const auto& comb) { return comb.inSuper; }))
        return;
    for (std::size_t box = 0; box < boxes.size(); ++box)
        for (int place = 0; !uses[box].super && place < boxes[box].combsPerBox; ++place) {
            combs.push_back(combAt({static_cast<int>(box), place}, boxes[box]));
            combs.back().facesSeen = 0;
        }
}

// In the list's order; beside what is listed no comb is built.
std::vector<stores::Comb> listedCombs(const book::ColonyCase& record, const std::vector<hive::CombFormat>& boxes,
                                      const ReferenceData& reference) {
    std::vector<stores::Comb> combs;
    const auto* list = std::get_if<std::vector<book::CombRecord>>(&record.combs);
    if (!list) return combs;
    const auto hang = exchange::whereCombsHang(*list, record.hive, reference);
    for (std::size_t i = 0; i < hang.size(); ++i) {
        const auto& own = (*list)[i].format;
        const auto box = static_cast<std::size_t>(hang[i].box);
        stores::Comb comb = combOf((*list)[i], own ? shippedFormat(*own, reference) : boxes[box]);
        comb.box = hang[i].box;
        comb.place = hang[i].place;
        comb.inSuper = (*list)[i].inSuper || record.hive.boxes[box].super;
        combs.push_back(std::move(comb));
    }
    if (std::any_of(record.hive.boxes.begin(), record.hive.boxes.end(), [](const auto& box) { return box.super; }))
        addUnseenNest(combs, boxes, record.hive.boxes);
    return combs;
}

Mass supersTare(const advice::ColonyQuestion& question, stores::Walls walls) {
    stores::TareQuestion all{question.boxes, question.combs, walls, question.nucleus}, nest = all;
    nest.boxes.clear();
    std::vector<int> place(all.boxes.size(), -1);
    for (std::size_t box = 0; box < all.boxes.size(); ++box) {
        if (question.boxUses[box].super) continue;
        place[box] = static_cast<int>(nest.boxes.size());
        nest.boxes.push_back(all.boxes[box]);
    }
    if (nest.boxes.empty() || nest.boxes.size() == all.boxes.size()) return kilograms(0);
    std::erase_if(nest.combs, [&](const stores::Comb& comb) { return place[static_cast<std::size_t>(comb.box)] < 0; });
    for (auto& comb : nest.combs) comb.box = place[static_cast<std::size_t>(comb.box)];
    return std::max(kilograms(0), stores::tareFromParts(all).mass - stores::tareFromParts(nest).mass);
}

} // namespace

stores::Comb combOf(const book::CombRecord& record, const hive::CombFormat& format) {
    stores::Comb comb;
    comb.format = format;
    if (record.width) comb.format.pitch = *record.width;
    comb.built = record.built;
    comb.capped = record.capped.value_or(0);
    comb.open = record.open.value_or(0);
    comb.brood = record.brood.value_or(0);
    comb.pollen = record.pollen.value_or(0);
    comb.broodSaid = record.brood.has_value();
    comb.facesSeen = record.facesSeen;
    comb.throughWindow = record.throughWindow;
    comb.measured = record.measured;
    comb.fed = record.fed;
    comb.oldNest = record.oldNest;
    return comb;
}

double shellFactor(book::Shell shell, bool topInsulation, const ModelConstants& constants) {
    const double insulated = topInsulation ? constants.shellTopInsulation : 1.0;
    switch (shell) {
    case book::Shell::Timber: return insulated;
    case book::Shell::ThickTimber: return constants.shellThickTimber * insulated;
    case book::Shell::Wrapped: return constants.shellWrapped;
    case book::Shell::Polystyrene: return constants.shellPolystyrene;
    case book::Shell::Straw: return constants.shellStraw;
    }
    return 1.0;
}

std::vector<hive::CombFormat> boxesOf(const book::HiveRecord& hive, const ReferenceData& reference) {
    std::vector<hive::CombFormat> boxes;
    for (const book::BoxRecord& box : hive.boxes) boxes.push_back(boxFormat(box, reference));
    return boxes;
}

stores::TareQuestion partsOf(const book::ColonyCase& record, const ReferenceData& reference) {
    const auto boxes = boxesOf(record.hive, reference);
    return {boxes, listedCombs(record, boxes, reference), walls(record.hive.shell), record.hive.nucleus};
}

void fillHive(advice::ColonyQuestion& question, const book::HiveRecord& record, const ReferenceData& reference) {
    require(!record.boxes.empty(), "a hive without a box");
    question.boxes = boxesOf(record, reference);
    question.shellFactor = shellFactor(record.shell, record.topInsulation, reference.constants);
    for (const book::BoxRecord& box : record.boxes) question.boxUses.push_back({box.super, box.putOn});
    question.treated = question.treatedWithoutDay = record.treated;
    question.nucleus = record.nucleus;
    question.longHive = std::any_of(question.boxes.begin(), question.boxes.end(),
                                    [](const hive::CombFormat& box) { return box.combsPerBox >= hive::longHiveCombs; });
}

void fillCombs(advice::ColonyQuestion& question, const book::ColonyCase& record, const ReferenceData& reference) {
    if (const auto* quick = std::get_if<book::QuickCountRecord>(&record.combs)) {
        question.quick = stores::QuickCount{quick->fullOfStores, quick->half, quick->cappedShare};
        if (!question.boxes.empty()) question.quickFullComb = stores::quickFullComb(question.boxes.front());
    }
    if (!std::holds_alternative<std::vector<book::CombRecord>>(record.combs)) return;
    question.combs = listedCombs(record, question.boxes, reference);
    question.beeBread = stores::beeBreadOnCombs(question.combs);
}

void fillTare(advice::ColonyQuestion& question, const book::HiveRecord& record) {
    question.supersTare = supersTare(question, walls(record.shell));
    if (record.tare) {
        question.tare = *record.tare;
        return;
    }
    const stores::Tare tare =
        stores::tareFromParts({question.boxes, question.combs, walls(record.shell), record.nucleus});
    question.tare = tare.mass;
    question.tareSd = tare.sd;
}

} // namespace winterlarder::answer
