// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/words.h"

#include "text/contexts.h"

#include <algorithm>

namespace winterlarder::text {

namespace {

using advice::DecidedBy;

QString whatHangs(std::optional<advice::LookAbout> about) {
    if (about == advice::LookAbout::Bees) return say::Words::tr("how many bees there are");
    return say::Words::tr("what stores there are");
}

bool otherThingsFirst(const advice::Advice& advice) {
    return advice.decidedBy == DecidedBy::Disease || advice.decidedBy == DecidedBy::NoQueen ||
           advice.decidedBy == DecidedBy::Weak;
}

// Before anything is done, or beside what need not wait: %1 what it hangs on, %2 the look.
QString theLook(const advice::Advice& advice) {
    if (advice.lookFirst) return say::Words::tr("What may be taken hangs on %1: %2.");
    if (advice.decidedBy == DecidedBy::CannotSay || advice.decidedBy == DecidedBy::Contradiction ||
        advice::setsAside(advice))
        return say::Words::tr("Look again first, for the answer hangs on %1: %2.");
    const bool feeds = advice.verdict == advice::Verdict::Feed && advice.feed;
    if (!feeds && advice.phase == advice::Phase::Summer)
        return say::Words::tr("It can wait, but what will be wanted for winter hangs on %1: %2.");
    if (!feeds)
        return say::Words::tr("Worth a better look, for whether anything is missing or to spare hangs on %1: %2.");
    const auto visits = std::count_if(advice.feed->visits.begin(), advice.feed->visits.end(),
                                      [](const auto& visit) { return visit.kind != feeding::VisitKind::Check; });
    return visits > 1
               ? say::Words::tr(
                     "The first visit need not wait. Look again before the second, for the amount hangs on %1: %2.")
               : say::Words::tr("This feed need not wait. What more is wanted hangs on %1: %2.");
}

// Where another look is due already, it is one before that day which would change nothing.
QString noLookNow(const advice::Advice& advice, const WordStyle& style) {
    if (advice.nextLook && advice.nextLook->date > advice.asOf)
        return say::Words::tr("A better look before %1 would not change what is to be done now.", "a day")
            .arg(date(advice.nextLook->date, style));
    return say::Words::tr("Another look would not change what is to be done: the bees need not be disturbed for it.");
}

} // namespace

QString lookSentence(const advice::Advice& advice, const WordStyle& style, NumberForm form) {
    const auto& another = advice.anotherLook;
    if (otherThingsFirst(advice)) return say::Words::tr("A better look at the stores would change nothing now.");
    if (!another.worthIt || !another.which) return noLookNow(advice, style);
    const QString look = theLook(advice).arg(whatHangs(another.about), text::look(*another.which, style));
    if (another.narrowsToKg <= 0 || another.narrowsFromKg <= another.narrowsToKg)
        return look; // how much better is not known
    return say::Words::tr("%1 What is known to within %2 now would be known to within %3.",
                          "the sentence before, now, then")
        .arg(look, form(AskedNumber::KnownNow, amount(kilograms(another.narrowsFromKg), style)),
             form(AskedNumber::KnownThen, amount(kilograms(another.narrowsToKg), style)));
}

} // namespace winterlarder::text
