// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/words.h"

#include "book/entries/words.h"
#include "text/choice_words.h"
#include "text/contexts.h"

#include <QStringList>
#include <array>
#include <utility>

namespace winterlarder::text {

namespace {

using Row = std::pair<const char*, const char*>;

template <std::size_t N> QString named(const std::array<Row, N>& rows, const std::string& key) {
    for (const auto& [id, text] : rows)
        if (key == id) return say::Words::tr(text);
    return QString::fromStdString(key);
}

constexpr std::array<Row, 8> seasonDates{
    {{"last_income", QT_TRANSLATE_NOOP("Words", "the last nectar coming in")},
     {"brood_stop", QT_TRANSLATE_NOOP("Words", "the end of laying")},
     {"brood_restart", QT_TRANSLATE_NOOP("Words", "the new start of laying")},
     {"buildup", QT_TRANSLATE_NOOP("Words", "the build-up")},
     {"forage", QT_TRANSLATE_NOOP("Words", "the start of spring forage")},
     {"feed_advised_by", QT_TRANSLATE_NOOP("Words", "feeding best finished by")},
     {"syrup_deadline", QT_TRANSLATE_NOOP("Words", "the last day for syrup")},
     {"syrup_refused", QT_TRANSLATE_NOOP("Words", "the day syrup is no longer taken")}}};

struct TwoRegisters {
    const char *id, *whole, *brief;
};
constexpr std::array<TwoRegisters, 6> evidences{{
    {"combs", QT_TRANSLATE_NOOP("Words", "the %{comb} record"), QT_TRANSLATE_NOOP("Words", "%{combs} looked at")},
    {"quick count", QT_TRANSLATE_NOOP("Words", "the count of full %{combs}"),
     QT_TRANSLATE_NOOP("Words", "%{combs} counted")},
    {"scale", QT_TRANSLATE_NOOP("Words", "the weight on the scale"), QT_TRANSLATE_NOOP("Words", "scale")},
    {"two-sided lift", QT_TRANSLATE_NOOP("Words", "the two sides lifted"),
     QT_TRANSLATE_NOOP("Words", "both sides lifted")},
    {"one-sided lift", QT_TRANSLATE_NOOP("Words", "one side lifted"), QT_TRANSLATE_NOOP("Words", "one side lifted")},
    {"heft", QT_TRANSLATE_NOOP("Words", "the heft"), QT_TRANSLATE_NOOP("Words", "hefted")},
}};

QString either(Register how, const QString& whole, const QString& brief) {
    return how == Register::Whole ? whole : brief;
}

} // namespace

QString verdict(advice::Verdict verdict, Register how) {
    switch (verdict) {
    case advice::Verdict::Harvest: return either(how, say::Words::tr("harvest"), say::Words::tr("take"));
    case advice::Verdict::Leave: return say::Words::tr("leave");
    case advice::Verdict::Feed: return say::Words::tr("feed");
    case advice::Verdict::Unite: return say::Words::tr("unite");
    case advice::Verdict::CannotSay: return say::Words::tr("cannot say");
    }
    return {};
}

QString option(advice::OptionKind kind, const WordStyle& style, Register how) {
    switch (kind) {
    case advice::OptionKind::Leave: return either(how, say::Words::tr("leave it as it is"), say::Words::tr("leave"));
    case advice::OptionKind::TakeNow: return say::Words::tr("take now");
    case advice::OptionKind::TakeInSpring: return say::Words::tr("take in spring");
    case advice::OptionKind::Feed: return say::Words::tr("feed");
    case advice::OptionKind::MoveCombs:
        return worded(either(how, say::Words::tr("give %{combs} of stores"), say::Words::tr("give %{combs}")), style);
    case advice::OptionKind::Unite:
        return either(how, say::Words::tr("unite it with another colony"), say::Words::tr("unite"));
    }
    return {};
}

QString option(const advice::Option& option, const advice::Advice& advice, const WordStyle& style) {
    if (option.kind != advice::OptionKind::Feed || !advice.feed) return text::option(option.kind, style);
    const auto& plan = *advice.feed;
    return plan.fondant > Mass(0) ? say::Words::tr("lay on %1 of fondant").arg(amount(plan.fondant, style))
                                  : say::Words::tr("feed %1 of sugar").arg(amount(plan.syrup.sugar, style));
}

QString look(advice::LookKind look, const WordStyle& style) {
    switch (look) {
    case advice::LookKind::Heft: return say::Words::tr("heft the hive");
    case advice::LookKind::Weigh:
        return say::Words::tr("weigh both sides of the closed hive, which takes two minutes and disturbs no bee");
    case advice::LookKind::LookThroughWindow: return say::Words::tr("look through the window or from above");
    case advice::LookKind::CountCombs:
        return worded(say::Words::tr("count the full %{combs} and the %{combs} the bees cover"), style);
    case advice::LookKind::CountSeams: return say::Words::tr("count the seams filled with bees, from above");
    case advice::LookKind::Open: return worded(say::Words::tr("open the hive and look at every %{comb}"), style);
    }
    return {};
}

QString visit(feeding::VisitKind kind, const WordStyle& style, Register how) {
    switch (kind) {
    case feeding::VisitKind::Syrup: return say::Words::tr("syrup");
    case feeding::VisitKind::Fondant: return say::Words::tr("fondant");
    case feeding::VisitKind::Check:
        return worded(either(how, say::Words::tr("check: %{combs} sealed? weigh, feeder off, mouse guard on"),
                             say::Words::tr("check")),
                      style);
    }
    return {};
}

QString winterClass(climate::WinterClass kind) {
    switch (kind) {
    case climate::WinterClass::Confined: return say::Words::tr("a confined winter");
    case climate::WinterClass::Flying: return say::Words::tr("a winter in which bees fly in most weeks");
    case climate::WinterClass::Dearth:
        return say::Words::tr("no winter, a dearth between the last nectar of autumn and the first of spring");
    case climate::WinterClass::NotDerivable: return say::Words::tr("no season can be derived; give the dates yourself");
    }
    return {};
}

QString seasonDate(const std::string& key) { return named(seasonDates, key); }
QString evidence(const std::string& kind, const WordStyle& style, Register how) {
    for (const auto& [id, whole, brief] : evidences)
        if (kind == id) return worded(say::Words::tr(how == Register::Whole ? whole : brief), style);
    return QString::fromStdString(kind);
}
QString flow(const std::string& word) {
    const auto strength = book::choiceOf<book::FlowStrength>(word);
    if (!strength) return QString::fromStdString(word);
    return strength == book::FlowStrength::None ? say::Words::tr("none") : choice(*strength);
}

QString origin(climate::DateOrigin origin) {
    switch (origin) {
    case climate::DateOrigin::Climate: return say::Words::tr("climate");
    case climate::DateOrigin::ClimateMoved: return say::Words::tr("climate, moved");
    case climate::DateOrigin::Case: return say::Words::tr("case");
    }
    return {};
}

// The town stands after the country and sometimes a state: "us-co-denver".
QString town(const std::string& stationId) {
    QStringList parts = QString::fromStdString(stationId).split(QLatin1Char('-'));
    constexpr int stateLetters = 2;
    if (parts.size() > 1) parts.removeFirst();
    if (parts.size() > 1 && parts.front().size() == stateLetters) parts.removeFirst();
    for (QString& part : parts)
        if (!part.isEmpty()) part.front() = part.front().toUpper();
    return parts.join(QLatin1Char(' '));
}

} // namespace winterlarder::text
