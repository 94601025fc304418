// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "text/style.h"

#include <QString>
#include <string>
#include <vector>

namespace winterlarder::text {

//! The full sentence of a reason, caution or refusal, its details filled in. An id without words gives the id itself; a
//! test holds that every id of shared/rules/cautions.csv has words and every id with words is there. Tested:
//! tests/answer/remarks_test.cpp.
QString sentence(const advice::Remark& remark, const WordStyle& style);

//! Whether one of them is this remark, said with this class.
bool isSaid(const std::vector<advice::Remark>& remarks, const std::string& id, const std::string& word);

//! Every id that has words, each once.
std::vector<std::string> idsWithWords();

} // namespace winterlarder::text
