// SPDX-License-Identifier: GPL-3.0-or-later
// A winter out of the book: followed, its outcome, what was learned, and what is due as a calendar.
#include "answer/due_looks.h"
#include "answer/follow_json.h"
#include "answer/learned_book.h"
#include "cli/asked_colonies.h"
#include "cli/book_commands.h"
#include "cli/choice_option.h"
#include "cli/followed.h"
#include "cli/open_book.h"
#include "cli/table.h"

#include "book/case_of.h"
#include "exchange/calendar_file.h"
#include "support/caught.h"
#include "text/contexts.h"
#include "text/foreign_text.h"
#include "text/learned_words.h"
#include "text/task_words.h"
#include "text/words.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <map>
#include <ostream>

namespace winterlarder::cli {

using namespace winterlarder::answer;
using exchange::Json;

namespace {

struct Asked {
    book::Book book;
    Date asOf;
    std::vector<book::Colony> colonies;
    std::optional<BookLearned> learned;
    std::vector<PastColonyWinter> past;
    Problems pastProblems;              //!< of past winters that could not be computed
    std::vector<std::string> pastNotes; //!< of those nothing was learned from
    Status status = Status::Done;

    const BookLearned* taught() const { return learned ? &*learned : nullptr; }
};

Outcome<Asked> asked(Session& session, const BookFile& file, const std::optional<std::string>& asOfText,
                     const std::optional<std::string>& colony, bool learn) {
    const auto asOf = dayOrToday(session, "--as-of", asOfText);
    if (!asOf) return asOf.problems();
    auto opened = openBook(session, file, For::Reading);
    if (!opened) return opened.problems();
    Asked result{.book = std::move(opened).value(), .asOf = *asOf};
    auto colonies = coloniesAsked(result.book, colony, *asOf);
    if (!colonies) return colonies.problems();
    result.colonies = std::move(colonies).value();
    if (!learn) return result;
    auto learned = learnOf(result.book, *asOf, session.sampling, session.threads);
    if (!learned) return learned.problems();
    result.past = std::move(learned->winters);
    result.learned = std::move(learned->learned);
    for (const auto& winter : learned->fitNone)
        result.pastNotes.push_back(text::learnedNothingFrom(winter.colony, winter.autumn).toStdString());
    result.pastProblems = std::move(learned->problems);
    if (!result.pastProblems.empty()) result.status = session.fail(result.pastProblems);
    return result;
}

std::string spokenFaults(const Session& session, const book::Colony& colony, const Problems& problems) {
    if (session.json)
        return Json::object().add("colony", colony.name).add("faults", problemsJson(problems)).compact() + "\n";
    return fmt::format("{}: not followed\n", colony.name);
}

//! How the winters of the colonies asked about go; of those it is too early for what the answer of the day says.
class BookWinters {
public:
    BookWinters(Session& session, Asked& from, const BookFollow& options)
        : session_(session), from_(from), options_(options),
          answers_(session, from.book, options, from.asOf, from.taught()) {}

    Status say() {
        Status status = from_.status;
        bool first = true;
        for (const auto& colony : from_.colonies) {
            const std::string place = fmt::format("{}: {}", options_.file, colony.name);
            const auto said = caught({place, 0, 0}, "its winter", [&]() -> Outcome<std::string> {
                auto winter = winterOf(colony);
                return winter ? winter : placedAt(winter.problems(), place);
            });
            if (!said) status = worse(status, session_.fail(said.problems()));
            if (!session_.json && !first) session_.out << '\n';
            session_.out << (said ? *said : spokenFaults(session_, colony, said.problems()));
            first = false;
        }
        return status;
    }

private:
    Outcome<std::string> winterOf(const book::Colony& colony) {
        const auto reading = readToFollow(from_.book, colony.id, from_.asOf, from_.taught());
        if (!reading) return reading.problems();
        auto followed = followOne(session_, *reading);
        if (!followed) return followed.problems();
        answers_.lead(*followed, *reading);
        return spoken(session_, *followed, from_.asOf, options_.daily);
    }

