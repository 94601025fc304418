// SPDX-License-Identifier: GPL-3.0-or-later
// Answers computed from a book: advice for every living colony, the case of one, advice acted on.
#include "answer/acceptance.h"
#include "answer/advice_json.h"
#include "answer/doubts.h"
#include "answer/follow_json.h"
#include "answer/followed_advice.h"
#include "answer/learned_book.h"
#include "cli/advice_text.h"
#include "cli/asked_colonies.h"
#include "cli/book_commands.h"
#include "cli/followed.h"
#include "cli/open_book.h"
#include "cli/yard_text.h"

#include "book/case_of.h"
#include "exchange/case/case_file.h"
#include "support/caught.h"

#include <algorithm>
#include <fmt/format.h>
#include <functional>
#include <map>
#include <ostream>

namespace winterlarder::cli {

using namespace winterlarder::answer;
namespace {

using exchange::Json;

//! The colonies asked about, and how learning from their past went.
struct AskedCases {
    std::vector<AskedColony> colonies;
    std::optional<BookLearned> learned{};
    Status status = Status::Done;

    const BookLearned* taught() const { return learned ? &*learned : nullptr; }
};

Outcome<AskedCases> casesAsked(Session& session, book::Book& from, const BookAnswers& options, Date asOf,
                               Neighbours neighbours) {
    AskedCases asked;
    if (!options.withoutLearning) {
        auto learned = learnOf(from, asOf, session.sampling, session.threads);
        if (!learned) return learned.problems();
        asked.learned = std::move(learned->learned);
        if (!learned->problems.empty()) asked.status = session.fail(learned->problems);
    }
    auto colonies = coloniesWithCases(from, options, asOf, neighbours, asked.taught());
    if (!colonies) return colonies.problems();
    asked.colonies = std::move(colonies).value();
    return asked;
}

//! Shows the answers of colonies by their names.
class BookOutput {
public:
    explicit BookOutput(Session& session) : session_(session) {}

    void show(const std::string& name, const BatchAnswer& answer) {
        const auto said = answer.problems.empty() ? spoken(answer) : Outcome<std::string>(answer.problems);
        if (!said) return showFaults(answer.at, said.problems(), name);
        showSaid(*said);
    }
    //! A line of JSON, or text.
    void showSaid(const std::string& said) {
        if (!session_.json) return showText(said);
        session_.out << said << '\n';
        ++shown_;
        session_.out.flush();
    }
    void showText(const std::string& text) {
        if (shown_++ > 0) session_.out << '\n';
        session_.out << text;
        session_.out.flush();
    }
    Status status() const { return status_; }

private:
    Outcome<std::string> spoken(const BatchAnswer& answer) const {
        const auto& member = *answer.member;
        return caught({answer.at, 0, 0}, "this answer", [&]() -> Outcome<std::string> {
            return session_.json
                       ? adviceJson(*answer.record, member.question, member.advice, session_.reference, session_.style)
                             .compact()
                       : adviceText(*answer.record, member.question, member.advice, session_).toStdString();
        });
    }
    void showFaults(const std::string& at, const Problems& problems, const std::string& name) {
        status_ = worse(status_, session_.fail(problems));
        if (session_.json)
            session_.out
                << Json::object().add("colony", name).add("case_at", at).add("faults", problemsJson(problems)).compact()
                << '\n';
        else showText(fmt::format("{}: not answered\n", name));
    }

    Session& session_;
    int shown_ = 0;
    Status status_ = Status::Done;
};

//! Opens the book, reads the cases asked for and hands them to `answer`.
template <class Answer>
Status withCases(Session& session, const BookAnswers& options, For purpose, Neighbours neighbours, Answer answer) {
    const auto asOf = dayOrToday(session, "--as-of", options.asOf);
    if (!asOf) return session.fail(asOf.problems());
    auto opened = openBook(session, options, purpose);
    if (!opened) return session.fail(opened.problems());
    const auto asked = casesAsked(session, *opened, options, *asOf, neighbours);
    if (!asked) return session.fail(asked.problems());
    return worse(asked->status, answer(*opened, *asked, *asOf));
}

//! The same for a single colony, which must be named: `answer` gets it with all that take part in its yard's plan.
template <class Answer>
Status withOneCase(Session& session, const BookAnswers& options, For purpose, Neighbours neighbours, Answer answer) {
    if (!options.colony) return session.fail({argumentProblem("which colony was not said", "--colony NAME")});
    return withCases(session, options, purpose, neighbours, [&](book::Book& from, const AskedCases& asked, Date) {
        const auto one = std::find_if(asked.colonies.begin(), asked.colonies.end(),
                                      [](const AskedColony& each) { return each.shown; });
        return one->record ? answer(from, *one, asked.colonies) : session.fail(one->record.problems());
    });
}

Status acceptAnswer(Session& session, book::Book& to, const BookAnswers& options, const AskedColony& asked,
                    const BatchAnswer& answer) {
    if (!answer.problems.empty()) return session.fail(answer.problems);
    if (answer.member->advice.verdict == advice::Verdict::CannotSay)
        return session.fail({{ProblemKind::Input,
                              {answer.at, 0, 0},
                              "there is no advice to act on: it cannot be said",
                              "book advise tells why"}});
    auto accepted = acceptanceOf(asked.colony.id, *answer.record, answer.member->question, answer.member->advice,
                                 session.reference, session.style);
    return printId(session,
                   to.apply(book::SingleEdit(std::move(accepted)), session.moment.now, writerOf(session, options)),
                   book::Kind::ActedAdvice);
}

} // namespace

namespace {

//! Answers of a book: where nothing can be said of a colony whose winter is followed, how that goes; after the colonies of a yard what they add up to.
class BookAdvice {
public:
    BookAdvice(Session& session, book::Book& from, const BookAnswers& options, const AskedCases& asked, Date asOf)
        : session_(session), from_(from), options_(options), asked_(asked), asOf_(asOf), output_(session) {}

