// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/book_inside.h"
#include "book/form/canonical.h"
#include "book/form/describe.h"
#include "book/form/entry_rows.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>
#include <set>

namespace winterlarder::book {
namespace {

//! Runs the work inside a read transaction, so that an entry and its list are of one moment.
template <class Result> Outcome<Result> ofOneMoment(BookInside& inside, const std::function<Outcome<Result>()>& work) {
    return guarded<Result>(inside, [&]() -> Outcome<Result> {
        if (inside.inTogether) return work();
        SQLite::Transaction moment(inside.store->database());
        auto result = work();
        moment.commit();
        return result;
    });
}

template <class Entry> Outcome<std::vector<Entry>> entriesOf(Store& store, const std::vector<std::int64_t>& ids) {
    std::vector<Entry> entries;
    Problems problems;
    for (const auto id : ids) {
        const auto row = store.row(kindOf<Entry>, id);
        if (!row) continue;
        auto entry = entryOf<Entry>(id, *row);
        if (entry) entries.push_back(std::move(entry).value());
        else problems.insert(problems.end(), entry.problems().begin(), entry.problems().end());
    }
    if (!problems.empty()) return problems;
    return entries;
}

template <class Entry> Outcome<Entry> named(Outcome<std::vector<Entry>> all, const std::string& name) {
    if (!all) return all.problems();
    const auto what = tableOf(kindOf<Entry>).singular;
    std::vector<Entry> found;
    for (const auto& entry : *all)
        if (entry.name == name) found.push_back(entry);
    if (found.size() == 1) return found.front();
    if (found.empty())
        return Problem{
            ProblemKind::Input, {}, fmt::format("there is no {} called \"{}\"", what, name), "check the name"};
    return Problem{
        ProblemKind::Input, {}, fmt::format("{} of them are called \"{}\"", found.size(), name), "rename all but one"};
}

template <class Entry> void checkRows(BookInside& inside, std::vector<std::string>& faults) {
    const auto& table = tableOf(kindOf<Entry>);
    inside.store->each(kindOf<Entry>, [&](std::int64_t id, Row row) {
        if (id < 1 || id > largestId)
            faults.push_back(fmt::format("{} {}: its number is not from 1 to {}", table.singular, id, largestId));
        const auto entry = entryOf<Entry>(id, row);
        if (!entry)
            for (const auto& problem : entry.problems()) faults.push_back(problem.detail);
        for (const auto& problem : inside.limits.faults(table, row))
            faults.push_back(fmt::format("{} {}: {}", table.singular, id, problem.detail));
    });
}

template <class... Entries>
void checkAllRows(BookInside& inside, std::vector<std::string>& faults, std::tuple<Entries...>*) {
    (checkRows<Entries>(inside, faults), ...);
}

//! Numbers of the history, and the counts from which SQLite would go on, where a stranger wrote what no book does.
void checkNumbers(Store& store, std::vector<std::string>& faults) {
    for (const auto& id : store.texts(fmt::format("SELECT id FROM steps WHERE id NOT BETWEEN 1 AND {}", largestId)))
        faults.push_back(fmt::format("step {} of the history: its number is not from 1 to {}", id, largestId));
    for (const auto& table : store.texts(fmt::format(
             "SELECT name FROM sqlite_sequence WHERE typeof(seq) <> 'integer' OR seq NOT BETWEEN 0 AND {}", largestId)))
        faults.push_back(fmt::format("{}: the count of numbers given is not from 0 to {}", table, largestId));
}

void checkHistory(Store& store, std::vector<std::string>& faults) {
    std::optional<StepId> before;
    while (true) {
        const auto some = steps(store, before, 500);
        if (!some) {
            faults.push_back(some.problems().front().detail);
            return;
        }
        if (some->empty()) return;
        before = some->back().id;
    }
}

} // namespace

template <class Entry> Outcome<std::optional<Entry>> Book::find(Id<Entry> id) {
    return ofOneMoment<std::optional<Entry>>(*inside_, [&]() -> Outcome<std::optional<Entry>> {
        const auto row = inside_->store->row(kindOf<Entry>, id.number);
        if (!row) return std::optional<Entry>{};
        auto entry = entryOf<Entry>(id.number, *row);
        if (!entry) return entry.problems();
        return std::optional<Entry>(std::move(entry).value());
    });
}

template <class Entry> Outcome<std::vector<Entry>> Book::all() {
    return ofOneMoment<std::vector<Entry>>(
        *inside_, [&] { return entriesOf<Entry>(*inside_->store, inside_->store->ids(kindOf<Entry>)); });
}

template <class Entry> Outcome<std::vector<Entry>> Book::of(ColonyId colony) {
    static_assert(isRecord<Entry>);
    return ofOneMoment<std::vector<Entry>>(*inside_, [&] {
        return entriesOf<Entry>(*inside_->store, inside_->store->idsOf(kindOf<Entry>, colony.number));
    });
}

#define WINTERLARDER_READS_OF(Entry)                                                                                   \
    template Outcome<std::optional<Entry>> Book::find(Id<Entry>);                                                      \
    template Outcome<std::vector<Entry>> Book::all();
#define WINTERLARDER_READS_BY_COLONY(Entry) template Outcome<std::vector<Entry>> Book::of(ColonyId);
WINTERLARDER_FOR_ENTRIES(WINTERLARDER_READS_OF)
WINTERLARDER_FOR_RECORDS(WINTERLARDER_READS_BY_COLONY)
#undef WINTERLARDER_READS_OF
#undef WINTERLARDER_READS_BY_COLONY

Outcome<std::vector<Fate>> Book::unitedInto(ColonyId colony) {
    return ofOneMoment<std::vector<Fate>>(*inside_, [&] {
        return entriesOf<Fate>(*inside_->store, inside_->store->referring(Kind::Fate, "into", colony.number));
    });
}

Outcome<Yard> Book::yardNamed(const std::string& name) { return named<Yard>(all<Yard>(), name); }
Outcome<Colony> Book::colonyNamed(const std::string& name) { return named<Colony>(all<Colony>(), name); }

Outcome<Done> Book::together(const std::function<void()>& work) {
    return ofOneMoment<Done>(*inside_, [&]() -> Outcome<Done> {
        struct Mark {
            bool& flag;
            bool before;
            ~Mark() { flag = before; }
        } mark{inside_->inTogether, inside_->inTogether};
        inside_->inTogether = true;
        work();
        return Done{};
    });
}

Outcome<Done> Book::eachRow(Kind kind, const std::function<void(std::int64_t, const Row&)>& visit) {
    return ofOneMoment<Done>(*inside_, [&]() -> Outcome<Done> {
        inside_->store->each(kind, [&](std::int64_t id, const Row& row) { visit(id, row); });
        return Done{};
    });
}

Outcome<std::int64_t> Book::nextId(Kind kind) {
    return guarded<std::int64_t>(*inside_, [&]() -> Outcome<std::int64_t> { return inside_->store->lastId(kind) + 1; });
}

std::int64_t Book::dataVersion() {
    const auto version = guarded<std::int64_t>(
        *inside_, [&]() -> Outcome<std::int64_t> { return inside_->store->number("PRAGMA data_version"); });
    return version ? *version : -1;
}

Outcome<BookInfo> Book::info() {
    return ofOneMoment<BookInfo>(*inside_, [&]() -> Outcome<BookInfo> {
        auto& store = *inside_->store;
        BookInfo info{
            .file = inside_->file, .bytes = std::filesystem::file_size(inside_->file), .schemaVersion = schemaVersion};
        auto& made = store.statement("SELECT at, who, coalesce(mark, '') FROM book_made");
        if (made.executeStep()) {
            info.madeAt = Timestamp::parse(made.getColumn(0).getString());
            info.madeBy = made.getColumn(1).getString();
            info.mark = made.getColumn(2).getString();
        }
        made.reset();
        for (const auto& table : tables())
            info.entries.emplace_back(table.kind, store.number("SELECT count(id) FROM " + quotedName(table.name)));
        info.steps = store.number(
            "SELECT count(id) FROM steps"); // count(*) is one step of work, however long: it cannot be bounded
        return info;
    });
}

Outcome<std::string> Book::dump() {
    return ofOneMoment<std::string>(*inside_, [&]() -> Outcome<std::string> {
        std::string text;
        for (const auto& table : tables())
            inside_->store->each(table.kind, [&](std::int64_t id, const Row& row) {
                text += fmt::format("# {} {}\n{}", table.singular, id, textOf(linesOf(table, row)));
            });
        return text;
    });
}

Outcome<std::vector<std::string>> Book::check() {
    using Faults = std::vector<std::string>;
    auto found = guarded<Faults>(*inside_, [&]() -> Outcome<Faults> {
        auto faults = integrityFaults(inside_->store->database());
        if (!faults.empty()) return faults;
        inside_->store->startCall();
        for (const auto& table : inside_->store->texts("PRAGMA foreign_key_check"))
            faults.push_back(fmt::format("an entry of {} refers to one that is not there", table));
        checkAllRows(*inside_, faults, static_cast<EntryTypes*>(nullptr));
        checkNumbers(*inside_->store, faults);
        checkHistory(*inside_->store, faults);
        return faults;
    });
    if (!found) return Faults{found.problems().front().detail};
    return found;
}

} // namespace winterlarder::book
