// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

//! Choices that a record holds and the models reckon with, so that neither has a copy of its own. Their words in files:
//! core/book/entries/words.h.
namespace winterlarder {

enum class HeftWord { Light, Fair, Heavy }; //!< a hive lifted by hand
enum class SupersFor { People, Bees };      //!< whom the honey of the supers is for
enum class HoneyKind { Blossom, Honeydew, Heather };
enum class VisitKind { Syrup, Fondant, Check }; //!< what a visit of a feeding plan is for

} // namespace winterlarder
