// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/sheet_words.h"

#include "models/words.h"
#include "text/contexts.h"
#include "text/foreign_text.h"

#include <QLocale>

#include <cmath>
#include <map>

namespace winterlarder::desk::print {

namespace {

using Words = std::map<std::string, const char*>;

QString found(const Words& words, const std::string& id, const text::WordStyle& style) {
    const auto at = words.find(id);
    return at == words.end() ? QString::fromStdString(id) : text::worded(say::Sheet::tr(at->second), style);
}

QString roughDate(const report::RoughDate& date) {
    if (date.sdDays < 0.5) return words::date(date.date);
    return say::Sheet::tr("%1 \u00b1 %2 days")
        .arg(words::date(date.date))
        .arg(static_cast<int>(std::lround(date.sdDays)));
}

QString money(const report::Money& money) {
    return QStringLiteral("%1\u00a0%2")
        .arg(QLocale().toString(money.amount, 'f', 2), QString::fromStdString(money.currency));
}

} // namespace

QString headingOf(const std::string& section, const text::WordStyle& style) {
    static const Words words{
        {"answer", QT_TRANSLATE_NOOP("Sheet", "The answer")},
        {"picture", QT_TRANSLATE_NOOP("Sheet", "The winter")},
        {"options", QT_TRANSLATE_NOOP("Sheet", "What can be done, on the same winters")},
        {"evidence", QT_TRANSLATE_NOOP("Sheet", "What the stores rest on")},
        {"take", QT_TRANSLATE_NOOP("Sheet", "%{Combs} that may come off")},
        {"feeding", QT_TRANSLATE_NOOP("Sheet", "Feeding")},
        {"season", QT_TRANSLATE_NOOP("Sheet", "The season here")},
        {"reasons", QT_TRANSLATE_NOOP("Sheet", "Why")},
        {"cautions", QT_TRANSLATE_NOOP("Sheet", "Cautions")},
        {"to-buy", QT_TRANSLATE_NOOP("Sheet", "To buy and to bring")},
        {"visits", QT_TRANSLATE_NOOP("Sheet", "Everything to do, by day")},
        {"colonies", QT_TRANSLATE_NOOP("Sheet", "The colonies")},
        {"gifts", QT_TRANSLATE_NOOP("Sheet", "%{Combs} to give to a neighbour")},
        {"to-mix", QT_TRANSLATE_NOOP("Sheet", "To mix")},
        {"sources", QT_TRANSLATE_NOOP("Sheet", "Sources")},
    };
    return found(words, section, style);
}

QString nameOf(const std::string& fact, const text::WordStyle& style) {
    static const Words words{
        {"verdict", QT_TRANSLATE_NOOP("Sheet", "verdict")},
        {"take", QT_TRANSLATE_NOOP("Sheet", "honey that may come off")},
        {"feed-sugar", QT_TRANSLATE_NOOP("Sheet", "sugar to feed")},
        {"feed-fondant", QT_TRANSLATE_NOOP("Sheet", "fondant to feed")},
        {"stores", QT_TRANSLATE_NOOP("Sheet", "in the hive")},
        {"needed", QT_TRANSLATE_NOOP("Sheet", "needed")},
        {"reserve", QT_TRANSLATE_NOOP("Sheet", "reserve")},
        {"bees", QT_TRANSLATE_NOOP("Sheet", "bees")},
        {"first-forage", QT_TRANSLATE_NOOP("Sheet", "spring forage starts")},
        {"touches-reserve", QT_TRANSLATE_NOOP("Sheet", "below the reserve in")},
        {"runs-out", QT_TRANSLATE_NOOP("Sheet", "runs out in")},
        {"next", QT_TRANSLATE_NOOP("Sheet", "next visit")},
        {"combs-hold", QT_TRANSLATE_NOOP("Sheet", "together they hold")},
        {"ratio", QT_TRANSLATE_NOOP("Sheet", "sugar to water by weight")},
        {"sugar", QT_TRANSLATE_NOOP("Sheet", "sugar")},
        {"water", QT_TRANSLATE_NOOP("Sheet", "water")},
        {"syrup", QT_TRANSLATE_NOOP("Sheet", "syrup")},
        {"fondant", QT_TRANSLATE_NOOP("Sheet", "fondant")},
        {"last-day", QT_TRANSLATE_NOOP("Sheet", "last day for syrup")},
        {"last-income", QT_TRANSLATE_NOOP("Sheet", "last nectar coming in")},
        {"feed-advised-by", QT_TRANSLATE_NOOP("Sheet", "feeding done by")},
        {"syrup-deadline", QT_TRANSLATE_NOOP("Sheet", "last day for syrup")},
        {"brood-stop", QT_TRANSLATE_NOOP("Sheet", "laying stops")},
        {"brood-restart", QT_TRANSLATE_NOOP("Sheet", "laying restarts")},
        {"buildup", QT_TRANSLATE_NOOP("Sheet", "build-up")},
        {"forage", QT_TRANSLATE_NOOP("Sheet", "spring forage starts")},
        {"bags", QT_TRANSLATE_NOOP("Sheet", "bags of sugar")},
        {"cost", QT_TRANSLATE_NOOP("Sheet", "sugar costs about")},
        {"honey-to-take", QT_TRANSLATE_NOOP("Sheet", "honey that may come off")},
        {"last-syrup-day", QT_TRANSLATE_NOOP("Sheet", "last day for syrup, of the earliest colony")},
        {"option", QT_TRANSLATE_NOOP("Sheet", "what is done")},
        {"amount", QT_TRANSLATE_NOOP("Sheet", "how much")},
        {"stores-changed", QT_TRANSLATE_NOOP("Sheet", "stores taken or added")},
        {"at-first-forage", QT_TRANSLATE_NOOP("Sheet", "left when spring forage starts")},
        {"evidence", QT_TRANSLATE_NOOP("Sheet", "by")},
        {"day", QT_TRANSLATE_NOOP("Sheet", "day")},
        {"says", QT_TRANSLATE_NOOP("Sheet", "says")},
        {"box", QT_TRANSLATE_NOOP("Sheet", "box")},
        {"comb", QT_TRANSLATE_NOOP("Sheet", "%{comb}")},
        {"what", QT_TRANSLATE_NOOP("Sheet", "what")},
        {"done", QT_TRANSLATE_NOOP("Sheet", "done")},
        {"colony", QT_TRANSLATE_NOOP("Sheet", "colony")},
        {"from", QT_TRANSLATE_NOOP("Sheet", "from")},
        {"to", QT_TRANSLATE_NOOP("Sheet", "to")},
        {"combs", QT_TRANSLATE_NOOP("Sheet", "%{combs}")},
        {"honey", QT_TRANSLATE_NOOP("Sheet", "honey")},
    };
    return found(words, fact, style);
}

QString wordOf(const std::string& id, const text::WordStyle& style) {
    static const Words words{
        {"harvest", QT_TRANSLATE_NOOP("Sheet", "take honey")},
        {"leave", QT_TRANSLATE_NOOP("Sheet", "leave as it is")},
        {"feed", QT_TRANSLATE_NOOP("Sheet", "feed")},
        {"unite", QT_TRANSLATE_NOOP("Sheet", "unite")},
        {"cannot-say", QT_TRANSLATE_NOOP("Sheet", "cannot be said")},
        {"on-course", QT_TRANSLATE_NOOP("Sheet", "on course")},
        {"eating-faster", QT_TRANSLATE_NOOP("Sheet", "eating faster than planned")},
        {"food-out-of-reach", QT_TRANSLATE_NOOP("Sheet", "food out of reach: feed today")},
        {"dwindling", QT_TRANSLATE_NOOP("Sheet", "dwindling")},
        {"less-than-thought", QT_TRANSLATE_NOOP("Sheet", "less than thought")},
        {"feed-not-recorded", QT_TRANSLATE_NOOP("Sheet", "was the feed given?")},
        {"more-than-needed", QT_TRANSLATE_NOOP("Sheet", "more than needed")},
        {"act-now", QT_TRANSLATE_NOOP("Sheet", "feed now")},
        {"dead", QT_TRANSLATE_NOOP("Sheet", "dead")},
        {"take-now", QT_TRANSLATE_NOOP("Sheet", "take now")},
        {"take-in-spring", QT_TRANSLATE_NOOP("Sheet", "take in spring")},
        {"move-combs", QT_TRANSLATE_NOOP("Sheet", "%{combs} from a neighbour")},
        {"syrup", QT_TRANSLATE_NOOP("Sheet", "syrup, in the evening")},
        {"fondant", QT_TRANSLATE_NOOP("Sheet", "fondant, touching the cluster")},
        {"check", QT_TRANSLATE_NOOP("Sheet", "check: sealed? weigh, feeder off, mouse guard on")},
        {"take-honey", QT_TRANSLATE_NOOP("Sheet", "take honey off, before feeding or treating")},
        {"weigh", QT_TRANSLATE_NOOP("Sheet", "weigh when the last forage is over")},
        {"weigh-again", QT_TRANSLATE_NOOP("Sheet", "weigh again")},
        {"hang-in-eggs", QT_TRANSLATE_NOOP("Sheet", "hang in a %{comb} with eggs from another colony")},
        {"see-queen-cells", QT_TRANSLATE_NOOP("Sheet", "see whether queen cells are on the %{comb} with eggs")},
        {"count-mites", QT_TRANSLATE_NOOP("Sheet", "count the mites, and look at the stores again")},
        {"call-inspector", QT_TRANSLATE_NOOP("Sheet", "signs of disease: call the bee inspector, move nothing")},
        {"count-bees", QT_TRANSLATE_NOOP("Sheet", "count the %{combs} the bees cover")},
        {"record-stores", QT_TRANSLATE_NOOP("Sheet", "look at the stores, or weigh")},
        {"any-day", QT_TRANSLATE_NOOP("Sheet", "any day")},
        {"not-known", QT_TRANSLATE_NOOP("Sheet", "not known")},
    };
    return words.contains(id) ? found(words, id, style) : words::evidence(id, style);
}

QString textOf(const report::Cell& cell, const text::WordStyle& style) {
    using namespace report;
    if (const auto* own = std::get_if<std::string>(&cell)) return text::shown(*own);
    if (const auto* word = std::get_if<Word>(&cell)) return wordOf(word->id, style);
    if (const auto* count = std::get_if<Count>(&cell)) return QLocale().toString(count->number, 'f', count->decimals);
    if (const auto* amount = std::get_if<Money>(&cell)) return money(*amount);
    if (const auto* mass = std::get_if<Mass>(&cell)) return words::amount(*mass);
    if (const auto* volume = std::get_if<Volume>(&cell)) return text::amount(*volume, style);
    if (const auto* date = std::get_if<Date>(&cell))
        return words::dateWithWeekday(*date).replace(QLatin1Char(' '), QChar::Nbsp);
    if (const auto* rough = std::get_if<RoughDate>(&cell)) return roughDate(*rough);
    if (const auto* share = std::get_if<Share>(&cell)) return say::Sheet::tr("%1 of 100").arg(words::ofHundred(*share));
    if (const auto* spread = std::get_if<Spread<Mass>>(&cell)) return words::spread(*spread);
    if (const auto* bees = std::get_if<Spread<BeeCount>>(&cell)) return words::bees(*bees);
    return {};
}

bool standsRight(const report::Cell& cell) {
    return std::holds_alternative<report::Count>(cell) || std::holds_alternative<Mass>(cell) ||
           std::holds_alternative<Volume>(cell) || std::holds_alternative<Share>(cell) ||
           std::holds_alternative<report::Money>(cell);
}

} // namespace winterlarder::desk::print
