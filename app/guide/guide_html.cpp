// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/guide_html.h"

#include "text/contexts.h"

namespace winterlarder::desk {

namespace {

class PageWriter {
public:
    PageWriter(const Colours& colours, const GuideLook& look) : colours_(colours), look_(look) {}

    void operator()(const text::GuideParagraph& paragraph) {
        html += QStringLiteral("<p>%1</p>").arg(paragraph.words.toHtmlEscaped());
    }
    void operator()(const text::GuidePoint& point) {
        html += QStringLiteral("<p><b>%1.</b> %2</p>").arg(point.name.toHtmlEscaped(), point.words.toHtmlEscaped());
    }
    void operator()(const text::GuidePicture& picture) {
        html += QStringLiteral(
                    "<p align='center'><img src='%1' width='%2' alt='%3'><br><span style='color:%4'>%3</span></p>")
                    .arg(drawingName(picture.drawing))
                    .arg(look_.drawingWidth)
                    .arg(picture.says.toHtmlEscaped(), colours_.quietText.name());
    }
    void operator()(const text::GuideTable& table) {
        html += QStringLiteral("<table cellspacing='0'><tr>");
        cells(table.headings, QStringLiteral("th"));
        for (const QStringList& row : table.rows) {
            html += QStringLiteral("</tr><tr>");
            cells(row, QStringLiteral("td"));
        }
        html += QStringLiteral("</tr></table>");
        const bool ofHives = look_.hasOwnHives && table.headings.front() == text::guideHiveHeading();
        if (ofHives)
            html += QStringLiteral("<p><a href='%1'>%2</a></p>")
                        .arg(QLatin1String(allHivesLink),
                             (look_.allHives ? say::Guide::tr("Only my hives") : say::Guide::tr("Every hive"))
                                 .toHtmlEscaped());
    }
    QString html;

private:
    void cells(const QStringList& row, const QString& tag) {
        for (int at = 0; at < row.size(); ++at)
            html += QStringLiteral("<%1 align='%2' style='padding: 3px 14px 3px 0'>%3</%1>")
                        .arg(tag, at ? QStringLiteral("right") : QStringLiteral("left"), row[at].toHtmlEscaped());
    }
    const Colours& colours_;
    const GuideLook& look_;
};

} // namespace

QString drawingName(text::GuideDrawing drawing) { return QStringLiteral("drawing:%1").arg(static_cast<int>(drawing)); }

std::optional<text::GuideDrawing> drawingCalled(const QString& name) {
    for (const auto drawing : text::allGuideDrawings)
        if (drawingName(drawing) == name) return drawing;
    return std::nullopt;
}

QString guideHtml(const text::GuideText& page, const ReferenceData& reference, const Colours& colours,
                  const GuideLook& look) {
    PageWriter writer(colours, look);
    writer.html = QStringLiteral("<h2>%1</h2>").arg(page.title.toHtmlEscaped());
    for (const auto& part : page.parts) std::visit(writer, part);
    QStringList sources;
    for (const auto& id : page.sources) sources << QString::fromStdString(reference.source(id)->citation);
    return writer.html +
           QStringLiteral("<p style='color:%1'>%2</p>")
               .arg(colours.quietText.name(),
                    say::Guide::tr("Sources: %1.").arg(sources.join(QStringLiteral("; "))).toHtmlEscaped());
}

} // namespace winterlarder::desk
