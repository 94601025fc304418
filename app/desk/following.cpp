// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/following.h"

#include <utility>

namespace winterlarder::desk {

Following::Following(Yard* yard, winter::Sampling sampling, int threads, QObject* parent)
    : QObject(parent), yard_(yard), sampling_(sampling), threads_(threads) {
    connect(yard_, &Yard::coloniesChanged, this, &Following::keepOnlyThere);
    connect(yard_, &Yard::followWanted, this, &Following::want);
    connect(&work_, &LatestWork::failed, this, [this](const QString& what) {
        emit yard_->unreadable({{ProblemKind::Input, {}, what.toStdString(), {}}});
        finished(asked_, current_, nullptr);
    });
}

void Following::keepOnlyThere() {
    std::erase_if(queue_, [this](ColonyId id) { return !yard_->find(id); });
}

// The colony being looked at goes before all others, also one under way.
void Following::want(ColonyId id) {
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

void Following::next() {
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
    yard_->book()->ask([this, id, day = *day, number = ++asked_, past = yard_->past()](book::Book& book) -> BookWorker::Finish {
        auto read = std::make_shared<Outcome<answer::FollowReading>>(answer::readToFollow(book, id, day, past ? &past->learned : nullptr));
        return [this, id, number, read] {
            --reading_;
            if (number != asked_) return next();
            const auto known = yard_->followed(id);
            if (known && read->ok() && known->reading == **read) return finished(number, id, nullptr);
            yard_->forgetFollowed(id);
            const bool wanted = read->ok() && (id == yard_->openColony() || followLeads(**read));
            if (wanted) compute(**read, id, number);
            else finished(number, id, nullptr);
        };
    });
}

void Following::compute(const answer::FollowReading& reading, ColonyId id, quint64 number) {
    work_.ask([this, reading, id, number, reference = yard_->book()->reference(), sampling = sampling_, threads = threads_](std::stop_token stop) -> LatestWork::Finish {
        FollowedPointer made;
        auto colony = answer::followedColony(reading, *reference, sampling, threads, true, stop);
        if (colony.ok()) {
            auto followed = std::make_shared<FollowedWinter>(FollowedWinter{reading, std::move(colony).value(), std::nullopt});
            if (followed->colony.question)
                followed->following = tracking::follow(*followed->colony.question, reference->constants, sampling, threads, stop);
            made = std::move(followed);
        }
        return [this, id, number, made] { finished(number, id, made); };
    });
}

void Following::finished(quint64 number, ColonyId id, const FollowedPointer& followed) {
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
    connect(&work_, &LatestWork::idleAgain, this, &Learning::tellIfIdle);
    connect(yard_->book(), &OpenBook::opened, this, [this] {
        day_.reset();
        cache_ = std::make_shared<Cache>();
    });
    connect(yard_->book(), &OpenBook::changed, this, &Learning::learnSoon);
    connect(yard_, &Yard::coloniesChanged, this, [this] {
        if (yard_->asOf() && yard_->asOf() != day_) read(); // another book or another day
    });
}

void Learning::tellIfIdle() {
    if (idle()) emit idleAgain();
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
    yard_->book()->ask([this, number, day = *day](book::Book& book) -> BookWorker::Finish {
        auto read = std::make_shared<Outcome<answer::BookPast>>(answer::readPast(book, day));
        return [this, number, read, day] {
            --reading_;
            if (number == asked_ && read->ok()) compute(**read, day);
            tellIfIdle();
        };
    });
}

namespace {

PastForecast forecastOf(const answer::PastColonyWinter& winter, const learning::ForecastScore& score) {
    return {winter.colony, QString::fromStdString(winter.name), winter.autumn, winter.winter.question.year.date(score.day), score, winter.handbook};
}

} // namespace

void Learning::compute(const answer::BookPast& past, Date day) {
    work_.ask([this, past, day, known = cache_, reference = yard_->book()->reference(), sampling = sampling_, threads = threads_](std::stop_token stop) -> LatestWork::Finish {
        auto cache = std::make_shared<Cache>();
        std::vector<const answer::PastColonyWinter*> winters;
        std::vector<answer::WinterTold> told;
        auto made = std::make_shared<PastLearned>();
        made->asOf = day;
        std::vector<learning::ForecastScore> scores;
        for (const auto& reading : past.winters) {
            std::shared_ptr<const Known> one;
            for (const auto& each : *known)
                if (each->reading == reading) one = each;
            if (!one) {
                auto fresh = std::make_shared<Known>(Known{reading, answer::pastWinterOf(reading, *reference, sampling, threads, stop), {}});
                if (stop.stop_requested()) return {};
                if (fresh->winter) {
                    auto says = answer::toldBy(*fresh->winter, reference->constants, sampling, threads, true, stop);
                    if (!says || stop.stop_requested()) return {};
                    fresh->told = std::move(*says);
                }
                one = std::move(fresh);
            }
            cache->push_back(one);
            if (!one->winter) continue;
            winters.push_back(&*one->winter);
            told.push_back(one->told);
            if (!one->told.score) continue;
            scores.push_back(*one->told.score);
            made->forecasts.push_back(forecastOf(*one->winter, *one->told.score));
        }
        made->learned = answer::addUp(winters, told, past.yards, reference->constants);
        made->summary = learning::summarise(scores);
        return [this, cache, made = PastPointer(std::move(made))] {
            cache_ = cache;
            yard_->takePast(made);
        };
    });
}

} // namespace winterlarder::desk
