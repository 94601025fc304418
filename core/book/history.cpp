// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/history.h"

#include "book/file/store.h"
#include "book/form/canonical.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::book {
namespace {

using Side = std::map<std::string, std::optional<std::string>>;

Problem damagedHistory(StepId id) {
    return {ProblemKind::File, {}, fmt::format("step {} of the history is damaged", id.number), "salvage the book"};
}

std::optional<ChangeHow> howOf(const std::string& word) {
    if (word == "add") return ChangeHow::Add;
    if (word == "change") return ChangeHow::Change;
    if (word == "remove") return ChangeHow::Remove;
    return std::nullopt;
}

StepState stateOf(const std::string& word) {
    return word == "done" ? StepState::Done : word == "undone" ? StepState::Undone : StepState::Abandoned;
}

void write(Store& store, StepId step, std::size_t place, const EntryChange& change) {
    const auto& table = tableOf(change.kind);
    auto& add = store.statement(
        "INSERT INTO step_changes (step, place, kind, entry, how, before, after) VALUES (?, ?, ?, ?, ?, ?, ?)");
    add.bind(1, step.number);
    add.bind(2, static_cast<std::int64_t>(place));
    add.bind(3, table.singular);
    add.bind(4, change.id);
    add.bind(5, !change.before ? "add" : change.after ? "change" : "remove");
    if (change.before && change.after) {
        const auto difference = differenceOf(linesOf(table, *change.before), linesOf(table, *change.after));
        add.bind(6, textOf(difference.before));
        add.bind(7, textOf(difference.after));
    } else if (change.before) {
        add.bind(6, textOf(linesOf(table, *change.before)));
    }
    add.exec();
}

std::optional<std::vector<StepChange>> changesOf(Store& store, StepId step) {
    auto& all =
        store.statement("SELECT kind, entry, how, before, after FROM step_changes WHERE step = ? ORDER BY place");
    all.bind(1, step.number);
    std::vector<StepChange> changes;
    while (all.executeStep()) {
        StepChange change;
        const auto kind = all.getColumn(0).getString();
        const auto table =
            std::find_if(tables().begin(), tables().end(), [&](const Table& t) { return t.singular == kind; });
        const auto how = howOf(all.getColumn(2).getString());
        auto before = sideOfText(all.getColumn(3).getString());
        auto after = sideOfText(all.getColumn(4).getString());
        if (table == tables().end() || !how || !before || !after) return std::nullopt;
        change.kind = table->kind;
        change.entry = all.getColumn(1).getInt64();
        change.how = *how;
        change.before = std::move(*before);
        change.after = std::move(*after);
        changes.push_back(std::move(change));
    }
    all.reset();
    return changes;
}

Step stepAt(SQLite::Statement& row) {
    Step step;
    step.id = {row.getColumn(0).getInt64()};
    step.at = Timestamp::parse(row.getColumn(1).getString()).value_or(Timestamp{});
    step.who = row.getColumn(2).getString();
    step.verb = row.getColumn(3).getString();
    step.state = stateOf(row.getColumn(4).getString());
    if (!row.getColumn(5).isNull()) step.turnedAt = Timestamp::parse(row.getColumn(5).getString());
    step.turnedBy = row.getColumn(6).getString();
    return step;
}

std::optional<StepId> firstId(SQLite::Statement& statement) {
    std::optional<StepId> id;
    if (statement.executeStep() && !statement.getColumn(0).isNull()) id = StepId{statement.getColumn(0).getInt64()};
    statement.reset();
    return id;
}

bool sameNames(const Side& one, const Side& other) {
    return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                      [](const auto& left, const auto& right) { return left.first == right.first; });
}

//! The last step, where this change continues it.
std::optional<Step> continued(Store& store, const Signature& signature, const std::string& verb,
                              const EntryChange& change, const LinesDifference& difference) {
    const auto last = nextToUndo(store);
    if (!last || nextToRedo(store) || !change.before || !change.after) return std::nullopt;
    auto found = step(store, *last);
    if (!found || found->who != signature.who || found->verb != verb || found->changes.size() != 1) return std::nullopt;
    if (signature.now.seconds - found->at.seconds > mergeSeconds || signature.now < found->at) return std::nullopt;
    const auto& before = found->changes[0];
    const bool same = before.how == ChangeHow::Change && before.kind == change.kind && before.entry == change.id &&
                      sameNames(before.before, difference.before);
    return same ? found : std::nullopt;
}

void forgetStep(Store& store, StepId id) {
    for (const char* sql : {"DELETE FROM step_changes WHERE step = ?", "DELETE FROM steps WHERE id = ?"}) {
        auto& gone = store.statement(sql);
        gone.bind(1, id.number);
        gone.exec();
    }
}

//! Lets the last step end where the new change ends; nothing is left of it where that is where it began.
std::optional<StepId> merge(Store& store, const Step& last, const Signature& signature,
                            const LinesDifference& difference) {
    if (last.changes[0].before == difference.after) {
        forgetStep(store, last.id);
        return std::nullopt;
    }
    auto& change = store.statement("UPDATE step_changes SET after = ? WHERE step = ?");
    change.bind(1, textOf(difference.after));
    change.bind(2, last.id.number);
    change.exec();
    auto& when = store.statement("UPDATE steps SET at = ? WHERE id = ?");
    when.bind(1, signature.now.iso());
    when.bind(2, last.id.number);
    when.exec();
    return last.id;
}

