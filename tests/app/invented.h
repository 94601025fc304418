// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/adviser.h"
#include "desk/core_adviser.h"
#include "desk/opening.h"

#include <QDir>

#include <chrono>
#include <thread>

//! Colonies and answers made by hand, so that the window can be tested without a simulation.
namespace winterlarder::desk::invented {

inline Date day(const char* iso) { return *Date::parse(iso); }

inline book::CombRecord comb(double capped, double open, double brood, double pollen) {
    book::CombRecord made;
    made.capped = capped;
    made.open = open;
    made.brood = brood;
    made.pollen = pollen;
    return made;
}

inline book::ColonyCase colony(const char* name, double covered = 7) {
    book::ColonyCase record{name,
                            "Test orchard",
                            day("2026-09-14"),
                            day("2026-09-12"),
                            {"ca-halifax", 60.0, book::FlowStrength::Trickle},
                            {{{"langstroth-deep", std::nullopt, false}}},
                            {},
                            {},
                            {},
                            {},
                            {},
                            {},
                            {},
                            {},
                            {}};
    record.bees.coveredCombs = covered;
    record.combs =
        std::vector{comb(0.8, 0.1, 0, 0), comb(0.5, 0.1, 0.2, 0.1), comb(0.3, 0.1, 0.4, 0.1), comb(0.7, 0.1, 0, 0.1)};
    return record;
}

inline hive::CombFormat format() {
    return {"langstroth-deep", {millimetres(428), millimetres(428), millimetres(205)}, millimetres(35), {1100}, 10};
}

inline advice::ColonyQuestion question(const book::ColonyCase& record) {
    advice::ColonyQuestion asked;
    asked.colony = record.colony.value_or("");
    asked.winter = Winter(Hemisphere::North, 2026);
    asked.asOf = asked.winter.seasonDay(record.asOf);
    asked.lookedOn = asked.asOf;
    asked.boxes = {format()};
    if (const auto* combs = std::get_if<std::vector<book::CombRecord>>(&record.combs)) {
        for (std::size_t i = 0; i < combs->size(); ++i) {
            stores::Comb seen;
            seen.format = format();
            seen.place = static_cast<int>(i);
            seen.capped = (*combs)[i].capped.value_or(0);
            asked.combs.push_back(seen);
        }
    }
    return asked;
}

//! What a test wants the answer to be.
struct Wanted {
    advice::Verdict verdict = advice::Verdict::Leave;
    double storesKg = 20, needKg = 18;
};

inline advice::DecidedBy decidedFor(advice::Verdict verdict) {
    switch (verdict) {
    case advice::Verdict::Harvest: return advice::DecidedBy::Harvest;
    case advice::Verdict::Feed: return advice::DecidedBy::Feed;
    case advice::Verdict::Unite: return advice::DecidedBy::Weak;
    case advice::Verdict::Leave: return advice::DecidedBy::Enough;
    case advice::Verdict::CannotSay: return advice::DecidedBy::CannotSay;
    }
    return advice::DecidedBy::CannotSay;
}

inline advice::Advice advice(const book::ColonyCase& record, const Wanted& wanted) {
    advice::Advice made;
    made.verdict = wanted.verdict;
    made.winters = 100;
    made.seed = 1;
    stores::StoresEstimate estimate;
    estimate.mean = kilograms(wanted.storesKg);
    estimate.sd = kilograms(2);
    estimate.spread = {kilograms(wanted.storesKg - 2.5), kilograms(wanted.storesKg), kilograms(wanted.storesKg + 2.5)};
    made.estimate = estimate;
    made.need = kilograms(wanted.needKg);
    made.touchReserve = Share{0.17, 0.01};
    made.runOut = Share{0.04, 0.004};
    made.bees = Spread<BeeCount>{{12000}, {15000}, {18500}};
    const Winter winter(Hemisphere::North, 2026);
    const auto on = [&winter](const char* iso) { return climate::SeasonDate{winter.seasonDay(day(iso)), 9}; };
    made.season.lastIncome = on("2026-09-28");
    made.season.broodStop = on("2026-10-07");
    made.season.feedAdvisedBy = on("2026-09-25");
    made.season.syrupDeadline = on("2026-10-07");
    made.season.forage = on("2027-05-19");
    if (wanted.verdict == advice::Verdict::Harvest)
        made.harvest = advice::HarvestAdvice{kilograms(3.1), {0}, kilograms(2.6), 0, kilograms(3.1)};
    if (wanted.verdict == advice::Verdict::Feed) {
        feeding::FeedingPlan plan;
        plan.ratio = feeding::parseRatio("2:1").value();
        plan.syrup.sugar = kilograms(6);
        plan.syrup.water = litres(4);
        plan.syrup.volume = litres(7.8);
        plan.lastDay = winter.seasonDay(day("2026-10-07"));
        for (const char* iso : {"2026-09-14", "2026-09-17"})
            plan.visits.push_back({winter.seasonDay(day(iso)), day(iso), feeding::VisitKind::Syrup, kilograms(3),
                                   litres(3.9), kilograms(0), kilograms(3.1)});
        made.feed = plan;
    }
    if (wanted.verdict == advice::Verdict::CannotSay) {
        made.refusals = {advice::RefusalKind::BeesUnknown};
        made.estimate.reset();
        made.need.reset();
        made.touchReserve.reset();
        made.runOut.reset();
    }
    made.asOf = record.asOf;
    made.reserve = kilograms(4);
    if (wanted.verdict == advice::Verdict::Unite) made.unite = advice::UniteAdvice{{}, day("2026-10-07")};
    if (wanted.verdict == advice::Verdict::Leave)
        made.nextLook = advice::NextLook{day("2026-09-28"), advice::NextLookAt::Weigh};
    made.decidedBy = decidedFor(wanted.verdict);
    return made;
}

inline AnsweredPointer answered(const book::ColonyCase& record, const Wanted& wanted = {}) {
    auto made = std::make_shared<AnsweredColony>(
        AnsweredColony{record, question(record), {advice(record, wanted), {}}, {}, {}, nullptr});
    std::vector<stores::CombStores> combs;
    for (const auto& each : made->question.combs) combs.push_back({kilograms(2.6 * each.capped), kilograms(0)});
    made->combs = std::move(combs);
    made->spreads = {0.10, 0.03, 0.11, 0.132}; // as shipped
    return made;
}

//! Answers by the combs' capped shares after a while; heeds being stopped; counts what it was asked.
class SlowAdviser : public Adviser {
public:
    explicit SlowAdviser(std::chrono::milliseconds pause) : pause_(pause) {}

