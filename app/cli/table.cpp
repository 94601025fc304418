// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/table.h"

#include <algorithm>

namespace winterlarder::cli {

namespace {

constexpr qsizetype lineWidth = 100;

QString trimmedEnd(QString line) {
    while (line.endsWith(QLatin1Char(' '))) line.chop(1);
    return line;
}

} // namespace

TextTable::TextTable(const QStringList& headings) {
    for (const QString& heading : headings) {
        const bool right = heading.startsWith(QLatin1Char('>'));
        right_.push_back(right);
        headings_ << (right ? heading.mid(1) : heading);
    }
}

void TextTable::add(const QStringList& cells) { rows_.push_back(cells); }

QString TextTable::text() const {
    std::vector<qsizetype> widths;
    for (qsizetype column = 0; column < headings_.size(); ++column) {
        qsizetype width = headings_[column].size();
        for (const QStringList& row : rows_) width = std::max(width, row.value(column).size());
        widths.push_back(width);
    }
    const auto line = [&](const QStringList& cells) {
        QString result;
        for (qsizetype column = 0; column < headings_.size(); ++column) {
            const auto index = static_cast<std::size_t>(column);
            const QString cell = cells.value(column);
            result += QStringLiteral("  ") +
                      (right_[index] ? cell.rightJustified(widths[index]) : cell.leftJustified(widths[index]));
        }
        return trimmedEnd(result) + QLatin1Char('\n');
    };
    QString result = line(headings_);
    for (const QStringList& row : rows_) result += line(row);
    return result;
}

void FactList::add(const QString& label, const QString& value) {
    if (!value.isEmpty()) facts_.emplace_back(label, value);
}

QString FactList::text() const {
    qsizetype width = 0;
    for (const auto& fact : facts_) width = std::max(width, fact.first.size());
    QString result;
    for (const auto& fact : facts_)
        result += wrapped(fact.second, QStringLiteral("  %1  ").arg(fact.first.leftJustified(width)));
    return result;
}

QString wrapped(const QString& text, const QString& lead) {
    const QString indent(lead.size(), QLatin1Char(' '));
    QString result, line = lead;
    bool begun = false;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (begun && line.size() + 1 + word.size() > lineWidth) {
            result += trimmedEnd(line) + QLatin1Char('\n');
            line = indent;
            begun = false;
        }
        line += begun ? QLatin1Char(' ') + word : word;
        begun = true;
    }
    return result + trimmedEnd(line) + QLatin1Char('\n');
}

} // namespace winterlarder::cli
