// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/followed.h"

#include "answer/follow_json.h"
#include "answer/followed_advice.h"
#include "answer/style_of_place.h"
#include "cli/follow_text.h"
#include "text/follow_words.h"
#include "text/words.h"

namespace winterlarder::cli {

using namespace winterlarder::answer;
using exchange::Json;

Outcome<Followed> followOne(const Session& session, const FollowReading& reading) {
    auto followed = followedColony(reading, session.reference, session.sampling, session.threads);
    if (!followed) return followed.problems();
    Followed result{std::move(followed).value(), std::nullopt};
    if (result.colony.question)
        result.following =
            tracking::follow(*result.colony.question, session.reference.constants, session.sampling, session.threads);
    return result;
}

Outcome<Followed> followOne(const Session& session, book::Book& from, const BookLearned* learned,
                            const book::Colony& colony, Date asOf) {
    const auto reading = readToFollow(from, colony.id, asOf, learned);
    if (!reading) return reading.problems();
    return followOne(session, *reading);
}

void AnswersOfDay::lead(Followed& followed, const FollowReading& reading) {
    if (!followed.following || followLeads(reading)) return;
    const auto* answer = answerOf(followed.colony.colony);
    if (!answer || !adviceLeads(reading, *followed.following, answer->advice)) return;
    followed.leading = *answer;
    askAboutFeeds(followed.leading->advice, reading, session_.reference);
    followed.following =
        asAdvised(*std::move(followed.following), reading, *followed.colony.question, followed.leading->advice);
}

// A neighbour's fault is told with its own winter.
const WeighedColony* AnswersOfDay::answerOf(const book::Colony& colony) {
    if (!answers_) {
        auto answers = answersOfDay(session_, from_, options_, asOf_, learned_);
        answers_.emplace(answers ? std::move(answers).value() : std::map<std::int64_t, BatchAnswer>{});
    }
    const auto found = answers_->find(colony.id.number);
    return found == answers_->end() || !found->second.member ? nullptr : &*found->second.member;
}

namespace {

Json followedInJson(const Session& session, const Followed& followed, Date asOf, bool daily) {
    const auto& colony = followed.colony;
    if (!followed.following) return notFollowedJson(colony, asOf, session.reference, session.style);
    auto answer = followJson(colony, *followed.following, asOf, daily, session.reference, session.style);
    if (!followed.leading) return answer.add("leads", "winter");
    const auto& [question, advice] = *followed.leading;
    return answer.replace("headline", text::headline(advice, styleFor(session.style, question)).toStdString())
        .add("leads", "answer");
}

QString followedInWords(const Session& session, const Followed& followed, Date asOf) {
    const auto& colony = followed.colony;
    if (!followed.following) return notFollowedText(colony, asOf, session);
    const auto style = styleFor(session.style, colony.autumn);
    const QString headline = followed.leading ? text::headline(followed.leading->advice, style)
                                              : text::followHeadline(*colony.question, *followed.following, style);
    return followText(colony, *followed.following, headline, asOf, session);
}

} // namespace

std::string spoken(const Session& session, const Followed& followed, Date asOf, bool daily) {
    if (session.json) return followedInJson(session, followed, asOf, daily).compact() + "\n";
    return followedInWords(session, followed, asOf).toStdString();
}

} // namespace winterlarder::cli
