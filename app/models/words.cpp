// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/words.h"

#include "support/require.h"
#include "text/style.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk::words {

namespace {

QString tr(const char* text, const char* meaning = nullptr) {
    return QCoreApplication::translate("words", text, meaning);
}

QString number(double value, int decimals) {
    return QLocale().toString(std::abs(value) < 0.5 * std::pow(10.0, -decimals) ? 0.0 : value, 'f', decimals);
}

text::WordStyle& chosenStyle() {
    static text::WordStyle style{{'.', UnitSystem::Metric}, QLocale()};
    return style;
}

QString of(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString massIn(Mass mass, int decimals) {
    return number(valueIn(mass, shownMass()), decimals);
}

QString roundBees(BeeCount bees) {
    return QLocale().toString(static_cast<qlonglong>(std::round(bees.count / 100) * 100));
}

} // namespace

const text::WordStyle& style() {
    auto& style = chosenStyle();
    style.locale = QLocale();
    style.numbers.decimalPoint = QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.';
    return style;
}

void useUnits(UnitSystem system) {
    chosenStyle().numbers.system = system;
}

MassUnit shownMass() {
    return massUnit(chosenStyle().numbers.system);
}

MassUnit shownSmallMass() {
    return chosenStyle().numbers.system == UnitSystem::Metric ? MassUnit::Gram : MassUnit::Ounce;
}

TemperatureUnit shownTemperature() {
    return temperatureUnit(chosenStyle().numbers.system);
}

LengthUnit shownLength() {
    return lengthUnit(chosenStyle().numbers.system);
}

QString name(MassUnit unit) {
    return of(symbol(unit));
}

QString name(TemperatureUnit unit) {
    return of(symbol(unit));
}

QString kilograms(Mass mass) {
    return text::mass(mass, style());
}

QString wholeKilograms(Mass mass) {
    return tr("%1 %2", "amount unit").arg(massIn(mass, 0), name(shownMass()));
}

QString spread(const Spread<Mass>& mass) {
    return tr("%1 (%2 to %3)").arg(wholeKilograms(mass.typical), massIn(mass.low, 0), massIn(mass.high, 0));
}

QString fineSpread(const Spread<Mass>& mass) {
    return tr("%1 (%2 to %3)").arg(kilograms(mass.typical), massIn(mass.low, 1), massIn(mass.high, 1));
}

QString smallMass(Mass mass) {
    const auto unit = shownSmallMass();
    return of(format(mass, unit, style().numbers, unit == MassUnit::Gram ? 0 : 1));
}

QString temperature(Temperature reading, int decimals) {
    return of(format(reading, style().numbers, decimals));
}

QString temperatureShift(TemperatureDifference shift) {
    return text::kelvins(shift.value(), style());
}

QString length(Length length) {
    return of(format(length, style().numbers, shownLength() == LengthUnit::Inch ? 2 : 0));
}

QString litres(Volume volume) {
    return text::volume(volume, style());
}

QString percent(double share) {
    return tr("%1 %").arg(number(100 * share, 0));
}

QString ofHundred(const Share& share) {
    const double count = 100 * share.share;
    if (count > 0 && count < 0.5) return tr("fewer than 1");
    return number(count, 0);
}

QString bees(const Spread<BeeCount>& bees) {
    return tr("%1 (%2 to %3)").arg(roundBees(bees.typical), roundBees(bees.low), roundBees(bees.high));
}

QDate toQDate(Date date) {
    return {date.year(), date.month(), date.day()};
}

Date fromQDate(QDate date) {
    const auto made = Date::of(date.year(), date.month(), date.day());
    require(made.has_value(), "{} is no day", date.toString(Qt::ISODate).toStdString());
    return *made;
}

QString date(Date date) {
    return QLocale().toString(toQDate(date), tr("d MMM"));
}

QString dateWithWeekday(Date date) {
    return QLocale().toString(toQDate(date), tr("ddd d MMM"));
}

QString longDate(Date date) {
    return QLocale().toString(toQDate(date), tr("d MMMM yyyy"));
}

QString verdictName(advice::Verdict verdict) {
    switch (verdict) {
    case advice::Verdict::Harvest: return tr("take");
    case advice::Verdict::Leave: return tr("leave");
    case advice::Verdict::Feed: return tr("feed");
    case advice::Verdict::Unite: return tr("unite");
    case advice::Verdict::CannotSay: return tr("cannot say");
    }
    return {};
}

QString verdict(const advice::Advice& advice) {
    if (advice.verdict == advice::Verdict::Harvest && advice.harvest)
        return tr("take %1").arg(kilograms(advice.harvest->upTo));
    if (advice.verdict == advice::Verdict::Feed && advice.feed) {
        if (advice.feed->syrup.sugar > Mass(0.05)) return tr("feed %1 sugar").arg(kilograms(advice.feed->syrup.sugar));
        return tr("feed %1 fondant").arg(kilograms(advice.feed->fondant));
    }
    return verdictName(advice.verdict);
}

advice::Verdict likeness(tracking::FollowState state) {
    using State = tracking::FollowState;
    if (state == State::OnCourse || state == State::EatingSlower) return advice::Verdict::Leave;
    return state == State::ActNow || state == State::EatingFaster ? advice::Verdict::Feed : advice::Verdict::CannotSay;
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
    case Zone::Capped: return tr("capped");
    case Zone::Open: return tr("open nectar");
    case Zone::Brood: return tr("brood");
    case Zone::BeeBread: return tr("bee bread");
    }
    return {};
}

