// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/edit_distance.h"

#include "support/letters.h"

#include <algorithm>
#include <vector>

namespace winterlarder {

namespace {

constexpr std::size_t longestWord = 64;

bool isSame(char a, char b) { return lower(a) == lower(b); }

} // namespace

int editDistance(std::string_view a, std::string_view b) {
    const std::string_view left = a.substr(0, longestWord), right = b.substr(0, longestWord);
    const std::size_t columns = right.size() + 1;
    std::vector<int> d((left.size() + 1) * columns);
    const auto cell = [&](std::size_t i, std::size_t j) -> int& { return d[i * columns + j]; };
    for (std::size_t i = 0; i <= left.size(); ++i) cell(i, 0) = static_cast<int>(i);
    for (std::size_t j = 0; j <= right.size(); ++j) cell(0, j) = static_cast<int>(j);
    for (std::size_t i = 1; i <= left.size(); ++i)
        for (std::size_t j = 1; j <= right.size(); ++j) {
            const int change = isSame(left[i - 1], right[j - 1]) ? 0 : 1;
            cell(i, j) = std::min({cell(i - 1, j) + 1, cell(i, j - 1) + 1, cell(i - 1, j - 1) + change});
            if (i > 1 && j > 1 && isSame(left[i - 1], right[j - 2]) && isSame(left[i - 2], right[j - 1]))
                cell(i, j) = std::min(cell(i, j), cell(i - 2, j - 2) + 1);
        }
    return cell(left.size(), right.size());
}

} // namespace winterlarder
