// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/afterwards.h"

#include "advice/looking/evidence_today.h"
#include "answer/doubts.h"
#include "answer/evening_feeds.h"
#include "answer/question_of_case.h"
#include "answer/supers_followed.h"
#include "book/case_of.h"
#include "stores/bees.h"
#include "stores/evidence.h"

#include <algorithm>
#include <utility>

namespace winterlarder::answer {

namespace {

bool hasSuper(const book::HiveRecord& hive) {
    return std::any_of(hive.boxes.begin(), hive.boxes.end(), [](const auto& box) { return box.super; });
}

// A case is made that holds the records after the decision and nothing else, and questionOf() makes plain values of them, as it does of
// any case; what it makes becomes steps and observations.
class RecordsAfterDecision {
public:
    explicit RecordsAfterDecision(const WinterSpan& span)
        : records(span.records), base(span.autumn), winter(span.winter), decided_(span.decided), asOf_(span.asOf),
          reference(span.reference), evening_(fedThatEvening(records, decided_, reference)), hives_(hivesSince(span)),
          demand_(span.demand) {}

    Problems fill(tracking::FollowQuestion& question, const advice::ColonyQuestion& asked) {
        book::ColonyCase later = bare();
        const auto weighings = oneWeighingInTenDays();
        for (const auto& entry : weighings) later.weighings.push_back(entry.weighing);
        later.feeds = evening_;
        for (const auto& entry : records.feeds)
            if (counts(entry.feed.date)) later.feeds.push_back(book::oneAmount(entry.feed));
        for (const auto& entry : records.harvests)
            if (counts(entry.harvest.date)) later.harvests.push_back(entry.harvest);
        later = believedLater(std::move(later), question);
        const auto plain = questionOf(later, {}, reference, 0, hives_);
        if (!plain) return plain.problems();
        fillSteps(question, *plain, asked.plan ? asked.plan->brought() : kilograms(0));
        fillWeighings(question, *plain, wetOf(later.weighings, weighings));
        fillSightings(question, asked);
        fillDeath(question);
        SupersFollowed supers(asked);
        if (auto problems = fillLooks(question, supers); !problems.empty()) return problems;
        for (const auto& harvest : plain->harvests) supers.harvested(harvest.day, harvest.honey);
        for (const auto& housing : records.housings)
            if (counts(housing.date) && !hasSuper(housing.hive)) supers.off(winter.seasonDay(housing.date));
        for (auto& step : supers.steps()) question.steps.push_back(std::move(step));
        return {};
    }

private:
    //! As they were written down, and with the boxes of a colony that was united into it.
    static std::vector<HiveChange> hivesSince(const WinterSpan& span) {
        auto hives = hivesOf(span.records.colony, span.records.housings);
        if (span.autumn.united.empty()) return hives;
        const Date day = span.autumn.united.back().date;
        const auto later = [day](const HiveChange& change) { return change.day > day; };
        hives.insert(std::find_if(hives.begin(), hives.end(), later), {day, span.autumn.hive});
        return hives;
    }
    //! Without weights, feeds and harvests that are in doubt; what was seen at the autumn's look is its answer's to say.
    book::ColonyCase believedLater(book::ColonyCase later, tracking::FollowQuestion& question) const {
        auto sound = believed(std::move(later), reference, hives_);
        for (auto& remark : sound.setAside) {
            const auto& record = std::get<std::string>(remark.details.at("record"));
            if (record == "weighing" || record == "feed" || record == "harvest")
                question.setAside.push_back(std::move(remark));
        }
        sound.record.sure = true; // they were judged
        return std::move(sound.record);
    }
    //! Those of `believed` in their order, which is that of `all`.
    static std::vector<bool> wetOf(const std::vector<book::WeighingRecord>& believed,
                                   const std::vector<book::Weighing>& all) {
        std::vector<bool> wet;
        for (const auto& entry : all)
            if (wet.size() < believed.size() && believed[wet.size()] == entry.weighing) wet.push_back(entry.wet);
        return wet;
    }
    book::ColonyCase bare() const {
        book::ColonyCase empty = base;
        empty.weighings.clear();
        empty.feeds.clear();
        empty.harvests.clear();
        empty.weighedInOtherHive.clear();
        return empty;
    }
    bool counts(Date date) const { return date > decided_ && date <= asOf_ && winter.contains(date); }
    // The last weighing of every `oneWeighingIn` days, hefts apart from scales.
    std::vector<book::Weighing> oneWeighingInTenDays() const {
        std::vector<book::Weighing> result;
        Date groupStart = decided_;
        for (const auto& entry : records.weighings) {
            if (!counts(entry.weighing.date)) continue;
            const bool replaces = !result.empty() &&
                                  result.back().weighing.reading.index() == entry.weighing.reading.index() &&
                                  entry.weighing.date.daysSince(groupStart) < reference.decisions.oneWeighingIn;
            if (replaces) result.back() = entry;
            else {
                groupStart = entry.weighing.date;
                result.push_back(entry);
            }
        }
        return result;
    }

