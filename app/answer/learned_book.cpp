// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/learned_book.h"

#include "book/case_of.h"

#include <algorithm>
#include <set>

namespace winterlarder::answer {

namespace {

constexpr SeasonDay winterIsOver{150}; // end of May, end of November in the south
constexpr int mostPastWinters = 15;

struct YardLearning {
    bool learns = true;
    std::optional<Date> since;
};

Outcome<std::map<std::int64_t, YardLearning>> yardsOf(book::Book& from) {
    const auto yards = from.all<book::Yard>();
    if (!yards) return yards.problems();
    std::map<std::int64_t, YardLearning> result;
    for (const auto& yard : *yards) result[yard.id.number] = {yard.learn, yard.learnSince};
    return result;
}

// Years whose winter has a look of the colony.
std::set<int> autumnsOf(const WinterRecords& records, Hemisphere hemisphere) {
    std::set<int> autumns;
    for (const auto& look : records.looks) autumns.insert(Winter::containing(look.date, hemisphere).autumn());
    return autumns;
}

bool tells(const FollowedColony& followed) {
    return followed.question && (followed.end || !followed.question->observations.empty());
}

std::vector<learning::DayWeight> scaleWeights(const tracking::FollowQuestion& question) {
    std::vector<learning::DayWeight> weights;
    for (const auto& seen : question.observations)
        if (const auto* weight = std::get_if<tracking::WeightSeen>(&seen.what);
            weight && weight->kind == stores::WeighingKind::Scale && !seen.wet)
            weights.push_back({seen.day, weight->reading});
    return weights;
}

} // namespace

Outcome<std::vector<PastColonyWinter>> pastWintersOf(book::Book& from, Date asOf, winter::Sampling sampling, int threads) {
    const auto yards = yardsOf(from);
    if (!yards) return yards.problems();
    const auto colonies = from.all<book::Colony>();
    if (!colonies) return colonies.problems();
    std::vector<PastColonyWinter> past;
    for (const auto& colony : *colonies) {
        const auto records = winterRecordsOf(from, colony.id, asOf);
        if (!records) return records.problems();
        if (records->looks.empty()) continue;
        const auto today = followedColony(from, colony.id, asOf, nullptr, {sampling.seed, 16}, 1, false);
        if (!today) continue; // a faulty case is told where it is asked about, not here
        const Winter now = today->autumn.winter;
        for (int autumn : autumnsOf(*records, now.hemisphere())) {
            if (autumn >= now.autumn() || autumn < now.autumn() - mostPastWinters) continue;
            const Date over = Winter(now.hemisphere(), autumn).date(winterIsOver);
            auto followed = followedColony(from, colony.id, over, nullptr, {sampling.seed, learningWinters}, threads, false);
            if (!followed || !tells(*followed)) continue;
            const auto then = winterRecordsOf(from, colony.id, over);
            if (!then) return then.problems();
            const auto yard = yards->find(then->yard.number);
            const Date decided = followed->autumn.winter.date(followed->autumn.asOf);
            if (yard == yards->end() || !yard->second.learns || (yard->second.since && decided < *yard->second.since)) continue;
            past.push_back({colony.id, colony.name, then->yard, autumn, {std::move(*followed->question), followed->end}});
        }
    }
    std::stable_sort(past.begin(), past.end(),
                     [](const PastColonyWinter& a, const PastColonyWinter& b) { return a.autumn < b.autumn; });
    return past;
}

std::optional<BookLearned> learnedFrom(const std::vector<PastColonyWinter>& winters, const ModelConstants& constants,
                                       winter::Sampling sampling, int threads, std::stop_token stop) {
    std::vector<learning::ColonyWinter> evidence;
    std::map<std::int64_t, std::vector<learning::ForageSeen>> turns;
    std::map<std::int64_t, const tracking::FollowQuestion*> lastQuestion;
    for (const auto& past : winters) {
        const auto says = learning::evidenceOf(past.winter, constants, {sampling.seed, learningWinters}, threads, stop);
        if (!says) return std::nullopt;
        evidence.push_back({static_cast<std::uint64_t>(past.yard.number), static_cast<std::uint64_t>(past.colony.number), *says});
        const auto& question = past.winter.question;
        lastQuestion[past.yard.number] = &question;
        if (const auto turn = learning::forageTurn(scaleWeights(question), constants)) turns[past.yard.number].push_back(*turn);
    }
    BookLearned learned;
    learned.bees = learning::learn(evidence, constants);
    for (const auto& [yard, seen] : turns) {
        const auto& winter = lastQuestion.at(yard)->winter;
        learned.forage[yard] = learning::learnForage(seen, winter.season, winter.curve.variability().seasonOffsetSd, constants);
    }
    return learned;
}

std::vector<ScoredWinter> scoredFrom(const std::vector<PastColonyWinter>& winters, const ModelConstants& constants,
                                     winter::Sampling sampling, int threads) {
    std::vector<ScoredWinter> scored;
    for (const auto& past : winters)
        if (const auto score = learning::scoreOf(past.winter, handbookUse, constants, {sampling.seed, learningWinters}, threads))
            scored.push_back({&past, *score});
    return scored;
}

} // namespace winterlarder::answer
