// SPDX-License-Identifier: GPL-3.0-or-later
// What a good adviser says, on cases judged one by one (tests/advice_cases): each line a case, or a yard of them, and conditions on its
// answer. Lines known not to be met yet stand in unmet.txt; one that is met goes from there, and no other may fail. With
// WINTERLARDER_UPDATE_GOLDEN=1 the list is written anew: read the difference.
#include "cli/conditions.h"

#include <gmock/gmock.h>

#include <set>

namespace winterlarder::advice_cases_test {
namespace {

using namespace winterlarder::testing;

const std::filesystem::path casesFolder = SOURCE_FOLDER "/tests/advice_cases";

const std::string& text(const JsonValue& line, const char* key) { return at(line, key).text; }

std::vector<JsonValue> linesIn(const char* file) {
    std::vector<JsonValue> lines;
    for (const std::string& line : linesOf(textOfFile(casesFolder / file))) lines.push_back(jsonOf(line));
    return lines;
}

//! A thing alone is a list of one.
std::vector<JsonValue> listed(const JsonValue& value) {
    return value.kind == Kind::List ? value.items.list() : std::vector<JsonValue>{value};
}

//! The conditions of a line that its answers do not meet.
std::vector<std::string> unmetOf(const JsonValue& line, const std::vector<JsonValue>& answers) {
    const auto expected = listed(at(line, "expect"));
    if (expected.size() != answers.size())
        throw std::runtime_error(text(line, "id") + ": as many expectations as answers");
    std::vector<std::string> all;
    for (std::size_t i = 0; i < expected.size(); ++i)
        for (const std::string& failed : unmet(expected[i], answers, i)) all.push_back(failed);
    return all;
}

// ---- the lines that are known not to be met -----------------------------------------------------------------------------

std::set<std::string> knownUnmet(const std::string& ofFile) {
    std::set<std::string> known;
    for (const std::string& line : linesOf(textOfFile(casesFolder / ofFile))) known.insert(line);
    return known;
}

class Verdicts {
public:
    explicit Verdicts(std::string listFile) : listFile_(std::move(listFile)), known_(knownUnmet(listFile_)) {}