QString due(const Due& due, Date today) {
    const bool now = due.date && *due.date <= today;
    const QString day = due.date ? date(*due.date) : QString();
    if (!due.kind) return tr("nothing due");
    switch (*due.kind) {
    case DueKind::Syrup: return now ? tr("first syrup today") : tr("next syrup %1").arg(day);
    case DueKind::Fondant: return now ? tr("fondant today") : tr("fondant %1").arg(day);
    case DueKind::TakeHoney: return due.date ? tr("by %1").arg(day) : tr("when you like");
    case DueKind::Unite: return due.date ? tr("before %1").arg(day) : tr("soon");
    case DueKind::Weigh: return due.date ? tr("weigh again %1").arg(day) : tr("heft every two weeks");
    case DueKind::CountBees: return tr("count the bees");
    case DueKind::RecordStores: return tr("look at the stores");
    case DueKind::Check: return now ? tr("check today") : tr("check %1").arg(day);
    }
    return {};
}

QString option(advice::OptionKind kind) {
    switch (kind) {
    case advice::OptionKind::Leave: return tr("leave");
    case advice::OptionKind::TakeNow: return tr("take now");
    case advice::OptionKind::TakeInSpring: return tr("take in spring");
    case advice::OptionKind::Feed: return tr("feed");
    case advice::OptionKind::MoveCombs: return tr("give combs");
    }
    return {};
}

QString optionWithAmount(const advice::Option& option) {
    const QString amount = kilograms(option.amount);
    switch (option.kind) {
    case advice::OptionKind::Leave: return tr("leave as it is");
    case advice::OptionKind::TakeNow: return tr("take %1 now").arg(amount);
    case advice::OptionKind::TakeInSpring: return tr("take what is over in spring");
    case advice::OptionKind::Feed: return tr("feed up by %1").arg(amount);
    case advice::OptionKind::MoveCombs: return tr("give it combs, %1").arg(amount);
    }
    return {};
}

QString seasonMark(SeasonMarkKind kind) {
    switch (kind) {
    case SeasonMarkKind::LastIncome: return tr("last income");
    case SeasonMarkKind::SyrupDeadline: return tr("last day for syrup");
    case SeasonMarkKind::BroodStop: return tr("laying stops");
    case SeasonMarkKind::BroodRestart: return tr("laying restarts");
    case SeasonMarkKind::Buildup: return tr("build-up");
    case SeasonMarkKind::Forage: return tr("first forage");
    }
    return {};
}

QString evidence(const std::string& kind) {
    if (kind == "combs") return tr("combs looked at");
    if (kind == "quick count") return tr("combs counted");
    if (kind == "scale") return tr("scale");
    if (kind == "two-sided lift") return tr("both sides lifted");
    if (kind == "one-sided lift") return tr("one side lifted");
    if (kind == "heft") return tr("hefted");
    return QString::fromStdString(kind);
}

QString visitKind(feeding::VisitKind kind) {
    switch (kind) {
    case feeding::VisitKind::Syrup: return tr("syrup");
    case feeding::VisitKind::Fondant: return tr("fondant");
    case feeding::VisitKind::Check: return tr("check: combs sealed? weigh, feeder off, mouse guard on");
    }
    return {};
}

QString look(advice::Look look) {
    switch (look) {
    case advice::Look::Heft: return tr("Heft it");
    case advice::Look::Weigh: return tr("Weigh it");
    case advice::Look::LookThroughWindow: return tr("Look through the window");
    case advice::Look::CountCombs: return tr("Count the combs of bees and stores");
    case advice::Look::Open: return tr("Open it and look comb by comb");
    }
    return {};
}

} // namespace winterlarder::desk::words
