// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/doubts.h"

#include "advice/advice.h"
#include "answer/doubt_words.h"
#include "answer/followed_colony.h"
#include "answer/question_of_case.h"
#include "book/case_of.h"
#include "exchange/shipped_data.h"
#include "support/book_folder.h"

#include <gmock/gmock.h>

namespace winterlarder::answer::doubts_test {
namespace {

using namespace book;
using namespace book::support;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Field;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using ::testing::StartsWith;
using winterlarder::testing::shippedData;

std::string caseWith(const std::string& members) {
    return "{\"case\": 1, \"as_of\": \"2026-09-12\", \"site\": {\"station\": \"ca-halifax\"},\n"
           "\"hive\": {\"format\": \"langstroth-deep\", \"boxes\": 2},\n" +
           members + "}";
}
const std::string bees = "\"bees\": {\"covered_combs\": 8}";
const std::string combs = "\"combs\": {\"full_of_stores\": 8, \"half\": 2, \"capped_share\": 0.9}";

advice::Advice answered(const std::string& text) {
    const auto read = must(readQuestion(text, "case.json", shippedData(), 0));
    return advice::weigh(read.question, shippedData().constants, {1, 200})->advice;
}
std::vector<std::string> faults(const std::string& text) {
    std::vector<std::string> lines;
    const auto read = readQuestion(text, "case.json", shippedData(), 0);
    if (!read)
        for (const auto& problem : read.problems()) lines.push_back(describe(problem));
    return lines;
}
std::vector<std::string> ids(const std::vector<Remark>& remarks) {
    std::vector<std::string> all;
    for (const auto& remark : remarks) all.push_back(remark.id);
    return all;
}
std::vector<std::string> asideOf(const std::string& members) {
    return ids(must(readQuestion(caseWith(members), "case.json", shippedData(), 0)).question.setAside);
}

TEST(CaseInDoubt, AnImpossibleRecordIsAFaultAtItsPlaceWithWhatWouldBePossible) {
    EXPECT_THAT(
        faults(caseWith("\"weighings\": [{\"date\": \"2026-09-10\", \"gross_kg\": 120}]")),
        ElementsAre(
            "case.json:3:50: 120.0 kg cannot well be: 2 boxes of this size weigh 84.0 kg when every frame is full of honey; "
            "is it 120.0 lb, which is 54.4 kg?"));
    EXPECT_THAT(
        faults(caseWith(
            "\"harvests\": [{\"date\": \"2026-09-12\", \"kg\": 90}],\n\"feeds\": [{\"date\": \"2026-09-11\", \"kind\": \"dry-sugar\", \"sugar_kg\": 100}]")),
        ElementsAre(StartsWith("case.json:3:"), StartsWith("case.json:4:")));
    EXPECT_THAT(faults(caseWith("\"bees\": {\"seams\": 40}")),
                ElementsAre(HasSubstr("40.0 seams are more than the 22 this hive has")));
    EXPECT_THAT(faults(caseWith("\"bees\": {\"count\": 20000, \"brood_cells\": 190000}")),
                ElementsAre(HasSubstr("190,000 cells of brood")));
}

TEST(CaseInDoubt, SureMakesNothingPossible) {
    EXPECT_THAT(faults(caseWith(
                    "\"sure\": true, \"weighings\": [{\"date\": \"2026-09-10\", \"gross_kg\": 120, \"sure\": true}]")),
                SizeIs(1));
}

TEST(CaseInDoubt, TheOnlyEvidenceNotBelievedLeavesNothingToSay) {
    const auto advice = answered(caseWith(bees + ", \"weighings\": [{\"date\": \"2026-09-10\", \"gross_kg\": 95}]"));
    EXPECT_EQ(advice.verdict, advice::Verdict::CannotSay);
    EXPECT_THAT(ids(advice.reasons), ElementsAre("doubt-heavy", "stores-unknown"));
    EXPECT_FALSE(advice.need);
}

TEST(CaseInDoubt, OtherEvidenceAnswersAndTheRecordIsNamedFirst) {
    const std::string weighing = ", \"weighings\": [{\"date\": \"2026-09-10\", \"gross_kg\": 95}]";
    const auto advice = answered(caseWith(bees + ", " + combs + weighing));
    const auto without = answered(caseWith(bees + ", " + combs));
    EXPECT_EQ(advice.reasons.front().id, "doubt-heavy");
    EXPECT_EQ(advice.estimate->mean, without.estimate->mean);
    EXPECT_TRUE(advice.anotherLook.worthIt);
    EXPECT_EQ(advice.anotherLook.which, advice::LookKind::Weigh);
    EXPECT_TRUE(advice::setsAside(advice));
    EXPECT_FALSE(advice::setsAside(without));
    EXPECT_NE(advice.verdict, advice::Verdict::Harvest);
}

TEST(CaseInDoubt, SureOfItBelievesIt) {
    const std::string gross = "\"weighings\": [{\"date\": \"2026-09-10\", \"gross_kg\": 95";
    EXPECT_THAT(asideOf(bees + ", " + gross + "}]"), ElementsAre("doubt-heavy"));
    EXPECT_THAT(asideOf(bees + ", " + gross + ", \"sure\": true}]"), IsEmpty());
    EXPECT_THAT(asideOf("\"sure\": true, " + bees + ", " + gross + "}]"), IsEmpty());
    EXPECT_THAT(asideOf("\"bees\": {\"seams\": 23}"), ElementsAre("doubt-seams"));
    EXPECT_THAT(asideOf("\"bees\": {\"seams\": 23, \"sure\": true}"), IsEmpty());
    EXPECT_THAT(asideOf(bees + ", \"feeds\": [{\"date\": \"2026-09-11\", \"kind\": \"fondant\", \"fondant_kg\": 20}]"),
                ElementsAre("doubt-feed-at-once"));
    EXPECT_THAT(
        asideOf(bees +
                ", \"feeds\": [{\"date\": \"2026-09-11\", \"kind\": \"fondant\", \"fondant_kg\": 20, \"sure\": true}]"),
        IsEmpty());
    EXPECT_THAT(asideOf(bees + ", \"harvests\": [{\"date\": \"2026-09-11\", \"kg\": 60}]"),
                ElementsAre("doubt-harvest"));
    EXPECT_THAT(asideOf(bees + ", \"harvests\": [{\"date\": \"2026-09-11\", \"kg\": 60, \"sure\": true}]"), IsEmpty());
    EXPECT_THAT(asideOf(bees + ", \"moisture_percent\": 30"), ElementsAre("doubt-moisture"));
}

TEST(CaseInDoubt, ATareThatCannotBeIsAFault) {
    const auto withTare = [](double kg) {
        return "{\"case\": 1, \"as_of\": \"2026-09-12\", \"site\": {\"station\": \"ca-halifax\"},\n\"hive\": {\"format\": \"langstroth-deep\", \"boxes\": 2, \"tare_kg\": " +
               std::to_string(kg) +
               "}, \"bees\": {\"covered_combs\": 8}, \"weighings\": [{\"date\": \"2026-09-10\", \"gross_kg\": 54}]}";
    };
    EXPECT_THAT(faults(withTare(22)), IsEmpty());
    EXPECT_THAT(faults(withTare(120)),
                ElementsAre(AllOf(StartsWith("case.json:2:"), HasSubstr("An empty weight of 120.0 kg is much"))));
    EXPECT_THAT(faults(withTare(4)), ElementsAre(HasSubstr("An empty weight of 4.0 kg is little")));
}

TEST(CaseInDoubt, ATareThatIsNotLikelyIsAskedAboutAndCountsAsItStands) {
    const auto read = [](double kg, const char* sure) {
        return must(readQuestion(
            "{\"case\": 1, \"as_of\": \"2026-09-12\", " + std::string(sure) +
                "\"site\": {\"station\": \"ca-halifax\"},\n\"hive\": {\"format\": \"langstroth-deep\", \"boxes\": 2, \"tare_kg\": " +
                std::to_string(kg) +
                "}, \"bees\": {\"covered_combs\": 8}, \"weighings\": [{\"date\": \"2026-09-10\", \"gross_kg\": 54}]}",
            "case.json", shippedData(), 0));
    };
    for (const auto& [kg, says] : {std::pair(45.0, "An empty weight of 45.0 kg is much"),
                                   std::pair(13.0, "An empty weight of 13.0 kg is little")}) {
        const auto doubted = read(kg, "");
        ASSERT_THAT(doubted.asked, SizeIs(1)) << kg;
        EXPECT_THAT(describe(doubted.asked.front()),
                    AllOf(StartsWith("case.json:2:"), HasSubstr(says), HasSubstr("?"), HasSubstr("\"sure\": true")));
        EXPECT_EQ(doubted.question.tare, kilograms(kg)) << "counts meanwhile";
        EXPECT_THAT(doubted.question.setAside, IsEmpty());
        EXPECT_THAT(read(kg, "\"sure\": true, ").asked, IsEmpty());
    }
    EXPECT_THAT(read(22, "").asked, IsEmpty());
}

// The empty weight was asked about where it was entered; another record nobody is sure of must not be believed with it.
TEST(CaseInDoubt, WrittenOutOfABookItSaysThatItsEmptyWeightIsRight) {
    const auto written = [](const std::string& tare, const std::string& weighing) {
        auto record =
            must(readQuestion("{\"case\": 1, \"as_of\": \"2026-09-12\", \"site\": {\"station\": \"ca-halifax\"},\n"
                              "\"hive\": {\"format\": \"langstroth-deep\", \"boxes\": 2, \"tare_kg\": " +
                                  tare + "}, " + bees + ", \"weighings\": [{\"date\": \"2026-09-10\", " + weighing +
                                  "}]}",
                              "case.json", shippedData(), 0))
                .record;
        return exchange::writeCaseLine(caseToWrite(record, shippedData()));
    };
    const auto read = [](const std::string& text) { return must(readQuestion(text, "case.json", shippedData(), 0)); };
    const auto heavy = written("45", "\"gross_kg\": 60");
    EXPECT_THAT(heavy, HasSubstr("\"as_of\":\"2026-09-12\",\"sure\":true,"));
    EXPECT_THAT(read(heavy).asked, IsEmpty());
    EXPECT_THAT(written("22", "\"gross_kg\": 54"), ::testing::Not(HasSubstr("sure"))) << "nothing is unlikely";
    const auto both = written("13", "\"gross_kg\": 95");
    EXPECT_THAT(read(both).asked, SizeIs(1)) << "rather ask again";
    EXPECT_THAT(ids(read(both).question.setAside), SizeIs(1)) << "nobody said that the weight is right";
    EXPECT_THAT(read(written("13", "\"gross_kg\": 95, \"sure\": true")).asked, IsEmpty());
}

TEST(CaseInDoubt, StonesOnTheRoofStayAContradiction) {
    const auto advice =
        answered(caseWith(bees + ", " + combs + ", \"weighings\": [{\"date\": \"2026-09-11\", \"gross_kg\": 75}]"));
    EXPECT_TRUE(advice.estimate->contradictory);
    EXPECT_FALSE(advice::setsAside(advice));
}

TEST(CaseInDoubt, TheWeightThatFitsNoNeighbourIsTheOddOne) {
    const auto weighed = [](double first, double second, double third) {
        return asideOf(bees + ", \"weighings\": [{\"date\": \"2026-08-20\", \"lift_kg\": " + std::to_string(first) +
                       "}, {\"date\": \"2026-08-25\", \"lift_kg\": " + std::to_string(second) +
                       "}, {\"date\": \"2026-08-29\", \"lift_kg\": " + std::to_string(third) + "}]");
    };
    EXPECT_THAT(weighed(16, 16.5, 16), IsEmpty());
    EXPECT_THAT(weighed(16, 36, 16), ElementsAre("doubt-two-weights"));
    EXPECT_THAT(weighed(36, 16, 16), ElementsAre("doubt-two-weights"));
    EXPECT_THAT(
        asideOf(
            bees +
            ", \"weighings\": [{\"date\": \"2026-08-20\", \"gross_kg\": 30}, {\"date\": \"2026-08-25\", \"gross_kg\": 67}]"),
        SizeIs(2))
        << "which of two is wrong cannot be told";
    EXPECT_THAT(
        asideOf(
            bees +
            ", \"weighings\": [{\"date\": \"2026-08-20\", \"gross_kg\": 30}, {\"date\": \"2026-08-25\", \"gross_kg\": 67, \"sure\": true}]"),
        IsEmpty());
}

class BookInDoubt : public ::testing::Test {
protected:
    BookFolder folder;
    Book book = newBook(folder / "a.larder");
    ColonyId colony;
    Date today = day("2027-06-01");

