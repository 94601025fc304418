// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/records.h"
#include "desk/arguments.h"
#include "reference/reference.h"

#include <QString>

#include <memory>
#include <vector>

namespace winterlarder::desk {

//! What was read when the window opened: shipped data and colonies, or everything that was wrong.
struct Opened {
    std::shared_ptr<const ReferenceData> reference;
    std::vector<book::ColonyCase> records; //!< of the files without fault, in their order
    QStringList books;                     //!< book files, not opened yet
    Problems problems;
};

//! The demo yard where asked for (or pictures without files). Where the shipped data are looked for, by arguments, environment and the program's own place.
Opened openAll(const Arguments& arguments);
//! Reads more case files with data already there.
Opened openFiles(const QStringList& files, std::shared_ptr<const ReferenceData> reference);

//! The demo yard's case files: beside the shipped data where installed, else in the source folder.
QStringList demoFiles(const QString& dataFolder);

} // namespace winterlarder::desk
