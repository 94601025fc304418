// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/evidence.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::learning {

namespace {

constexpr double storesLeftSd = 0.15, storesLeftRoundingKg = 0.5;
constexpr double nothingLeftKg = 0.5;
constexpr double fewestDraws = 8; // effective; fewer say nothing

std::optional<SeasonDay> lastSignOfLife(const tracking::FollowQuestion& question) {
    std::optional<SeasonDay> last;
    for (const auto& seen : question.observations) {
        const bool life = tracking::showsAlive(seen) || std::holds_alternative<tracking::FlyingSeen>(seen.what);
        if (life && (!last || seen.day > *last)) last = seen.day;
    }
    return last;
}

void tellDeath(const WinterEnd& end, tracking::FollowQuestion& question) {
    const auto life = lastSignOfLife(question);
    std::erase_if(question.observations, [&](const tracking::Observation& seen) {
        return std::holds_alternative<tracking::DeadOut>(seen.what) || !life || seen.day > *life;
    });
    if (end.storesLeft && end.storesLeft->value() < nothingLeftKg)
        question.observations.push_back({end.day, end.date, tracking::StarvedOut{}});
}

void tellLife(const WinterEnd& end, tracking::FollowQuestion& question) {
    if (end.bees) question.observations.push_back({end.day, end.date, tracking::BeesSeen{*end.bees, end.beesLogSd}});
    else question.observations.push_back({end.day, end.date, tracking::ClusterSeen{}});
    if (end.storesLeft) {
        const double sd = std::hypot(storesLeftSd * end.storesLeft->value(), storesLeftRoundingKg);
        question.observations.push_back({end.day, end.date, tracking::StoresSeen{*end.storesLeft, kilograms(sd)}});
    }
}

// Mean and covariance of (ln use, ln death), as information. A covariance from so many effective draws makes its inverse too large by
// (n - 1)/(n - 4) in two dimensions (Hartlap et al. 2007, Astronomy and Astrophysics 464:399), and the mean errs by 1/n of it.
struct Moments {
    double u = 0, d = 0, uu = 0, ud = 0, dd = 0, draws = 0;

    double trusted() const { return draws > fewestDraws ? (draws - 4) / (draws - 1) / (1 + 1 / draws) : 0; }

    WinterEvidence information() const {
        if (trusted() <= 0) return {};
        const double scale = trusted() / (uu * dd - ud * ud);
        WinterEvidence result;
        result.useUse = scale * dd;
        result.useDeath = -scale * ud;
        result.deathDeath = scale * uu;
        result.use = result.useUse * u + result.useDeath * d;
        result.death = result.useDeath * u + result.deathDeath * d;
        return result;
    }
};

Moments momentsOf(const std::vector<double>& weights, std::span<const winter::WinterDraw> draws) {
    Moments m;
    m.draws = tracking::effectiveSize(weights);
    for (std::size_t i = 0; i < weights.size(); ++i) {
        m.u += weights[i] * std::log(draws[i].lastingUse);
        m.d += weights[i] * std::log(draws[i].lastingDeath);
    }
    for (std::size_t i = 0; i < weights.size(); ++i) {
        const double u = std::log(draws[i].lastingUse) - m.u, d = std::log(draws[i].lastingDeath) - m.d;
        m.uu += weights[i] * u * u;
        m.ud += weights[i] * u * d;
        m.dd += weights[i] * d * d;
    }
    return m;
}

// A precision has no negative direction: what noise leaves below 0 says nothing.
WinterEvidence withoutNegative(const WinterEvidence& e) {
    const double middle = 0.5 * (e.useUse + e.deathDeath),
                 half = std::hypot(0.5 * (e.useUse - e.deathDeath), e.useDeath);
    const double angle = 0.5 * std::atan2(2 * e.useDeath, e.useUse - e.deathDeath);
    const double c = std::cos(angle), s = std::sin(angle);
    WinterEvidence result;
    for (const auto& [value, x, y] : {std::array{middle + half, c, s}, std::array{middle - half, -s, c}}) {
        if (value <= 0) continue;
        const double along = x * e.use + y * e.death;
        result += {value * x * x, value * x * y, value * y * y, along * x, along * y};
    }
    return result;
}

} // namespace

WinterEvidence& WinterEvidence::operator+=(const WinterEvidence& other) {
    useUse += other.useUse;
    useDeath += other.useDeath;
    deathDeath += other.deathDeath;
    use += other.use;
    death += other.death;
    return *this;
}

tracking::FollowQuestion asTold(const PastWinter& winter) {
    tracking::FollowQuestion question = winter.question;
    if (!winter.end) return question;
    question.today = std::max(question.decided, winter.end->day);
    if (winter.end->alive) tellLife(*winter.end, question);
    else tellDeath(*winter.end, question);
    return question;
}

winter::LearnedMultipliers unknownKeeper(const ModelConstants& constants) {
    return {1, constants.lastingUseSd, 1, constants.lastingDeathSd};
}

WinterEvidence evidenceIn(const tracking::Belief& belief, std::span<const winter::WinterDraw> draws,
                          const ModelConstants& constants) {
    std::vector<double> proposal(belief.logWeight.size());
    bool drawnAgain = false;
    if (belief.fitsNoWinter) return {.fitsNoWinter = true};
    for (std::size_t i = 0; i < proposal.size(); ++i) {
        proposal[i] = std::isinf(belief.logLikelihood[i]) ? 0 : belief.logWeight[i] - belief.logLikelihood[i];
        drawnAgain = drawnAgain || std::abs(proposal[i]) > 1e-9;
    }
    const WinterEvidence with = momentsOf(tracking::normalised(belief.logWeight), draws).information();
    if (!with.saysAnything()) return {};
    const auto squared = [](double x) { return x * x; };
    const WinterEvidence unknown{1 / squared(constants.lastingUseSd), 0, 1 / squared(constants.lastingDeathSd), 0, 0};
    // The same draws without the likelihood: their noise cancels. Not so where they were drawn again around what was learned.
    const WinterEvidence without =
        drawnAgain ? unknown : momentsOf(tracking::normalised(proposal), draws).information();
    return withoutNegative({with.useUse - without.useUse, with.useDeath - without.useDeath,
                            with.deathDeath - without.deathDeath, with.use - without.use, with.death - without.death});
}

std::optional<WinterEvidence> evidenceOf(const PastWinter& winter, const ModelConstants& constants,
                                         winter::Sampling sampling, int threads, std::stop_token stop) {
    tracking::FollowQuestion question = asTold(winter);
    if (question.observations.empty()) return WinterEvidence{};
    question.winter.learned = unknownKeeper(constants);
    const auto tracked = tracking::track(question, constants, sampling, threads, stop);
    if (!tracked) return std::nullopt;
    return evidenceIn(tracked->belief, tracked->ensemble->draws(), constants);
}

} // namespace winterlarder::learning
