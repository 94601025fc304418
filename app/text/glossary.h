// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/style.h"

#include <QString>

#include <vector>

namespace winterlarder::text {

//! A word, or a key, and what it means or does.
struct Explained {
    QString term;
    QString words;
};
struct ExplainedSection {
    QString title;
    std::vector<Explained> rows;
};

//! Every word of the window that a keeper of a few colonies may not know, in our own words, by subject. A term is written as the window
//! writes it, in the words of the place. Tested: tests/app/help_test.cpp.
std::vector<ExplainedSection> glossary(const WordStyle& style = {});

} // namespace winterlarder::text
