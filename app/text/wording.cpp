// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/wording.h"

#include "text/contexts.h"

#include <algorithm>
#include <array>

namespace winterlarder::text {

namespace {

constexpr std::array<std::string_view, 2> northAmerica{"CA", "US"};

struct Noun {
    const char* place;
    QString said;
};

std::array<Noun, 7> nounsOf(const Wording& wording) {
    const bool frames = wording.frames;
    return {{{"%{comb}", frames ? say::Words::tr("frame") : say::Words::tr("comb")},
             {"%{combs}", frames ? say::Words::tr("frames") : say::Words::tr("combs")},
             {"%{Comb}", frames ? say::Words::tr("Frame") : say::Words::tr("Comb")},
             {"%{Combs}", frames ? say::Words::tr("Frames") : say::Words::tr("Combs")},
             {"%{board}", wording.candyBoard ? say::Words::tr("a candy board") : say::Words::tr("fondant")},
             {"%{Board}", wording.candyBoard ? say::Words::tr("A candy board") : say::Words::tr("Fondant")},
             {"%{wasps}", wording.candyBoard ? say::Words::tr("yellowjackets") : say::Words::tr("wasps")}}};
}

} // namespace

Wording wordingOf(std::string_view country, bool framed) {
    const bool there = std::find(northAmerica.begin(), northAmerica.end(), country) != northAmerica.end();
    return {.frames = there && framed, .candyBoard = there};
}

QString worded(QString sentence, const Wording& wording) {
    if (!sentence.contains(QLatin1String("%{"))) return sentence;
    for (const Noun& noun : nounsOf(wording)) sentence.replace(QLatin1String(noun.place), noun.said);
    return sentence;
}

} // namespace winterlarder::text
