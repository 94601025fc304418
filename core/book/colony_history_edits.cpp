// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/colony_history.h"

#include "book/entries/date_of.h"
#include "book/form/entry_rows.h"

#include <algorithm>

namespace winterlarder::book {
namespace {

//! The entries of one colony, as the expansion of an edit asks for them.
class HistoryReader : public EditReader {
public:
    HistoryReader(const ColonyHistory& history, const NewNumber& newNumber)
        : history_(history), newNumber_(newNumber) {}

    std::optional<Row> row(Kind kind, std::int64_t id) override {
        std::optional<Row> found;
        eachEntry(kind, [&](const auto& entry) {
            if (entry.id.number == id) found = rowOf(entry);
        });
        return found;
    }
    std::vector<std::int64_t> referring(Kind kind, const std::string& column, std::int64_t to) override {
        const auto place = tableOf(kind).column(column);
        std::vector<std::int64_t> ids;
        eachEntry(kind, [&](const auto& entry) {
            if (place && rowOf(entry).values[*place] == Value{to}) ids.push_back(entry.id.number);
        });
        std::sort(ids.begin(), ids.end());
        return ids;
    }
    std::int64_t newId(Kind kind) override { return newNumber_(kind); }

private:
    template <class Visit> void eachEntry(Kind kind, Visit visit) const {
        if (kind == Kind::Colony) visit(history_.colony);
        eachList(history_, [&]<class Entry>(const std::vector<Entry>& list) {
            if (kindOf<Entry> == kind) std::for_each(list.begin(), list.end(), visit);
        });
    }

    const ColonyHistory& history_;
    const NewNumber& newNumber_;
};

//! Lets entries of a history become what targets say.
class HistoryChange {
public:
    explicit HistoryChange(ColonyHistory before) : history_(std::move(before)), colony_(history_->colony.id) {}

    void put(const Target& target) {
        if (!history_) return;
        if (target.kind == Kind::Colony && target.id == colony_.number) return putColony(target);
        eachList(*history_, [&](auto& list) { putInto(list, target); });
    }
    Outcome<std::optional<ColonyHistory>> result() && {
        if (!problems_.empty()) return std::move(problems_);
        return std::move(history_);
    }

private:
    template <class Entry> std::optional<Entry> entryIn(const Target& target) {
        auto entry = entryOf<Entry>(target.id, *target.row);
        if (entry) return std::move(entry).value();
        problems_.insert(problems_.end(), entry.problems().begin(), entry.problems().end());
        return std::nullopt;
    }
    void putColony(const Target& target) {
        if (!target.row) return history_.reset();
        if (auto colony = entryIn<Colony>(target)) history_->colony = std::move(*colony);
    }
    template <class Entry> void putInto(std::vector<Entry>& list, const Target& target) {
        if (kindOf<Entry> != target.kind) return;
        std::erase_if(list, [&](const Entry& entry) { return entry.id.number == target.id; });
        auto entry = target.row ? entryIn<Entry>(target) : std::nullopt;
        if (!entry || entry->colony != colony_) return;
        const auto later = [](const Entry& one, const Entry& other) {
            return dateOf(one) != dateOf(other) ? dateOf(one) < dateOf(other) : one.id < other.id;
        };
        const auto place = std::upper_bound(list.begin(), list.end(), *entry, later);
        list.insert(place, std::move(*entry));
    }

    std::optional<ColonyHistory> history_;
    ColonyId colony_;
    Problems problems_;
};

} // namespace

Outcome<std::optional<ColonyHistory>> afterEdit(const Edit& edit, const ColonyHistory& history, const std::string& who,
                                                const NewNumber& newNumber) {
    HistoryReader reader(history, newNumber);
    const auto targets = targetsOf(edit, who, reader);
    if (!targets) return targets.problems();
    HistoryChange change(history);
    for (const auto& target : *targets) change.put(target);
    return std::move(change).result();
}

} // namespace winterlarder::book
