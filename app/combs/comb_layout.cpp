// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_layout.h"

#include <algorithm>
#include <map>
#include <utility>

namespace winterlarder::desk {

namespace {

constexpr std::size_t shortestRow = 4; // that a longer one is broken into
constexpr double clearly = 1.2;        // so many times larger is worth a broken row
constexpr double gap = 10;
constexpr double apartWords = 2;      // px between the words below two combs
constexpr double largestScale = 0.62; // px per mm
constexpr double smallestScale = 0.02;
constexpr double comfortableScale = 0.36;
constexpr QSizeF leastComb{97, 66};    // px with its bar, its face 90 x 60, where breaking rows makes it so
constexpr double above = 5, below = 1; // px free at the edges
constexpr double ring = 4;             // px a mark around a comb takes

double widthOf(const hive::Outline& outline) { return std::max(outline.top.value(), outline.bottom.value()); }

struct Extent {
    std::size_t most = 1;     //!< combs in a row
    double tallest = 0;       //!< all rows [mm]
    double widest = 1;        //!< of one comb [mm]
    std::vector<double> deep; //!< of each row [mm]
};

Extent extentOf(const std::vector<CombRow>& rows, const std::vector<CombPlace>& combs) {
    Extent extent;
    for (const auto& row : rows) {
        extent.most = std::max(extent.most, row.combs.size());
        double deep = 0;
        for (const int comb : row.combs) {
            const auto& outline = combs[static_cast<std::size_t>(comb)].outline;
            deep = std::max(deep, outline.height.value());
            extent.widest = std::max(extent.widest, widthOf(outline));
        }
        extent.deep.push_back(deep);
        extent.tallest += deep;
    }
    return extent;
}

double acrossEach(const Extent& extent, double width, const CombWords& words) {
    return (width - words.rowLabel) / static_cast<double>(extent.most) - gap;
}

double scaleIn(const Extent& extent, QSizeF size, const CombWords& words) {
    const double down =
        (size.height() - static_cast<double>(extent.deep.size()) * (words.below + gap) - above - below) /
        extent.tallest;
    return std::max(smallestScale,
                    std::min({acrossEach(extent, size.width(), words) / extent.widest, down, largestScale}));
}

} // namespace

std::vector<CombRow> rowsOf(const std::vector<CombPlace>& combs, std::size_t most) {
    std::map<int, std::vector<int>> boxes;
    for (std::size_t i = 0; i < combs.size(); ++i) boxes[combs[i].box].push_back(static_cast<int>(i));
    std::vector<CombRow> rows;
    for (auto box = boxes.rbegin(); box != boxes.rend(); ++box) {
        const auto& [number, hung] = *box;
        const auto count = hung.size();
        const auto parts = (count + most - 1) / most;
        const auto each = (count + parts - 1) / parts;
        for (std::size_t from = 0; from < count; from += each) {
            const auto to = std::min(count, from + each);
            rows.push_back(
                {number,
                 {hung.begin() + static_cast<std::ptrdiff_t>(from), hung.begin() + static_cast<std::ptrdiff_t>(to)}});
        }
    }
    return rows;
}

namespace {

// As long as the words below the combs have room beside each other.
std::vector<CombRow> rowsWithRoom(const std::vector<CombPlace>& combs, double width, const CombWords& words) {
    auto rows = rowsOf(combs);
    if (rows.empty()) return rows;
    for (std::size_t most = extentOf(rows, combs).most;
         most > shortestRow && acrossEach(extentOf(rows, combs), width, words) + gap < words.widest + apartWords;)
        rows = rowsOf(combs, --most);
    return rows;
}

double scaleAcross(const Extent& extent, double width, const CombWords& words) {
    return std::max(smallestScale, acrossEach(extent, width, words) / extent.widest);
}

// At which the deepest comb is as large as the least comb.
double leastScale(const Extent& extent) {
    const double deepest = *std::max_element(extent.deep.begin(), extent.deep.end());
    return std::min(largestScale, std::max(leastComb.width() / extent.widest, leastComb.height() / deepest));
}

struct Broken {
    Extent extent;
    double leastScale = 0; //!< at which rowsIn breaks the rows too
};

// Rows broken until the combs are large enough; as they are where that makes none clearly larger.
Broken largeEnough(Extent whole, const std::vector<CombPlace>& combs, double width, const CombWords& words) {
    Broken best{std::move(whole)};
    for (std::size_t most = best.extent.most; most > shortestRow;) {
        const double scale = scaleAcross(best.extent, width, words);
        if (scale >= leastScale(best.extent)) break;
        auto shorter = extentOf(rowsOf(combs, --most), combs);
        if (scaleAcross(shorter, width, words) < clearly * scale) continue;
        best = {std::move(shorter), clearly * scale};
    }
    return best;
}

} // namespace

double heightFor(const std::vector<CombPlace>& combs, double width, const CombWords& words) {
    const auto rows = rowsWithRoom(combs, width, words);
    if (rows.empty()) return 0;
    const auto [extent, broken] = largeEnough(extentOf(rows, combs), combs, width, words);
    const double least = std::max(leastScale(extent), broken);
    const double most = broken > 0 ? least : std::max(comfortableScale, least);
    const double scale = std::min(scaleAcross(extent, width, words), most);
    // A hair more, so that rounding does not undo what was broken.
    return extent.tallest * scale * 1.0001 + static_cast<double>(extent.deep.size()) * (words.below + gap) + above +
           below;
}

std::vector<CombRow> rowsIn(const std::vector<CombPlace>& combs, QSizeF size, const CombWords& words) {
    auto best = rowsWithRoom(combs, size.width(), words);
    if (best.empty()) return best;
    const auto unbroken = extentOf(best, combs);
    double scale = scaleIn(unbroken, size, words);
    for (std::size_t most = unbroken.most - 1; most >= shortestRow; --most) {
        auto rows = rowsOf(combs, most);
        const double larger = scaleIn(extentOf(rows, combs), size, words);
        if (larger < clearly * scale) continue;
        best = std::move(rows);
        scale = larger;
    }
    return best;
}

std::vector<CombSlot> layOut(const std::vector<CombPlace>& combs, QSizeF size, const CombWords& words) {
    const auto rows = rowsIn(combs, size, words);
    std::vector<CombSlot> slots_;
    if (rows.empty()) return slots_;
    const auto extent = extentOf(rows, combs);
    const auto count = static_cast<double>(rows.size());
    const double across = acrossEach(extent, size.width(), words);
    const double scale = scaleIn(extent, size, words);
    const double step = std::max(extent.widest * scale + gap, std::min(across + gap, words.widest + gap));
    const double used = extent.tallest * scale + count * (words.below + gap);
    double top = above + std::clamp((size.height() - used - above) / 2, 0.0, 24.0);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        double left = words.rowLabel;
        for (const int comb : rows[i].combs) {
            const auto& outline = combs[static_cast<std::size_t>(comb)].outline;
            const double wide = widthOf(outline) * scale;
            const QRectF drawn(left + (step - gap - wide) / 2, top, wide, outline.height.value() * scale);
            slots_.push_back({comb, drawn, QRectF(left - gap / 2, drawn.bottom() + ring, step, words.below - ring)});
            left += step;
        }
        top += extent.deep[i] * scale + words.below + gap;
    }
    return slots_;
}

int combBeside(const std::vector<CombRow>& rows, int comb, int rowsDown) {
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& combs = rows[i].combs;
        const auto found = std::find(combs.begin(), combs.end(), comb);
        if (found == combs.end()) continue;
        const auto target = static_cast<std::ptrdiff_t>(i) + rowsDown;
        if (target < 0 || target >= static_cast<std::ptrdiff_t>(rows.size())) return comb;
        const auto& next = rows[static_cast<std::size_t>(target)].combs;
        return next[static_cast<std::size_t>(
            std::min<std::ptrdiff_t>(found - combs.begin(), static_cast<std::ptrdiff_t>(next.size()) - 1))];
    }
    return comb;
}

} // namespace winterlarder::desk
