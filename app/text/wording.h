// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string_view>

namespace winterlarder::text {

//! What beekeepers of a place call things. It goes with the units in a WordStyle to everything that is said; sentences hold the nouns as
//! %{comb}, %{combs}, %{Comb}, %{Combs}, %{board}, %{Board} and %{wasps}, which a translation may use or say in its own words.
struct Wording {
    bool frames = false;     //!< the combs of a framed hive are called frames
    bool candyBoard = false; //!< fondant laid on when a hive is wrapped is a candy board, and wasps are yellowjackets
    bool operator==(const Wording&) const = default;
};

//! By the country (ISO 3166; empty: none), the one place where it is decided: frames, candy board and yellowjackets in the United States and Canada, combs and
//! fondant everywhere else. `framed`: whether the hives spoken of have frames; combs on bare bars are combs everywhere.
//! Tested: tests/answer/wording_test.cpp.
Wording wordingOf(std::string_view country, bool framed);

//! The sentence with its nouns; before its other places are filled, so that no name is taken for one.
QString worded(QString sentence, const Wording& wording);

} // namespace winterlarder::text
