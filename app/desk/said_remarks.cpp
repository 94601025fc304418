// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/said_remarks.h"

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

std::vector<SaidRemark> saidRemarks(const std::vector<advice::Remark>& remarks, const ReferenceData& reference,
                                    const text::WordStyle& style) {
    std::vector<SaidRemark> said;
    for (const auto& remark : remarks) said.push_back({text::sentence(remark, style), sourceOf(remark, reference)});
    return said;
}

} // namespace winterlarder::desk
