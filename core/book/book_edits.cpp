// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/book_inside.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace winterlarder::book {
namespace {

class StoreReader : public EditReader {
public:
    explicit StoreReader(Store& store) : store_(store) {}
    std::optional<Row> row(Kind kind, std::int64_t id) override { return store_.row(kind, id); }
    std::vector<std::int64_t> referring(Kind kind, const std::string& column, std::int64_t to) override {
        return store_.referring(kind, column, to);
    }
    std::int64_t newId(Kind kind) override {
        auto [given, first] = given_.try_emplace(kind, 0);
        if (first) given->second = store_.lastId(kind);
        return ++given->second;
    }

private:
    Store& store_;
    std::map<Kind, std::int64_t> given_;
};

Problems faultsOf(const Limits& limits, const std::vector<Target>& targets) {
    Problems problems;
    for (const auto& target : targets) {
        if (!target.row) continue;
        const auto& table = tableOf(target.kind);
        if (target.id < 1 || target.id > largestId)
            problems.push_back({ProblemKind::Input,
                                {},
                                fmt::format("{} {}: no entry has that number", table.singular, target.id),
                                fmt::format("1 to {}", largestId)});
        for (auto problem : limits.faults(table, *target.row)) {
            problem.detail = fmt::format("{} {}: {}", table.singular, target.id, problem.detail);
            problems.push_back(std::move(problem));
        }
    }
    return problems;
}

//! Names that were in the book before stay, whatever they hold; new ones must be fit to be shown anywhere.
Problems faultsOfNewNames(Store& store, const std::vector<Target>& targets) {
    Problems problems;
    for (const auto& target : targets) {
        const auto& table = tableOf(target.kind);
        const auto name = table.column("name");
        if (!target.row || !name) continue;
        auto problem = faultOfNewName(table.columns[*name], target.row->values[*name]);
        const auto present = problem ? store.row(target.kind, target.id) : std::nullopt;
        if (!problem || (present && present->values[*name] == target.row->values[*name])) continue;
        problem->detail = fmt::format("{} {}: {}", table.singular, target.id, problem->detail);
        problems.push_back(*std::move(problem));
    }
    return problems;
}

void put(Store& store, const Target& target, const std::optional<Row>& before) {
    if (!before) store.insert(target.kind, target.id, *target.row);
    else if (!target.row) store.erase(target.kind, target.id);
    else store.update(target.kind, target.id, *before, *target.row);
}

//! Puts the targets in order and gives each entry's change as a whole, entries that end as they were left out.
std::vector<EntryChange> putAll(Store& store, const std::vector<Target>& targets) {
    std::vector<EntryChange> changes;
    std::map<std::pair<Kind, std::int64_t>, std::size_t> places;
    for (const auto& target : targets) {
        auto before = store.row(target.kind, target.id);
        if (before == target.row) continue;
        put(store, target, before);
        const auto [place, first] = places.try_emplace({target.kind, target.id}, changes.size());
        if (first) changes.push_back({target.kind, target.id, std::move(before), target.row});
        else changes[place->second].after = target.row;
    }
    std::erase_if(changes, [](const EntryChange& change) { return change.before == change.after; });
    return changes;
}

Problems brokenReferences(Store& store, const std::vector<EntryChange>& changes) {
    Problems problems;
    for (const auto& change : changes) {
        if (!change.after) continue;
        const auto& table = tableOf(change.kind);
        for (std::size_t at = 0; at < table.columns.size(); ++at) {
            const auto& column = table.columns[at];
            const auto* to = std::get_if<std::int64_t>(&change.after->values[at]);
            if (!column.refersTo || !to || store.exists(*column.refersTo, *to)) continue;
            problems.push_back({ProblemKind::Input,
                                {},
                                fmt::format("{} {}: there is no {} {}", table.singular, change.id,
                                            tableOf(*column.refersTo).singular, *to),
                                "name one that is in the book"});
        }
    }
    return problems;
}

Applied appliedOf(const std::vector<EntryChange>& changes) {
    Applied applied;
    applied.inverse.verb = "take back";
    for (const auto& change : changes) {
        const auto how = !change.before ? ChangeHow::Add : change.after ? ChangeHow::Change : ChangeHow::Remove;
        applied.touched.push_back({change.kind, change.id, how});
    }
    for (auto change = changes.rbegin(); change != changes.rend(); ++change)
        applied.inverse.targets.push_back({change->kind, change->id, change->before});
    return applied;
}

Problem refusal(const Book& book) {
    return {ProblemKind::File, {book.file().string(), 0, 0}, book.whyReadOnly(), "nothing was changed"};
}

//! The first edit of a day is preceded by a backup. That one cannot be made does not keep the keeper from writing.
std::vector<std::string> backUpOnceADay(BookInside& inside, Timestamp now) {
    if (inside.lastBackup == now.date()) return {};
    const auto backups = backupsOf(inside.file);
    const bool made = std::any_of(backups.begin(), backups.end(),
                                  [&](const Backup& backup) { return backup.at.date() == now.date(); });
    const bool wasEmpty = inside.store->number("SELECT count(*) FROM (SELECT 1 FROM steps LIMIT 1)") == 0;
    if (!made && !wasEmpty)
        if (const auto backup = makeBackup(inside.store->database(), inside.file, now); !backup)
            return {backup.problems().front().detail};
    inside.lastBackup = now.date();
    return {};
}

//! Said once, with the first edit after the clock went back to before the last one: backups made meanwhile have dates to come.
std::optional<std::string> backupsAhead(BookInside& inside, Timestamp now) {
    auto& last = inside.store->statement("SELECT at FROM steps ORDER BY id DESC LIMIT 1");
    const auto at = last.executeStep() ? Timestamp::parse(last.getColumn(0).getString()) : std::nullopt;
    last.reset();
    if (!at || !isAhead(*at, now)) return std::nullopt;
    const auto backups = backupsOf(inside.file);
    const auto ahead =
        std::count_if(backups.begin(), backups.end(), [&](const Backup& backup) { return isAhead(backup.at, now); });
    if (ahead == 0) return std::nullopt;
    return fmt::format(
        "{} of the backups are dated ahead of now, the last {}: the clock was ahead when they were made, or is behind now; new "
        "backups take their places first",
        ahead, backups.front().at.iso());
}

} // namespace

