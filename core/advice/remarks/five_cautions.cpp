// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/remarks/five_cautions.h"

#include "reference/most_cautions.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace winterlarder::advice {

namespace {

enum class Kind { Danger, Check, Feeding, Honey, Next, Practice };

struct KindOf {
    std::string_view id;
    Kind kind;
};
constexpr std::array<KindOf, 25> kinds{
    {{"disease", Kind::Danger},        {"emergency", Kind::Danger},          {"cluster-gap", Kind::Danger},
     {"weak-unite", Kind::Danger},     {"weak-too-late", Kind::Danger},      {"queen-in-doubt", Kind::Danger},
     {"laying-stopped", Kind::Danger}, {"varroa-first", Kind::Danger},       {"spring-starvation", Kind::Danger},
     {"setting-stores", Kind::Danger}, {"no-super-yet", Kind::Danger},       {"opening-cold", Kind::Check},
     {"check-comb", Kind::Check},      {"move-combs", Kind::Check},          {"check-scale", Kind::Check},
     {"brood-not-said", Kind::Check},  {"flow-not-sure", Kind::Check},       {"capped-share", Kind::Check},
     {"pollen-short", Kind::Check},    {"robbing-and-wasps", Kind::Feeding}, {"long-hive-feeding", Kind::Feeding},
     {"moisture", Kind::Honey},        {"not-for-people", Kind::Honey},      {"no-supers-while-feeding", Kind::Honey},
     {"next-look", Kind::Next}}};

Kind kindOf(const Remark& remark) {
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [&](const KindOf& each) { return each.id == remark.id; });
    return found == kinds.end() ? Kind::Practice : found->kind;
}

void dropDoubles(std::vector<Remark>& remarks) {
    for (auto at = remarks.begin(); at != remarks.end();) {
        const bool before = std::any_of(remarks.begin(), at, [&](const Remark& other) { return other.id == at->id; });
        at = before ? remarks.erase(at) : at + 1;
    }
}

// Moves the first remark of a kind over to the cautions.
void moveFirst(std::vector<Remark>& from, Kind kind, std::vector<Remark>& to) {
    const auto found =
        std::find_if(from.begin(), from.end(), [&](const Remark& remark) { return kindOf(remark) == kind; });
    if (found == from.end() || to.size() >= mostCautions) return;
    to.push_back(std::move(*found));
    from.erase(found);
}

void putFirst(std::vector<Remark>& remarks, std::string_view id) {
    const auto found =
        std::find_if(remarks.begin(), remarks.end(), [&](const Remark& remark) { return remark.id == id; });
    if (found != remarks.end()) std::rotate(remarks.begin(), found, found + 1);
}

// Dangers and checks first, as they are to be read; the next date last.
void inOrder(std::vector<Remark>& cautions) {
    std::stable_sort(cautions.begin(), cautions.end(),
                     [](const Remark& a, const Remark& b) { return kindOf(a) < kindOf(b); });
}

} // namespace

SaidCautions fiveCautions(std::vector<Remark> all, const Advice& advice) {
    dropDoubles(all);
    const bool tooManyMites = std::any_of(all.begin(), all.end(), [](const Remark& each) {
        return each.id == "varroa-first" && each.details.contains("mites");
    });
    if (advice.phase == Phase::Summer || tooManyMites) putFirst(all, "varroa-first");
    SaidCautions said;
    for (const Kind kind : {Kind::Danger, Kind::Check, Kind::Feeding, Kind::Honey, Kind::Next})
        moveFirst(all, kind, said.cautions);
    for (const Kind kind : {Kind::Danger, Kind::Honey, Kind::Check, Kind::Danger}) moveFirst(all, kind, said.cautions);
    inOrder(said.cautions);
    said.goodPractice = std::move(all);
    return said;
}

} // namespace winterlarder::advice
