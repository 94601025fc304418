// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/salvage.h"

#include "book/file/damaged_file.h"
#include "book/file/file_problems.h"
#include "book/file/raw_file.h"
#include "book/file/temporary_file.h"
#include "book/form/entry_rows.h"
#include "book/form/limits.h"
#include "support/require.h"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace winterlarder::book {
namespace {

namespace files = std::filesystem;

//! A copy of a damaged book, with the journal beside it, to be read and changed.
class WorkingCopy {
public:
    WorkingCopy(const RawFile& original, const files::path& originalPath, const files::path& wanted) : copy_(wanted) {
        copySparse(original, copy_.path());
        const files::path journal = originalPath.string() + "-journal";
        if (files::exists(journal)) files::copy_file(journal, copy_.path().string() + "-journal");
    }
    const files::path& path() const { return copy_.path(); }

private:
    TemporaryFile copy_;
};

//! Makes a set of targets that belong together out of what could be read.
class Sorting {
public:
    explicit Sorting(const Limits& limits) : limits_(limits) {}

    void take(const Table& table, ReadRows read) {
        lost.insert(lost.end(), read.lost.begin(), read.lost.end());
        for (auto& [id, row] : read.rows)
            if (isSound(table, id, row)) keep(table, id, withFitName(table, id, std::move(row)));
    }

    std::vector<Target> targets;
    std::vector<std::string> lost;

private:
    bool isSound(const Table& table, std::int64_t id, const Row& row) {
        const auto faults = limits_.faults(table, row);
        for (const auto& fault : faults) lost.push_back(fmt::format("{} {}: {}", table.singular, id, fault.detail));
        if (id >= 1 && id <= largestId && faults.empty()) return true;
        lost.push_back(fmt::format("{} {} is lost", table.singular, id));
        return false;
    }

    //! A name no new entry may have is kept as it is shown.
    Row withFitName(const Table& table, std::int64_t id, Row row) {
        const auto name = table.column("name");
        if (!name || !faultOfNewName(table.columns[*name], row.values[*name])) return row;
        auto& text = std::get<std::string>(row.values[*name]);
        text = faultOfName(visible(text)) ? fmt::format("{} {}", table.singular, id) : visible(text);
        if (characters(text) > static_cast<std::size_t>(textLength(table.columns[*name]).most))
            text = fmt::format("{} {}", table.singular, id);
        lost.push_back(
            fmt::format("{} {}: its name was not fit to be shown; it is now \"{}\"", table.singular, id, text));
        return row;
    }

    void keep(const Table& table, std::int64_t id, Row row) {
        for (std::size_t at = 0; at < table.columns.size(); ++at) {
            const auto& column = table.columns[at];
            const auto* to = std::get_if<std::int64_t>(&row.values[at]);
            if (!column.refersTo || !to || there_[*column.refersTo].contains(*to) ||
                replace(*column.refersTo, *to, column))
                continue;
            if (column.required) {
                lost.push_back(
                    fmt::format("{} {}: its {} {} is lost, and so is it", table.singular, id, column.name, *to));
                return;
            }
            lost.push_back(fmt::format("{} {}: its {} {} is lost", table.singular, id, column.name, *to));
            row.values[at] = {};
        }
        there_[table.kind].insert(id);
        targets.push_back({table.kind, id, std::move(row)});
    }

    //! Stands something in for a lost yard or colony that entries cannot be without.
    bool replace(Kind kind, std::int64_t id, const Column& column) {
        if (!column.required || id < 1 || id > largestId) return false;
        if (kind == Kind::Yard) {
            Yard yard;
            yard.name = fmt::format("lost yard {}", id);
            yard.site.where = std::string("unknown");
            keep(tableOf(kind), id, rowOf(yard));
        } else if (kind == Kind::Colony) {
            Colony colony;
            colony.name = fmt::format("lost colony {}", id);
            colony.yard = {there_[Kind::Yard].empty() ? 1 : *there_[Kind::Yard].begin()};
            keep(tableOf(kind), id, rowOf(colony));
        }
        return there_[kind].contains(id);
    }

    const Limits& limits_;
    std::map<Kind, std::set<std::int64_t>> there_;
};

//! Puts what can be put; what breaks a rule is found by halving and named.
void putInto(Book& book, std::vector<Target> targets, const Opener& opener, std::vector<std::string>& lost) {
    auto applied = book.apply(PutEntries{"salvage", targets}, opener.now, opener.who);
    if (applied || targets.empty()) return;
    if (targets.size() == 1) {
        lost.push_back(fmt::format("{} {} is lost: {}", tableOf(targets[0].kind).singular, targets[0].id,
                                   applied.problems().front().detail));
        return;
    }
    const auto half = targets.begin() + static_cast<std::ptrdiff_t>(targets.size() / 2);
    putInto(book, {targets.begin(), half}, opener, lost);
    putInto(book, {half, targets.end()}, opener, lost);
}

} // namespace

Outcome<Salvaged> salvage(const files::path& damaged, const files::path& newBook, const ReferenceData& reference,
                          const Opener& opener) {
    const auto failed = [&](const std::string& why) {
        return Problem{
            ProblemKind::File, {damaged.string(), 0, 0}, "nothing could be salvaged: " + why, "restore a backup"};
    };
    std::error_code unknown;
    if (!files::is_regular_file(damaged, unknown)) return failed("there is no such file");
    if (files::exists(newBook, unknown))
        return Problem{
            ProblemKind::File, {newBook.string(), 0, 0}, "there is a file of that name", "choose another name"};
    const Limits limits(reference.fields);
    Sorting sorting(limits);
    try {
        const RawFile original(damaged);
        if (!holdsTables(original)) return failed("it holds no table of a book");
        const WorkingCopy copy(original, damaged, newBook.string() + ".salvage");
        DamagedFile file(copy.path(), pageSizeOf(original), schemaOf(limits));
        for (const auto& table : tables()) sorting.take(table, file.read(table));
    } catch (const ContractViolation&) {
        throw;
    } catch (const std::exception& error) {
        return failed(problemOf(error, damaged).detail);
    }
    if (sorting.targets.empty()) return failed("no entry can be read");
    auto book = Book::create(newBook, reference, {opener});
    if (!book) return book.problems();
    putInto(*book, sorting.targets, opener, sorting.lost);
    const auto info = book->info();
    if (!info) return info.problems();
    return Salvaged{info->entries, std::move(sorting.lost)};
}

} // namespace winterlarder::book
