// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/said_remark.h"

#include "text/remarks.h"

namespace winterlarder::desk {

namespace {

QString sourceOf(const Remark& remark, const ReferenceData& reference) {
    const auto sources = reference.sourcesOf(remark);
    if (sources.empty()) return {};
    const auto* source = reference.source(sources.front());
    return source ? QString::fromStdString(source->citation) : QString();
}

} // namespace

std::vector<SaidRemark> saidRemarks(const std::vector<Remark>& remarks, const ReferenceData& reference,
                                    const text::WordStyle& style) {
    std::vector<SaidRemark> said;
    for (const auto& remark : remarks) said.push_back({text::sentence(remark, style), sourceOf(remark, reference)});
    return said;
}

QString htmlOf(const std::vector<SaidRemark>& remarks, const QString& quiet) {
    QString html;
    for (const auto& remark : remarks) {
        html += QStringLiteral("<p style='margin-bottom:2px'>%1</p>").arg(remark.text.toHtmlEscaped());
        if (!remark.source.isEmpty())
            html += QStringLiteral("<p style='margin-top:0;margin-left:14px;color:%1'><small>%2</small></p>")
                        .arg(quiet, remark.source.toHtmlEscaped());
    }
    return html;
}

} // namespace winterlarder::desk