StepId newStep(Store& store, const Signature& signature, const std::string& verb) {
    auto& abandon = store.statement("UPDATE steps SET state = 'abandoned' WHERE state = 'undone'");
    abandon.exec();
    const StepId id{store.lastStep() + 1};
    auto& add = store.statement("INSERT INTO steps (id, at, who, verb, state) VALUES (?, ?, ?, ?, 'done')");
    add.bind(1, id.number);
    add.bind(2, signature.now.iso());
    add.bind(3, signature.who);
    add.bind(4, verb);
    add.exec();
    return id;
}

void setState(Store& store, StepId id, bool done, const Signature& signature) {
    auto& set = store.statement("UPDATE steps SET state = ?, turned_at = ?, turned_by = ? WHERE id = ?");
    set.bind(1, done ? "done" : "undone");
    set.bind(2, signature.now.iso());
    set.bind(3, signature.who);
    set.bind(4, id.number);
    set.exec();
}

void keepAdded(Store& store, StepId id, std::size_t place, const Table& table, const Row& row) {
    auto& keep = store.statement("UPDATE step_changes SET after = ? WHERE step = ? AND place = ?");
    keep.bind(1, textOf(linesOf(table, row)));
    keep.bind(2, id.number);
    keep.bind(3, static_cast<std::int64_t>(place));
    keep.exec();
}

std::optional<Row> laidOverRow(Store& store, const StepChange& change, const Side& side) {
    const auto& table = tableOf(change.kind);
    if (change.how != ChangeHow::Change) return rowOfLines(table, laidOver({}, side));
    const auto row = store.row(change.kind, change.entry);
    if (!row) return std::nullopt;
    return rowOfLines(table, laidOver(linesOf(table, *row), side));
}

} // namespace

std::optional<StepId> record(Store& store, const Signature& signature, const std::string& verb,
                             const std::vector<EntryChange>& changes) {
    if (changes.size() == 1 && changes[0].before && changes[0].after) {
        const auto& table = tableOf(changes[0].kind);
        const auto difference = differenceOf(linesOf(table, *changes[0].before), linesOf(table, *changes[0].after));
        if (const auto last = continued(store, signature, verb, changes[0], difference))
            return merge(store, *last, signature, difference);
    }
    const auto id = newStep(store, signature, verb);
    for (std::size_t place = 0; place < changes.size(); ++place) write(store, id, place, changes[place]);
    return id;
}

std::optional<StepId> nextToUndo(Store& store) {
    return firstId(store.statement("SELECT max(id) FROM steps WHERE state = 'done'"));
}

std::optional<StepId> nextToRedo(Store& store) {
    return firstId(store.statement("SELECT min(id) FROM steps WHERE state = 'undone'"));
}

Outcome<std::vector<Target>> turn(Store& store, StepId id, Turned turned, const Signature& signature) {
    const bool back = turned == Turned::Back;
    const auto changes = changesOf(store, id);
    if (!changes) return damagedHistory(id);
    std::vector<Target> targets;
    for (std::size_t place = 0; place < changes->size(); ++place) {
        const auto& change = (*changes)[place];
        const bool goes = change.how == (back ? ChangeHow::Add : ChangeHow::Remove);
        std::optional<Row> row = goes ? store.row(change.kind, change.entry)
                                      : laidOverRow(store, change, back ? change.before : change.after);
        if (!row) return damagedHistory(id);
        if (goes && back) keepAdded(store, id, place, tableOf(change.kind), *row);
        targets.push_back({change.kind, change.entry, goes ? std::nullopt : std::move(row)});
    }
    if (back) std::reverse(targets.begin(), targets.end());
    setState(store, id, !back, signature);
    return targets;
}

std::optional<Step> step(Store& store, StepId id) {
    auto& one = store.statement("SELECT id, at, who, verb, state, turned_at, turned_by FROM steps WHERE id = ?");
    one.bind(1, id.number);
    if (!one.executeStep()) return std::nullopt;
    auto found = stepAt(one);
    one.reset();
    auto changes = changesOf(store, id);
    if (!changes) return std::nullopt;
    found.changes = std::move(*changes);
    return found;
}

Outcome<std::vector<Step>> steps(Store& store, std::optional<StepId> before, int count) {
    auto& some = store.statement(
        "SELECT id, at, who, verb, state, turned_at, turned_by FROM steps WHERE id < ? ORDER BY id DESC LIMIT ?");
    some.bind(1, before ? before->number : std::numeric_limits<std::int64_t>::max());
    some.bind(2, count);
    std::vector<Step> result;
    while (some.executeStep()) result.push_back(stepAt(some));
    some.reset();
    for (auto& found : result) {
        auto changes = changesOf(store, found.id);
        if (!changes) return damagedHistory(found.id);
        found.changes = std::move(*changes);
    }
    return result;
}

} // namespace winterlarder::book