    Status say() {
        answerAll(session_, options_, asked_.colonies, [&](const AskedColony& colony, BatchAnswer answer) {
            const auto reading = readToFollow(from_, colony.colony.id, asOf_, asked_.taught());
            const auto followed = reading ? instead(colony, answer, *reading) : std::nullopt;
            if (followed) return output_.showSaid(*followed);
            if (reading && answer.member) askAboutFeeds(answer.member->advice, *reading, session_.reference);
            output_.show(colony.colony.name, answer);
            keep(answer, reading ? openVisits(*reading, session_.reference) : std::vector<book::PlannedVisit>{});
        });
        for (const auto& [yard, colonies] : yards_)
            if (const QString text = yardText(yard, colonies, session_); !text.isEmpty())
                output_.showText(text.toStdString());
        return output_.status();
    }

private:
    //! How its winter goes, where that is what can be said.
    std::optional<std::string> instead(const AskedColony& colony, const BatchAnswer& answer,
                                       const FollowReading& reading) {
        if (!answer.member || answer.member->advice.refusals.empty() || !followLeads(reading)) return std::nullopt;
        session_.tell(fmt::format("{}: {}: its winter is followed: book follow tells how it goes", options_.file,
                                  colony.colony.name));
        const auto followed = caught({answer.at, 0, 0}, "its winter", [&] { return followOne(session_, reading); });
        if (!followed || !followed->following) return std::nullopt;
        if (!session_.json) return spoken(session_, *followed, asOf_, false);
        return followedAdviceJson(*answer.record, answer.member->question, answer.member->advice, followed->colony,
                                  *followed->following, session_.reference, session_.style)
            .compact();
    }

    //! For what its yard adds up to, which is told in words and of whole yards.
    void keep(const BatchAnswer& answer, std::vector<book::PlannedVisit> visits) {
        if (session_.json || options_.colony || !answer.member || answer.member->question.yard.empty()) return;
        yards_[answer.member->question.yard].push_back({*answer.member, std::move(visits)});
    }

    Session& session_;
    book::Book& from_;
    const BookAnswers& options_;
    const AskedCases& asked_;
    Date asOf_;
    BookOutput output_;
    std::map<std::string, std::vector<ColonyOfYard>> yards_;
};

} // namespace

Status adviseBook(Session& session, const BookAnswers& options) {
    return withCases(session, options, For::Reading, Neighbours::Counted,
                     [&](book::Book& from, const AskedCases& asked, Date asOf) {
                         if (asked.colonies.empty())
                             session.tell(fmt::format("{}: no colony is living on {}", options.file, asOf.iso()));
                         return BookAdvice(session, from, options, asked, asOf).say();
                     });
}

Status bookCase(Session& session, const BookAnswers& options) {
    return withOneCase(session, options, For::Reading, Neighbours::LeftOut,
                       [&](book::Book&, const AskedColony& asked, const std::vector<AskedColony>&) {
                           session.out << exchange::writeCase(caseToWrite(*asked.record, session.reference));
                           return Status::Done;
                       });
}

Status acceptAdvice(Session& session, const BookAnswers& options) {
    return withOneCase(session, options, For::Writing, Neighbours::Counted,
                       [&](book::Book& to, const AskedColony&, const std::vector<AskedColony>& yard) {
                           Status status = Status::Done;
                           answerAll(session, options, yard, [&](const AskedColony& colony, const BatchAnswer& answer) {
                               status = acceptAnswer(session, to, options, colony, answer);
                           });
                           return status;
                       });
}

} // namespace winterlarder::cli