    void fillSteps(tracking::FollowQuestion& question, const advice::ColonyQuestion& plain, Mass moved) const {
        using Kind = tracking::KnownStep::Kind;
        for (const auto& feed : plain.feeds)
            question.steps.push_back({feed.day, Kind::Feed, feed.stores, std::nullopt});
        for (const auto& change : records.manipulations)
            if (change.weightChange && counts(change.date))
                question.steps.push_back({winter.seasonDay(change.date), Kind::Equipment,
                                          *change.weightChange - takeOfPlan(change, moved), std::nullopt});
    }
    //! Of the honey in combs the plan moved, which is in the stores already: what the first entry of combs moved the same way tells of.
    static Mass takeOfPlan(const book::Manipulation& change, Mass& moved) {
        const bool told =
            change.what == book::ManipulationKind::CombsMoved && change.weightChange->value() * moved.value() > 0;
        return told ? std::exchange(moved, kilograms(0)) : kilograms(0);
    }

    void fillWeighings(tracking::FollowQuestion& question, const advice::ColonyQuestion& plain,
                       const std::vector<bool>& wet) const {
        for (std::size_t i = 0; i < plain.weighings.size(); ++i) {
            const auto& seen = plain.weighings[i];
            tracking::Observation observation{seen.day, seen.date, tracking::WeightSeen{seen.kind, seen.reading},
                                              wet[i]};
            if (seen.heft) observation.what = liftedSaid(seen, plain);
            question.observations.push_back(observation);
        }
    }

    tracking::HeftSeen liftedSaid(const advice::WeighedHive& lift, const advice::ColonyQuestion& plain) const {
        tracking::HeftSeen said{advice::heftFollowed(lift, plain, reference.constants, demand_), *lift.heft};
        if (lift.heft == book::HeftWord::Fair) said.relativeSd = reference.decisions.heftFairFollowedSd;
        return said;
    }

    void fillSightings(tracking::FollowQuestion& question, const advice::ColonyQuestion& asked) const {
        for (const auto& sighting : records.sightings) {
            if (!counts(sighting.date)) continue;
            const auto add = [&](auto what) {
                question.observations.push_back({winter.seasonDay(sighting.date), sighting.date, std::move(what)});
            };
            switch (sighting.saw) {
            case book::SightingKind::Flying: add(tracking::FlyingSeen{}); break;
            case book::SightingKind::Cluster: add(clusterOf(sighting, asked, question)); break;
            case book::SightingKind::Dead: add(tracking::DeadOut{}); break;
            case book::SightingKind::Stores: break;
            }
            if (sighting.stores && sighting.saw != book::SightingKind::Dead)
                add(tracking::CombGlimpsed{*sighting.stores});
        }
    }

    tracking::ClusterSeen clusterOf(const book::Sighting& sighting, const advice::ColonyQuestion& asked,
                                    tracking::FollowQuestion& question) const {
        tracking::ClusterSeen cluster{believedBees(sighting, asked, question)};
        if (cluster.bees) cluster.seams = sighting.seams;
        if (sighting.clusterFrom && *sighting.clusterFrom > 0)
            cluster.firstComb = static_cast<std::size_t>(*sighting.clusterFrom - 1);
        return cluster;
    }

