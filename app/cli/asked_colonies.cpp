// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/asked_colonies.h"

#include "answer/doubts.h"
#include "book/case_of.h"
#include "cli/open_book.h"
#include "exchange/case/case_file.h"
#include "support/caught.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

//! As coloniesAsked; the one named among all that live, where it lives and they count.
Outcome<std::vector<book::Colony>> withNeighbours(book::Book& from, const std::optional<std::string>& name, Date asOf,
                                                  Neighbours neighbours) {
    auto asked = coloniesAsked(from, name, asOf);
    if (!asked || !name || neighbours == Neighbours::LeftOut) return asked;
    auto living = book::livingOn(from, asOf);
    if (!living) return living.problems();
    const bool lives = std::any_of(living->begin(), living->end(),
                                   [&](const book::Colony& each) { return each.id == asked->front().id; });
    return lives ? living : asked;
}

//! Of the colonies read only the one named is shown, and of the others only those of its yard take part.
Outcome<Done> keepYardOf(book::Book& from, const std::string& name, std::vector<AskedColony>& colonies) {
    const auto named = colonyOf(from, name);
    if (!named) return named.problems();
    for (auto& each : colonies) each.shown = each.colony.id == named->id;
    const auto one = std::find_if(colonies.begin(), colonies.end(), [](const AskedColony& each) { return each.shown; });
    const auto yard = one->record ? one->record->yard : std::nullopt;
    std::erase_if(colonies, [&](const AskedColony& each) {
        return !each.shown && (!yard || !each.record || each.record->yard != yard);
    });
    return Done{};
}

//! A colony of the book as a case to be answered. What a book holds is never a fault: records in doubt are set aside first.
BatchItem itemOf(const Session& session, const BookAnswers& options, const AskedColony& asked, std::uint64_t position) {
    BatchItem item{.position = position, .file = fmt::format("{}: {}", options.file, asked.colony.name)};
    if (!asked.record) {
        item.problems = placedAt(asked.record.problems(), item.file);
        return item;
    }
    auto sound = believed(*asked.record, session.reference);
    sound.record.sure = true; // they were judged
    item.text = exchange::writeCaseLine(sound.record);
    item.setAside = std::move(sound.setAside);
    item.record = *asked.record;
    return item;
}

} // namespace

Outcome<std::vector<book::Colony>> coloniesAsked(book::Book& from, const std::optional<std::string>& name, Date asOf) {
    if (!name) return book::livingOn(from, asOf);
    auto colony = colonyOf(from, *name);
    if (!colony) return colony.problems();
    return std::vector<book::Colony>{std::move(colony).value()};
}

Outcome<std::vector<AskedColony>> coloniesWithCases(book::Book& from, const BookAnswers& options, Date asOf,
                                                    Neighbours neighbours, const BookLearned* learned) {
    auto colonies = withNeighbours(from, options.colony, asOf, neighbours);
    if (!colonies) return colonies.problems();
    std::vector<AskedColony> asked;
    for (auto& colony : *colonies) {
        auto record = caught({options.file, 0, 0}, fmt::format("the case of {}", colony.name),
                             [&] { return learnedCase(from, colony.id, asOf, learned); });
        asked.push_back({std::move(colony), std::move(record)});
    }
    if (options.colony)
        if (const auto kept = keepYardOf(from, *options.colony, asked); !kept) return kept.problems();
    return asked;
}

void answerAll(Session& session, const BookAnswers& options, const std::vector<AskedColony>& asked,
               const std::function<void(const AskedColony&, const BatchAnswer&)>& take) {
    const auto combs = options.combsStay ? advice::MovingCombs::Not : advice::MovingCombs::Allowed;
    std::size_t place = 0;
    OrderedAnswers ordered({session.reference, session.sampling, session.threads, combs},
                           [&](const BatchAnswer& answer) {
                               const AskedColony& colony = asked.at(place++);
                               if (colony.shown) return take(colony, answer);
                               for (const auto& problem : answer.problems)
                                   session.tell(fmt::format("{} is left out of the plan of its yard: {}",
                                                            colony.colony.name, describe(problem)));
                           });
    {
        Batch batch(session.reference, session.sampling, session.threads, ordered);
        std::uint64_t position = 0;
        for (const auto& each : asked) batch.add(itemOf(session, options, each, position++));
    }
    ordered.finish();
}

Outcome<std::map<std::int64_t, BatchAnswer>>
answersOfDay(Session& session, book::Book& from, const BookAnswers& options, Date asOf, const BookLearned* learned) {
    const auto asked = coloniesWithCases(from, options, asOf, Neighbours::Counted, learned);
    if (!asked) return asked.problems();
    std::map<std::int64_t, BatchAnswer> answers;
    answerAll(session, options, *asked, [&](const AskedColony& colony, const BatchAnswer& answer) {
        answers.emplace(colony.colony.id.number, answer);
    });
    return answers;
}

} // namespace winterlarder::cli
