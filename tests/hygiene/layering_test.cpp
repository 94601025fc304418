// SPDX-License-Identifier: GPL-3.0-or-later
// Includes point down only, and every library has the one place where it may appear.
#include "hygiene/source_tree.h"

#include <gtest/gtest.h>
#include <map>
#include <set>

namespace hygiene::layering_test {
namespace {

using Folders = std::set<std::string>;

// Which folders of core/ a folder may include besides itself.
const std::map<std::string, Folders>& mayInclude() {
    static const std::map<std::string, Folders> table = [] {
        const Folders ground = {"quantity", "calendar", "support", "numerics"};
        Folders climate = ground, models, tracking, learning, advice, report, book = ground, exchange, answer;
        climate.insert("reference");
        models = climate;
        models.insert({"climate", "hive"});
        tracking = models;
        tracking.insert({"stores", "winter", "feeding"});
        learning = tracking;
        learning.insert("tracking");
        advice = learning;
        advice.insert("learning");
        report = advice;
        report.insert("advice");
        book.insert("reference");
        exchange = book;
        exchange.insert("book");
        answer = advice;
        answer.insert({"advice", "book", "exchange", "scale"});
        return std::map<std::string, Folders>{
            {"numerics", {"support"}}, {"quantity", ground}, {"calendar", ground}, {"support", ground},
            {"reference", ground},     {"climate", climate}, {"hive", climate},    {"scale", climate},
            {"stores", models},        {"winter", models},   {"feeding", models},  {"tracking", tracking},
            {"learning", learning},    {"advice", advice},   {"report", report},   {"book", book},
            {"exchange", exchange},    {"answer", answer}};
    }();
    return table;
}

// Rooms within core/book and core/exchange, and of app/: from the ground up, each may include those named with it.
const std::map<std::string, Folders>& roomsOfCore() {
    static const std::map<std::string, Folders> table = {
        {"core/book/entries", {}},
        {"core/book/form", {"core/book/entries"}},
        {"core/book/file", {"core/book/entries", "core/book/form"}},
        {"core/book", {"core/book/entries", "core/book/form", "core/book/file"}},
        {"core/exchange/json", {}},
        {"core/exchange/case", {"core/exchange/json"}},
        {"core/exchange/book", {"core/exchange/json"}},
        {"core/exchange/logs", {"core/exchange/json"}},
        {"core/exchange", {"core/exchange/json", "core/exchange/case", "core/exchange/book", "core/exchange/logs"}},
    };
    return table;
}

const std::map<std::string, Folders>& roomsOfApp() {
    static const std::map<std::string, Folders> table = [] {
        const Folders words = {"theme", "text"};
        Folders answer = words, series = words, models, shown, combs, guide, forms, pages, print, desk;
        answer.insert("answer");
        models = answer;
        models.insert({"series", "work"});
        shown = models;
        shown.insert("models");
        combs = shown;
        combs.insert({"fields", "plots"});
        forms = combs;
        forms.insert("combs");
        guide = forms;
        forms.insert("guide");
        pages = forms;
        pages.insert({"photograph", "forms", "dialogs"});
        print = shown;
        print.insert("plots");
        desk = pages;
        desk.insert({"pages", "print"});
        return std::map<std::string, Folders>{
            {"theme", {}},         {"text", {}},      {"answer", words},  {"work", {}},     {"series", series},
            {"models", models},    {"fields", shown}, {"plots", shown},   {"combs", combs}, {"guide", guide},
            {"photograph", forms}, {"forms", forms},  {"dialogs", forms}, {"pages", pages}, {"print", print},
            {"desk", desk},        {"cli", answer}};
    }();
    return table;
}

std::string folderOf(const std::string& path) { return path.substr(0, path.rfind('/')); }

// A header named by an include lies in app/ or in core/; both have a folder `answer`.
bool isOfCore(const std::string& header) { return std::filesystem::exists(hygiene::projectFolder() / "core" / header); }

TEST(Layering, EveryFolderOfCoreHasItsPlace) {
    for (const std::string& path : hygiene::cppFiles("core"))
        EXPECT_TRUE(mayInclude().contains(hygiene::folderBelow("core", path)))
            << path << " lies in a folder the table does not know";
}

TEST(Layering, IncludesOfCorePointDownOnly) {
    int seen = 0;
    for (const std::string& path : hygiene::cppFiles("core")) {
        const std::string own = hygiene::folderBelow("core", path);
        const auto allowed = mayInclude().find(own);
        if (allowed == mayInclude().end()) continue;
        for (const std::string& include : hygiene::includes(path)) {
            if (!include.starts_with('"')) continue;
            ++seen;
            const std::string folder = include.substr(1, include.find('/') - 1);
            EXPECT_TRUE(folder == own || allowed->second.contains(folder)) << path << " includes " << include;
        }
    }
    EXPECT_GT(seen, 20);
}

TEST(Layering, IncludesBetweenRoomsOfCorePointDownOnly) {
    int seen = 0;
    for (const std::string& path : hygiene::cppFiles("core")) {
        const std::string own = folderOf(path);
        if (!own.starts_with("core/book") && !own.starts_with("core/exchange")) continue;
        const auto allowed = roomsOfCore().find(own);
        ASSERT_NE(allowed, roomsOfCore().end()) << path << " lies in a room the table does not know";
        for (const std::string& include : hygiene::includes(path)) {
            const std::string room = folderOf("core/" + include.substr(1));
            if (room == own || hygiene::folderBelow("core", path) != hygiene::folderBelow("core", room + "/x"))
                continue;
            ++seen;
            EXPECT_TRUE(allowed->second.contains(room)) << path << " includes " << include;
        }
    }
    EXPECT_GT(seen, 20);
}

TEST(Layering, IncludesOfAppPointDownOnly) {
    int seen = 0;
    for (const std::string& path : hygiene::cppFiles("app")) {
        const std::string own = hygiene::folderBelow("app", path);
        const auto allowed = roomsOfApp().find(own);
        ASSERT_NE(allowed, roomsOfApp().end()) << path << " lies in a folder the table does not know";
        for (const std::string& include : hygiene::includes(path)) {
            if (!include.starts_with('"') || isOfCore(include.substr(1, include.size() - 2))) continue;
            ++seen;
            const std::string folder = include.substr(1, include.find('/') - 1);
            EXPECT_TRUE(folder == own || allowed->second.contains(folder)) << path << " includes " << include;
        }
    }
    EXPECT_GT(seen, 20);
}

TEST(Layering, CoreNamesItsHeadersByFolder) {
    for (const std::string& path : hygiene::cppFiles("core"))
        for (const std::string& include : hygiene::includes(path))
            if (include.starts_with('"')) {
                const std::string named = "core/" + include.substr(1, include.size() - 2);
                EXPECT_TRUE(std::filesystem::exists(hygiene::projectFolder() / named))
                    << path << " includes " << include;
            }
}

struct LibraryPlace {
    std::string library;              //!< as a regular expression over what stands between the delimiters
    std::vector<std::string> allowed; //!< beginnings of paths
    std::vector<std::string> endings; //!< of paths
};

const std::vector<LibraryPlace> libraryPlaces = {
    {"SQLiteCpp/.*|sqlite3\\.h", {"core/book/"}, {".cpp"}},
    {"boost/date_time.*", {"core/calendar/"}, {".cpp"}},
    {"csv\\.h", {"core/exchange/", "core/reference/"}, {".cpp"}},
    // Reading JSON; writing it is open to the command line.
    {"nlohmann/.*|rapidjson/(document|reader|schema|pointer|error).*",
     {"core/exchange/", "core/reference/"},
     {".cpp", ".h"}},
    {"libical.*", {"core/exchange/"}, {".cpp"}},
    {"Random123/.*", {"core/winter/"}, {".cpp", ".h"}},
    {"qcustomplot\\.h", {"app/plots/"}, {".cpp", ".h"}},
    {"CLI/.*", {"app/cli/"}, {".cpp", ".h"}},
    {"Q[A-Z].*|Qt[A-Z]?.*|q[a-z]+\\.h", {"app/"}, {".cpp", ".h"}},
};

bool mayStand(const LibraryPlace& place, const std::string& path) {
    const bool folder = std::any_of(place.allowed.begin(), place.allowed.end(),
                                    [&](const std::string& begin) { return path.starts_with(begin); });
    return folder && hygiene::endsWithAny(path, place.endings);
}

TEST(Layering, EveryLibraryStaysInItsPlace) {
    std::vector<std::string> paths = hygiene::cppFiles("core");
    const std::vector<std::string> app = hygiene::cppFiles("app");
    paths.insert(paths.end(), app.begin(), app.end());
    int seen = 0;
    for (const LibraryPlace& place : libraryPlaces) {
        const std::regex library(place.library);
        for (const std::string& path : paths)
            for (const std::string& include : hygiene::includes(path))
                if (std::regex_match(include.substr(1, include.size() - 2), library)) {
                    ++seen;
                    EXPECT_TRUE(mayStand(place, path)) << path << " includes " << include;
                }
    }
    EXPECT_GT(seen, 1);
}

// The words and the answers serve both programs; only the window may draw, and what it draws are numbers made without drawing.
TEST(Layering, AnswersAndWordsAndTheCommandLineAndSeriesNeedNoWindow) {
    const std::regex qt("<Q.*>"),
        withoutWindow("<Q(CoreApplication|Date|DateTime|Locale|RegularExpression|String|StringList|TimeZone)>");
    int seen = 0;
    for (const std::string folder : {"app/answer", "app/text", "app/cli", "app/series"})
        for (const std::string& path : hygiene::cppFiles(folder))
            for (const std::string& include : hygiene::includes(path)) {
                if (!std::regex_match(include, qt)) continue;
                ++seen;
                EXPECT_TRUE(std::regex_match(include, withoutWindow)) << path << " includes " << include;
            }
    EXPECT_GT(seen, 20);
}

} // namespace
} // namespace hygiene::layering_test
