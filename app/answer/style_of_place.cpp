// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/style_of_place.h"

#include "answer/units_of_place.h"

namespace winterlarder::answer {

text::WordStyle styleFor(text::WordStyle style, const advice::ColonyQuestion& question) {
    const std::string& country = question.place.country;
    style.numbers.system = unitsOf(question);
    style.poundsBeside = !question.answers.units && (country == "CA" || country == "GB");
    return style;
}

} // namespace winterlarder::answer