    void judge(const JsonValue& line, const std::vector<std::string>& failed) {
        const std::string& id = text(line, "id");
        all_.insert(id);
        if (!failed.empty()) now_ += id + "\n";
        for (const std::string& condition : failed) std::cout << id << ": " << condition << "\n";
        if (updating_) return;
        EXPECT_EQ(failed.empty(), known_.count(id) == 0)
            << id << (failed.empty() ? ": is met now; take it from " + listFile_ : ": " + text(line, "what"));
    }
    void finish() {
        for (const std::string& id : known_)
            EXPECT_TRUE(updating_ || all_.count(id)) << listFile_ << " names " << id << ", which is no case";
        if (updating_) std::ofstream(casesFolder / listFile_, std::ios::binary) << now_;
    }

private:
    std::string listFile_, now_;
    std::set<std::string> known_, all_;
    bool updating_ = std::getenv("WINTERLARDER_UPDATE_GOLDEN") != nullptr;
};

// ---- running them -----------------------------------------------------------------------------------------------------

TEST(AdviceCases, SayWhatAGoodAdviserSays) {
    const auto lines = linesIn("advise.jsonl");
    std::string cases;
    for (const auto& line : lines)
        for (const auto& one : listed(at(line, "case"))) cases += asText(one) + "\n";
    const auto answers = linesOf(runProgram("advise - --json", cases).out);
    Verdicts verdicts("advise_unmet.txt");
    std::size_t next = 0;
    for (const auto& line : lines) {
        std::vector<JsonValue> mine;
        for (std::size_t i = listed(at(line, "case")).size(); i > 0; --i) mine.push_back(jsonOf(answers.at(next++)));
        verdicts.judge(line, unmetOf(line, mine));
    }
    EXPECT_EQ(next, answers.size());
    verdicts.finish();
}

std::string quoted(const std::string& word) {
    std::string all = "'";
    for (const char c : word) all += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return all + "'";
}

//! A command on a book: its name, then its words; a list or object goes by a file.
std::string commandOf(const JsonValue& command, const TemporaryFolder& place) {
    const std::string book = quoted((place.path() / "book.larder").string());
    std::string words = "book " + command.items.front().text + " " + book;
    for (std::size_t i = 1; i < command.items.size(); ++i) {
        const JsonValue& word = command.items[i];
        const bool file = word.kind == Kind::List || word.kind == Kind::Object;
        words += " " + quoted(file                      ? place.file(std::to_string(i) + ".json", asText(word)).string()
                              : word.kind == Kind::Text ? word.text
                                                        : asText(word));
    }
    return words;
}

JsonValue followed(const JsonValue& line) {
    const TemporaryFolder place;
    for (const auto& command : at(line, "commands").items) {
        const Ran ran = runProgram(commandOf(command, place));
        EXPECT_EQ(ran.status, 0) << text(line, "id") << ": " << command.items.front().text << ": " << ran.err;
    }
    const Ran ran = runProgram("book follow " + quoted((place.path() / "book.larder").string()) + " --json --as-of " +
                               at(line, "follow.as_of").text + " --colony " + quoted(at(line, "follow.colony").text));
    if (ran.status != 0) throw std::runtime_error(text(line, "id") + ": " + ran.err);
    return jsonOf(linesOf(ran.out).front());
}

TEST(FollowCases, SayWhatAGoodAdviserSays) {
    Verdicts verdicts("follow_unmet.txt");
    for (const auto& line : linesIn("follow.jsonl")) verdicts.judge(line, unmetOf(line, {followed(line)}));
    verdicts.finish();
}

// ---- the conditions themselves -------------------------------------------------------------------------------------------

bool met(const char* answer, const char* key, const char* condition) {
    return meets(valueOf(key, {jsonOf(answer)}, 0), jsonOf(condition));
}

TEST(Conditions, EachHoldsAndFails) {
    const char* answer =
        R"({"a": 3, "b": null, "day": "2026-09-12", "list": [{"k": "x", "n": 1}, {"k": "y", "n": 4}], "word": "act_now"})";
    EXPECT_TRUE(met(answer, "a", R"({"min": 3, "max": 3})"));
    EXPECT_FALSE(met(answer, "a", R"({"min": 3.1})"));
    EXPECT_FALSE(met(answer, "a", R"({"max": 2.9})"));
    EXPECT_TRUE(met(answer, "word", R"({"is": "act-now"})"));
    EXPECT_FALSE(met(answer, "word", R"({"is": 3})"));
    EXPECT_TRUE(met(answer, "word", R"({"in": ["x", "act now", "act-now"], "not_in": ["x"]})"));
    EXPECT_FALSE(met(answer, "word", R"({"not_in": ["act_now"]})"));
    EXPECT_TRUE(met(answer, "b", R"({"null": true})"));
    EXPECT_FALSE(met(answer, "a", R"({"null": true})"));
    EXPECT_FALSE(met(answer, "b", R"({"max": 3})")) << "what is not there fails";
    EXPECT_TRUE(met(answer, "b", R"({"max": 3, "or_null": true})"));
    EXPECT_FALSE(met(answer, "a", R"({"max": 2, "or_null": true})"));
    EXPECT_TRUE(met(answer, "c", R"({"null": true})"));
    EXPECT_TRUE(
        met(answer, "list[*].n", R"({"has": [1, 4], "lacks": 2, "each_min": 1, "each_max": 4, "unique": true})"));
    EXPECT_FALSE(met(answer, "list[*].n", R"({"has": [1, 5]})"));
    EXPECT_FALSE(met(answer, "list[*].n", R"({"lacks": [1, 5]})"));
    EXPECT_FALSE(met(answer, "list[*].n", R"({"each_max": 3})"));
    EXPECT_FALSE(met(answer, "list[*].n", R"({"unique": false})"));
    EXPECT_TRUE(met(answer, "list[k=y].n", R"({"is": 4})"));
    EXPECT_TRUE(met(answer, "list[-1].n", R"({"is": 4})"));
    EXPECT_TRUE(met(answer, "list[2].n", R"({"null": true})"));
    EXPECT_TRUE(met(answer, "list[*k=x].n", R"({"each_max": 1})"));
    EXPECT_TRUE(met(answer, "list[*k=x].length", R"({"is": 1})"));
    EXPECT_TRUE(met(answer, "list.length", R"({"is": 2})"));
    EXPECT_TRUE(met(answer, "a - list[0].n + 10", R"({"is": 12})"));
    EXPECT_FALSE(met(answer, "a - b", R"({"max": 100})"));
    EXPECT_TRUE(met(answer, "day - day", R"({"is": 0})"));
    EXPECT_TRUE(met(answer, "day", R"({"min": "2026-09-12", "max": "2026-09-13"})"));
    EXPECT_FALSE(met(answer, "day", R"({"min": "2026-09-13"})"));
    EXPECT_FALSE(met(answer, "day", R"({"min": 3})")) << "a day is no number";
    EXPECT_TRUE(met(answer, "*", R"({"text_has": "(?i)ACT", "text_lacks": "ACT"})"));
    EXPECT_FALSE(met(answer, "*", R"({"text_lacks": "\\bact_now\\b"})"));
    EXPECT_TRUE(met(R"({"a": 3.995})", "a", R"({"multiple_of": 0.5})"));
    EXPECT_FALSE(met(R"({"a": 3.8})", "a", R"({"multiple_of": 0.5})"));
    EXPECT_THROW(met(answer, "a", R"({"least": 3})"), std::runtime_error);
}

TEST(Conditions, ARefusedCaseMeetsNone) {
    EXPECT_EQ(unmet(jsonOf(R"({"a": {"null": true}})"), {jsonOf(R"({"faults": ["x"]})")}, 0).size(), 1u);
    EXPECT_TRUE(
        unmet(jsonOf(R"({"a": {"null": true}, "$1.b": {"is": 2}})"), {jsonOf("{}"), jsonOf(R"({"b": 2})")}, 0).empty())
        << "of the second";
}

} // namespace
} // namespace winterlarder::advice_cases_test
