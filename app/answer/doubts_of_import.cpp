// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/doubts_of_import.h"

#include "answer/doubt_words.h"
#include "book/form/entry_rows.h"

#include <algorithm>
#include <map>

namespace winterlarder::answer {

namespace {

template <class Entry> std::optional<Entry> entryIn(const book::Target& target) {
    if (target.kind != book::kindOf<Entry> || !target.row) return std::nullopt;
    auto entry = book::entryOf<Entry>(target.id, *target.row);
    if (!entry) return std::nullopt;
    return std::move(entry).value();
}

template <class Entry, class Visit> void visitIfJudged(const book::Target& target, Visit& visit) {
    if constexpr (isJudged<Entry>)
        if (auto entry = entryIn<Entry>(target)) visit(std::move(*entry));
}

template <class Visit, class... Entries>
void visitThatOf(const book::Target& target, Visit& visit, std::tuple<Entries...>*) {
    (visitIfJudged<Entries>(target, visit), ...);
}

//! The entry of the target, where it is of a kind that is judged.
template <class Visit> void eachJudged(const book::Target& target, Visit visit) {
    visitThatOf(target, visit, static_cast<book::EntryTypes*>(nullptr));
}

//! What is known of each colony, as it will be once all entries are in.
class KnownColonies {
public:
    const Surroundings* of(book::ColonyId colony) const {
        const auto found = all_.find(colony.number);
        return found == all_.end() ? nullptr : &found->second;
    }
    void take(const book::Target& target) {
        eachJudged(target, [&](const auto& entry) {
            const auto found = all_.find(colonyOf(entry).number);
            if (found != all_.end()) put(found->second, entry);
        });
    }
    void begin(Surroundings known) { all_.insert_or_assign(known.colony.id.number, std::move(known)); }
    void inOrder() {
        for (auto& [number, known] : all_)
            std::stable_sort(known.housings.begin(), known.housings.end(),
                             [](const auto& a, const auto& b) { return a.date < b.date; });
    }

private:
    std::map<std::int64_t, Surroundings> all_;
};

//! The doubt of an entry, unless it is one the keeper may be, and is, sure of.
template <class Entry>
std::optional<stores::Doubt> doubtIn(Entry& entry, const KnownColonies& known, Date today,
                                     const ReferenceData& reference) {
    const auto* around = known.of(colonyOf(entry));
    if (!around) return std::nullopt;
    auto doubt = doubtOf(entry, *around, today, reference);
    const bool* sure = sureIn(entry);
    if (doubt && !doubt->impossible && sure && *sure) return std::nullopt;
    return doubt;
}

//! Of a table of daily temperatures, which is a yard's: its days.
std::optional<stores::Doubt> doubtOfMeasured(const book::Target& target, Date today) {
    const auto log = entryIn<book::WeatherLog>(target);
    return log ? doubtOfDays(log->days, today) : std::nullopt;
}

//! Of the colony of an entry; of a colony that the table brings, nothing but itself.
template <class Entry> Outcome<Surroundings> surroundingsOfNew(book::Book& into, const Entry& entry) {
    if constexpr (std::is_same_v<Entry, book::Colony>) {
        const auto there = into.find(entry.id);
        if (!there) return there.problems();
        if (!*there) return Surroundings{entry};
    }
    return surroundingsOf(into, colonyOf(entry));
}

} // namespace

Problems doubtsOfRows(book::Book& into, exchange::CsvPreview& preview, const std::string& file, Date today, bool sure,
                      const std::string& whereSure) {
    KnownColonies known;
    Problems problems;
    for (const auto& target : preview.edit.targets)
        eachJudged(target, [&](const auto& entry) {
            if (known.of(colonyOf(entry))) return;
            auto around = surroundingsOfNew(into, entry);
            if (around) known.begin(std::move(around).value());
            else problems = around.problems();
        });
    if (!problems.empty()) return problems;
    for (const auto& target : preview.edit.targets) known.take(target);
    known.inOrder();
    for (std::size_t i = 0; i < preview.edit.targets.size(); ++i) {
        if (const auto doubt = doubtOfMeasured(preview.edit.targets[i], today); doubt && !sure)
            problems.push_back(problemOf(*doubt, {file, preview.lines[i], 1}, whereSure));
        eachJudged(preview.edit.targets[i], [&](auto entry) {
            const auto doubt = doubtIn(entry, known, today, into.reference());
            if (!doubt) return;
            if (!sure || doubt->impossible) {
                const auto* around = known.of(colonyOf(entry));
                return problems.push_back(problemOf(*doubt, {file, preview.lines[i], 1}, whereSure, around->site,
                                                    around->colony.hive, into.reference()));
            }
            if (bool* is = sureIn(entry)) {
                *is = true;
                preview.edit.targets[i].row = book::rowOf(entry);
            }
        });
    }
    return problems;
}

Problems doubtsOfDocument(const std::vector<book::Target>& document, const std::vector<Place>& places, Date today,
                          const ReferenceData& reference, const std::string& whereSure) {
    KnownColonies known;
    std::map<std::int64_t, book::SiteRecord> sites;
    for (const auto& target : document)
        if (const auto yard = entryIn<book::Yard>(target)) sites.insert_or_assign(yard->id.number, yard->site);
    for (const auto& target : document)
        if (auto colony = entryIn<book::Colony>(target)) {
            auto site = sites[colony->yard.number];
            known.begin(Surroundings{std::move(*colony), std::move(site)});
        }
    for (const auto& target : document) known.take(target);
    known.inOrder();
    Problems problems;
    const auto ask = [&](Problem asked) {
        problems.push_back(std::move(asked));
        if (!whereSure.empty()) problems.back().remedy += ' ' + whereSure;
    };
    for (std::size_t i = 0; i < document.size(); ++i) {
        if (const auto doubt = doubtOfMeasured(document[i], today)) ask(problemOf(*doubt, places[i], {}));
        eachJudged(document[i], [&](auto entry) {
            const auto* around = known.of(colonyOf(entry));
            if (const auto doubt = doubtIn(entry, known, today, reference))
                ask(problemOf(*doubt, places[i], {}, around->site, around->colony.hive, reference));
        });
    }
    return problems;
}

} // namespace winterlarder::answer
