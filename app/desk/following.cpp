// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/following.h"

#include "models/problem_words.h"

#include <utility>

namespace winterlarder::desk {

WinterFollower::WinterFollower(Yard* yard, winter::Sampling sampling, int threads, QObject* parent)
    : QObject(parent), yard_(yard), sampling_(sampling), threads_(threads) {
    yard_->onChange(this, {YardChange::Colonies}, &WinterFollower::keepOnlyThere);
    yard_->onChange(this, {YardChange::Read}, &WinterFollower::want);
    connect(yard_->book(), &OpenBook::opened, this, &WinterFollower::forget);
    connect(yard_->book(), &OpenBook::closed, this, &WinterFollower::forget);
}

// What was asked of the book before comes back no more.
void WinterFollower::forget() {
    const bool waited = !idle();
    queue_.clear();
    current_ = {};
    reading_ = 0;
    ++asked_;
    work_.cancel();
    if (waited) emit idleAgain();
}

void WinterFollower::keepOnlyThere() {
    std::erase_if(queue_, [this](ColonyId id) { return !yard_->find(id); });
}

// The colony being looked at goes before all others, also one under way.
void WinterFollower::want(ColonyId id) {
    yard_->awaitFollowed(id);
    std::erase(queue_, id);
    const bool first = id == yard_->openColony();
    if (current_ != ColonyId{} && (first || current_ == id)) {
        if (current_ != id) queue_.push_front(current_);
        ++asked_;
        current_ = {};
        work_.cancel();
    }
    if (first) queue_.push_front(id);
    else queue_.push_back(id);
    next();
}

void WinterFollower::next() {
    const auto day = yard_->asOf();
    if (current_ != ColonyId{}) return;
    if (queue_.empty() || !day || !yard_->book()) {
        for (const auto id : std::exchange(queue_, {})) yard_->followedTold(id);
        if (idle()) emit idleAgain();
        return;
    }
    const ColonyId id = current_ = queue_.front();
    queue_.pop_front();
    ++reading_;
    yard_->book()->ask(
        this,
        [id, day = *day, past = yard_->past()](book::Book& book) {
            return answer::readToFollow(book, id, day, past ? &past->learned : nullptr);
        },
        [this, id, number = ++asked_](const Outcome<answer::FollowReading>& read) {
            --reading_;
            take(number, id, read);
        });
}

void WinterFollower::take(quint64 number, ColonyId id, const Outcome<answer::FollowReading>& read) {
    if (number != asked_) return next();
    const auto known = yard_->followed(id);
    if (known && read.ok() && known->reading == *read) return finished(number, id, nullptr);
    yard_->forgetFollowed(id);
    if (!read.ok() && isOurs(read.problems())) emit failed(read.problems());
    const bool wanted = read.ok() && (id == yard_->openColony() || answer::followLeads(*read));
    if (wanted) compute(*read, id, number);
    else finished(number, id, nullptr);
}

namespace {

FollowedPointer followedWinter(const answer::FollowReading& reading, const ReferenceData& reference,
                               winter::Sampling sampling, int threads, const std::stop_token& stop) {
    auto colony = answer::followedColony(reading, reference, sampling, threads, answer::EndOfWinter::Counts, stop);
    if (!colony.ok()) return nullptr;
    auto followed = std::make_shared<FollowedWinter>(FollowedWinter{reading, std::move(colony).value(), std::nullopt});
    if (followed->colony.question)
        followed->following =
            tracking::follow(*followed->colony.question, reference.constants, sampling, threads, stop);
    return followed;
}

} // namespace

void WinterFollower::compute(const answer::FollowReading& reading, ColonyId id, quint64 number) {
    work_.ask(
        this,
        [reading, reference = yard_->book()->reference(), sampling = sampling_, threads = threads_](
            const std::stop_token& stop) { return followedWinter(reading, *reference, sampling, threads, stop); },
        [this, id, number](const Outcome<FollowedPointer>& made) {
            if (!made.ok()) emit failed(made.problems());
            finished(number, id, made.ok() ? *made : nullptr);
        });
}

void WinterFollower::finished(quint64 number, ColonyId id, const FollowedPointer& followed) {
    if (number != asked_) return;
    current_ = {};
    if (followed) yard_->takeFollowed(id, followed);
    yard_->followedTold(id);
    next();
}

// ---- learning ----------------------------------------------------------------------------------------------------------

namespace {

constexpr int restMilliseconds = 300; // until the keeper's hand rests

} // namespace

Learning::Learning(Yard* yard, winter::Sampling sampling, int threads, QObject* parent)
    : QObject(parent), yard_(yard), sampling_(sampling), threads_(threads) {
    soon_.setSingleShot(true);
    soon_.setInterval(restMilliseconds);
    connect(&soon_, &QTimer::timeout, this, &Learning::read);
    connect(&work_, &NewestWork::idleAgain, this, &Learning::tellIfIdle);
    connect(yard_->book(), &OpenBook::opened, this, &Learning::forget);
    connect(yard_->book(), &OpenBook::closed, this, &Learning::forget);
    connect(yard_->book(), &OpenBook::changed, this, &Learning::learnSoon);
    yard_->onChange(this, {YardChange::Colonies}, [this] {
        if (yard_->asOf() && yard_->asOf() != day_) read(); // another book or another day
    });
}

// What was asked of the book before comes back no more.
void Learning::forget() {
    day_.reset();
    cache_ = std::make_shared<Cache>();
    reading_ = 0;
    ++asked_;
    soon_.stop();
    work_.cancel();
    tellIfIdle();
}

void Learning::tellIfIdle() {
    if (idle()) emit idleAgain();
}

void Learning::tellFailure(const Problems& problems) {
    yard_->takePastFailure();
    emit failed(problems);
}

void Learning::learnSoon() { soon_.start(); }

void Learning::read() {
    const auto day = yard_->asOf();
    const quint64 number = ++asked_;
    if (!day || !yard_->book()->isOpen()) {
        work_.cancel();
        return tellIfIdle();
    }
    day_ = day;
    ++reading_;
    work_.cancel();
    yard_->book()->ask(
        this, [day = *day](book::Book& book) { return answer::readPast(book, day); },
        [this, number, day = *day](const Outcome<answer::BookPast>& read) {
            --reading_;
            if (!read.ok()) tellFailure(read.problems());
            else if (number == asked_) compute(*read, day);
            tellIfIdle();
        });
}

namespace {

PastForecast forecastOf(const answer::PastColonyWinter& winter, const learning::ForecastScore& score) {
    return {winter.colony, QString::fromStdString(winter.name),
            winter.autumn, winter.winter.question.year.date(score.day),
            score,         winter.handbook};
}

} // namespace

void Learning::compute(const answer::BookPast& past, Date day) {
    work_.ask(
        this,
        [past, day, known = cache_, reference = yard_->book()->reference(), sampling = sampling_, threads = threads_](
            const std::stop_token& stop) { return learn(past, day, *known, *reference, sampling, threads, stop); },
        [this](const Outcome<std::optional<Lesson>>& learned) {
            if (!learned.ok()) return tellFailure(learned.problems());
            if (!*learned) return;
            cache_ = (*learned)->cache;
            yard_->takePast((*learned)->past);
            if (!(*learned)->problems.empty()) emit failed((*learned)->problems);
        });
}

std::optional<Learning::Lesson> Learning::learn(const answer::BookPast& past, Date day, const Cache& known,
                                                const ReferenceData& reference, winter::Sampling sampling, int threads,
                                                const std::stop_token& stop) {
    auto cache = std::make_shared<Cache>();
    std::vector<const answer::PastColonyWinter*> winters;
    std::vector<answer::WinterTold> told;
    auto made = std::make_shared<PastLearned>();
    made->asOf = day;
    std::vector<learning::ForecastScore> scores;
    Problems problems = past.problems;
    for (const auto& reading : past.winters) {
        std::shared_ptr<const Known> one;
        for (const auto& each : known)
            if (each->reading == reading) one = each;
        if (!one) {
            auto fresh = answer::toldWinter(reading, reference, sampling, threads, answer::Score::Told, {}, stop);
            if (stop.stop_requested()) return std::nullopt;
            if (!fresh.ok()) problems.insert(problems.end(), fresh.problems().begin(), fresh.problems().end());
            if (!fresh.ok()) continue;
            one = std::make_shared<Known>(Known{reading, std::move(fresh).value()});
        }
        cache->push_back(one);
        if (!one->told) continue;
        winters.push_back(&one->told->winter);
        told.push_back(one->told->told);
        if (!one->told->told.score) continue;
        scores.push_back(*one->told->told.score);
        made->forecasts.push_back(forecastOf(one->told->winter, *one->told->told.score));
    }
    made->learned = answer::addUp(winters, told, past.yards, reference.constants);
    made->summary = learning::summarise(scores);
    return Lesson{cache, made, std::move(problems)};
}

} // namespace winterlarder::desk
