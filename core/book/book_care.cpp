// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/book_inside.h"
#include "book/file/temporary_file.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <set>

namespace winterlarder::book {
namespace files = std::filesystem;

std::vector<Target> differences(Store& present, Store& other) {
    std::vector<Target> targets;
    for (const auto& table : tables()) {
        std::set<std::int64_t> wanted;
        other.each(table.kind, [&](std::int64_t id, Row row) {
            wanted.insert(id);
            if (present.row(table.kind, id) != row) targets.push_back({table.kind, id, std::move(row)});
        });
        for (const auto id : present.ids(table.kind))
            if (!wanted.contains(id)) targets.push_back({table.kind, id, std::nullopt});
    }
    return targets;
}

Outcome<Backup> Book::backUp(Timestamp now) {
    return guarded<Backup>(*inside_, [&]() -> Outcome<Backup> {
        auto backup = makeBackup(inside_->store->database(), inside_->file, now);
        if (backup) inside_->lastBackup = now.date();
        return backup;
    });
}

Outcome<Done> Book::copyTo(const files::path& copy) {
    const auto taken = fileProblem(copy, "there is a file of that name", "choose another name");
    std::error_code unknown;
    if (files::exists(copy, unknown)) return taken;
    return guarded<Done>(*inside_, [&]() -> Outcome<Done> {
        TemporaryFile unfinished(copy.string() + ".new");
        inside_->store->withSchemaOpen([&] {
            SQLite::Statement vacuum(inside_->store->database(), "VACUUM INTO ?");
            vacuum.bind(1, files::absolute(unfinished.path()).string());
            vacuum.exec();
        });
        if (!unfinished.giveName(copy)) return taken;
        return Done{};
    });
}

Outcome<Applied> Book::restore(const files::path& backup, Timestamp now, const std::string& who) {
    if (!writable()) return Problem{ProblemKind::File, {file().string(), 0, 0}, whyReadOnly(), "nothing was changed"};
    Access access = Access::AskedReadOnly;
    std::vector<std::string> notices;
    auto other = openChecked(backup, OpenMode::Read, inside_->limits, now, access, notices);
    if (!other) return other.problems();
    if (access == Access::NewerVersion)
        return Problem{ProblemKind::File,
                       {backup.string(), 0, 0},
                       "a newer version of this program made it",
                       "restore with that version"};
    if (auto made = backUp(now); !made) return made.problems();
    auto& store = *inside_->store;
    return carryOut(
        *inside_, now,
        [&]() -> Outcome<std::vector<Target>> {
            try {
                return differences(store, **other);
            } catch (const std::exception& error) {
                return problemOf(error, backup);
            }
        },
        [&](const std::vector<EntryChange>& changes) -> std::optional<StepId> {
            if (changes.empty()) return std::nullopt;
            return record(store, {now, who}, "restore backup", changes);
        });
}

} // namespace winterlarder::book
