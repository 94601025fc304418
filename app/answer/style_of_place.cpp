// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/style_of_place.h"

#include "answer/hive_of_case.h"
#include "answer/site_of_case.h"
#include "answer/units_of_place.h"

#include <algorithm>

namespace winterlarder::answer {

bool hangsInFrames(const advice::ColonyQuestion& question) {
    return std::all_of(question.boxes.begin(), question.boxes.end(), hive::hasFrames);
}
text::Wording wordingOf(const advice::ColonyQuestion& question) {
    return text::wordingOf(question.place.country, hangsInFrames(question));
}

text::Wording wordingOf(const book::SiteRecord& place, const book::HiveRecord& hive, const ReferenceData& reference) {
    advice::ColonyQuestion question;
    if (const auto site = siteOf(place, {}, reference)) question.place = whereaboutsOf(place, *site, reference);
    const bool known = std::all_of(hive.boxes.begin(), hive.boxes.end(), [&](const book::BoxRecord& box) {
        const auto* id = std::get_if<std::string>(&box.format);
        return !id || reference.format(*id);
    });
    if (known) question.boxes = boxesOf(hive, reference);
    return wordingOf(question);
}

bool wantsPoundsBeside(const advice::ColonyQuestion& question) {
    const std::string& country = question.place.country;
    return country == "CA" || country == "GB";
}

text::WordStyle styleFor(text::WordStyle style, const advice::ColonyQuestion& question) {
    style.wording = wordingOf(question);
    if (style.unitsChosen) return style;
    style.numbers.system = unitsOf(question);
    style.poundsBeside = !question.answers.units && wantsPoundsBeside(question);
    return style;
}

} // namespace winterlarder::answer
