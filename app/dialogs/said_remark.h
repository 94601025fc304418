// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <vector>

namespace winterlarder::desk {

//! A reason or caution as it is said, and where it comes from.
struct SaidRemark {
    QString text;
    QString source;
};

//! One paragraph each, its source below it in the quiet colour.
QString htmlOf(const std::vector<SaidRemark>& remarks, const QString& quiet);

} // namespace winterlarder::desk
