// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "text/style.h"

#include <QString>
#include <string_view>

namespace winterlarder::text {

//! The question as a sentence. Tested: tests/app/words_test.cpp.
QString question(const advice::Ask& ask, const WordStyle& style);
//! Its name in the answers, and the key of the case file that answers it.
std::string_view idOf(advice::AskKind kind);
std::string_view keyOf(advice::AskKind kind);

} // namespace winterlarder::text
