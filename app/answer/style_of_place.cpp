// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/style_of_place.h"

#include "answer/units_of_place.h"

#include <algorithm>

namespace winterlarder::answer {

bool hangsInFrames(const advice::ColonyQuestion& question) {
    return std::all_of(question.boxes.begin(), question.boxes.end(), hive::hasFrames);
}
text::Wording wordingOf(const advice::ColonyQuestion& question) {
    return text::wordingOf(question.place.country, hangsInFrames(question));
}

text::WordStyle styleFor(text::WordStyle style, const advice::ColonyQuestion& question) {
    style.wording = wordingOf(question);
    if (style.unitsChosen) return style;
    const std::string& country = question.place.country;
    style.numbers.system = unitsOf(question);
    style.poundsBeside = !question.answers.units && (country == "CA" || country == "GB");
    return style;
}

} // namespace winterlarder::answer
