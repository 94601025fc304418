// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/logs/scale_log.h"

#include "exchange/json/json_tree.h"
#include "exchange/logs/scale_log_cells.h"
#include "exchange/logs/scale_log_columns.h"
#include "numerics/median.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

constexpr std::size_t firstLines = 1000; // columns are found by
constexpr std::int64_t secondsADay = 86400;
constexpr std::int32_t noon = 43200;

std::string shortened(std::string_view cell) {
    constexpr std::size_t most = 40;
    std::size_t end = std::min(cell.size(), most);
    while (end > 0 && end < cell.size() && (static_cast<unsigned char>(cell[end]) & 0xC0) == 0x80) --end;
    return std::string(cell.substr(0, end));
}

// Dates wait in the rows until the whole file has said in which order their parts stand.
struct Written {
    static std::int64_t pack(const TimeParts& time) {
        std::int64_t packed = 0;
        for (int i = 0; i < 3; ++i)
            packed = packed << 18 | (static_cast<std::int64_t>(time.parts[i]) << 3 | time.digits[i]);
        return packed << 2 | (time.namedMonth + 1);
    }
    static TimeParts unpack(std::int64_t packed) {
        TimeParts time;
        time.namedMonth = static_cast<std::int8_t>((packed & 3) - 1);
        packed >>= 2;
        for (int i = 2; i >= 0; --i, packed >>= 18) {
            time.digits[i] = static_cast<std::int8_t>(packed & 7);
            time.parts[i] = static_cast<std::int16_t>(packed >> 3 & 0x7fff);
        }
        return time;
    }
};

// What the dates of the whole file say about their order.
class OrderEvidence {
public:
    void take(const TimeParts& time, std::int32_t line) {
        if (time.digits[0] == 4) {
            ++yearFirst_;
            return;
        }
        ++others_;
        if (time.namedMonth >= 0) {
            ++named_;
            return;
        }
        if (example_ == 0) {
            example_ = line;
            exampleParts_ = {time.parts[0], time.parts[1], time.parts[2]};
        }
        points_ += time.separator == '.';
        if (time.parts[0] > 12 && time.parts[1] <= 12 && dayFirst_++ == 0) dayFirstLine_ = line;
        if (time.parts[1] > 12 && time.parts[0] <= 12 && monthFirst_++ == 0) monthFirstLine_ = line;
        if (time.digits[2] == 4) return;
        twoDigits_ = true;
        for (const std::size_t end : {0u, 1u}) { // the first part and the last
            range_[end].first = std::min<int>(range_[end].first, time.parts[2 * end]);
            range_[end].second = std::max<int>(range_[end].second, time.parts[2 * end]);
        }
    }

    Outcome<DateOrder> order(const std::string& file) const {
        if (others_ == 0) return DateOrder::YearMonthDay;
        if (named_ == others_) return DateOrder::DayMonthYear;
        if (twoDigits_) {
            const int first = range_[0].second - range_[0].first, last = range_[1].second - range_[1].first;
            if (first == last && points_ == 0)
                return question(file, "which part of the dates is the year cannot be told");
            if (first < last && range_[1].second <= 31 && points_ == 0) return DateOrder::YearMonthDay;
        }
        if (dayFirst_ > 0 && monthFirst_ > 0)
            return question(
                file,
                fmt::format("dates are written in two orders: the day first in line {}, the month first in line {}",
                            dayFirstLine_, monthFirstLine_));
        if (dayFirst_ > 0) return DateOrder::DayMonthYear;
        if (monthFirst_ > 0) return DateOrder::MonthDayYear;
        if (points_ == others_ - named_) return DateOrder::DayMonthYear;
        return question(
            file,
            fmt::format(
                "whether day or month comes first in the dates cannot be told: {}/{}/{:02} in line {} may be either, "
                "and no number above 12 decides",
                exampleParts_[0], exampleParts_[1], exampleParts_[2], example_));
    }

private:
    static Problem question(const std::string& file, std::string detail) {
        return {ProblemKind::Input, {file, 0, 0}, std::move(detail), "--date-order dmy, mdy or ymd"};
    }
    std::size_t yearFirst_ = 0, others_ = 0, named_ = 0, points_ = 0, dayFirst_ = 0, monthFirst_ = 0;
    std::int32_t dayFirstLine_ = 0, monthFirstLine_ = 0, example_ = 0;
    std::array<std::int16_t, 3> exampleParts_{};
    bool twoDigits_ = false;
    std::array<std::pair<int, int>, 2> range_{{{9999, 0}, {9999, 0}}};
};

class Reader {
public:
    Reader(std::istream& stream, const std::string& file, const ScaleLogOptions& options)
        : stream_(stream), lines_(stream), file_(file), options_(options) {}

