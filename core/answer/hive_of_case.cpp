// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/hive_of_case.h"

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

// Box by box from the floor; what is not listed is not built.
std::vector<stores::Comb> listedCombs(const book::ColonyCase& record, const std::vector<hive::CombFormat>& boxes,
                                      const ReferenceData& reference) {
    std::vector<stores::Comb> combs;
    const auto* list = std::get_if<std::vector<book::CombRecord>>(&record.combs);
    if (!list) return combs;
    std::size_t next = 0;
    for (std::size_t box = 0; box < boxes.size(); ++box)
        for (int place = 0; place < boxes[box].combsPerBox && next < list->size(); ++place, ++next) {
            const auto& own = (*list)[next].format;
            stores::Comb comb = combOf((*list)[next], own ? shippedFormat(*own, reference) : boxes[box]);
            comb.box = static_cast<int>(box);
            comb.place = place;
            comb.inSuper = (*list)[next].inSuper || record.hive.boxes[box].super;
            combs.push_back(std::move(comb));
        }
    return combs;
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