    std::optional<BeeCount> believedBees(const book::Sighting& sighting, const advice::ColonyQuestion& asked,
                                         tracking::FollowQuestion& question) const {
        const auto doubt =
            sighting.seams ? stores::doubtOfSeams(*sighting.seams, boundsOfCase(base, reference), reference.constants)
                           : std::nullopt;
        if (!doubt || (sighting.sure && !doubt->impossible)) return beesIn(sighting, asked);
        question.setAside.push_back(setAsideRemark(*doubt, "glance", sighting.date));
        return std::nullopt;
    }
    static std::optional<BeeCount> beesIn(const book::Sighting& sighting, const advice::ColonyQuestion& asked) {
        if (!sighting.seams || asked.boxes.empty()) return std::nullopt;
        return stores::beesFrom(stores::BeesSeen::Seams, *sighting.seams, asked.combs, asked.boxes.front());
    }

    void fillDeath(tracking::FollowQuestion& question) const {
        for (const auto& fate : records.fates)
            if (fate.fate == book::FateKind::Dead && counts(fate.date))
                question.observations.push_back({winter.seasonDay(fate.date), fate.date, tracking::DeadOut{}});
    }

    // A later look is evidence of its own day: its combs, its bees.
    Problems fillLooks(tracking::FollowQuestion& question, SupersFollowed& supers) const {
        for (const auto& look : records.looks) {
            if (!counts(look.date)) continue;
            book::ColonyCase seen = bare();
            seen.asOf = look.date;
            seen.lookedOn = look.date;
            seen.hive = book::hiveOn(records.colony, records.housings, look.date);
            seen.season = {};
            seen.bees = look.bees;
            seen.bees.sure = look.sure;
            seen.combs = look.combs;
            const auto plain = questionOf(seen, {}, reference, 0);
            if (!plain) return plain.problems();
            question.setAside.insert(question.setAside.end(), plain->setAside.begin(), plain->setAside.end());
            const SeasonDay day = winter.seasonDay(look.date);
            if (look.bees.foodBeside) {
                question.observations.push_back({day, look.date, tracking::ClusterSeen{}});
                question.observations.push_back({day, look.date, tracking::CombGlimpsed{*look.bees.foodBeside}});
            }
            if (!plain->combs.empty()) supers.seen(day, advice::honeyApart(*plain, plain->lookedOn));
            const double factor = stores::openFactor(false);
            const auto spreads = stores::combSpreads(reference.constants);
            std::optional<stores::Evidence> evidence =
                stores::evidenceOfVisit(advice::combsForBees(*plain), factor, spreads, look.date);
            if (plain->quick && plain->quickFullComb)
                evidence = stores::evidenceOfCount(*plain->quick, *plain->quickFullComb, factor, spreads, look.date);
            if (evidence) {
                const Mass sd =
                    std::max(kilograms(reference.decisions.laterStoresSdLeast), evidence->sd(evidence->typical));
                question.observations.push_back({day, look.date, tracking::StoresSeen{evidence->typical, sd}});
            }
            if (plain->bees && plain->bees->count > 0)
                question.observations.push_back(
                    {day, look.date,
                     tracking::BeesSeen{*plain->bees,
                                        std::max(reference.decisions.laterBeesSdLeast, plain->beesLogSd)}});
        }
        return {};
    }

    const book::ColonyHistory& records;
    const book::ColonyCase& base;
    const Winter& winter;
    Date decided_, asOf_;
    const ReferenceData& reference;
    const std::vector<book::FeedRecord> evening_;
    const std::vector<HiveChange> hives_;
    const winter::DemandEnsemble* demand_;
};

} // namespace

Problems fillAfterwards(tracking::FollowQuestion& question, const advice::ColonyQuestion& asked,
                        const WinterSpan& span) {
    return RecordsAfterDecision(span).fill(question, asked);
}

} // namespace winterlarder::answer
