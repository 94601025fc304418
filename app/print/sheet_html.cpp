// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/sheet_html.h"

#include "models/words.h"
#include "print/sheet_words.h"
#include "text/foreign_text.h"
#include "text/remarks.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace winterlarder::desk::print {

namespace {

constexpr double lettersInPage = 100, paddingLetters = 2, doneLetters = 6;
constexpr double lettersInHalf = 66; // of a line in half the page's width, at the sizes sheets are printed in

QString element(const char* tag, const QString& text, const char* kind = "") {
    const QString name = QString::fromLatin1(tag);
    const QString attribute = *kind ? QStringLiteral(" class='%1'").arg(QString::fromLatin1(kind)) : QString();
    return QStringLiteral("<%1%2>%3</%1>").arg(name, attribute, text.toHtmlEscaped());
}

QString heading(const std::string& section, const text::WordStyle& style) {
    return element("h2", headingOf(section, style));
}

QString factsOf(const report::Section& section, const text::WordStyle& style,
                const std::vector<std::string>& without = {}) {
    QStringList said;
    for (const auto& fact : section.facts)
        if (std::find(without.begin(), without.end(), fact.id) == without.end())
            said << QStringLiteral("%1&nbsp;<b>%2</b>")
                        .arg(nameOf(fact.id, style).toHtmlEscaped(), textOf(fact.value, style).toHtmlEscaped());
    return said.isEmpty() ? QString()
                          : QStringLiteral("<p>%1</p>").arg(said.join(QStringLiteral(" &#160;\u00b7&#160; ")));
}

// A number stays with its unit, and what stands in brackets in one line.
QString unbroken(QString text) {
    if (text.isEmpty() || !text.front().isDigit()) return text;
    const auto bracket = text.indexOf(QLatin1Char('('));
    for (qsizetype i = 1; i < text.size(); ++i)
        if (text[i] == QLatin1Char(' ') && ((bracket >= 0 && i > bracket) || text[i - 1].isDigit()) && i + 1 != bracket)
            text[i] = QChar::Nbsp;
    return text;
}

QString cellOf(const report::Cell& cell, const text::WordStyle& style) {
    return QStringLiteral("<td align='%1'>%2</td>")
        .arg(standsRight(cell) ? QStringLiteral("right") : QStringLiteral("left"),
             unbroken(textOf(cell, style)).toHtmlEscaped());
}

// A column nothing stands in is left out, but for the one to be ticked by hand.
std::vector<std::size_t> columnsShown(const report::Table& table) {
    std::vector<std::size_t> shown;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const bool said =
            std::any_of(table.rows.begin(), table.rows.end(), [i](const auto& row) { return !row[i].empty(); });
        if (said || table.columns[i] == "done") shown.push_back(i);
    }
    return shown;
}

bool columnStandsRight(const report::Table& table, std::size_t column) {
    return std::any_of(table.rows.begin(), table.rows.end(),
                       [column](const auto& row) { return standsRight(row[column]); });
}

// Letters of the longest piece that is not broken, and of the whole.
struct Letters {
    double piece = 0, whole = 0;
    void add(const QString& text) {
        whole = std::max(whole, static_cast<double>(text.size()));
        for (const auto& each : text.split(QLatin1Char(' '))) piece = std::max(piece, static_cast<double>(each.size()));
    }
};

// Hundredths of the width a column: room for its longest piece first, what is left to those that have to break their lines.
std::vector<double> widthsOf(const report::Table& table, const std::vector<std::size_t>& shown,
                             const text::WordStyle& style) {
    std::vector<Letters> letters;
    for (const auto column : shown) {
        Letters all{table.columns[column] == "done" ? doneLetters : 0.0, 0};
        all.add(nameOf(table.columns[column], style));
        for (const auto& row : table.rows) all.add(unbroken(textOf(row[column], style)));
        letters.push_back({all.piece + paddingLetters, std::max(all.piece, all.whole) + paddingLetters});
    }
    const auto sum = [&](double Letters::*member) {
        return std::accumulate(letters.begin(), letters.end(), 0.0,
                               [member](double all, const Letters& each) { return all + each.*member; });
    };
    const double pieces = sum(&Letters::piece), wholes = sum(&Letters::whole);
    const double spare = std::clamp((lettersInPage - pieces) / std::max(1.0, wholes - pieces), 0.0, 1.0);
    std::vector<double> widths;
    double used = 0;
    for (const auto& each : letters) used += widths.emplace_back(std::lerp(each.piece, each.whole, spare));
    for (auto& width : widths) width *= 100 / used;
    return widths;
}

QString tableOf(const report::Table& table, const text::WordStyle& style) {
    if (table.rows.empty()) return {};
    const auto shown = columnsShown(table);
    const auto widths = widthsOf(table, shown, style);
    QString html = QStringLiteral(
        "<table width='100%' cellpadding='6' cellspacing='0' border='2' style='border-collapse:collapse'><thead><tr>");
    for (std::size_t at = 0; at < shown.size(); ++at)
        html += QStringLiteral("<th align='%1' width='%2%'>%3</th>")
                    .arg(columnStandsRight(table, shown[at]) ? QStringLiteral("right") : QStringLiteral("left"))
                    .arg(widths[at], 0, 'f', 1)
                    .arg(nameOf(table.columns[shown[at]], style).toHtmlEscaped());
    html += QStringLiteral("</tr></thead>");
    for (const auto& row : table.rows) {
        html += QStringLiteral("<tr>");
        for (const auto i : shown) html += cellOf(row[i], style);
        html += QStringLiteral("</tr>");
    }
    return html + QStringLiteral("</table>");
}