    void SetUp() override {
        edit(book, AddYard{orchard()});
        auto kept = colonyIn({1}, "Russet");
        kept.since = day("2025-05-01");
        colony = edit(book, AddColony{kept}).added<Colony>().value();
    }
    template <class Entry> std::string asked(const Entry& entry) {
        const auto doubt = doubtOf(entry, must(surroundingsOf(book, colony)), today, book.reference());
        return doubt ? doubt->says.id + (doubt->impossible ? "!" : "") : "";
    }
    Feed fed(const char* date, double sugar) {
        return {.colony = colony, .feed = {day(date), FeedKind::Syrup, kilograms(sugar), {}, {}, {}}};
    }
    Harvest took(const char* date, double kg) { return {.colony = colony, .harvest = {day(date), kilograms(kg)}}; }
};

TEST_F(BookInDoubt, EveryKindOfEntryIsAskedAboutWhereItIsNotLikely) {
    EXPECT_EQ(asked(weighingOf(colony, day("2026-09-10"), 54.5)), "");
    EXPECT_EQ(asked(weighingOf(colony, day("2026-09-10"), 95)), "doubt-heavy");
    EXPECT_EQ(asked(weighingOf(colony, day("2026-09-10"), 500)), "doubt-heavy!");
    EXPECT_EQ(asked(weighingOf(colony, day("2025-04-30"), 54.5)), "doubt-before");
    EXPECT_EQ(asked(weighingOf(colony, day("2062-09-10"), 54.5)), "doubt-later");
    auto kept = must(book.find(colony)).value();
    kept.hive.tare = kilograms(32);
    EXPECT_EQ(asked(kept), "doubt-tare-heavy");
    kept.hive.tare = kilograms(3);
    EXPECT_EQ(asked(Housing{.colony = colony, .date = day("2026-09-10"), .hive = kept.hive}), "doubt-tare-light!");
    EXPECT_EQ(asked(fed("2026-09-10", 8)), "");
    EXPECT_EQ(asked(fed("2026-09-10", 25)), "doubt-feed-at-once");
    EXPECT_EQ(asked(fed("2026-09-10", 80)), "doubt-feed!");
    EXPECT_EQ(asked(took("2026-08-01", 40)), "");
    EXPECT_EQ(asked(took("2026-08-01", 60)), "doubt-harvest");
    auto look = lookAt(colony, day("2026-09-10"));
    EXPECT_EQ(asked(look), "");
    look.bees.coveredCombs = 22;
    EXPECT_EQ(asked(look), "doubt-covered");
    EXPECT_EQ(asked(Sighting{.colony = colony, .date = day("2027-01-05"), .saw = SightingKind::Cluster, .seams = 30}),
              "doubt-seams!");
    EXPECT_EQ(asked(WinterOutcome{.colony = colony, .date = day("2027-04-05"), .storesLeft = kilograms(60)}),
              "doubt-stores-left");
    EXPECT_EQ(asked(WinterOutcome{
                  .colony = colony, .date = day("2027-04-05"), .coveredCombs = 6, .storesLeft = kilograms(6)}),
              "");
}

TEST_F(BookInDoubt, EveryKindOfEntryIsAskedAboutWhereItIsStillToCome) {
    today = day("2026-09-10");
    for (const auto& [on, says] : {std::pair(day("2026-09-11"), ""), std::pair(day("2026-09-12"), "doubt-later")}) {
        SCOPED_TRACE(on.iso());
        const auto hive = must(book.find(colony)).value().hive;
        EXPECT_EQ(asked(lookAt(colony, on)), says);
        EXPECT_EQ(asked(weighingOf(colony, on, 54.5)), says);
        EXPECT_EQ(asked(fed(on.iso().c_str(), 3)), says);
        EXPECT_EQ(asked(took(on.iso().c_str(), 3)), says);
        EXPECT_EQ(asked(Sighting{.colony = colony, .date = on}), says);
        EXPECT_EQ(asked(WinterOutcome{.colony = colony, .date = on}), says);
        EXPECT_EQ(asked(Treatment{.colony = colony, .date = on, .until = on.plusDays(30), .what = "acid"}), says);
        EXPECT_EQ(asked(Manipulation{.colony = colony, .date = on}), says);
        EXPECT_EQ(asked(Housing{.colony = colony, .date = on, .hive = hive}), says);
        EXPECT_EQ(asked(Move{.colony = colony, .date = on, .yard = {1}}), says);
        EXPECT_EQ(asked(Fate{.colony = colony, .date = on}), says);
        EXPECT_EQ(asked(Colony{.yard = {1}, .hive = hive, .since = on}), says);
    }
}

TEST_F(BookInDoubt, AnEntryIsHeldAgainstThoseAroundIt) {
    edit(book, AddWeighing{weighingOf(colony, day("2026-11-01"), 30)});
    EXPECT_EQ(asked(weighingOf(colony, day("2026-11-20"), 66)), "doubt-two-weights");
    EXPECT_EQ(asked(weighingOf(colony, day("2026-10-20"), 66)), "doubt-two-weights") << "one before it, too";
    EXPECT_EQ(asked(weighingOf(colony, day("2026-11-20"), 29)), "");
    EXPECT_EQ(asked(took("2026-11-03", 29)), "doubt-harvest-there");
    edit(book, AddFeed{fed("2026-09-01", 22)});
    edit(book, AddFeed{fed("2026-09-05", 22)});
    EXPECT_EQ(asked(fed("2026-09-10", 22)), "doubt-feed-recently");
    EXPECT_EQ(asked(fed("2026-10-10", 22)), "");
}

TEST_F(BookInDoubt, ABoxPutOnMeanwhileExplainsTheWeight) {
    edit(book, AddWeighing{weighingOf(colony, day("2026-11-01"), 30)});
    auto higher = twoDeeps();
    higher.boxes.push_back(higher.boxes.front());
    edit(book, AddHousing{{.colony = colony, .date = day("2026-11-10"), .hive = higher}});
    EXPECT_EQ(asked(weighingOf(colony, day("2026-11-20"), 66)), "");
    EXPECT_EQ(asked(weighingOf(colony, day("2026-11-20"), 100)), "") << "three boxes";
}

// Boxes go on or come off after the look: each weight is held against the hive as it stood on its day.
TEST_F(BookInDoubt, AWinterFollowedHoldsEachWeightAgainstTheHiveOfItsDay) {
    auto look = lookAt(colony, day("2026-09-10"));
    look.combs = std::vector<CombRecord>(12, comb(0.6));
    edit(book, AddLook{look});
    auto higher = twoDeeps();
    higher.boxes.push_back(higher.boxes.front());
    edit(book, AddHousing{{.colony = colony, .date = day("2026-10-01"), .hive = higher}});
    edit(book, AddWeighing{weighingOf(colony, day("2026-10-10"), 108)}); // two boxes cannot weigh so much
    const auto three = must(followedColony(book, colony, day("2026-12-20"), nullptr, {1, 100}, 1));
    ASSERT_TRUE(three.question);
    EXPECT_THAT(ids(three.question->setAside), IsEmpty());
    EXPECT_THAT(three.question->observations, SizeIs(1));
    edit(book, AddHousing{{.colony = colony, .date = day("2026-10-15"), .hive = twoDeeps()}});
    edit(book, AddWeighing{weighingOf(colony, day("2026-10-25"), 108)});
    const auto two = must(followedColony(book, colony, day("2026-12-20"), nullptr, {1, 100}, 1));
    EXPECT_THAT(ids(two.question->setAside), ElementsAre("doubt-heavy"));
}

TEST_F(BookInDoubt, AWeightOfOtherBoxesThanWereLookedAtIsNotTakenForTheirs) {
    edit(book, AddLook{lookAt(colony, day("2026-09-10"))});
    edit(book, AddWeighing{weighingOf(colony, day("2026-09-11"), 54.5)});
    auto lower = twoDeeps();
    lower.boxes.pop_back();
    edit(book, AddHousing{{.colony = colony, .date = day("2026-09-12"), .hive = lower}});
    edit(book, AddWeighing{weighingOf(colony, day("2026-09-14"), 34)});
    const auto record = must(caseOf(book, colony, day("2026-09-15")));
    EXPECT_THAT(record.weighings, SizeIs(1)) << "that of the 11th";
    const auto question = must(questionOf(record, {}, shippedData(), 0));
    ASSERT_THAT(ids(question.setAside), ElementsAre("doubt-other-hive"));
    EXPECT_EQ(std::get<Date>(question.setAside.front().details.at("recorded")), day("2026-09-14"));
    const auto advice = advice::weigh(question, shippedData().constants, {1, 200})->advice;
    EXPECT_EQ(advice.anotherLook.which, advice::LookKind::Open) << "weighed again it would tell no more";
}

TEST_F(BookInDoubt, AnEntryChangedIsNotHeldAgainstItself) {
    edit(book, AddWeighing{weighingOf(colony, day("2026-11-01"), 30)});
    auto changed = weighingOf(colony, day("2026-11-02"), 66);
    changed.id = {1};
    EXPECT_EQ(asked(changed), "");
}

TEST_F(BookInDoubt, AWinterFollowedDoesWithoutItAndSaysSo) {
    auto look = lookAt(colony, day("2026-09-10"));
    look.combs = std::vector<CombRecord>(12, comb(0.6));
    edit(book, AddLook{look});
    const auto course = must(followedColony(book, colony, day("2026-12-20"), nullptr, {1, 100}, 1));
    edit(book,
         AddWeighing{weighingOf(colony, day("2026-11-05"), 250)}); // in a book of before, no entry was asked about
    const auto followed = must(followedColony(book, colony, day("2026-12-20"), nullptr, {1, 100}, 1));
    ASSERT_TRUE(followed.question);
    EXPECT_THAT(ids(followed.question->setAside), ElementsAre("doubt-heavy"));
    EXPECT_EQ(followed.question->observations.size(), course.question->observations.size());
}

} // namespace
} // namespace winterlarder::answer::doubts_test
