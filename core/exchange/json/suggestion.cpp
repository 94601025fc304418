// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json/suggestion.h"

#include "support/edit_distance.h"
#include "support/letters.h"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace winterlarder::exchange {

namespace {

constexpr std::size_t longestWord = 64;

// Lower is nearer; nothing like it gives the length of the word or more.
int remoteness(const std::string& written, const std::string& known) {
    const int edits = editDistance(written, known);
    constexpr std::size_t telling = 3; // letters
    const bool inside = (written.size() >= telling && known.find(written) != std::string::npos) ||
                        (known.size() >= telling && written.find(known) != std::string::npos);
    return inside ? std::min(edits, 1) : edits;
}

} // namespace

std::vector<std::string> nearWords(std::string_view written, const std::vector<std::string>& known, std::size_t most) {
    const std::string word = lowered(written.substr(0, longestWord));
    std::vector<std::pair<int, std::string>> ranked;
    for (const std::string& candidate : known) {
        const int far = remoteness(word, lowered(candidate));
        const int allowed = std::max(1, static_cast<int>(std::max(word.size(), candidate.size())) / 3);
        if (far <= allowed) ranked.emplace_back(far, candidate);
    }
    std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<std::string> words;
    for (std::size_t i = 0; i < std::min(most, ranked.size()); ++i) words.push_back(ranked[i].second);
    return words;
}

std::string suggestion(std::string_view written, const std::vector<std::string>& known) {
    const auto near = nearWords(written, known);
    if (near.size() == 1) return fmt::format("did you mean \"{}\"?", near[0]);
    if (!near.empty()) return fmt::format("did you mean \"{}\"?", fmt::join(near, "\" or \""));
    return fmt::format("known: {}", fmt::join(known, ", "));
}

} // namespace winterlarder::exchange
