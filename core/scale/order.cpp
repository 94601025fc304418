// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/order.h"

#include "numerics/median.h"

#include <algorithm>

namespace winterlarder::scale {

namespace {

bool earlier(const Reading& a, const Reading& b) { return a.moment < b.moment; }

std::size_t descents(const std::vector<Reading>& readings) {
    std::size_t count = 0;
    for (std::size_t i = 1; i < readings.size(); ++i) count += earlier(readings[i], readings[i - 1]);
    return count;
}

std::size_t ascents(const std::vector<Reading>& readings) {
    std::size_t count = 0;
    for (std::size_t i = 1; i < readings.size(); ++i) count += earlier(readings[i - 1], readings[i]);
    return count;
}

std::int64_t usualInterval(const std::vector<Reading>& readings) {
    std::vector<double> intervals;
    intervals.reserve(readings.size());
    for (std::size_t i = 1; i < readings.size(); ++i)
        if (readings[i].moment > readings[i - 1].moment)
            intervals.push_back(static_cast<double>(readings[i].moment - readings[i - 1].moment));
    return intervals.empty() ? 0 : static_cast<std::int64_t>(numerics::lowerMedian(intervals));
}

// ---- daylight saving

bool nightOfAChange(std::int64_t local) {
    const std::int32_t day = dayNumber(local);
    const bool sunday = ((day + 4) % 7 + 7) % 7 == 0; // 1970-01-01 was a Thursday
    if (!sunday || secondOfDay(local) >= 4 * secondsAnHour) return false;
    const int month = dateOfDay(day).month();
    return month == 3 || month == 4 || (month >= 9 && month <= 11);
}

// Whether from one row to the next the clock went an hour more (+3600) or less (-3600) than usual; 0 neither.
std::int32_t hourShift(std::int64_t before, std::int64_t step, std::int64_t interval) {
    const std::int64_t tolerance = std::clamp<std::int64_t>(interval / 2, 90, 25 * 60);
    for (const std::int64_t shift : {-secondsAnHour, secondsAnHour})
        if (std::abs(step - interval - shift) <= tolerance && nightOfAChange(before))
            return static_cast<std::int32_t>(shift);
    return 0;
}

void takeOutDaylightSaving(std::vector<Reading>& readings, std::int64_t interval, std::vector<ClockJump>& jumps) {
    if (interval <= 0 || interval > secondsAnHour) return;
    std::int32_t offset = 0;
    std::int64_t before = readings.front().moment;
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const std::int64_t written = readings[i].moment;
        if (const auto shift = hourShift(before, written - before, interval); shift != 0) {
            offset += shift;
            jumps.push_back({ClockJump::Kind::DaylightSaving, before, shift, readings[i].line});
        }
        readings[i].moment = written - offset;
        readings[i].offset += offset;
        before = written;
    }
}

// ---- blocks of rows that run forward

struct Block {
    std::size_t first = 0, end = 0;
};

std::vector<Block> blocksOf(const std::vector<Reading>& readings) {
    std::vector<Block> blocks{{0, 0}};
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (i > 0 && earlier(readings[i], readings[i - 1])) blocks.push_back({i, i});
        blocks.back().end = i + 1;
    }
    return blocks;
}

class Blocks {
public:
    Blocks(std::vector<Reading>& readings, OrderedReadings& result)
        : readings_(readings), result_(result), blocks_(blocksOf(readings)) {}

    void settle() {
        if (blocks_.size() < 2) return;
        if (apart()) sortAll();
        else keepLongestForwardRun();
    }

private:
    std::int64_t start(const Block& block) const { return readings_[block.first].moment; }
    std::int64_t last(const Block& block) const { return readings_[block.end - 1].moment; }

    bool apart() const {
        auto sorted = blocks_;
        std::sort(sorted.begin(), sorted.end(), [&](const Block& a, const Block& b) { return start(a) < start(b); });
        for (std::size_t i = 1; i < sorted.size(); ++i)
            if (start(sorted[i]) < last(sorted[i - 1])) return false;
        return true;
    }
    void sortAll() {
        std::stable_sort(readings_.begin(), readings_.end(), earlier);
        result_.order = RowOrder::Mixed;
    }

