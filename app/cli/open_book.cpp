// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/open_book.h"

#include "calendar/other_date_forms.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"
#include "support/as_number.h"
#include "text/contexts.h"

#include <algorithm>
#include <fmt/format.h>
#include <ostream>

namespace winterlarder::cli {
namespace {

std::optional<std::int64_t> numberIn(std::string_view text) {
    if (text.starts_with('#')) text.remove_prefix(1);
    const auto number = asNumber<std::int64_t>(text);
    return number && *number > 0 ? number : std::nullopt;
}

std::string suggestedColonies(book::Book& from, const std::string& written) {
    const auto all = from.all<book::Colony>();
    if (!all) return {};
    if (all->empty()) return "add one with book add-colony";
    std::vector<std::string> names;
    for (const auto& colony : *all) names.push_back(colony.name);
    return exchange::suggestion(written, names);
}

//! A sign another machine left cannot be proved stale here; only the keeper can say that it is.
std::string remedyOf(const Session& session, const book::Book& opened) {
    const bool elsewhere =
        opened.access() == book::Access::OpenElsewhere && opened.holder().machine != session.moment.machine;
    return elsewhere
               ? "nothing was written; where it is closed there, or that machine is gone or has another name now, say --take-over"
               : "nothing was written";
}

} // namespace

std::string writerOf(const Session& session, const BookFile& options) {
    return options.by.value_or(session.moment.who);
}

book::Opening openingOf(const Session& session, const BookFile& options, For purpose) {
    const auto writing = options.takeOver ? book::OpenFor::TakingOver : book::OpenFor::Writing;
    return {{writerOf(session, options), session.moment.machine, session.moment.now},
            purpose == For::Reading ? book::OpenFor::Reading : writing};
}

Outcome<book::Book> openBook(Session& session, const BookFile& options, For purpose) {
    auto opened = book::Book::open(options.file, session.reference, openingOf(session, options, purpose));
    if (!opened) return opened;
    for (const auto& notice : opened->notices()) session.tell(options.file + ": " + notice);
    if (purpose == For::Writing && !opened->writable())
        return Problem{ProblemKind::File, {options.file, 0, 0}, opened->whyReadOnly(), remedyOf(session, *opened)};
    return opened;
}

Outcome<book::Colony> colonyOf(book::Book& from, const std::string& nameOrNumber) {
    auto named = from.colonyNamed(nameOrNumber);
    if (named) return named;
    if (const auto number = numberIn(nameOrNumber)) {
        auto found = from.find(book::ColonyId{*number});
        if (!found) return found.problems();
        if (*found) return **std::move(found);
    }
    auto problem = named.problems().front();
    if (problem.kind == ProblemKind::Input) {
        problem.place = {"winterlarder-cli", 0, 0};
        if (problem.detail.starts_with("there is no")) problem.remedy = suggestedColonies(from, nameOrNumber);
    }
    return problem;
}

Outcome<book::YardId> yardFor(book::Book& from, const std::optional<std::string>& name) {
    if (name) {
        const auto named = from.yardNamed(*name);
        if (!named) return named.problems();
        return named->id;
    }
    const auto all = from.all<book::Yard>();
    if (!all) return all.problems();
    if (all->size() == 1) return all->front().id;
    return argumentProblem(fmt::format("the book has {} yards", all->size()),
                           all->empty() ? "book add-yard" : "--yard NAME");
}

Outcome<Date> dayOf(const char* option, const std::string& text) {
    if (const auto date = Date::parse(text)) return *date;
    return argumentProblem(fmt::format("{} is {}", option, exchange::inQuotes(text)), dateMeant(text));
}

Outcome<Date> dayOrToday(const Session& session, const char* option, const std::optional<std::string>& text) {
    if (text) return dayOf(option, *text);
    return session.moment.today;
}

Status printTouched(Session& session, const Outcome<book::Applied>& applied) {
    if (!applied) return session.fail(applied.problems());
    for (const auto& notice : applied->notices) session.tell(notice);
    const auto count = static_cast<int>(applied->touched.size());
    if (session.json) session.print(exchange::Json::object().add("touched", count));
    else
        session.print(count == 1 ? say::CommandLine::tr("One entry changed\n")
                                 : say::CommandLine::tr("%n entries changed\n", nullptr, count));
    return Status::Done;
}

Status printId(Session& session, const Outcome<book::Applied>& applied, book::Kind kind,
               std::optional<exchange::Json> place) {
    if (!applied) return session.fail(applied.problems());
    for (const auto& notice : applied->notices) session.tell(notice);
    const auto added =
        std::find_if(applied->touched.begin(), applied->touched.end(), [&](const book::Touched& touched) {
            return touched.kind == kind && touched.how == book::ChangeHow::Add;
        });
    if (added == applied->touched.end()) throw std::logic_error("an added entry is not among what the edit touched");
    exchange::Json answer = exchange::Json::object();
    answer.add("id", static_cast<double>(added->id));
    if (place) answer.add("place_taken", *std::move(place));
    if (session.json) session.print(answer);
    else session.out << added->id << '\n';
    return Status::Done;
}

} // namespace winterlarder::cli