    Outcome<ScaleLog> read() {
        readFirstLines();
        if (lines_.sawZero()) return problem("this is no text", "a table of times and weights in plain text (UTF-8)");
        if (first_.empty()) return problem("the file is empty", "a table of times and weights");
        auto columns = findColumns(first_, numbers_, file_, options_);
        if (!columns) return columns.problems();
        found_ = std::move(columns).value();
        log_.columns = found_.columns;
        takeAll();
        if (stream_.bad())
            return Problem{ProblemKind::File, {file_, 0, 0}, "cannot be read to its end", "a file that can be read"};
        if (log_.rows.empty()) return noReadings();
        if (log_.rows.size() > limits::logRows)
            return problem(fmt::format("the log has more than {} readings", limits::logRows),
                           fmt::format("at most {}: a part of it", limits::logRows));
        if (auto settled = settleDates(); !settled) return settled.problems();
        if (auto settled = settleUnit(); !settled) return settled.problems();
        if (log_.rows.empty()) return noReadings();
        std::stable_sort(log_.faults.begin(), log_.faults.end(),
                         [](const ScaleLogFault& a, const ScaleLogFault& b) { return a.line < b.line; });
        return std::move(log_);
    }

private:
    Problem problem(std::string detail, std::string remedy) const {
        return {ProblemKind::Input, {file_, 0, 0}, std::move(detail), std::move(remedy)};
    }
    Problem noReadings() const {
        Problem none =
            problem("no row has both a time and a weight", "--time and --weight with the columns that hold them");
        if (!log_.faults.empty()) {
            none.place.line = log_.faults.front().line;
            none.detail += fmt::format("; the first row left out has {}", inQuotes(log_.faults.front().cell));
        }
        return none;
    }

    static bool passedOver(std::string_view line) {
        const auto first = line.find_first_not_of(" \t");
        return first == std::string_view::npos || line[first] == '#';
    }
    void readFirstLines() {
        LogLine line;
        while (first_.size() < firstLines && lines_.next(line)) {
            if (line.tooLong) fault(line.number, RowFault::TooLong, {});
            if (line.tooLong || passedOver(line.text)) continue;
            first_.emplace_back(line.text);
            numbers_.push_back(line.number);
        }
        log_.lines = static_cast<std::int64_t>(first_.size());
    }
    void takeAll() {
        CellSplitter splitter(found_.columns.delimiter);
        for (std::size_t i = found_.dataFrom; i < first_.size(); ++i) take(first_[i], numbers_[i], splitter);
        LogLine line;
        while (log_.rows.size() <= limits::logRows && lines_.next(line)) {
            if (line.tooLong) fault(line.number, RowFault::TooLong, {});
            if (line.tooLong || passedOver(line.text)) continue;
            ++log_.lines;
            take(line.text, line.number, splitter);
        }
    }

    void fault(int line, RowFault why, std::string_view cell) { log_.faults.push_back({line, why, shortened(cell)}); }
    std::string_view cellAt(std::size_t column) const {
        return column < cells_.size() ? cells_[column] : std::string_view();
    }

    // The time of the row, faults told; nothing where there is none.
    std::optional<TimeParts> timeOfRow(int line) {
        const std::string_view cell = cellAt(found_.time);
        if (isMissing(cell)) return fault(line, RowFault::NoTime, cell), std::nullopt;
        auto time = timeParts(cell);
        if (found_.date) {
            const std::string_view dateCell = cellAt(*found_.date);
            auto date = timeParts(dateCell);
            if (!date || date->form == TimeParts::Form::TimeOnly || date->form == TimeParts::Form::UnixTime)
                return fault(line, isMissing(dateCell) ? RowFault::NoTime : RowFault::BadTime, dateCell), std::nullopt;
            if (!time || time->form != TimeParts::Form::TimeOnly)
                return fault(line, RowFault::BadTime, cell), std::nullopt;
            date->second = time->second;
            date->offset = time->offset;
            date->form = TimeParts::Form::DateAndTime;
            return date;
        }
        if (!time || time->form == TimeParts::Form::TimeOnly) return fault(line, RowFault::BadTime, cell), std::nullopt;
        return time;
    }

    void take(std::string_view text, int line, CellSplitter& splitter) {
        if (!splitter.split(text, cells_)) return fault(line, RowFault::Quotes, text);
        const auto time = timeOfRow(line);
        if (!time) return;
        const std::string_view cell = cellAt(found_.weight);
        if (isMissing(cell)) return fault(line, RowFault::NoWeight, cell);
        const auto weight = weightIn(cell, found_.columns.decimal);
        if (!weight) return fault(line, RowFault::BadWeight, cell);
        put(*time, *weight, line);
    }