    Outcome<AnsweredPointer> answer(const book::ColonyCase& record, int, std::stop_token stop) const override {
        ++asked;
        const auto until = std::chrono::steady_clock::now() + pause_;
        while (std::chrono::steady_clock::now() < until) {
            if (stop.stop_requested()) {
                ++stopped;
                return AnsweredPointer();
            }
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        }
        double stores = 0;
        if (const auto* combs = std::get_if<std::vector<book::CombRecord>>(&record.combs))
            for (const auto& each : *combs) stores += 2.6 * each.capped.value_or(0);
        return answered(record, {stores > 10 ? advice::Verdict::Leave : advice::Verdict::Feed, stores, 10});
    }
    std::vector<AnsweredPointer> shareOut(const std::vector<AnsweredPointer>& yard,
                                          advice::MovingCombs) const override {
        return yard;
    }

    mutable std::atomic<int> asked{0}, stopped{0};

private:
    std::chrono::milliseconds pause_;
};

//! The shipped data, read once for all tests that need them.
inline std::shared_ptr<const ReferenceData> shipped() {
    static const auto data = [] {
        auto read = loadReference(SHARED_FOLDER);
        return std::make_shared<const ReferenceData>(std::move(read).value());
    }();
    return data;
}

//! The places of the world, read once.
inline std::shared_ptr<const climate::Gazetteer> shippedPlaces() {
    static const auto places =
        std::make_shared<const climate::Gazetteer>(climate::Gazetteer::load(SHARED_FOLDER, *shipped()).value());
    return places;
}

inline std::vector<book::ColonyCase> demoYard() {
    const QDir cases(QStringLiteral(SOURCE_FOLDER "/tests/support/cases"));
    QStringList files;
    for (const QString& name : cases.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name))
        files << cases.filePath(name);
    return openFiles(files, shipped()).records;
}

//! The demo yard's answers over few winters, made once.
inline const std::vector<AnsweredPointer>& demoAnswers() {
    static const auto answers = [] {
        std::vector<AnsweredPointer> made;
        const CoreAdviser adviser(shipped(), {1, 1000}, 1);
        int position = 0;
        for (const auto& record : demoYard()) made.push_back(adviser.answer(record, position++, {}).value());
        return made;
    }();
    return answers;
}

} // namespace winterlarder::desk::invented
