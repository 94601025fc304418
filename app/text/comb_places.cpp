// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/words.h"

#include "text/contexts.h"

#include <QStringList>
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

QString combPlaces(const std::vector<int>& positions, const std::vector<stores::Comb>& combs, std::size_t boxes) {
    std::map<int, std::vector<int>, std::greater<>> byBox;
    for (const int position : positions) {
        const auto& comb = combs.at(static_cast<std::size_t>(position));
        byBox[comb.box].push_back(comb.place + 1);
    }
    QStringList parts;
    for (const auto& entry : byBox) {
        const QString box = boxName(entry.first, boxes);
        parts << (box.isEmpty() ? say::Words::tr("combs %1 from the left").arg(listed(entry.second))
                                : say::Words::tr("%1, combs %2 from the left").arg(box, listed(entry.second)));
    }
    return parts.join(QLatin1String("; "));
}

} // namespace winterlarder::text
