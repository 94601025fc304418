// SPDX-License-Identifier: GPL-3.0-or-later
// Answers computed from a book: advice for every living colony, the case of one, advice acted on.
#include "answer/acceptance.h"
#include "answer/advice_json.h"
#include "answer/doubts.h"
#include "answer/learned_book.h"
#include "cli/advice_text.h"
#include "cli/batch.h"
#include "cli/book_commands.h"
#include "cli/open_book.h"

#include "book/case_of.h"
#include "exchange/case/case_file.h"
#include "support/caught.h"

#include <fmt/format.h>
#include <ostream>

namespace winterlarder::cli {

using namespace winterlarder::answer;
namespace {

using exchange::Json;

//! A colony asked about and its case, or why there is none.
struct AskedColony {
    book::Colony colony;
    Outcome<book::ColonyCase> record;
};

//! The colonies asked about, and how learning from their past went.
struct AskedCases {
    std::vector<AskedColony> colonies;
    Status status = Status::Done;
};

Outcome<std::vector<book::Colony>> coloniesAsked(book::Book& from, const BookAnswers& options, Date asOf) {
    if (!options.colony) return book::livingOn(from, asOf);
    auto colony = colonyOf(from, *options.colony);
    if (!colony) return colony.problems();
    return std::vector<book::Colony>{std::move(colony).value()};
}

Outcome<AskedCases> casesAsked(Session& session, book::Book& from, const BookAnswers& options, Date asOf) {
    auto colonies = coloniesAsked(from, options, asOf);
    if (!colonies) return colonies.problems();
    AskedCases asked;
    std::optional<LearnedBook> past;
    if (!options.withoutLearning) {
        auto learned = learnOf(from, asOf, session.sampling, session.threads);
        if (!learned) return learned.problems();
        past = std::move(learned).value();
        if (!past->problems.empty()) asked.status = session.fail(past->problems);
    }
    for (auto& colony : *colonies) {
        auto record = caught({options.file, 0, 0}, fmt::format("the case of {}", colony.name),
                             [&] { return learnedCase(from, colony.id, asOf, past ? &past->learned : nullptr); });
        asked.colonies.push_back({std::move(colony), std::move(record)});
    }
    return asked;
}

//! Shows the colonies' answers in their order.
class BookOutput {
public:
    BookOutput(Session& session, const std::vector<AskedColony>& asked) : session_(session), asked_(asked) {}

    void show(const BatchAnswer& answer) {
        const std::string& name = asked_.at(shown_).colony.name;
        const auto said = answer.problems.empty() ? spoken(answer) : Outcome<std::string>(answer.problems);
        if (!said)
            showFaults(answer.at, said.problems(), name);
        else if (session_.json)
            session_.out << *said << '\n';
        else
            showText(*said);
        ++shown_;
        session_.out.flush();
    }
    Status status() const { return status_; }

private:
    Outcome<std::string> spoken(const BatchAnswer& answer) const {
        const auto& member = *answer.member;
        return caught({answer.at, 0, 0}, "this answer", [&]() -> Outcome<std::string> {
            return session_.json ? adviceJson(*answer.record, member.question, member.advice, session_.reference, session_.style).compact()
                                 : adviceText(*answer.record, member.question, member.advice, session_).toStdString();
        });
    }
    void showFaults(const std::string& at, const Problems& problems, const std::string& name) {
        status_ = worse(status_, session_.fail(problems));
        if (session_.json)
            session_.out << Json::object().add("colony", name).add("case_at", at).add("faults", problemsJson(problems)).compact() << '\n';
        else
            showText(fmt::format("{}: not answered\n", name));
    }
    void showText(const std::string& text) {
        if (shown_ > 0) session_.out << '\n';
        session_.out << text;
    }

    Session& session_;
    const std::vector<AskedColony>& asked_;
    std::size_t shown_ = 0;
    Status status_ = Status::Done;
};

//! A colony of the book as a case to be answered. What a book holds is never a fault: records in doubt are set aside first.
BatchItem itemOf(const Session& session, const BookAnswers& options, const AskedColony& asked, std::uint64_t position) {
    BatchItem item{position, fmt::format("{}: {}", options.file, asked.colony.name), 0, {}, {}};
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

Status answerAll(Session& session, const BookAnswers& options, const std::vector<AskedColony>& asked) {
    BookOutput output(session, asked);
    const auto combs = options.combsStay ? advice::MovingCombs::Not : advice::MovingCombs::Allowed;
    OrderedAnswers ordered({session.reference, session.sampling, session.threads, combs}, [&](const BatchAnswer& answer) { output.show(answer); });
    {
        Batch batch(session.reference, session.sampling, session.threads, ordered);
        std::uint64_t position = 0;
        for (const auto& each : asked) batch.add(itemOf(session, options, each, position++));
    }
    ordered.finish();
    return output.status();
}

//! Opens the book, reads the cases asked for and hands them to `answer`.
template <class Answer>
Status withCases(Session& session, const BookAnswers& options, For purpose, Answer answer) {
    const auto asOf = dayOrToday(session, "--as-of", options.asOf);
    if (!asOf) return session.fail(asOf.problems());
    auto opened = openBook(session, options, purpose);
    if (!opened) return session.fail(opened.problems());
    const auto asked = casesAsked(session, *opened, options, *asOf);
    if (!asked) return session.fail(asked.problems());
    return worse(asked->status, answer(*opened, asked->colonies, *asOf));
}

//! The same for a single colony, which must be named.
template <class Answer>
Status withOneCase(Session& session, const BookAnswers& options, For purpose, Answer answer) {
    if (!options.colony) return session.fail({argumentProblem("which colony was not said", "--colony NAME")});
    return withCases(session, options, purpose,
                     [&](book::Book& from, const std::vector<AskedColony>& asked, Date) {
                         const auto& one = asked.front();
                         return one.record ? answer(from, one) : session.fail(one.record.problems());
                     });
}

} // namespace

Status adviseBook(Session& session, const BookAnswers& options) {
    return withCases(session, options, For::Reading, [&](book::Book&, const std::vector<AskedColony>& asked, Date asOf) {
        if (asked.empty()) session.tell(fmt::format("{}: no colony is living on {}", options.file, asOf.iso()));
        return answerAll(session, options, asked);
    });
}

Status bookCase(Session& session, const BookAnswers& options) {
    return withOneCase(session, options, For::Reading, [&](book::Book&, const AskedColony& asked) {
        session.out << exchange::writeCase(*asked.record);
        return Status::Done;
    });
}

Status acceptAdvice(Session& session, const BookAnswers& options) {
    return withOneCase(session, options, For::Writing, [&](book::Book& to, const AskedColony& asked) {
        const BatchItem item = itemOf(session, options, asked, 0);
        const BatchAnswer answer = answerOf(item, session.reference, session.sampling, session.threads);
        if (!answer.problems.empty()) return session.fail(answer.problems);
        if (answer.member->advice.verdict == advice::Verdict::CannotSay)
            return session.fail({{ProblemKind::Input, {item.file, 0, 0}, "there is no advice to act on: it cannot be said", "book advise tells why"}});
        auto accepted = acceptanceOf(asked.colony.id, *answer.record, answer.member->question, answer.member->advice, session.reference,
                                     session.style);
        return printId(session, to.apply(book::SingleEdit(std::move(accepted)), session.moment.now, writerOf(session, options)),
                       book::Kind::ActedAdvice);
    });
}

} // namespace winterlarder::cli
