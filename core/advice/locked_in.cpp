// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/locked_in.h"

#include <algorithm>

namespace winterlarder::advice {

Mass coldestUsePerDay(const Reckoning& r) {
    const auto& ensemble = r.ensemble;
    const int length = std::min(30, ensemble.days());
    double coldest = 1e9, useG = 0;
    for (int first = 0; first + length <= ensemble.days(); ++first) {
        double warmth = 0, use = 0;
        for (int day = first; day < first + length; ++day) {
            warmth += r.question.site->curve.normal(ensemble.firstDay() + day).value();
            use += ensemble.means(ensemble.firstDay() + day).useG;
        }
        if (warmth >= coldest) continue;
        coldest = warmth;
        useG = use / length;
    }
    return grams(useG);
}

} // namespace winterlarder::advice
