// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/logs/scale_log_time.h"

#include "calendar/date.h"
#include "calendar/months.h"
#include "support/letters.h"

namespace winterlarder::exchange {

namespace {

// A place in the text that moves on as parts are read.
class Cursor {
public:
    explicit Cursor(std::string_view text) : text_(text) {}
    bool done() const { return at_ >= text_.size(); }
    char peek() const { return done() ? '\0' : text_[at_]; }
    bool take(char c) {
        if (peek() != c || done()) return false;
        ++at_;
        return true;
    }
    void blanks() {
        while (peek() == ' ') ++at_;
    }
    // A number of at most `most` digits; -1 where there is none, or it goes on.
    std::int64_t number(int most, int* digits = nullptr) {
        std::int64_t value = 0;
        int count = 0;
        for (; isDigit(peek()) && count <= most; ++count) value = value * 10 + (text_[at_++] - '0');
        if (digits) *digits = count;
        return count == 0 || count > most ? -1 : value;
    }
    std::string_view word() {
        const std::size_t from = at_;
        while (isLetter(peek())) ++at_;
        return text_.substr(from, at_ - from);
    }
    std::size_t at() const { return at_; }
    void back(std::size_t to) { at_ = to; }

private:
    std::string_view text_;
    std::size_t at_ = 0;
};

bool datePart(Cursor& cursor, TimeParts& time, int index) {
    if (isLetter(cursor.peek())) {
        const int month = time.namedMonth < 0 && index < 2 ? monthNamed(cursor.word()) : 0;
        if (month == 0) return false;
        time.namedMonth = static_cast<std::int8_t>(index);
        time.parts[index] = static_cast<std::int16_t>(month);
        return true;
    }
    int digits = 0;
    const auto value = cursor.number(4, &digits);
    if (value < 0 || digits == 3) return false;
    time.parts[index] = static_cast<std::int16_t>(value);
    time.digits[index] = static_cast<std::int8_t>(digits);
    return true;
}

// "1.10.2018", "2018-10-01", "Oct 1, 2018", "01-Oct-2018"
bool date(Cursor& cursor, TimeParts& time) {
    for (int index = 0; index < 3; ++index) {
        if (!datePart(cursor, time, index)) return false;
        if (index == 2) return true;
        const char separator = cursor.peek();
        const bool named = time.namedMonth >= 0 || separator == ' ';
        if (separator != '-' && separator != '/' && separator != '.' &&
            !(named && (separator == ' ' || separator == ',')))
            return false;
        cursor.take(separator);
        if (named) cursor.take(' ');
        if (index == 0) time.separator = separator;
        if (index == 1 && !named && separator != time.separator) return false;
    }
    return false;
}

bool halfOfDay(Cursor& cursor, std::int64_t& hour) {
    const std::size_t from = cursor.at();
    cursor.blanks();
    const std::string word = lowered(cursor.word());
    const bool morning = word == "am" || word == "a";
    const bool afternoon = word == "pm" || word == "p";
    if (!morning && !afternoon) {
        cursor.back(from);
        return true;
    }
    if (hour < 1 || hour > 12) return false;
    hour = hour % 12 + (afternoon ? 12 : 0);
    return true;
}

// "14:05", "2:05:30.25 PM"
bool clock(Cursor& cursor, TimeParts& time) {
    std::int64_t hour = cursor.number(2);
    if (hour < 0 || !cursor.take(':')) return false;
    const std::int64_t minute = cursor.number(2);
    std::int64_t second = 0;
    if (minute < 0 || minute > 59) return false;
    if (cursor.take(':')) {
        second = cursor.number(2);
        if (second < 0 || second > 60) return false;
        if ((cursor.peek() == '.' || cursor.peek() == ',') && cursor.take(cursor.peek()) && cursor.number(9) < 0)
            return false;
    }
    if (!halfOfDay(cursor, hour)) return false;
    if (hour > 24 || (hour == 24 && (minute > 0 || second > 0))) return false;
    time.second = static_cast<std::int32_t>(hour * 3600 + minute * 60 + second);
    return true;
}

bool zone(Cursor& cursor, TimeParts& time) {
    cursor.blanks();
    if (cursor.done()) return true;
    const char sign = cursor.peek();
    if (isLetter(sign)) {
        const std::string word = lowered(cursor.word());
        if (word != "z" && word != "utc" && word != "gmt") return false;
        time.offset = 0;
        return true;
    }
    if (sign != '+' && sign != '-') return false;
    cursor.take(sign);
    int digits = 0;
    std::int64_t value = cursor.number(4, &digits), minutes = 0;
    if (value < 0 || digits == 1 || digits == 3) return false;
    if (digits == 4) {
        minutes = value % 100;
        value /= 100;
    } else if (cursor.take(':')) {
        minutes = cursor.number(2);
    }
    if (value > 15 || minutes < 0 || minutes > 59) return false;
    time.offset = static_cast<std::int32_t>((value * 3600 + minutes * 60) * (sign == '-' ? -1 : 1));
    return true;
}

std::optional<TimeParts> bareNumber(std::string_view text) {
    const auto point = std::min(text.find('.'), text.size());
    if (point > 14) return std::nullopt; // no form of a time has more digits, and a number of more would not fit
    std::int64_t value = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (i == point) continue;
        if (!isDigit(text[i])) return std::nullopt;
        if (i < point) value = value * 10 + (text[i] - '0');
    }
    TimeParts time;
    const bool whole = point == text.size();
    if (point == 9 || point == 10 || (point == 13 && whole)) {
        time.form = TimeParts::Form::UnixTime;
        time.unixSeconds = point == 13 ? value / 1000 : value;
        time.offset = 0;
        return time;
    }
    if (!whole || (point != 8 && point != 12 && point != 14)) return std::nullopt;
    if (point == 12) value *= 100;
    const std::int64_t clock = point == 8 ? 0 : value % 1000000, date = point == 8 ? value : value / 1000000;
    const std::int64_t hour = clock / 10000, minute = clock / 100 % 100, second = clock % 100;
    if (hour > 23 || minute > 59 || second > 60) return std::nullopt;
    time.form = point == 8 ? TimeParts::Form::DateOnly : TimeParts::Form::DateAndTime;
    time.parts[0] = static_cast<std::int16_t>(date / 10000);
    time.parts[1] = static_cast<std::int16_t>(date / 100 % 100);
    time.parts[2] = static_cast<std::int16_t>(date % 100);
    time.digits[0] = 4;
    time.digits[1] = time.digits[2] = 2;
    time.second = static_cast<std::int32_t>(hour * 3600 + minute * 60 + second);
    if (time.parts[0] < 1990 || time.parts[0] > 2100 || time.parts[1] < 1 || time.parts[1] > 12 || time.parts[2] < 1 ||
        time.parts[2] > 31)
        return std::nullopt;
    return time;
}

bool looksLikeClock(std::string_view text) {
    return (text.size() > 1 && text[1] == ':') || (text.size() > 2 && text[2] == ':');
}

} // namespace

