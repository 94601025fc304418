// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/data_folder.h"

namespace winterlarder::answer {

std::filesystem::path dataFolder(const DataFolderChoice& choice) {
    if (choice.option) return *choice.option;
    if (choice.environment) return *choice.environment;
    std::error_code ignored;
    if (!choice.executable.empty()) {
        const auto installed = choice.executable.parent_path().parent_path() / "share" / "winterlarder";
        if (std::filesystem::is_directory(installed, ignored)) return installed;
    }
    return WINTERLARDER_SOURCE_DATA;
}

std::filesystem::path executableFile() {
    std::error_code failed;
    const auto file = std::filesystem::read_symlink("/proc/self/exe", failed);
    return failed ? std::filesystem::path() : file;
}

Outcome<ReferenceData> loadShippedData(const DataFolderChoice& choice) {
    const auto folder = dataFolder(choice);
    std::error_code ignored;
    if (!std::filesystem::is_directory(folder, ignored))
        return Problem{ProblemKind::File,
                       {folder.string(), 0, 0},
                       "there is no such folder of shipped data",
                       "name it with --data or in WINTERLARDER_DATA"};
    return loadReference(folder);
}

} // namespace winterlarder::answer