    Session& session_;
    Asked& from_;
    const BookFollow& options_;
    AnswersOfDay answers_;
};

} // namespace

Status followBook(Session& session, const BookFollow& options) {
    auto from = asked(session, options, options.asOf, options.colony, !options.withoutLearning);
    if (!from) return session.fail(from.problems());
    if (from->colonies.empty())
        session.tell(fmt::format("{}: no colony is living on {}", options.file, from->asOf.iso()));
    return BookWinters(session, *from, options).say();
}

Status addOutcome(Session& session, const NewOutcome& options) {
    if (options.alive == options.dead)
        return session.fail({argumentProblem("how the winter ended was not said", "--alive or --dead")});
    const auto date = dayOf("--date", options.date);
    if (!date) return session.fail(date.problems());
    Problems problems;
    const auto brood = choiceOption<book::BroodPattern>("--brood-pattern", options.broodPattern, problems);
    if (!problems.empty()) return session.fail(problems);
    auto opened = openBook(session, options, For::Writing);
    if (!opened) return session.fail(opened.problems());
    const auto colony = colonyOf(*opened, options.colony);
    if (!colony) return session.fail(colony.problems());
    book::WinterOutcome outcome{.colony = colony->id,
                                .date = *date,
                                .alive = options.alive,
                                .coveredCombs = options.coveredCombs,
                                .note = options.note};
    if (options.stores) outcome.storesLeft = kilograms(*options.stores);
    outcome.foodLeft = options.foodLeft;
    outcome.headsInCells = options.headsInCells;
    outcome.mitesOnFloor = options.mitesOnFloor;
    outcome.broodPattern = brood;
    outcome.queen = options.queen;
    outcome.sure = options.sure;
    return judgeAndAdd(session, *opened, options, std::move(outcome));
}

namespace {

Json pairJson(const learning::LastingPair& pair) {
    return Json::object().add("use", multiplierJson(pair.use)).add("death", multiplierJson(pair.death));
}

Json scoreJson(const ScoredWinter& scored) {
    const auto& s = scored.score;
    return Json::object()
        .add("colony", scored.winter->name)
        .add("winter", scored.winter->autumn)
        .add("date", scored.winter->winter.question.year.date(s.day).iso())
        .add("observed_kg", s.observed)
        .add("forecast_kg", Json::object().add("low", s.low).add("typical", s.typical).add("high", s.high))
        .add("inside", s.inside())
        .add("score_kg", s.score)
        .add("handbook_score_kg", s.handbookScore)
        .add("handbook", Json::object()
                             .add("region", scored.winter->handbook.region)
                             .add("to_have_kg", scored.winter->handbook.toHave.value())
                             .add("use_kg", scored.winter->handbook.use.value())
                             .add("source", scored.winter->handbook.source));
}

Json learnedJson(Asked& from, const std::vector<ScoredWinter>& scored, const learning::ScoreSummary& summary) {
    Json colonies = Json::list(), yards = Json::list(), scores = Json::list();
    for (const auto& colony : from.colonies)
        if (const auto own = from.learned->bees.colonies.find(static_cast<std::uint64_t>(colony.id.number));
            own != from.learned->bees.colonies.end())
            colonies.push(pairJson(own->second).add("colony", colony.name));
    for (const auto& [yard, shift] : from.learned->forage) {
        const auto found = from.book.find(book::YardId{yard});
        const std::string name = found && *found ? (*found)->name : std::string();
        yards.push(Json::object()
                       .add("yard", name)
                       .add("forage_shift_days", shift.meanDays)
                       .add("sd_days", shift.sdDays)
                       .add("years", shift.years));
    }
    for (const auto& each : scored) scores.push(scoreJson(each));
    Json notes = Json::list();
    for (const auto& note : from.pastNotes) notes.push(note);
    return Json::object()
        .add("winters", from.learned->bees.winters)
        .add("keeper", from.learned->bees.winters > 0 ? pairJson(from.learned->bees.keeper) : Json())
        .add("colonies", std::move(colonies))
        .add("yards", std::move(yards))
        .add("forecasts", Json::object()
                              .add("count", summary.forecasts)
                              .add("inside", summary.inside)
                              .add("score_kg", summary.score)
                              .add("handbook_score_kg", summary.handbookScore))
        .add("scores", std::move(scores))
        .add("not_learned_from", std::move(notes))
        .add("faults", problemsJson(from.pastProblems));
}

QString learnedText(const Asked& from, const learning::ScoreSummary& summary, const Session& session) {
    const auto& style = session.style;
    if (from.learned->bees.winters == 0) return text::nothingLearned() + QLatin1Char('\n');
    QString text = session.strong(text::learnedHeading(from.learned->bees.winters)) + QLatin1Char('\n');
    for (const QString& line : text::learnedLines(from.learned->bees.keeper, style))
        text += QStringLiteral("  ") + line + QLatin1Char('\n');
    TextTable table({say::CommandLine::tr("Colony"), say::CommandLine::tr(">Use"), say::CommandLine::tr(">Deaths")});
    for (const auto& colony : from.colonies)
        if (const auto own = from.learned->bees.colonies.find(static_cast<std::uint64_t>(colony.id.number));
            own != from.learned->bees.colonies.end())
            table.add({text::shown(colony.name), text::number(own->second.use.median(), 2, style),
                       text::number(own->second.death.median(), 2, style)});
    if (!from.learned->bees.colonies.empty()) text += wrapped(text::learnedOfColonies(), {});
    text += table.text();
    if (summary.forecasts == 0) return text;
    return text + wrapped(text::scoreSentence(summary, style), {});
}

} // namespace

Status learnedBook(Session& session, const BookAnswers& options) {
    auto from = asked(session, options, options.asOf, options.colony, true);
    if (!from) return session.fail(from.problems());
    const auto scoring = scoredFrom(from->past, session.reference, session.sampling, session.threads);
    if (!scoring.problems.empty())
        from->status = worse(from->status, session.fail(placedAt(scoring.problems, options.file)));
    from->pastProblems.insert(from->pastProblems.end(), scoring.problems.begin(), scoring.problems.end());
    for (const auto& note : from->pastNotes) session.tell(fmt::format("{}: {}", options.file, note));
    const auto& scored = scoring.winters;
    std::vector<learning::ForecastScore> scores;
    for (const auto& each : scored) scores.push_back(each.score);
    const auto summary = learning::summarise(scores);
    if (session.json) session.print(learnedJson(*from, scored, summary));
    else session.print(learnedText(*from, summary, session));
    return from->status;
}

namespace {

//! What the answers ask to be done, by the colonies' numbers.
Outcome<std::map<std::int64_t, AdvisedDue>> advisedIn(Session& session, Asked& from, const BookAnswers& options,
                                                      Problems& problems) {
    const auto answers = answersOfDay(session, from.book, options, from.asOf, from.taught());
    if (!answers) return answers.problems();
    std::map<std::int64_t, AdvisedDue> advised;
    for (const auto& [colony, answer] : *answers) {
        problems.insert(problems.end(), answer.problems.begin(), answer.problems.end());
        if (answer.member)
            advised.emplace(colony, advisedDue(answer.member->question, answer.member->advice, session.style));
    }
    return advised;
}

std::vector<ReadDue> readAll(Asked& from, const std::map<std::int64_t, AdvisedDue>& advised, Problems& problems) {
    std::vector<ReadDue> colonies;
    for (const auto& colony : from.colonies) {
        auto reading = readDue(from.book, colony.id, colony.name, from.asOf, from.taught());
        if (!reading) {
            problems.insert(problems.end(), reading.problems().begin(), reading.problems().end());
            continue;
        }
        const auto found = advised.find(colony.id.number);
        colonies.push_back(
            {std::move(reading).value(), found == advised.end() ? std::nullopt : std::optional(found->second)});
    }
    return colonies;
}

} // namespace

Status bookCalendar(Session& session, const BookAnswers& options) {
    auto from = asked(session, options, options.asOf, options.colony, !options.withoutLearning);
    if (!from) return session.fail(from.problems());
    const auto info = from->book.info();
    if (!info) return session.fail(info.problems());
    Problems problems;
    const auto advised = advisedIn(session, *from, options, problems);
    if (!advised) return session.fail(advised.problems());
    const auto colonies = readAll(*from, *advised, problems);
    const auto looks =
        dueLooks(calendarMark(*info), colonies, session.reference, session.sampling, session.threads, session.style);
    problems.insert(problems.end(), looks.problems.begin(), looks.problems.end());
    for (auto& problem : problems)
        if (problem.place.file.rfind(options.file, 0) != 0)
            problem.place.file = fmt::format("{}: {}", options.file, problem.place.file);
    for (const auto& note : looks.notes) session.tell(fmt::format("{}: {}", options.file, note));
    session.out << exchange::calendarFile(text::calendarName(), looks.due, session.moment.now);
    return problems.empty() ? from->status : worse(from->status, session.fail(problems));
}

} // namespace winterlarder::cli
