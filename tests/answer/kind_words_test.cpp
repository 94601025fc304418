// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/kind_words.h"

#include <gtest/gtest.h>
#include <set>

namespace winterlarder {
namespace {

TEST(KindWords, EveryKindHasItsOwn) {
    std::set<QString> names;
    for (int kind = 0; kind < book::kindCount; ++kind) names.insert(text::kindPlural(static_cast<book::Kind>(kind)));
    EXPECT_EQ(names.size(), static_cast<std::size_t>(book::kindCount));
    EXPECT_EQ(text::kindPlural(book::Kind::Sighting), "winter sightings");
    EXPECT_EQ(text::kindPlural(book::Kind::WeatherLog), "logs of temperatures") << "the last of them";
    EXPECT_EQ(text::wordOf(book::StepState::Abandoned), "abandoned");
    EXPECT_EQ(text::wordOf(book::ChangeHow::Remove), "remove");
}

} // namespace
} // namespace winterlarder
