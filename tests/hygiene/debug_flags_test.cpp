// SPDX-License-Identifier: GPL-3.0-or-later
// A debug build is not optimised anywhere: what a debugger shows is what was written.
#include "hygiene/source_tree.h"

#include <gtest/gtest.h>

namespace hygiene::debug_flags_test {
namespace {

std::vector<std::string> buildFiles() {
    auto found = hygiene::files();
    std::erase_if(found, [](const std::string& path) {
        return !hygiene::endsWithAny(path, {"CMakeLists.txt", ".cmake", "CMakePresets.json"});
    });
    return found;
}

// Optimisation flags that a debug build gets too: those that stand outside of a condition that leaves it out.
int optimisedInDebug(const std::string& text) {
    static const std::regex conditional(R"(\$<\$<(CONFIG:Release|NOT:\$<CONFIG:Debug>)>:-O\w+>)");
    static const std::regex flag(R"(-O([1-9sgz]|fast)\b)");
    const std::string rest = std::regex_replace(text, conditional, "");
    return static_cast<int>(std::distance(std::sregex_iterator(rest.begin(), rest.end(), flag), {}));
}

TEST(DebugFlags, AreKnownInEveryForm) {
    EXPECT_EQ(optimisedInDebug("target_compile_options(a PRIVATE -O2 -Os)"), 2);
    EXPECT_EQ(optimisedInDebug("target_compile_options(a PRIVATE $<$<CONFIG:Debug>:-O1>)"), 1);
    EXPECT_EQ(optimisedInDebug("target_compile_options(a PRIVATE -O0 $<$<CONFIG:Release>:-O1>)"), 0);
    EXPECT_EQ(optimisedInDebug("COMPILE_OPTIONS $<$<NOT:$<CONFIG:Debug>>:-O2>"), 0);
}

TEST(DebugFlags, NoTargetIsOptimisedInADebugBuild) {
    int seen = 0;
    for (const std::string& path : buildFiles()) {
        if (path == "CMakePresets.json") continue;
        ++seen;
        EXPECT_EQ(optimisedInDebug(hygiene::text(path)), 0) << path << " optimises a debug build";
        EXPECT_EQ(hygiene::text(path).find("CMAKE_CXX_FLAGS_DEBUG"), std::string::npos) << path;
    }
    EXPECT_GE(seen, 3);
}

// A preset may have flags of its own for RelWithDebInfo alone, as the sanitizers do.
TEST(DebugFlags, PresetsLeaveThoseOfDebugAlone) {
    const std::string presets = hygiene::text("CMakePresets.json");
    ASSERT_NE(presets.find("\"CMAKE_BUILD_TYPE\": \"Debug\""), std::string::npos);
    for (const char* name : {"CMAKE_CXX_FLAGS\"", "CMAKE_CXX_FLAGS_DEBUG", "CMAKE_C_FLAGS\""})
        EXPECT_EQ(presets.find(name), std::string::npos) << name;
}

} // namespace
} // namespace hygiene::debug_flags_test