    // Longest strictly rising run of times (patience sorting); neighbours of one time count as one. True: the row belongs to it.
    std::vector<bool> longestForwardRun() const {
        constexpr std::uint32_t none = 0xffffffffU;
        std::vector<std::uint32_t> tails, before(readings_.size(), none);
        const auto momentOf = [&](std::uint32_t row) { return readings_[row].moment; };
        for (std::uint32_t row = 0; row < readings_.size(); ++row) {
            if (row > 0 && momentOf(row) == momentOf(row - 1)) continue;
            const auto at =
                std::lower_bound(tails.begin(), tails.end(), momentOf(row),
                                 [&](std::uint32_t tail, std::int64_t moment) { return momentOf(tail) < moment; });
            if (at != tails.begin()) before[row] = *std::prev(at);
            if (at == tails.end()) tails.push_back(row);
            else *at = row;
        }
        std::vector<bool> inRun(readings_.size(), false);
        for (std::uint32_t row = tails.back(); row != none; row = before[row]) inRun[row] = true;
        for (std::size_t row = 1; row < readings_.size(); ++row)
            if (readings_[row].moment == readings_[row - 1].moment && inRun[row - 1]) inRun[row] = true;
        return inRun;
    }

    void keepLongestForwardRun() {
        for (std::size_t j = 1; j < blocks_.size(); ++j) {
            const Reading &before = readings_[blocks_[j].first - 1], &after = readings_[blocks_[j].first];
            result_.jumps.push_back({ClockJump::Kind::Back, before.local(), after.moment - before.moment, after.line});
        }
        const std::vector<bool> inRun = longestForwardRun();
        std::size_t kept = 0;
        for (std::size_t row = 0; row < readings_.size(); ++row) {
            if (inRun[row]) readings_[kept++] = readings_[row];
            else result_.leftOut.push_back({readings_[row].line, LeftOutWhy::ClockBack, 0});
        }
        readings_.resize(kept);
    }

    std::vector<Reading>& readings_;
    OrderedReadings& result_;
    std::vector<Block> blocks_;
};

// ---- several rows of one time

std::size_t endOfTime(const std::vector<Reading>& readings, std::size_t first) {
    std::size_t end = first + 1;
    while (end < readings.size() && readings[end].moment == readings[first].moment) ++end;
    return end;
}

std::size_t rowsSharingTheirTime(const std::vector<Reading>& readings) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < readings.size(); i = endOfTime(readings, i))
        if (const std::size_t end = endOfTime(readings, i); end - i > 1) count += end - i;
    return count;
}

void eachTimeOnce(OrderedReadings& result) {
    auto& readings = result.readings;
    const std::size_t sharing = rowsSharingTheirTime(readings);
    const bool coarse = sharing * 4 > readings.size() && readings.size() >= 8;
    std::vector<double> values;
    std::size_t kept = 0;
    for (std::size_t i = 0, end = 0; i < readings.size(); i = end) {
        end = endOfTime(readings, i);
        Reading one = readings[i];
        values.clear();
        for (std::size_t k = i; k < end && coarse; ++k) values.push_back(readings[k].weight.value());
        if (coarse && values.size() > 1) one.weight = kilograms(numerics::median(values));
        for (std::size_t k = i + 1; k < end && !coarse; ++k)
            result.leftOut.push_back({readings[k].line, LeftOutWhy::SameTime, one.line});
        readings[kept++] = one;
    }
    if (coarse) result.merged = sharing;
    readings.resize(kept);
}

} // namespace

OrderedReadings inOrder(std::vector<Reading> readings, Times times) {
    OrderedReadings result;
    std::size_t back = descents(readings);
    if (const std::size_t forward = ascents(readings); back > forward) {
        std::reverse(readings.begin(), readings.end());
        result.order = RowOrder::NewestFirst;
        back = forward;
    }
    if (back * 20 > readings.size()) {
        std::stable_sort(readings.begin(), readings.end(), earlier);
        result.order = RowOrder::Mixed;
    } else if (!readings.empty()) {
        if (times == Times::WallClock) takeOutDaylightSaving(readings, usualInterval(readings), result.jumps);
        Blocks(readings, result).settle();
    }
    result.readings = std::move(readings);
    eachTimeOnce(result);
    result.interval = usualInterval(result.readings);
    std::sort(result.leftOut.begin(), result.leftOut.end(),
              [](const LeftOut& a, const LeftOut& b) { return a.line < b.line; });
    return result;
}

} // namespace winterlarder::scale
