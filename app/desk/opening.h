// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "climate/gazetteer.h"
#include "desk/arguments.h"
#include "reference/reference.h"

#include <QString>

#include <memory>
#include <vector>

namespace winterlarder::desk {

//! What was read when the window opened: shipped data and colonies, or everything that was wrong.
struct Opened {
    std::shared_ptr<const ReferenceData> reference;
    std::vector<book::ColonyCase> records;  //!< of the files without fault, in their order
    std::vector<std::string> recordFiles{}; //!< the name of each one's file
    QStringList books;                      //!< book files, not opened yet
    QString demo; //!< the demo book, where the demo is asked for: as it was built, then its copy that is opened
    Problems problems;
    Problems asked{}; //!< of the records, which are taken all the same
};

//! The demo yard where asked for (or pictures without files). Where the shipped data and the demo book are looked for, by arguments,
//! environment and the program's own place. Tested: tests/app/demo_test.cpp.
Opened openAll(const Arguments& arguments);
//! Reads more case files with data already there.
Opened openFiles(const QStringList& files, std::shared_ptr<const ReferenceData> reference);

//! The places of the world; read once the window is at work, since only a search asks for them.
Outcome<std::shared_ptr<const climate::Gazetteer>> readPlaces(const Arguments& arguments,
                                                              const ReferenceData& reference);

//! The day the demo yard is looked at: that of its last looks.
inline const Date demoDay = *Date::of(2026, 9, 14);
//! The demo is opened as a copy that can be written, which goes with the window: copies it and names the copy instead. Where that fails the problems say so.
void copyDemo(Opened& opened, const QString& copy);

} // namespace winterlarder::desk
