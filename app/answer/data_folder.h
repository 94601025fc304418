// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/reference.h"
#include "support/outcome.h"

#include <filesystem>
#include <optional>
#include <string>

namespace winterlarder::answer {

//! What decides where the shipped data are looked for; the caller reads environment and command line.
struct DataFolderChoice {
    std::optional<std::filesystem::path> option;      //!< --data: taken as it is
    std::optional<std::filesystem::path> environment; //!< WINTERLARDER_DATA: taken as it is
    std::filesystem::path executable;                 //!< this program's own file
};

//! The folder of the shipped data: the option, else the environment, else <executable>/../share/winterlarder if it is
//! there, else the source folder the program was built from. Tested: tests/answer/data_folder_test.cpp.
std::filesystem::path dataFolder(const DataFolderChoice& choice);

//! The program's own file, empty where the system does not tell.
std::filesystem::path executableFile();

//! The shipped data, found and read. A folder that is not there is one problem that says how to name another.
Outcome<ReferenceData> loadShippedData(const DataFolderChoice& choice);

} // namespace winterlarder::answer
