// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/outcome.h"

#include <string>
#include <string_view>
#include <vector>

//! Readers of what comes from outside, each given any bytes: by a fuzzer (preset fuzz, programs fuzz_NAME) and, in the usual tests, by
//! the inputs kept in tests/fuzz/corpus/NAME and by changed copies of them. More is held than that nothing breaks: what was read is
//! written and read back the same, numbers are finite and within their limits, every refusal says what is wrong and where.
namespace winterlarder::fuzz {

struct Target {
    const char* name;
    void (*run)(std::string_view input); //!< throws std::logic_error where something does not hold
};

//! All of them, by name; the inputs kept of each lie in the folder of corpus that is called so.
const std::vector<Target>& targets();
//! std::logic_error where there is none.
const Target& targetNamed(std::string_view name);

//! Throws std::logic_error with the sentence where it is not true.
void hold(bool holds, const std::string& sentence);
//! A refusal says what is wrong, in `file` where that is not empty, and is no error of the program.
void holdRefusal(const Problems& problems, const std::string& file = {});

void quantities(std::string_view input); //!< first byte: which quantity, unit and style
void dates(std::string_view input);
void caseFile(std::string_view input);
void jsonLines(std::string_view input);
void combsFile(std::string_view input);
void temperatures(std::string_view input); //!< first line: the columns
void scaleLog(std::string_view input);
void calendarText(std::string_view input); //!< name, summary and details, a line each
void bookCsv(std::string_view input);      //!< first byte: which table
void bookJson(std::string_view input);
void bookFile(std::string_view input);

} // namespace winterlarder::fuzz
