// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"

namespace winterlarder::advice {

//! At most five cautions are said, each once: this case's danger, what to check before acting, robbing and safe feeding, honey safety, the next date; where a
//! kind has none, a second danger or check. Everything else is good practice. In summer mites come first (van-dooremalen-2012). Tested:
//! tests/advice/told_test.cpp.
struct SaidCautions {
    std::vector<Remark> cautions, goodPractice;
};
SaidCautions fiveCautions(std::vector<Remark> all, const Advice& advice);

} // namespace winterlarder::advice