// A paragraph and about how many lines it takes in half a page's width.
struct Paragraph {
    QString html;
    double lines = 0;
};

void addRemarks(std::vector<Paragraph>& paragraphs, const report::Section* section, const report::Sheet& sheet,
                const text::WordStyle& style) {
    if (!section) return;
    paragraphs.push_back({heading(section->id, style), 2});
    for (const auto& remark : section->remarks) {
        const auto number =
            std::find(sheet.sources.begin(), sheet.sources.end(), remark.source) - sheet.sources.begin() + 1;
        const QString source = remark.source.empty() ? QString() : QStringLiteral(" <small>[%1]</small>").arg(number);
        const QString said = text::sentence(remark.remark, style);
        paragraphs.push_back({QStringLiteral("<p>%1%2</p>").arg(said.toHtmlEscaped(), source),
                              std::ceil(static_cast<double>(said.size() + 5) / lettersInHalf) + 0.2});
    }
}

// In two columns of about the same length, read down the left one first; a heading stays with what follows it.
QString inTwoColumns(const std::vector<Paragraph>& paragraphs) {
    if (paragraphs.empty()) return {};
    const double all = std::accumulate(paragraphs.begin(), paragraphs.end(), 0.0,
                                       [](double sum, const Paragraph& each) { return sum + each.lines; });
    QString columns[2];
    double before = 0;
    bool right = false;
    for (const auto& each : paragraphs) {
        right = right || before + each.lines / 2 > all / 2;
        columns[right ? 1 : 0] += each.html;
        before += each.lines;
    }
    return QStringLiteral(
               "<table width='100%' cellpadding='0' cellspacing='0' border='0'><tr><td width='49%' valign='top'>%1</td><td width='2%'></td><td width='49%' valign='top'>%2</td></tr></table>")
        .arg(columns[0], columns[1]);
}

QString remarksOf(const report::Sheet& sheet, const text::WordStyle& style) {
    std::vector<Paragraph> paragraphs;
    addRemarks(paragraphs, sheet.section("reasons"), sheet, style);
    addRemarks(paragraphs, sheet.section("cautions"), sheet, style);
    return inTwoColumns(paragraphs);
}

QString sourcesOf(const report::Sheet& sheet, const ReferenceData& reference, const text::WordStyle& style) {
    if (sheet.sources.empty()) return {};
    QStringList said;
    for (std::size_t i = 0; i < sheet.sources.size(); ++i) {
        const auto* source = reference.source(sheet.sources[i]);
        said << QStringLiteral("[%1]&nbsp;%2")
                    .arg(i + 1)
                    .arg(QString::fromStdString(source ? source->citation : sheet.sources[i]).toHtmlEscaped());
    }
    return heading("sources", style) +
           QStringLiteral("<p class='small'>%1</p>").arg(said.join(QStringLiteral(" &#160; ")));
}

QString listed(const report::Section* section, const text::WordStyle& style) {
    return section ? heading(section->id, style) + factsOf(*section, style) + tableOf(section->table, style)
                   : QString();
}

// In one line: "combs looked at 9 kg (7 to 11), Sun 13 Sep".
QString inOneLine(const report::Section* section, const text::WordStyle& style) {
    if (!section) return {};
    QStringList said;
    for (const auto& row : section->table.rows)
        said << QStringLiteral("%1&nbsp;<b>%2</b>, %3")
                    .arg(textOf(row[0], style).toHtmlEscaped(), textOf(row[2], style).toHtmlEscaped(),
                         textOf(row[1], style).toHtmlEscaped());
    return heading(section->id, style) +
           QStringLiteral("<p>%1</p>").arg(said.join(QStringLiteral(" &#160;\u00b7&#160; ")));
}

QString top(const report::Sheet& sheet, const SheetSentences& sentences) {
    const QString date = words::longDate(sheet.date);
    QString html = element("h1", text::shown(sheet.title));
    html +=
        element("p", sheet.yard.empty() ? date : QStringLiteral("%1, %2").arg(text::shown(sheet.yard), date), "quiet");
    html += element("p", sentences.answer, "answer");
    for (const auto& line : sentences.below)
        if (!line.isEmpty()) html += element("p", line);
    return html;
}

} // namespace

QString htmlOf(const report::Sheet& sheet, const SheetSentences& sentences, const ReferenceData& reference) {
    const auto& style = sentences.style;
    QString html = QStringLiteral("<html><body>") + top(sheet, sentences);
    if (const auto* answer = sheet.section("answer"))
        html += factsOf(*answer, style, {"verdict"}); // the sentence above said it
    if (const auto* picture = sheet.section("picture"); picture && picture->winterPicture)
        html += QStringLiteral("<p><img src='picture'></p>");
    for (const auto* id : {"to-buy", "visits", "colonies", "gifts", "to-mix", "feeding", "take", "options"})
        html += listed(sheet.section(id), style);
    html += inOneLine(sheet.section("evidence"), style) + listed(sheet.section("season"), style);
    return html + remarksOf(sheet, style) + sourcesOf(sheet, reference, style) + QStringLiteral("</body></html>");
}

} // namespace winterlarder::desk::print
