// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/problem_words.h"

#include "text/contexts.h"

#include <QStringList>

#include <algorithm>

namespace winterlarder::desk {

bool isOurs(const Problems& problems) {
    const auto ours = [](const Problem& each) { return each.kind == ProblemKind::Internal; };
    return std::any_of(problems.begin(), problems.end(), ours);
}

QString problemWords(const Problem& problem) {
    const QString said = QString::fromStdString(describe(problem));
    if (problem.kind != ProblemKind::Internal) return said;
    return say::WindowWords::tr("This is an error of Winterlarder, not of yours (%1). What is written down is kept. "
                                "Please report it, with what you did just before.")
        .arg(said);
}

QString problemWords(const Problems& problems) {
    QStringList lines;
    for (const auto& problem : problems) lines << problemWords(problem);
    return lines.join(QLatin1Char('\n'));
}

} // namespace winterlarder::desk
