// SPDX-License-Identifier: GPL-3.0-or-later
// What headers must be; that each compiles alone is in headers_long.cpp.
#include "hygiene/headers_alone.h"

#include <gtest/gtest.h>

namespace hygiene::headers_test {
namespace {

TEST(Headers, AFaultyOneIsSeen) {
    const auto path = std::filesystem::path(BUILD_FOLDER) / "faulty_header.h";
    std::ofstream(path) << "inline std::string words() { return {}; }\n";
    const std::string relative = path.lexically_relative(hygiene::projectFolder()).generic_string();
    EXPECT_NE(hygiene::complaint(relative, hygiene::commandsByTarget().at("winterlarder_core")), "");
    std::filesystem::remove(path);
}

TEST(Headers, EveryOneIsReadOnce) {
    for (const char* root : {"core", "app"})
        for (const std::string& path : hygiene::cppFiles(root))
            if (path.ends_with(".h")) {
                EXPECT_NE(hygiene::text(path).find("#pragma once"), std::string::npos) << path;
            }
}

} // namespace
} // namespace hygiene::headers_test
