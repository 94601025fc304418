// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/entry_form.h"

namespace winterlarder::desk {

//! The forms for everything a keeper writes down of a colony. Each opens over `parent` and is written to the yard's book; an entry
//! with id 0 is a new one. Tested: tests/app/fields_test.cpp.
EntryForm* askForLook(QWidget* parent, Yard* yard, const book::Look& look); //!< all but its combs, which are drawn
EntryForm* askForNote(QWidget* parent, Yard* yard, const book::Look& look);
EntryForm* askForWeighing(QWidget* parent, Yard* yard, const book::Weighing& weighing);
EntryForm* askForFeed(QWidget* parent, Yard* yard, const book::Feed& feed);
EntryForm* askForHarvest(QWidget* parent, Yard* yard, const book::Harvest& harvest);
EntryForm* askForTreatment(QWidget* parent, Yard* yard, const book::Treatment& treatment);
EntryForm* askForOutcome(QWidget* parent, Yard* yard, const book::WinterOutcome& outcome);
EntryForm* askForSighting(QWidget* parent, Yard* yard, const book::Sighting& sighting);

//! A colony's own data; a new colony asks for its hive too.
EntryForm* askForColony(QWidget* parent, Yard* yard, const book::Colony& colony);
//! Another hive from a day on.
EntryForm* askForHive(QWidget* parent, Yard* yard, const book::Housing& housing);
//! What became of a colony.
EntryForm* askForFate(QWidget* parent, Yard* yard, const book::Fate& fate);
//! Another yard from a day on.
EntryForm* askForMove(QWidget* parent, Yard* yard, const book::Move& move);

//! A new yard.
EntryForm* askForYard(QWidget* parent, Yard* yard, const book::Yard& added);

//! A new look on a day: the combs of the last one to begin with, the bees to be counted anew.
book::Look newLook(const book::ColonyHistory& records, Date day);
//! The hive as it stands on a day, to be changed from that day on; one written of that very day is changed itself.
book::Housing housingOn(const book::ColonyHistory& records, Date day);
//! The combs of an empty hive, for a first look: as many as it has places, nothing on them.
std::vector<book::CombRecord> emptyCombs(const book::HiveRecord& hive, const ReferenceData& reference);

} // namespace winterlarder::desk
