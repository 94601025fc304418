// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/book/book_csv_references.h"

#include "support/as_number.h"

#include <fmt/format.h>

namespace winterlarder::exchange {

Outcome<CsvReferences> CsvReferences::in(book::Book& from) {
    CsvReferences references;
    const auto yards = from.all<book::Yard>();
    if (!yards) return yards.problems();
    for (const auto& yard : *yards) references.yards_.add(yard.name, yard.id.number);
    const auto colonies = from.all<book::Colony>();
    if (!colonies) return colonies.problems();
    for (const auto& colony : *colonies) references.colonies_.add(colony.name, colony.id.number);
    return references;
}

void CsvReferences::Names::add(const std::string& name, std::int64_t id) {
    ids.emplace(name, id);
    names.emplace(id, name);
}

const CsvReferences::Names* CsvReferences::namesOf(book::Kind kind) const {
    if (kind == book::Kind::Yard) return &yards_;
    return kind == book::Kind::Colony ? &colonies_ : nullptr;
}

std::string CsvReferences::textOf(book::Kind kind, std::int64_t id) const {
    if (const auto* names = namesOf(kind))
        if (const auto found = names->names.find(id); found != names->names.end())
            if (names->ids.count(found->second) == 1 && !found->second.starts_with('#')) return found->second;
    return fmt::format("#{}", id);
}

Outcome<std::int64_t> CsvReferences::find(book::Kind kind, const std::string& text) const {
    const auto what = book::tableOf(kind).singular;
    const auto* names = namesOf(kind);
    if (!names || text.front() == '#') {
        if (const auto id = idOf(text)) return *id;
        return Problem{ProblemKind::Input, {}, fmt::format("\"{}\" is no number of a {}", text, what), "such as #7"};
    }
    const auto count = names->ids.count(text);
    if (count == 1) return names->ids.find(text)->second;
    if (count == 0)
        return Problem{ProblemKind::Input,
                       {},
                       fmt::format("there is no {} \"{}\"", what, text),
                       "name one that is in the book, or enter it first"};
    return Problem{ProblemKind::Input,
                   {},
                   fmt::format("{} of them are called \"{}\"", count, text),
                   fmt::format("say which, such as #{}", names->ids.find(text)->second)};
}

std::optional<std::int64_t> CsvReferences::numberOf(std::string_view text) {
    if (text.starts_with('#')) text.remove_prefix(1);
    return asNumber<std::int64_t>(text);
}

std::optional<std::int64_t> CsvReferences::idOf(std::string_view text) {
    const auto number = numberOf(text);
    return number && *number >= 1 && *number <= book::largestId ? number : std::nullopt;
}

} // namespace winterlarder::exchange
