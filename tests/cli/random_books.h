// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/book_commands.h"
#include "cli/commands.h"
#include "exchange/json/json_tree.h"
#include "support/random_yards.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <sstream>

//! Puts random books through the commands, in this process: each path ends in an answer or in a refusal with a place.
namespace winterlarder::testing {

class RandomBooks {
public:
    //! Every command on some days of the book of a seed; faults are failures of the test, with the seed.
    void put(std::uint64_t seed) {
        SCOPED_TRACE(::testing::Message() << "seed " << seed);
        const book::support::BookFolder folder;
        file_ = (folder / "yards.larder").string();
        std::vector<Date> days;
        {
            auto made = book::support::randomYards(file_, seed);
            days = std::move(made.days);
        }
        book::support::Dice dice(seed ^ 0x5eedULL);
        for (int asked = 0; asked < 2 && !days.empty(); ++asked)
            ask(dice.of(days).plusDays(static_cast<int>(dice.below(200)) * (asked % 2)), dice);
        if (dice.once(4)) ask(oddDay(dice), dice);
        run("story", dice.once(2), [&](cli::Session& session) { return cli::bookStory(session, {{file_, {}}, 100}); });
        run("export", true, [&](cli::Session& session) { return cli::exportBook(session, {{file_, {}}, {}}); });
    }

    //! How many commands ended so: "advise 0".
    std::map<std::string, int> ended;

private:
    static Date oddDay(book::support::Dice& dice) {
        static const std::vector<Date> odd{*Date::of(1800, 1, 1), *Date::of(2200, 12, 31), *Date::of(2024, 2, 29),
                                           *Date::of(2028, 2, 29), *Date::of(2025, 1, 29)};
        return dice.of(odd);
    }

    void ask(Date day, book::support::Dice& dice) {
        SCOPED_TRACE(day.iso());
        cli::BookFollow asked;
        asked.file = file_, asked.asOf = day.iso();
        const bool json = !dice.once(4);
        run("advise", json, [&](cli::Session& session) { return cli::adviseBook(session, asked); });
        run("follow", json, [&](cli::Session& session) { return cli::followBook(session, asked); });
        run("learned", json, [&](cli::Session& session) { return cli::learnedBook(session, asked); });
        run("calendar", false, [&](cli::Session& session) { return cli::bookCalendar(session, asked); });
        asked.colony = "#1", asked.withoutLearning = true;
        const auto record = run("case", false, [&](cli::Session& session) { return cli::bookCase(session, asked); });
        if (record.empty()) return;
        cli::UseOptions use;
        use.caseFile = "-", use.from = day.iso(), use.to = day.plusDays(static_cast<int>(dice.below(60))).iso();
        run(
            "use", json, [&](cli::Session& session) { return cli::use(session, use); }, record);
        run(
            "stores", json, [&](cli::Session& session) { return cli::stores(session, "-"); }, record);
        run(
            "advise -", true, [&](cli::Session& session) { return cli::advise(session, {"-"}); }, oneLine(record));
    }

    static std::string oneLine(std::string text) {
        std::replace(text.begin(), text.end(), '\n', ' ');
        return text + "\n";
    }

    template <class Command>
    std::string run(const std::string& name, bool json, Command command, const std::string& input = {}) {
        SCOPED_TRACE(name);
        std::istringstream in(input);
        std::ostringstream out, err;
        cli::Session session{book::support::shipped(),
                             in,
                             out,
                             err,
                             json,
                             false,
                             {1, 50},
                             1,
                             {},
                             {book::support::morning, *Date::of(2026, 9, 12), "ada", "test machine"}};
        cli::Status status = cli::Status::Done;
        try {
            status = command(session);
        } catch (const std::exception& surprise) {
            ADD_FAILURE() << "an exception came out: " << surprise.what();
            return {};
        }
        ++ended[name + " " + std::to_string(static_cast<int>(status))];
        EXPECT_NE(status, cli::Status::OurFault) << err.str();
        checkRefusals(err.str(), status);
        if (json) checkNumbers(out.str());
        return status == cli::Status::Done ? out.str() : std::string();
    }

    // Every line of standard error begins with where: a file (and line), or the program for its arguments.
    void checkRefusals(const std::string& err, cli::Status status) {
        EXPECT_TRUE(status == cli::Status::Done || !err.empty()) << "refused without a word";
        std::istringstream lines(err);
        for (std::string line; std::getline(lines, line);)
            EXPECT_TRUE(line.rfind(file_, 0) == 0 || line.rfind("<stdin>", 0) == 0 ||
                        line.rfind("winterlarder-cli: ", 0) == 0)
                << "no place: " << line;
    }

    void checkNumbers(const std::string& out) {
        auto whole = exchange::readJson(out, "output");
        if (whole.value) return checkValue(*whole.value, "");
        std::istringstream lines(out);
        for (std::string line; std::getline(lines, line);) {
            if (line.empty()) continue;
            auto one = exchange::readJson(line, "output");
            ASSERT_TRUE(one.value && one.problems.empty()) << line.substr(0, 400);
            checkValue(*one.value, "");
        }
    }

    static const exchange::JsonValue* member(const exchange::JsonValue& object, const char* name) {
        for (const auto& one : object.members)
            if (one.name == name) return &one.value;
        return nullptr;
    }

    void checkValue(const exchange::JsonValue& value, const std::string& path) {
        using Kind = exchange::JsonValue::Kind;
        EXPECT_TRUE(value.kind != Kind::Number || std::isfinite(value.number)) << path;
        const auto *low = member(value, "low"), *typical = member(value, "typical"), *high = member(value, "high");
        if (low && typical && high && low->kind == Kind::Number && typical->kind == Kind::Number &&
            high->kind == Kind::Number) {
            EXPECT_LE(low->number, typical->number + 1e-9) << path;
            EXPECT_LE(typical->number, high->number + 1e-9) << path;
        }
        if (low && typical && high && low->kind == Kind::Text && typical->kind == Kind::Text &&
            high->kind == Kind::Text) {
            EXPECT_LE(low->text, typical->text) << path;
            EXPECT_LE(typical->text, high->text) << path;
        }
        for (const auto& one : value.members) {
            const bool isShare = one.name == "share" && one.value.kind == Kind::Number;
            EXPECT_TRUE(!isShare || (one.value.number >= 0 && one.value.number <= 1)) << path;
            checkValue(one.value, path + "." + one.name);
        }
        for (std::size_t i = 0; i < value.items.size(); ++i)
            checkValue(value.items[i], path + "[" + std::to_string(i) + "]");
    }

    std::string file_;
};

} // namespace winterlarder::testing