std::optional<TimeParts> timeParts(std::string_view text) {
    if (text.size() < 4 || text.size() > 48) return std::nullopt;
    TimeParts time;
    Cursor cursor(text);
    if (looksLikeClock(text)) {
        time.form = TimeParts::Form::TimeOnly;
        if (!clock(cursor, time) || !zone(cursor, time) || !cursor.done()) return std::nullopt;
        return time;
    }
    if (!date(cursor, time)) return bareNumber(text);
    if (cursor.done()) {
        time.form = TimeParts::Form::DateOnly;
        return time;
    }
    if (!cursor.take('T') && !cursor.take('t') && !cursor.take('_')) {
        cursor.take(',');
        if (cursor.peek() != ' ') return std::nullopt;
        cursor.blanks();
    }
    if (!clock(cursor, time) || !zone(cursor, time) || !cursor.done()) return std::nullopt;
    return time;
}

std::optional<std::int32_t> dayOfParts(const TimeParts& time, DateOrder order) {
    int day = time.parts[0], month = time.parts[1], year = time.parts[2], yearDigits = time.digits[2];
    if (time.digits[0] == 4 || (order == DateOrder::YearMonthDay && time.digits[2] != 4)) {
        std::swap(day, year);
        yearDigits = time.digits[0];
    } else if (time.namedMonth == 0 || (order == DateOrder::MonthDayYear && time.namedMonth < 0)) {
        std::swap(day, month);
    }
    if (yearDigits <= 2) year += year < 70 ? 2000 : 1900;
    if (year < 1990 || year > 2100) return std::nullopt;
    const auto date = Date::of(year, month, day);
    static const Date epoch = *Date::of(1970, 1, 1);
    return date ? std::optional<std::int32_t>(date->daysSince(epoch)) : std::nullopt;
}

} // namespace winterlarder::exchange
