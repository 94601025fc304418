// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "dialogs/why_window.h"
#include "reference/reference.h"
#include "text/style.h"

namespace winterlarder::desk {

//! Reasons or cautions in words, each with the citation of the source shown for it.
std::vector<SaidRemark> saidRemarks(const std::vector<advice::Remark>& remarks, const ReferenceData& reference,
                                    const text::WordStyle& style);

} // namespace winterlarder::desk
