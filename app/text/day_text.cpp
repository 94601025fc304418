// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/day_text.h"

#include "text/contexts.h"

#include <QDate>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <set>
#include <vector>

namespace winterlarder::text {

namespace {

constexpr int fewestLetters = 3;   // of a month or weekday
constexpr int yearsToALeapDay = 8; // at most, 1896 to 1904

//! What was typed, taken apart: numbers in their order, and a month where one was named.
struct Parts {
    std::vector<QString> numbers;
    std::optional<int> month;
    bool numberFirst = true; //!< before the month
    bool strange = false;    //!< a word that is none of a day
};

//! A day as far as it was said.
struct Said {
    int day = 0, month = 0;
    std::optional<int> year;
};

QString bare(QString word) {
    word = word.toCaseFolded();
    while (word.endsWith(QLatin1Char('.'))) word.chop(1);
    return word;
}

bool names(const QString& word, const QString& name) {
    const QString whole = bare(name);
    return !whole.isEmpty() && (word == whole || (word.size() >= fewestLetters && whole.startsWith(word)));
}

std::vector<QLocale> languages(const QLocale& locale) {
    return {locale, QLocale(QLocale::English, QLocale::UnitedKingdom)};
}

std::optional<int> monthNamed(const QString& word, const QLocale& locale) {
    std::set<int> found;
    for (const auto& language : languages(locale))
        for (int month = 1; month <= 12; ++month)
            for (const auto form : {QLocale::LongFormat, QLocale::ShortFormat})
                if (names(word, language.monthName(month, form)) ||
                    names(word, language.standaloneMonthName(month, form)))
                    found.insert(month);
    return found.size() == 1 ? std::optional(*found.begin()) : std::nullopt;
}

bool isWeekday(const QString& word, const QLocale& locale) {
    for (const auto& language : languages(locale))
        for (int day = 1; day <= 7; ++day)
            if (names(word, language.dayName(day, QLocale::LongFormat)) ||
                names(word, language.dayName(day, QLocale::ShortFormat)))
                return true;
    return false;
}

// "5th", "of": said with a day and no part of it.
bool isFiller(const QString& word) {
    static const QStringList fillers{QStringLiteral("st"), QStringLiteral("nd"), QStringLiteral("rd"),
                                     QStringLiteral("th"), QStringLiteral("of"), QStringLiteral("the"),
                                     QStringLiteral("de")};
    return fillers.contains(word);
}

Parts partsOf(const QString& typed, const QLocale& locale) {
    static const QRegularExpression form(QStringLiteral("([0-9]+)|([\\p{L}\\p{M}]+)|([^\\s.,/\\-'\u2013\u2019])"));
    Parts parts;
    for (auto at = form.globalMatch(typed); at.hasNext();) {
        const auto match = at.next();
        const QString word = bare(match.captured(2));
        if (!match.captured(1).isEmpty()) parts.numbers.push_back(match.captured(1));
        else if (word.isEmpty()) parts.strange = true;
        else if (const auto month = monthNamed(word, locale); month && !parts.month) {
            parts.month = month;
            parts.numberFirst = !parts.numbers.empty();
        } else if (!isFiller(word) && !isWeekday(word, locale)) parts.strange = true;
    }
    return parts;
}

bool isYear(const QString& number) { return number.size() == 4; }
bool isYearInShort(const QString& number) { return number.size() == 2; }
int yearOf(const QString& number) { return isYear(number) ? number.toInt() : 2000 + number.toInt(); }

bool monthFirst(const QLocale& locale) {
    const QString form = locale.dateFormat(QLocale::ShortFormat);
    return form.indexOf(QLatin1Char('M')) < form.indexOf(QLatin1Char('d'));
}

// In the order of the locale, or the other way round where only that can be a day.
Said inOrder(int first, int second, std::optional<int> year, bool monthFirst) {
    const bool swapped = monthFirst ? first > 12 && second <= 12 : second > 12 && first <= 12;
    return monthFirst != swapped ? Said{second, first, year} : Said{first, second, year};
}

std::optional<Said> saidInNumbers(const std::vector<QString>& numbers, const QLocale& locale) {
    const auto at = [&](std::size_t index) { return numbers[index].toInt(); };
    if (numbers.size() == 1 && numbers[0].size() == 8)
        return Said{numbers[0].mid(6).toInt(), numbers[0].mid(4, 2).toInt(), numbers[0].left(4).toInt()};
    if (numbers.size() == 2 && numbers[0].size() <= 2 && numbers[1].size() <= 2)
        return inOrder(at(0), at(1), std::nullopt, monthFirst(locale));
    if (numbers.size() != 3) return std::nullopt;
    if (isYear(numbers[0])) return Said{at(2), at(1), at(0)};
    if (!isYear(numbers[2]) && !isYearInShort(numbers[2])) return std::nullopt;
    // Where a locale begins with the year, a day that ends with it was written the other way about.
    const bool yearFirst = locale.dateFormat(QLocale::ShortFormat).startsWith(QLatin1Char('y'));
    return inOrder(at(0), at(1), yearOf(numbers[2]), monthFirst(locale) && !yearFirst);
}

std::optional<Said> saidWithMonth(const Parts& parts) {
    const auto& numbers = parts.numbers;
    if (numbers.size() == 1 && numbers[0].size() <= 2) return Said{numbers[0].toInt(), *parts.month, std::nullopt};
    if (numbers.size() != 2) return std::nullopt;
    if (isYear(numbers[0]) && numbers[1].size() <= 2) return Said{numbers[1].toInt(), *parts.month, yearOf(numbers[0])};
    if (numbers[0].size() <= 2 && (isYear(numbers[1]) || isYearInShort(numbers[1])))
        return Said{numbers[0].toInt(), *parts.month, yearOf(numbers[1])};
    return std::nullopt;
}

// The locale's own forms, for scripts that write a day in their own way.
std::optional<Said> saidAsLocale(const QString& typed, const QLocale& locale) {
    for (const auto form : {QLocale::LongFormat, QLocale::ShortFormat}) {
        const QDate day = locale.toDate(typed, form);
        if (day.isValid())
            return Said{day.day(), day.month(),
                        day.year() < 2000 && !typed.contains(QString::number(day.year())) ? day.year() + 100
                                                                                          : day.year()};
    }
    return std::nullopt;
}

std::optional<Said> said(const QString& typed, const QLocale& locale) {
    const auto parts = partsOf(typed, locale);
    std::optional<Said> read;
    if (!parts.strange) read = parts.month ? saidWithMonth(parts) : saidInNumbers(parts.numbers, locale);
    return read ? read : saidAsLocale(typed, locale);
}

std::optional<Date> wordOfADay(const QString& typed, Date today) {
    const QString word = bare(typed);
    if (word == QLatin1String("today") || word == say::Days::tr("today").toCaseFolded()) return today;
    if (word == QLatin1String("yesterday") || word == say::Days::tr("yesterday").toCaseFolded())
        return today.plusDays(-1);
    return std::nullopt;
}

std::optional<Date> lastUpTo(Date end, const Said& said) {
    for (int year = end.year(); year >= end.year() - yearsToALeapDay; --year)
        if (const auto day = Date::of(year, said.month, said.day); day && *day <= end) return day;
    return std::nullopt;
}

std::optional<Date> firstFrom(Date begin, const Said& said) {
    for (int year = begin.year(); year <= begin.year() + yearsToALeapDay; ++year)
        if (const auto day = Date::of(year, said.month, said.day); day && *day >= begin) return day;
    return std::nullopt;
}

std::optional<Date> inItsYear(const Said& said, const DayLimits& limits) {
    if (limits.everyYear) return Date::of(limits.recent.year(), said.month, said.day);
    if (said.year) return Date::of(*said.year, said.month, said.day);
    const auto last = lastUpTo(limits.last ? std::min(*limits.last, limits.recent) : limits.recent, said);
    if (!last || !limits.first || *last >= *limits.first) return last;
    const auto next = firstFrom(*limits.first, said);
    return next && (!limits.last || *next <= *limits.last) ? next : last;
}

// ---- what is wrong --------------------------------------------------------------------------------------------------

QString written(Date day, const QLocale& locale) {
    return locale.toString(QDate(day.year(), day.month(), day.day()), say::Days::tr("d MMMM yyyy"));
}

QString notUnderstood(const DayLimits& limits, const QLocale& locale) {
    if (limits.everyYear)
        return say::Days::tr("This cannot be read as a day of the year. Type it as %1.")
            .arg(locale.toString(QDate(2001, 9, 5), say::Days::tr("d MMMM")));
    return say::Days::tr("This cannot be read as a day. Type it as %1, as %2, or \u201cyesterday\u201d.")
        .arg(written(limits.recent, locale), QString::fromStdString(limits.recent.iso()));
}

QString noSuchDay(const Said& said, const DayLimits& limits, const QLocale& locale) {
    const QDate month(said.year.value_or(limits.recent.year()), said.month, 1);
    if (!month.isValid() || said.day < 1 || said.day <= month.daysInMonth()) return notUnderstood(limits, locale);
    const QString name = said.year && !limits.everyYear ? locale.toString(month, say::Days::tr("MMMM yyyy"))
                                                        : locale.standaloneMonthName(said.month);
    return say::Days::tr("There is no day %1 in %2; it ends with day %3.")
        .arg(QString::number(said.day), name, QString::number(month.daysInMonth()));
}

QString outside(Date day, const DayLimits& limits, const QLocale& locale) {
    const bool late = limits.last && day > *limits.last;
    if (!late && !(limits.first && day < *limits.first)) return {};
    const QString said = written(day, locale);
    if (limits.first && limits.last) {
        const QString first = written(*limits.first, locale), last = written(*limits.last, locale);
        return late ? say::Days::tr("%1 is too late here. Type a day from %2 to %3.").arg(said, first, last)
                    : say::Days::tr("%1 is too early here. Type a day from %2 to %3.").arg(said, first, last);
    }
    return late ? say::Days::tr("%1 is too late here. Type %2 or a day before it.")
                      .arg(said, written(*limits.last, locale))
                : say::Days::tr("%1 is too early here. Type %2 or a day after it.")
                      .arg(said, written(*limits.first, locale));
}

} // namespace

DayRead readDay(const QString& typed, const DayLimits& limits, const QLocale& locale) {
    const QString text = typed.simplified();
    auto day = wordOfADay(text, limits.today);
    if (!day) {
        const auto told = said(text, locale);
        if (!told) return {std::nullopt, notUnderstood(limits, locale)};
        day = inItsYear(*told, limits);
        if (!day) return {std::nullopt, noSuchDay(*told, limits, locale)};
    }
    const QString wrong = limits.everyYear ? QString() : outside(*day, limits, locale);
    return wrong.isEmpty() ? DayRead{day, {}} : DayRead{std::nullopt, wrong};
}

} // namespace winterlarder::text
