// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/data_folder.h"

#include <gtest/gtest.h>
#include <unistd.h>

namespace winterlarder::answer::data_folder_test {
namespace {

TEST(DataFolder, OptionBeforeEnvironmentBeforeTheProgramsOwn) {
    EXPECT_EQ(dataFolder({"/a", "/b", "/usr/bin/x"}), "/a");
    EXPECT_EQ(dataFolder({{}, "/b", "/usr/bin/x"}), "/b");
    EXPECT_EQ(dataFolder({{}, {}, "/nowhere/bin/x"}), SHARED_FOLDER) << "the source folder, where nothing is installed";
}

TEST(DataFolder, AnInstalledProgramFindsItsShare) {
    const auto root = std::filesystem::temp_directory_path() / ("winterlarder-install-" + std::to_string(::getpid()));
    std::filesystem::create_directories(root / "share" / "winterlarder");
    EXPECT_EQ(dataFolder({{}, {}, root / "bin" / "winterlarder"}), root / "share" / "winterlarder");
    std::filesystem::remove_all(root);
}

TEST(DataFolder, AFolderThatIsNotThereIsFileTrouble) {
    const auto loaded = loadShippedData({"/nowhere", {}, {}});
    ASSERT_FALSE(loaded);
    EXPECT_EQ(loaded.problems().front().kind, ProblemKind::File);
    EXPECT_TRUE(loadShippedData({SHARED_FOLDER, {}, {}}));
}

TEST(DataFolder, TheProgramKnowsItsOwnFile) { EXPECT_EQ(executableFile().filename(), "test_answer"); }

} // namespace
} // namespace winterlarder::answer::data_folder_test
