// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/sheet_html.h"

#include "models/words.h"
#include "print/sheet_words.h"
#include "text/remarks.h"

#include <algorithm>

namespace winterlarder::desk::print {

namespace {

QString element(const char* tag, const QString& text, const char* kind = "") {
    const QString name = QString::fromLatin1(tag);
    const QString attribute = *kind ? QStringLiteral(" class='%1'").arg(QString::fromLatin1(kind)) : QString();
    return QStringLiteral("<%1%2>%3</%1>").arg(name, attribute, text.toHtmlEscaped());
}

QString heading(const std::string& section) {
    return element("h2", headingOf(section));
}

QString factsOf(const report::Section& section, const std::vector<std::string>& without = {}) {
    QStringList said;
    for (const auto& fact : section.facts)
        if (std::find(without.begin(), without.end(), fact.id) == without.end())
            said << QStringLiteral("%1&nbsp;<b>%2</b>").arg(nameOf(fact.id).toHtmlEscaped(), textOf(fact.value).toHtmlEscaped());
    return said.isEmpty() ? QString() : QStringLiteral("<p>%1</p>").arg(said.join(QStringLiteral(" &#160;\u00b7&#160; ")));
}

QString cellOf(const report::Cell& cell) {
    return QStringLiteral("<td align='%1'>%2</td>").arg(standsRight(cell) ? QStringLiteral("right") : QStringLiteral("left"), textOf(cell).toHtmlEscaped());
}

QString tableOf(const report::Table& table) {
    if (table.rows.empty()) return {};
    QString html = QStringLiteral("<table width='100%' cellpadding='6' cellspacing='0' border='2' style='border-collapse:collapse'><thead><tr>");
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        html += QStringLiteral("<th align='%1'>%2</th>").arg(standsRight(table.rows.front()[i]) ? QStringLiteral("right") : QStringLiteral("left"), nameOf(table.columns[i]).toHtmlEscaped());
    html += QStringLiteral("</tr></thead>");
    for (const auto& row : table.rows) {
        html += QStringLiteral("<tr>");
        for (const auto& cell : row) html += cellOf(cell);
        html += QStringLiteral("</tr>");
    }
    return html + QStringLiteral("</table>");
}

QString remarksOf(const report::Section* section, const report::Sheet& sheet) {
    if (!section) return {};
    QString html = heading(section->id);
    for (const auto& remark : section->remarks) {
        const auto number = std::find(sheet.sources.begin(), sheet.sources.end(), remark.source) - sheet.sources.begin() + 1;
        const QString source = remark.source.empty() ? QString() : QStringLiteral(" <small>[%1]</small>").arg(number);
        html += QStringLiteral("<p>%1%2</p>").arg(text::sentence(remark.remark, words::style()).toHtmlEscaped(), source);
    }
    return html;
}

QString besideEachOther(const QString& left, const QString& right) {
    if (left.isEmpty() || right.isEmpty()) return left + right;
    return QStringLiteral("<table width='100%' cellpadding='0' cellspacing='0' border='0'><tr><td width='49%' valign='top'>%1</td><td width='2%'></td><td width='49%' valign='top'>%2</td></tr></table>")
        .arg(left, right);
}

QString sourcesOf(const report::Sheet& sheet, const ReferenceData& reference) {
    if (sheet.sources.empty()) return {};
    QStringList said;
    for (std::size_t i = 0; i < sheet.sources.size(); ++i) {
        const auto* source = reference.source(sheet.sources[i]);
        said << QStringLiteral("[%1]&nbsp;%2").arg(i + 1).arg(QString::fromStdString(source ? source->citation : sheet.sources[i]).toHtmlEscaped());
    }
    return heading("sources") + QStringLiteral("<p class='small'>%1</p>").arg(said.join(QStringLiteral(" &#160; ")));
}

QString listed(const report::Section* section) {
    return section ? heading(section->id) + factsOf(*section) + tableOf(section->table) : QString();
}

QString top(const report::Sheet& sheet, const SheetSentences& sentences) {
    const QString date = words::longDate(sheet.date);
    QString html = element("h1", QString::fromStdString(sheet.title));
    html += element("p", sheet.yard.empty() ? date : QStringLiteral("%1, %2").arg(QString::fromStdString(sheet.yard), date), "quiet");
    html += element("p", sentences.answer, "answer");
    for (const auto& line : sentences.below)
        if (!line.isEmpty()) html += element("p", line);
    return html;
}

} // namespace

QString htmlOf(const report::Sheet& sheet, const SheetSentences& sentences, const ReferenceData& reference) {
    QString html = QStringLiteral("<html><body>") + top(sheet, sentences);
    if (const auto* answer = sheet.section("answer")) html += factsOf(*answer);
    if (const auto* picture = sheet.section("picture"); picture && picture->winterPicture) html += QStringLiteral("<p><img src='picture'></p>");
    for (const auto* id : {"to-buy", "visits", "colonies", "gifts", "to-mix", "feeding", "take", "options", "evidence", "season"}) html += listed(sheet.section(id));
    html += besideEachOther(remarksOf(sheet.section("reasons"), sheet), remarksOf(sheet.section("cautions"), sheet));
    return html + sourcesOf(sheet, reference) + QStringLiteral("</body></html>");
}

} // namespace winterlarder::desk::print
