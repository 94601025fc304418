// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/reference.h"
#include "text/style.h"

#include <QString>

#include <vector>

namespace winterlarder::desk {

//! A reason or caution as it is said, and where it comes from.
struct SaidRemark {
    QString text;
    QString source;
};

//! Reasons or cautions in words, each with the citation of the source shown for it.
std::vector<SaidRemark> saidRemarks(const std::vector<Remark>& remarks, const ReferenceData& reference,
                                    const text::WordStyle& style);

//! One paragraph each, its source below it in the quiet colour.
QString htmlOf(const std::vector<SaidRemark>& remarks, const QString& quiet);

} // namespace winterlarder::desk
