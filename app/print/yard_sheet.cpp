// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/yard_sheet.h"

#include "models/due.h"
#include "models/job_table_model.h"
#include "models/words.h"
#include "models/yard_plan.h"
#include "widgets/feeding_page.h"
#include "widgets/yard_view.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QFont>
#include <QPrinter>
#include <QAbstractTextDocumentLayout>
#include <QTextDocument>

namespace winterlarder::desk {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("YardSheet", text);
}

QString row(const QStringList& cells, const QString& tag = QStringLiteral("td")) {
    QString html = QStringLiteral("<tr>");
    for (const auto& cell : cells) html += QStringLiteral("<%1>%2</%1>").arg(tag, cell.toHtmlEscaped());
    return html + QStringLiteral("</tr>");
}

QString colonyRow(const ColonyEntry& colony) {
    const QString name = QString::fromStdString(colony.record.colony.value_or(""));
    if (!colony.answered) return row({name, QString(), QString(), tr("not worked out"), QString()});
    const auto& advice = colony.answered->answer.advice;
    return row({name, advice.estimate ? words::spread(advice.estimate->spread) : tr("not known"), advice.need ? words::wholeKilograms(*advice.need) : tr("not known"),
                words::verdict(advice), words::due(dueOf(*colony.answered), colony.record.asOf)});
}

QString coloniesTable(const Yard& yard) {
    QString html = QStringLiteral("<table width='100%' cellpadding='4' cellspacing='0' border='1' style='border-collapse:collapse'>");
    html += row({tr("colony"), tr("in the hive"), tr("needed"), tr("what"), tr("when")}, QStringLiteral("th"));
    for (const auto& colony : yard.colonies()) html += colonyRow(colony);
    return html + QStringLiteral("</table>");
}

QString jobsTable(const YardPlan& plan) {
    QString html = QStringLiteral("<table width='100%' cellpadding='4' cellspacing='0' border='1' style='border-collapse:collapse'>");
    html += row({tr("day"), tr("colony"), tr("what"), tr("how much"), tr("done")}, QStringLiteral("th"));
    for (const auto& job : plan.jobs)
        html += row({job.date ? words::dateWithWeekday(*job.date) : tr("any day"), job.colony, jobWords(job.kind), jobAmount(job), QString()});
    return html + QStringLiteral("</table>");
}

QString recipes(const Yard& yard) {
    QString html;
    for (const auto& colony : yard.colonies()) {
        if (!colony.answered || colony.answered->answer.advice.verdict != advice::Verdict::Feed || !colony.answered->answer.advice.feed) continue;
        html += QStringLiteral("<p><b>%1.</b> %2. %3</p>")
                    .arg(QString::fromStdString(colony.record.colony.value_or("")).toHtmlEscaped(),
                         recipeWords(*colony.answered->answer.advice.feed).toHtmlEscaped(),
                         limitWords(*colony.answered->answer.advice.feed, colony.answered->question.winter).join(QLatin1Char(' ')).toHtmlEscaped());
    }
    return html;
}

QString answers(const Yard& yard) {
    QString html;
    for (const auto& colony : yard.colonies()) {
        if (!colony.answered) continue;
        html += QStringLiteral("<p><b>%1.</b> %2 %3</p>")
                    .arg(QString::fromStdString(colony.record.colony.value_or("")).toHtmlEscaped(), words::answerSentence(*colony.answered).toHtmlEscaped(),
                         words::riskLine(*colony.answered).toHtmlEscaped());
    }
    return html;
}

} // namespace

QString yardSheet(const Yard& yard) {
    const auto plan = planOf(yard);
    const auto today = yard.asOf();
    QString html = QStringLiteral("<html><body style='color:#000000'>");
    html += QStringLiteral("<h1>%1</h1><p>%2</p>").arg(yard.title().toHtmlEscaped(), today ? words::longDate(*today) : QString());
    html += QStringLiteral("<p><b>%1</b> %2</p>").arg(yardSentence(plan).toHtmlEscaped(), yardSmallLine(plan).toHtmlEscaped());
    html += QStringLiteral("<h2>%1</h2>").arg(tr("The colonies")) + coloniesTable(yard) + answers(yard);
    html += QStringLiteral("<h2>%1</h2>").arg(tr("Everything to do, by day")) + jobsTable(plan);
    const QString mixed = recipes(yard);
    if (!mixed.isEmpty()) html += QStringLiteral("<h2>%1</h2>").arg(tr("To mix")) + mixed;
    html += QStringLiteral("<p>%1</p>").arg(tr("Feed in the evening and inside the hive, entrances narrowed, no supers on. Where disease or medicines are concerned, the bee "
                                              "inspector, the vet and local law come first. No honey for infants under one year."));
    return html + QStringLiteral("</body></html>");
}

void printSheet(const QString& html, QPrinter& printer) {
    QTextDocument document;
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(9);
    document.setDefaultFont(font);
    document.setDefaultStyleSheet(QStringLiteral("h1{font-size:16pt;} h2{font-size:12pt;} th{background-color:#eeeeee;} p{margin:3px 0;}"));
    document.documentLayout()->setPaintDevice(&printer);
    document.setDocumentMargin(0);
    document.setHtml(html);
    document.setPageSize(printer.pageRect(QPrinter::DevicePixel).size());
    document.print(&printer);
}

bool saveSheet(const QString& html, const QString& path) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(path);
    printer.setPageSize(QPageSize(QPageSize::A4));
    printer.setPageMargins(QMarginsF(14, 14, 14, 14), QPageLayout::Millimeter);
    printSheet(html, printer);
    return QFileInfo(path).size() > 0;
}

} // namespace winterlarder::desk
