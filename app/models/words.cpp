// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/words.h"

#include "answer/style_of_place.h"
#include "support/require.h"
#include "text/contexts.h"
#include "text/follow_words.h"
#include "text/style.h"
#include "text/words.h"
#include "work/interface_thread.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk::words {

namespace {

QString number(double value, int decimals) {
    return QLocale().toString(std::abs(value) < 0.5 * std::pow(10.0, -decimals) ? 0.0 : value, 'f', decimals);
}

// Without a lock: threads of work are given a copy of it.
text::WordStyle& chosenStyle() {
    require(onInterfaceThread(), "the style of the window's words was asked for on a thread of work");
    static text::WordStyle style{.unitsChosen = true, .locale = QLocale()};
    return style;
}

QString utf8(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

QString massIn(Mass mass, int decimals) { return number(valueIn(mass, shownMass()), decimals); }

QString roundBees(BeeCount bees) {
    return QLocale().toString(static_cast<qlonglong>(std::round(bees.count / 100) * 100));
}

QString feedInShort(Mass sugar, Mass fondant) {
    return sugar > Mass(0.05) ? say::WindowWords::tr("feed %1 sugar").arg(amount(sugar))
                              : say::WindowWords::tr("feed %1 fondant").arg(amount(fondant));
}

} // namespace

const text::WordStyle& style() {
    auto& style = chosenStyle();
    style.locale = QLocale();
    style.numbers.decimalPoint = QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.';
    return style;
}

void useUnits(UnitSystem system) { chosenStyle().numbers.system = system; }
void useWording(const text::Wording& wording) { chosenStyle().wording = wording; }
text::WordStyle styleOf(const advice::ColonyQuestion& question) {
    auto own = answer::styleFor(style(), question);
    own.poundsBeside = answer::wantsPoundsBeside(question); // beside the kilograms the window was told to show
    return own;
}
text::WordStyle styleOf(bool framed) {
    text::WordStyle own = style();
    own.wording.frames = own.wording.frames && framed;
    return own;
}
QString worded(const QString& sentence) { return text::worded(sentence, style()); }
QString worded(const QString& sentence, const AnsweredColony* colony) {
    return text::worded(sentence, colony ? styleOf(colony->question) : style());
}

MassUnit shownMass() { return massUnit(chosenStyle().numbers.system); }

MassUnit shownSmallMass() {
    return chosenStyle().numbers.system == UnitSystem::Metric ? MassUnit::Gram : MassUnit::Ounce;
}

TemperatureUnit shownTemperature() { return temperatureUnit(chosenStyle().numbers.system); }

LengthUnit shownLength() { return lengthUnit(chosenStyle().numbers.system); }

LengthUnit shownHeight() {
    return chosenStyle().numbers.system == UnitSystem::Metric ? LengthUnit::Metre : LengthUnit::Foot;
}

QString name(MassUnit unit) { return utf8(symbol(unit)); }

QString name(VolumeUnit unit) { return utf8(symbol(unit)); }

QString name(LengthUnit unit) { return utf8(symbol(unit)); }

QString name(TemperatureUnit unit) { return utf8(symbol(unit)); }

QString kilograms(Mass mass) { return text::mass(mass, style()); }

QString amount(Mass mass) { return text::amount(mass, style()); }

QString wholeKilograms(Mass mass) {
    return say::WindowWords::tr("%1 %2", "amount unit").arg(massIn(mass, 0), name(shownMass()));
}

QString spread(const Spread<Mass>& mass) { return text::amount(mass, style()); }

QString fineSpread(const Spread<Mass>& mass) {
    return say::WindowWords::tr("%1 (%2 to %3)")
        .arg(kilograms(mass.typical), massIn(mass.low, 1), massIn(mass.high, 1));
}

QString smallMass(Mass mass) {
    const auto unit = shownSmallMass();
    return utf8(format(mass, unit, style().numbers, unit == MassUnit::Gram ? 0 : 1));
}

QString temperature(Temperature reading, int decimals) { return utf8(format(reading, style().numbers, decimals)); }

QString temperatureShift(TemperatureDifference shift) { return text::kelvins(shift.value(), style()); }

QString length(Length length) { return text::length(length, style()); }

QString litres(Volume volume) { return utf8(format(volume, style().numbers, 1)); }

QString area(Area area) {
    return utf8(format(area, style().numbers, areaUnit(style().numbers.system) == AreaUnit::SquareInch ? 0 : 1));
}

QString height(double metres) { return text::height(metres, style()); }

QString distance(double kilometres) { return text::distance(kilometres, style()); }

QString percent(double share) { return say::WindowWords::tr("%1 %").arg(number(100 * share, 0)); }

QString ofHundred(const Share& share) {
    const double count = 100 * share.share;
    if (count > 0 && count < 0.5) return say::WindowWords::tr("fewer than 1");
    return number(count, 0);
}

QString bees(const Spread<BeeCount>& bees) {
    return say::WindowWords::tr("%1 (%2 to %3)")
        .arg(roundBees(bees.typical), roundBees(bees.low), roundBees(bees.high));
}

QDate toQDate(Date date) { return {date.year(), date.month(), date.day()}; }

Date fromQDate(QDate date) {
    const auto made = Date::of(date.year(), date.month(), date.day());
    require(made.has_value(), "{} is no day", date.toString(Qt::ISODate).toStdString());
    return *made;
}

QString date(Date date) { return QLocale().toString(toQDate(date), say::WindowWords::tr("d MMM")); }

QString dateWithWeekday(Date date) { return QLocale().toString(toQDate(date), say::WindowWords::tr("ddd d MMM")); }

QString dateWithYear(Date date) { return QLocale().toString(toQDate(date), say::WindowWords::tr("d MMM yyyy")); }

QString longDate(Date date) { return QLocale().toString(toQDate(date), say::WindowWords::tr("d MMMM yyyy")); }

QString verdictName(advice::Verdict verdict) { return text::verdict(verdict, text::Register::Brief); }

QString verdict(const advice::Advice& advice, const text::WordStyle& told) {
    if (advice.decidedBy == advice::DecidedBy::Disease) return say::WindowWords::tr("call the inspector");
    if (advice.decidedBy == advice::DecidedBy::Contradiction) return say::WindowWords::tr("weigh again");
    if (advice.verdict == advice::Verdict::Harvest && advice.harvest)
        return (advice.lookFirst ? say::WindowWords::tr("look again, then take %1") : say::WindowWords::tr("take %1"))
            .arg(amount(advice.harvest->upTo));
    if (advice.verdict == advice::Verdict::Leave && advice.plan && !advice.plan->given.empty())
        return text::worded(say::WindowWords::tr("give %{combs}"), told);
    if (advice.verdict == advice::Verdict::Leave && advice.plan && !advice.plan->received.empty())
        return text::worded(say::WindowWords::tr("hang in %{combs}"), told);
    if (advice.verdict != advice::Verdict::Unite && advice.feed)
        return feedInShort(advice.feed->syrup.sugar, advice.feed->fondant);
    return verdictName(advice.verdict);
}

QString followedInShort(const tracking::Following& following, SeasonDay today) {
    const auto& feed = following.feed;
    if (following.state == tracking::FollowState::OnCourse && following.fallsShort && !isFedToday(following, today))
        return say::WindowWords::tr("feed later");
    if (following.state != tracking::FollowState::OnCourse || !isFedToday(following, today))
        return text::followState(following.state);
    return feedInShort(feed->plan ? feed->plan->syrup.sugar : Mass(0), feed->fondant);
}

advice::Verdict likeness(const tracking::Following& following, SeasonDay today) {
    return following.state == tracking::FollowState::OnCourse && isFedToday(following, today)
               ? advice::Verdict::Feed
               : likeness(following.state);
}

advice::Verdict likeness(tracking::FollowState state) {
    using State = tracking::FollowState;
    switch (state) {
    case State::OnCourse:
    case State::MoreThanNeeded: return advice::Verdict::Leave;
    case State::FoodOutOfReach:
    case State::ActNow:
    case State::LessThanThought:
    case State::EatingFaster: return advice::Verdict::Feed;
    case State::Dead:
    case State::CannotSay:
    case State::Dwindling:
    case State::FeedNotRecorded: break;
    }
    return advice::Verdict::CannotSay;
}

QString iconName(advice::Verdict verdict) {
    switch (verdict) {
    case advice::Verdict::Harvest: return QStringLiteral("harvest");
    case advice::Verdict::Leave: return QStringLiteral("leave");
    case advice::Verdict::Feed: return QStringLiteral("feed");
    case advice::Verdict::Unite: return QStringLiteral("unite");
    case advice::Verdict::CannotSay: return QStringLiteral("cannot-say");
    }
    return QStringLiteral("cannot-say");
}

QString zone(Zone zone) {
    switch (zone) {
    case Zone::Capped: return say::WindowWords::tr("capped");
    case Zone::Open: return say::WindowWords::tr("open nectar");
    case Zone::Brood: return say::WindowWords::tr("brood");
    case Zone::BeeBread: return say::WindowWords::tr("bee bread");
    }
    return {};
}

QString due(const Due& due, Date today, const text::WordStyle& told) {
    const bool now = due.date && *due.date <= today;
    const QString day = due.date ? date(*due.date) : QString();
    if (!due.kind) return say::WindowWords::tr("nothing due");
    const bool late = due.date && *due.date < today; // of a plan; what is advised is never late
    switch (*due.kind) {
    case DueKind::Syrup:
        if (late) return say::WindowWords::tr("syrup was due %1").arg(day);
        return now ? say::WindowWords::tr("syrup today") : say::WindowWords::tr("next syrup %1").arg(day);
    case DueKind::Fondant:
        if (late) return say::WindowWords::tr("fondant was due %1").arg(day);
        return now ? say::WindowWords::tr("fondant today") : say::WindowWords::tr("fondant %1").arg(day);
    case DueKind::TakeHoney:
        return due.date ? say::WindowWords::tr("take honey by %1").arg(day) : say::WindowWords::tr("when you like");
    case DueKind::Unite:
        return due.date ? say::WindowWords::tr("unite by %1").arg(day) : say::WindowWords::tr("unite soon");
    case DueKind::CountMites:
        return now ? say::WindowWords::tr("count the mites today")
                   : say::WindowWords::tr("mites and a look %1").arg(day);
    case DueKind::CallInspector: return say::WindowWords::tr("call the bee inspector");
    case DueKind::WeighAgain:
        return due.date ? say::WindowWords::tr("weigh again %1").arg(day)
                        : say::WindowWords::tr("heft every two weeks");
    case DueKind::CountBees: return say::WindowWords::tr("count the bees");
    case DueKind::MoveCombs:
        return now ? text::worded(say::WindowWords::tr("%{combs} to it today"), told)
                   : text::worded(say::WindowWords::tr("%{combs} to it %1"), told).arg(day);
    case DueKind::HangInEggs: return text::worded(say::WindowWords::tr("a %{comb} with eggs to it today"), told);
    case DueKind::SeeQueenCells: return say::WindowWords::tr("queen cells? look %1").arg(day);
    case DueKind::RecordStores: return say::WindowWords::tr("look at the stores");
    case DueKind::Check: return now ? say::WindowWords::tr("check today") : say::WindowWords::tr("check %1").arg(day);
    }
    return {};
}

QString option(advice::OptionKind kind, const text::WordStyle& told) {
    return text::option(kind, told, text::Register::Brief);
}

QString optionWithAmount(const advice::Option& option, const text::WordStyle& told) {
    const QString amount = kilograms(option.amount);
    switch (option.kind) {
    case advice::OptionKind::Leave: return say::WindowWords::tr("leave as it is");
    case advice::OptionKind::TakeNow: return say::WindowWords::tr("take %1 now").arg(amount);
    case advice::OptionKind::TakeInSpring: return say::WindowWords::tr("take what is over in spring");
    case advice::OptionKind::Feed: return say::WindowWords::tr("feed up by %1 of stores").arg(amount);
    case advice::OptionKind::MoveCombs:
        return text::worded(say::WindowWords::tr("give it %{combs}, %1"), told).arg(amount);
    case advice::OptionKind::Unite: return say::WindowWords::tr("unite it with another colony");
    }
    return {};
}

QString seasonMark(SeasonMarkKind kind) {
    switch (kind) {
    case SeasonMarkKind::LastIncome: return say::WindowWords::tr("last nectar");
    case SeasonMarkKind::SyrupDeadline: return say::WindowWords::tr("last day for syrup");
    case SeasonMarkKind::BroodStop: return say::WindowWords::tr("laying stops");
    case SeasonMarkKind::BroodRestart: return say::WindowWords::tr("laying restarts");
    case SeasonMarkKind::Buildup: return say::WindowWords::tr("build-up");
    case SeasonMarkKind::Forage: return say::WindowWords::tr("spring forage");
    }
    return {};
}

QString evidence(const std::string& kind, const text::WordStyle& told) {
    return text::evidence(kind, told, text::Register::Brief);
}

QString visitKind(feeding::VisitKind kind) { return text::visit(kind, style(), text::Register::Whole); }

} // namespace winterlarder::desk::words
