// SPDX-License-Identifier: GPL-3.0-or-later
// The core library answers a case by itself: a program linked with it alone says what the command line says.
#include "cli/program.h"

#include <gtest/gtest.h>

namespace winterlarder::core_alone_test {
namespace {

using namespace winterlarder::testing;

exchange::JsonValue answeredByCoreAlone(const std::string& file) {
    const TemporaryFolder folder;
    const auto out = folder.path() / "out";
    const std::string command = "'" BUILD_FOLDER "/core_alone' '" SOURCE_FOLDER "/shared' '" SOURCE_FOLDER
                                "/tests/cli/cases/" +
                                file + "' >'" + out.string() + "'";
    EXPECT_EQ(std::system(command.c_str()), 0);
    return jsonOf(textOfFile(out));
}

double numberAt(const exchange::JsonValue& object, const std::string& name) {
    const auto* member = memberOf(object, name);
    if (!member || member->kind != exchange::JsonValue::Kind::Number) throw std::runtime_error("no number " + name);
    return member->number;
}

TEST(CoreAlone, AnswersACaseAsTheProgramDoes) {
    for (const std::string file : {"light.json", "south.json", "spare.json"}) {
        const auto alone = answeredByCoreAlone(file);
        const auto said = jsonOf(runProgram("advise " + file + " --json --winters 300 --seed 1").out);
        EXPECT_EQ(numberAt(alone, "stores_kg"), numberAt(*memberOf(said, "stores_kg"), "typical")) << file;
        EXPECT_EQ(numberAt(alone, "need_kg"), numberAt(said, "need_kg")) << file;
        const auto* feed = memberOf(said, "feed");
        ASSERT_NE(feed, nullptr);
        if (!feed->members.empty()) EXPECT_EQ(numberAt(alone, "fed_stores_kg"), numberAt(*feed, "stores_kg")) << file;
    }
}

TEST(CoreAlone, LinksNoQt) {
    const TemporaryFolder folder;
    const auto out = folder.path() / "out";
    ASSERT_EQ(std::system(("ldd '" BUILD_FOLDER "/core_alone' >'" + out.string() + "'").c_str()), 0);
    const std::string linked = textOfFile(out);
    EXPECT_NE(linked.find("libsqlite3"), std::string::npos) << "what is looked at is a list of libraries";
    EXPECT_EQ(linked.find("Qt"), std::string::npos) << linked;
}

} // namespace
} // namespace winterlarder::core_alone_test