Outcome<Applied> carryOut(BookInside& inside, Timestamp now, const Targets& targets, const Note& note) {
    return guarded<Applied>(inside, [&]() -> Outcome<Applied> {
        auto& store = *inside.store;
        auto notices = backUpOnceADay(inside, now);
        if (auto notice = backupsAhead(inside, now)) notices.push_back(*std::move(notice));
        SQLite::Transaction all(store.database(), SQLite::TransactionBehavior::IMMEDIATE);
        store.run("PRAGMA defer_foreign_keys = ON");
        const auto wanted = targets();
        if (!wanted) return wanted.problems();
        if (auto problems = faultsOf(inside.limits, *wanted); !problems.empty()) return problems;
        const auto changes = putAll(store, *wanted);
        if (auto problems = brokenReferences(store, changes); !problems.empty()) return problems;
        auto applied = appliedOf(changes);
        applied.notices = std::move(notices);
        applied.step = note(changes);
        all.commit();
        return applied;
    });
}

Outcome<Applied> Book::apply(const Edit& edit, Timestamp now, const std::string& who) {
    if (!writable()) return refusal(*this);
    auto& store = *inside_->store;
    StoreReader reader(store);
    return carryOut(
        *inside_, now,
        [&]() -> Outcome<std::vector<Target>> {
            auto targets = targetsOf(edit, who, reader);
            if (!targets) return targets;
            if (auto problems = faultsOfNewNames(store, *targets); !problems.empty()) return problems;
            return targets;
        },
        [&](const std::vector<EntryChange>& changes) -> std::optional<StepId> {
            if (changes.empty()) return std::nullopt;
            return record(store, {now, who}, verbOf(edit), changes);
        });
}

Outcome<Applied> Book::turnStep(Turned turned, Timestamp now, const std::string& who) {
    if (!writable()) return refusal(*this);
    auto& store = *inside_->store;
    std::optional<StepId> id;
    return carryOut(
        *inside_, now,
        [&]() -> Outcome<std::vector<Target>> {
            id = turned == Turned::Back ? nextToUndo(store) : nextToRedo(store);
            if (!id) return std::vector<Target>{};
            return turn(store, *id, turned, {now, who});
        },
        [&](const std::vector<EntryChange>&) { return id; });
}

Outcome<Applied> Book::undo(Timestamp now, const std::string& who) { return turnStep(Turned::Back, now, who); }
Outcome<Applied> Book::redo(Timestamp now, const std::string& who) { return turnStep(Turned::Forth, now, who); }

bool Book::canUndo() {
    const auto found =
        guarded<bool>(*inside_, [&]() -> Outcome<bool> { return nextToUndo(*inside_->store).has_value(); });
    return found && *found;
}
bool Book::canRedo() {
    const auto found =
        guarded<bool>(*inside_, [&]() -> Outcome<bool> { return nextToRedo(*inside_->store).has_value(); });
    return found && *found;
}

Outcome<std::vector<Step>> Book::story(int count, std::optional<StepId> before) {
    return guarded<std::vector<Step>>(*inside_, [&] { return steps(*inside_->store, before, count); });
}

} // namespace winterlarder::book
