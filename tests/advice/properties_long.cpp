// SPDX-License-Identifier: GPL-3.0-or-later
// Ten thousand colonies and four hundred of them moved gram by gram, or as many as WINTERLARDER_COLONIES says, from the seed WINTERLARDER_SEED on.
#include "advice/advice_properties.h"
#include "advice/grams_apart.h"

#include <cstdlib>

namespace winterlarder::advice::properties_long {

namespace {

unsigned fromEnvironment(const char* name, unsigned otherwise) {
    const char* text = std::getenv(name);
    return text ? static_cast<unsigned>(std::strtoul(text, nullptr, 10)) : otherwise;
}

} // namespace

TEST(ManyColonies, AllThatHoldsOfEveryAnswer) {
    properties::expectOverColonies(fromEnvironment("WINTERLARDER_SEED", 1000),
                                   fromEnvironment("WINTERLARDER_COLONIES", 10000));
}

TEST(ManyColonies, AGramAsksForNoMoreThanOneStepMore) {
    const unsigned first = fromEnvironment("WINTERLARDER_SEED", 1000),
                   count = fromEnvironment("WINTERLARDER_COLONIES", 10000) / 25;
    for (unsigned seed = first; seed < first + count; ++seed) grams_apart::expectNoJumps(seed, 1);
}

} // namespace winterlarder::advice::properties_long
