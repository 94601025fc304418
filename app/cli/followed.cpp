// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/followed.h"

#include "answer/follow_json.h"
#include "cli/follow_text.h"

namespace winterlarder::cli {

using namespace winterlarder::answer;

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

std::string spoken(const Session& session, const Followed& followed, Date asOf, bool daily) {
    if (session.json)
        return (followed.following
                    ? followJson(followed.colony, *followed.following, asOf, daily, session.reference, session.style)
                    : notFollowedJson(followed.colony, asOf, session.reference, session.style))
                   .compact() +
               "\n";
    return (followed.following ? followText(followed.colony, *followed.following, asOf, session)
                               : notFollowedText(followed.colony, asOf, session))
        .toStdString();
}

} // namespace winterlarder::cli