    void put(const TimeParts& time, double weight, int line) {
        const bool unixTime = time.form == TimeParts::Form::UnixTime;
        const TimeForm form = unixTime ? TimeForm::UnixTime : time.offset ? TimeForm::WithOffset : TimeForm::WallClock;
        if (log_.rows.empty()) {
            log_.columns.timeForm = form;
            log_.columns.daysOnly = time.form == TimeParts::Form::DateOnly;
        }
        if (form != log_.columns.timeForm) return fault(line, RowFault::OtherTimeForm, cellAt(found_.time));
        ScaleLogRow row{time.unixSeconds, weight, time.offset.value_or(ScaleLogRow::noOffset), line};
        if (!unixTime) {
            evidence_.take(time, line);
            row.seconds = Written::pack(time);
            seconds_.push_back(time.form == TimeParts::Form::DateOnly ? noon : time.second);
        }
        log_.rows.push_back(row);
    }

    // ---- once everything is read

    Outcome<Done> settleDates() {
        if (log_.columns.timeForm == TimeForm::UnixTime) return keepUnixTimes();
        DateOrder order = DateOrder::YearMonthDay;
        if (options_.dateOrder) {
            order = *options_.dateOrder;
            log_.columns.dateOrderTold = ToldBy::Option;
        } else {
            const auto told = evidence_.order(file_);
            if (!told) return told.problems();
            order = *told;
        }
        log_.columns.dateOrder = order;
        std::size_t kept = 0;
        std::int64_t lastPacked = -1;
        std::optional<std::int32_t> day;
        for (std::size_t i = 0; i < log_.rows.size(); ++i) {
            ScaleLogRow row = log_.rows[i];
            if (row.seconds != lastPacked) {
                lastPacked = row.seconds;
                day = dayOfParts(Written::unpack(row.seconds), order);
            }
            if (!day) {
                const TimeParts time = Written::unpack(lastPacked);
                fault(row.line, RowFault::NoSuchDay,
                      fmt::format("{}-{}-{}", time.parts[0], time.parts[1], time.parts[2]));
                continue;
            }
            row.seconds = *day * secondsADay + seconds_[i];
            if (row.offset != ScaleLogRow::noOffset) row.seconds -= row.offset;
            log_.rows[kept++] = row;
        }
        log_.rows.resize(kept);
        seconds_ = {};
        return Done{};
    }
    Outcome<Done> keepUnixTimes() {
        constexpr std::int64_t first = 631152000, last = 4133980800; // 1990 to 2100, as for dates
        std::size_t kept = 0;
        for (const ScaleLogRow& row : log_.rows) {
            if (row.seconds >= first && row.seconds < last) log_.rows[kept++] = row;
            else fault(row.line, RowFault::NoSuchDay, fmt::format("{}", row.seconds));
        }
        log_.rows.resize(kept);
        return Done{};
    }

    double usualSize() const {
        std::vector<double> sizes;
        const std::size_t stride = log_.rows.size() / 100'000 + 1;
        for (std::size_t i = 0; i < log_.rows.size(); i += stride) sizes.push_back(std::abs(log_.rows[i].kg));
        return numerics::median(sizes);
    }
    Outcome<Done> settleUnit() {
        if (log_.rows.empty()) return Done{};
        if (options_.unit) {
            log_.columns.unit = *options_.unit;
            log_.columns.unitTold = ToldBy::Option;
        } else if (found_.unit) {
            log_.columns.unit = *found_.unit;
        } else {
            const double size = usualSize();
            if (size >= 200 && size < 2000)
                return problem(
                    fmt::format("the unit of the weights cannot be told: half of them are above {:.0f}", size),
                    "--unit kg, g or lb");
            log_.columns.unit = size < 200 ? MassUnit::Kilogram : MassUnit::Gram;
        }
        std::size_t kept = 0;
        for (ScaleLogRow row : log_.rows) {
            const double written = row.kg;
            row.kg = massOf(written, log_.columns.unit).value();
            if (row.kg >= lightestKg && row.kg <= heaviestKg) log_.rows[kept++] = row;
            else fault(row.line, RowFault::WeightOutside, fmt::format("{:.10g}", written));
        }
        log_.rows.resize(kept);
        return Done{};
    }

    std::istream& stream_;
    LogLines lines_;
    const std::string& file_;
    const ScaleLogOptions& options_;
    std::vector<std::string> first_;
    std::vector<int> numbers_;
    FoundColumns found_;
    ScaleLog log_;
    OrderEvidence evidence_;
    std::vector<std::int32_t> seconds_; //!< of the day, row by row
    std::vector<std::string_view> cells_;
};

} // namespace

Outcome<ScaleLog> readScaleLog(std::istream& stream, const std::string& file, const ScaleLogOptions& options) {
    return Reader(stream, file, options).read();
}

std::string_view word(DateOrder order) {
    return order == DateOrder::DayMonthYear ? "dmy" : order == DateOrder::MonthDayYear ? "mdy" : "ymd";
}

std::optional<DateOrder> dateOrderOf(std::string_view text) {
    for (const DateOrder order : {DateOrder::DayMonthYear, DateOrder::MonthDayYear, DateOrder::YearMonthDay})
        if (word(order) == text) return order;
    return std::nullopt;
}

} // namespace winterlarder::exchange
