// SPDX-License-Identifier: GPL-3.0-or-later
// Manners of the window that the compiler cannot hold.
#include "hygiene/source_tree.h"

#include <gtest/gtest.h>

#include <cctype>
#include <map>

namespace hygiene::window_manners_test {
namespace {

// A name by itself, not the beginning of a longer one: "std::thread" is not in "std::thread::id".
bool names(const std::string& code, const std::string& name) {
    for (auto at = code.find(name); at != code.npos; at = code.find(name, at + 1)) {
        const char after = at + name.size() < code.size() ? code[at + name.size()] : ' ';
        if (!std::isalnum(static_cast<unsigned char>(after)) && after != '_' && after != ':') return true;
    }
    return false;
}

const std::map<std::string, std::string>& codeOfWindow() {
    static const auto all = [] {
        std::map<std::string, std::string> code;
        for (const std::string& path : hygiene::cppFiles("app"))
            if (!path.starts_with("app/cli/")) code[path] = hygiene::codeOnly(hygiene::text(path));
        return code;
    }();
    return all;
}

std::vector<std::string> placesOf(const std::vector<std::string>& wanted) {
    std::vector<std::string> found;
    for (const auto& [path, code] : codeOfWindow())
        if (std::any_of(wanted.begin(), wanted.end(),
                        [&code = code](const std::string& name) { return names(code, name); }))
            found.push_back(path);
    return found;
}

TEST(WindowManners, ThreadsAreInOneFolder) {
    EXPECT_EQ(
        placesOf({"std::jthread", "std::thread", "std::async", "QThread", "QThreadPool", "QtConcurrent"}),
        (std::vector<std::string>{"app/work/interface_thread.h", "app/work/newest_work.cpp", "app/work/newest_work.h",
                                  "app/work/work_in_order.cpp", "app/work/work_in_order.h"}));
}

// A label or a box that guesses whether its words are markup would read those of a book or a file as such.
TEST(WindowManners, LabelsAreMadeWhereTheyAreMadePlain) {
    EXPECT_EQ(placesOf({"new QLabel"}), std::vector<std::string>{"app/theme/card.h"});
    EXPECT_EQ(placesOf({"QMessageBox::warning", "QMessageBox::information", "QMessageBox::critical",
                        "QMessageBox::question"}),
              std::vector<std::string>());
}

} // namespace
} // namespace hygiene::window_manners_test
