// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/said_remark.h"

namespace winterlarder::desk {

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
