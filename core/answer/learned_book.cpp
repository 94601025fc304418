// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/learned_book.h"

#include "book/case_of.h"
#include "support/caught.h"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace winterlarder::answer {

namespace {

// Years whose winter has a look of the colony.
std::set<int> autumnsOf(const book::ColonyHistory& records, Hemisphere hemisphere) {
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

// A winter is learned from in a yard that learns, unless it was decided before the day from which it does.
bool learnsFrom(const FollowReading& then, const std::vector<book::Yard>& yards) {
    const auto yard =
        std::find_if(yards.begin(), yards.end(), [&](const book::Yard& each) { return each.id == then.yard; });
    return yard != yards.end() && yard->learn && !(yard->learnSince && then.decided < *yard->learnSince);
}

// Winters of one colony before the one that contains the day: all of them out of its one history.
void addPast(BookPast& past, const book::ColonyHistory& history, const book::YardsOfBook& yards,
             const ReferenceData& reference, Date asOf) {
    const auto today = followReading(history, yards, reference, asOf, nullptr);
    if (!today) return;
    const auto& winter = today->winter;
    const auto& rules = reference.decisions;
    const SeasonDay winterOver{static_cast<int>(rules.winterOverDay)};
    for (const int autumn : autumnsOf(today->records, winter.hemisphere())) {
        if (autumn >= winter.autumn() || autumn < winter.autumn() - static_cast<int>(rules.pastWinters)) continue;
        auto then =
            followReading(history, yards, reference, Winter(winter.hemisphere(), autumn).date(winterOver), nullptr);
        if (!then || !learnsFrom(*then, yards.yards)) continue;
        const auto yard = then->yard;
        past.winters.push_back({history.colony.id, history.colony.name, yard, autumn, std::move(then).value()});
    }
}

Outcome<BookPast> readPastOf(book::Book& from, Date asOf) {
    const auto yards = from.all<book::Yard>();
    if (!yards) return yards.problems();
    const auto colonies = from.all<book::Colony>();
    if (!colonies) return colonies.problems();
    BookPast past;
    for (const auto& yard : *yards)
        if (yard.learn) past.yards.insert(yard.id.number);
    const auto around = book::yardsOf(from);
    if (!around) return past; // who asks about a winter is told why it cannot be followed
    for (const auto& colony : *colonies) {
        const auto history = book::historyOf(from, colony.id);
        if (history) addPast(past, *history, *around, from.reference(), asOf);
        else past.problems.push_back(history.problems().front());
    }
    std::stable_sort(past.winters.begin(), past.winters.end(),
                     [](const PastReading& a, const PastReading& b) { return a.autumn < b.autumn; });
    return past;
}

} // namespace

Outcome<BookPast> readPast(book::Book& from, Date asOf) {
    return book::readTogether(from, [&] { return readPastOf(from, asOf); });
}

winter::Sampling forLearning(winter::Sampling asked, const DecisionConstants& rules) {
    return {asked.seed, std::min(asked.winters, static_cast<int>(rules.learningWinters))};
}

std::optional<PastColonyWinter> pastWinterOf(const PastReading& past, const ReferenceData& reference,
                                             winter::Sampling sampling, int threads, std::stop_token stop) {
    auto followed = followedColony(past.reading, reference, forLearning(sampling, reference.decisions), threads,
                                   EndOfWinter::LeftOut, stop);
    if (!followed || !tells(*followed)) return std::nullopt;
    return PastColonyWinter{past.colony,
                            past.name,
                            past.yard,
                            past.autumn,
                            {std::move(*followed->question), followed->end},
                            handbookFor(*followed->autumn.site, reference)};
}

std::optional<WinterTold> toldBy(const PastColonyWinter& past, const ReferenceData& reference,
                                 winter::Sampling sampling, int threads, Score score, std::stop_token stop) {
    const ModelConstants& constants = reference.constants;
    const winter::Sampling fewer = forLearning(sampling, reference.decisions);
    const auto says = learning::evidenceOf(past.winter, constants, fewer, threads, stop);
    if (!says) return std::nullopt;
    WinterTold told{*says, learning::forageTurn(scaleWeights(past.winter.question), constants), std::nullopt};
    if (score == Score::Told)
        told.score = learning::scoreOf(past.winter, past.handbook.use, constants, fewer, threads, stop);
    return told;
}

BookLearned addUp(const std::vector<const PastColonyWinter*>& winters, const std::vector<WinterTold>& told,
                  const std::set<std::int64_t>& yards, const ModelConstants& constants) {
    std::vector<learning::ColonyWinter> evidence;
    std::map<std::int64_t, std::vector<learning::ForageSeen>> turns;
    std::map<std::int64_t, const tracking::FollowQuestion*> lastQuestion;
    std::set<int> autumns;
    for (std::size_t i = 0; i < winters.size(); ++i) {
        const auto& past = *winters[i];
        evidence.push_back({static_cast<std::uint64_t>(past.yard.number),
                            static_cast<std::uint64_t>(past.colony.number), told[i].evidence});
        if (told[i].evidence.saysAnything()) autumns.insert(past.autumn);
        lastQuestion[past.yard.number] = &past.winter.question;
        if (told[i].turn) turns[past.yard.number].push_back(*told[i].turn);
    }
    BookLearned learned;
    learned.yards = yards;
    learned.winters = static_cast<int>(autumns.size());
    learned.bees = learning::learn(evidence, constants);
    for (const auto& [yard, seen] : turns) {
        const auto& winter = lastQuestion.at(yard)->winter;
        learned.forage[yard] =
            learning::learnForage(seen, winter.season, winter.curve.variability().seasonOffsetSd, constants);
    }
    return learned;
}

namespace {

std::string winterName(const std::string& colony, int autumn) {
    return fmt::format("the winter of {} of {}", autumn, colony);
}

} // namespace

Outcome<std::optional<ToldWinter>> toldWinter(const PastReading& past, const ReferenceData& reference,
                                              winter::Sampling sampling, int threads, Score score,
                                              const std::string& file, std::stop_token stop) {
    return caught({file, 0, 0}, winterName(past.name, past.autumn), [&]() -> Outcome<std::optional<ToldWinter>> {
        auto winter = pastWinterOf(past, reference, sampling, threads, stop);
        if (!winter || stop.stop_requested()) return std::optional<ToldWinter>();
        auto told = toldBy(*winter, reference, sampling, threads, score, stop);
        if (!told) return std::optional<ToldWinter>();
        return std::optional(ToldWinter{std::move(*winter), std::move(*told)});
    });
}

Outcome<LearnedBook> learnOf(book::Book& from, Date asOf, winter::Sampling sampling, int threads) {
    const auto past = readPast(from, asOf);
    if (!past) return past.problems();
    LearnedBook result;
    result.problems = past->problems;
    std::vector<WinterTold> told;
    for (const auto& reading : past->winters) {
        auto one = toldWinter(reading, from.reference(), sampling, threads, Score::LeftOut, from.file().string());
        if (!one) result.problems.push_back(one.problems().front());
        if (!one || !*one) continue;
        if ((*one)->told.evidence.fitsNoWinter) result.fitNone.push_back({reading.name, reading.autumn});
        result.winters.push_back(std::move((*one)->winter));
        told.push_back(std::move((*one)->told));
    }
    std::vector<const PastColonyWinter*> winters;
    for (const auto& winter : result.winters) winters.push_back(&winter);
    result.learned = addUp(winters, told, past->yards, from.reference().constants);
    return result;
}

ScoredWinters scoredFrom(const std::vector<PastColonyWinter>& winters, const ReferenceData& reference,
                         winter::Sampling sampling, int threads) {
    using Scored = std::optional<learning::ForecastScore>;
    ScoredWinters scored;
    for (const auto& past : winters) {
        const auto score = caught({}, winterName(past.name, past.autumn), [&]() -> Outcome<Scored> {
            return learning::scoreOf(past.winter, past.handbook.use, reference.constants,
                                     forLearning(sampling, reference.decisions), threads);
        });
        if (!score) scored.problems.push_back(score.problems().front());
        else if (*score) scored.winters.push_back({&past, **score});
    }
    return scored;
}

} // namespace winterlarder::answer
