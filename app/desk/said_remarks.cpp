// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/said_remarks.h"

#include "models/words.h"
#include "text/remarks.h"

namespace winterlarder::desk {

namespace {

QString sourceOf(const std::string& id, const ReferenceData& reference) {
    const auto* rule = reference.caution(id);
    if (!rule || rule->sources.empty()) return {};
    const auto* source = reference.source(rule->sources.front());
    return source ? QString::fromStdString(source->citation) : QString();
}

} // namespace

std::vector<SaidRemark> saidRemarks(const std::vector<advice::Remark>& remarks, const ReferenceData& reference) {
    std::vector<SaidRemark> said;
    for (const auto& remark : remarks) said.push_back({text::sentence(remark, words::style()), sourceOf(remark.id, reference)});
    return said;
}

} // namespace winterlarder::desk
