// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/handbook.h"

#include "support/as_number.h"
#include "support/require.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace winterlarder::answer {

namespace {

double numberOf(std::string_view text) {
    const auto value = asNumber<double>(text);
    require(value.has_value(), "{} is no number of kilograms", text);
    return *value;
}

struct Rule {
    HandbookFigure figure;
    const Station* station = nullptr;
};

Rule ruleOf(const PublishedRule& published, const ReferenceData& reference) {
    const auto dash = published.value.find('-');
    require(dash != std::string::npos && published.unit == "kg", "rule {} gives no range of kilograms", published.id);
    const std::string_view value = published.value;
    const Mass middle = kilograms((numberOf(value.substr(0, dash)) + numberOf(value.substr(dash + 1))) / 2);
    const auto space = published.condition.rfind(' ');
    const Station* station = reference.station(published.condition.substr(space + 1));
    require(station != nullptr, "rule {} names no station", published.id);
    return {{middle, middle - kilograms(reference.decisions.handbookReserve), published.region, published.id,
             published.source},
            station};
}

std::vector<Rule> rulesOf(Hemisphere hemisphere, const ReferenceData& reference) {
    std::vector<Rule> rules;
    for (const auto& published : reference.rules) {
        if (published.topic != handbookTopic) continue;
        Rule rule = ruleOf(published, reference);
        if ((rule.station->latitude < 0) == (hemisphere == Hemisphere::South)) rules.push_back(std::move(rule));
    }
    require(!rules.empty(), "no rule {} is shipped for this hemisphere", handbookTopic);
    return rules;
}

} // namespace

HandbookFigure handbookFor(const climate::Site& site, const ReferenceData& reference) {
    auto rules = rulesOf(site.curve.hemisphere(), reference);
    const Station* here = site.stationId.empty() ? nullptr : reference.station(site.stationId);
    if (!here) {
        const auto middle = rules.begin() + static_cast<std::ptrdiff_t>(rules.size() / 2);
        std::nth_element(rules.begin(), middle, rules.end(),
                         [](const Rule& a, const Rule& b) { return a.figure.toHave < b.figure.toHave; });
        return middle->figure;
    }
    const auto far = [&](const Rule& rule) {
        return climate::distanceKm(here->latitude, here->longitude, rule.station->latitude, rule.station->longitude);
    };
    return std::min_element(rules.begin(), rules.end(), [&](const Rule& a, const Rule& b) { return far(a) < far(b); })
        ->figure;
}

} // namespace winterlarder::answer
