// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/outcome.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

//! How much is taken from outside: the one table of it. Whatever is larger is refused, never cut, with what it is and how much is allowed;
//! far beyond what a keeper writes, far below what would fill a machine. DEVELOPERS.md, "Limits", says the same in words.
namespace winterlarder::limits {

inline constexpr std::size_t kibi = 1024, mebi = 1024 * kibi;

//! The most bytes of one kind of text.
struct TextSize {
    std::string_view what;
    std::size_t bytes;
};
inline constexpr TextSize caseText{"a case", 4 * mebi}; //!< a file, or a line of standard input; also a list of combs
inline constexpr TextSize documentText{"a document of a book", 256 * mebi};
inline constexpr TextSize tableText{"a table",
                                    256 * mebi};       //!< CSV, but for logs of scales, which are read line by line
inline constexpr std::size_t logLine = 64 * kibi;      //!< of a scale's log; a longer one is left out and listed
inline constexpr std::size_t passedOver = 1024 * mebi; //!< of one line that is too long: here reading ends
inline constexpr std::size_t logRows = 50'000'000;     //!< a reading every ten seconds for fifteen years

inline constexpr std::size_t jsonNesting = 32;
inline constexpr std::size_t jsonValues = 10'000'000; //!< of one text; each takes 70 to 150 bytes of memory
inline constexpr std::size_t listMembers = 10'000;    //!< weighings, feeds or harvests of a case
inline constexpr std::size_t tableColumns = 10'000;
inline constexpr std::int64_t nameCharacters = 200;       //!< of a colony, a yard
inline constexpr std::int64_t textCharacters = 2'000'000; //!< of a note
inline constexpr std::size_t suggestedKeys =
    50; //!< unknown keys of one object (columns of a table) that get a suggestion

//! "4 MiB"
std::string bytesInWords(std::size_t bytes);
//! The refusal of a text that is too large.
Problem tooLarge(Place place, const TextSize& most);

} // namespace winterlarder::limits
