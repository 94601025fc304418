// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/words.h"

#include "text/contexts.h"

#include <QStringList>
#include <algorithm>
#include <map>

namespace winterlarder::text {

namespace {

QString boxName(int box, std::size_t boxes) {
    if (boxes <= 1) return {};
    if (box + 1 == static_cast<int>(boxes)) return say::Words::tr("top box");
    if (box == 0) return say::Words::tr("bottom box");
    return boxes == 3 ? say::Words::tr("middle box") : say::Words::tr("box %1 from the floor").arg(box + 1);
}

QString listed(const std::vector<int>& places) {
    QStringList numbers;
    for (const int place : places) numbers << QString::number(place);
    if (numbers.size() < 2) return numbers.join(QString());
    const QString last = numbers.takeLast();
    return say::Words::tr("%1 and %2", "numbers of combs").arg(numbers.join(QLatin1String(", ")), last);
}

} // namespace

QString combPlaces(const std::vector<int>& positions, const std::vector<stores::Comb>& combs, std::size_t boxes,
                   const WordStyle& style) {
    std::map<int, int> all;
    for (const auto& comb : combs) ++all[comb.box];
    std::map<int, std::vector<advice::CombPlace>, std::greater<>> byBox;
    for (const int position : positions) {
        const auto& comb = combs.at(static_cast<std::size_t>(position));
        byBox[comb.box].push_back({comb.box, comb.place});
    }
    QStringList parts;
    for (const auto& entry : byBox) {
        const bool whole =
            boxes > 1 && static_cast<int>(entry.second.size()) == all[entry.first] && entry.second.size() > 1;
        parts << (whole ? worded(say::Words::tr("%1, all %2 %{combs}"), style)
                              .arg(boxName(entry.first, boxes))
                              .arg(entry.second.size())
                        : combPlaces(entry.second, boxes, style));
    }
    return parts.join(QLatin1String("; "));
}

QString combPlaces(const std::vector<advice::CombPlace>& places, std::size_t boxes, const WordStyle& style) {
    std::map<int, std::vector<int>, std::greater<>> byBox;
    for (const auto& at : places) byBox[at.box].push_back(at.place + 1);
    QStringList parts;
    for (auto& entry : byBox) {
        std::sort(entry.second.begin(), entry.second.end());
        const QString box = boxName(entry.first, boxes);
        if (entry.second.size() == 1)
            parts << (box.isEmpty()
                          ? worded(say::Words::tr("%{comb} %1 from the left"), style).arg(entry.second.front())
                          : worded(say::Words::tr("%1, %{comb} %2 from the left"), style)
                                .arg(box)
                                .arg(entry.second.front()));
        else
            parts << (box.isEmpty()
                          ? worded(say::Words::tr("%{combs} %1 from the left"), style).arg(listed(entry.second))
                          : worded(say::Words::tr("%1, %{combs} %2 from the left"), style)
                                .arg(box, listed(entry.second)));
    }
    return parts.join(QLatin1String("; "));
}

} // namespace winterlarder::text
