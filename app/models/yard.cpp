// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard.h"

#include <algorithm>
#include <utility>

namespace winterlarder::desk {

namespace {

book::ColonyCase blank(Date day) {
    return {.colony = {}, .yard = {}, .asOf = day, .lookedOn = {}, .site = {}, .hive = {}, .bees = {}, .combs = {}, .weighings = {},
            .moisturePercent = {}, .feeds = {}, .harvests = {}, .season = {}, .feeder = {}, .wish = {}};
}

void replace(std::vector<book::Look>& looks, const book::Look& look) {
    for (auto& each : looks)
        if (each.id == look.id) each = look;
}

// What a case says of the look it rests on.
void showLook(book::ColonyCase& record, const book::Look& look) {
    const auto kind = record.bees.kind;
    record.lookedOn = look.date;
    record.bees = look.bees;
    record.bees.sure = look.sure;
    if (!record.bees.kind) record.bees.kind = kind;
    record.combs = look.combs;
    record.moisturePercent = look.moisturePercent;
}

void showWeighing(book::ColonyCase& record, const std::optional<book::WeighingRecord>& before, const book::WeighingRecord& after) {
    const auto found = before ? std::find(record.weighings.begin(), record.weighings.end(), *before) : record.weighings.end();
    if (found != record.weighings.end()) *found = after;
    else if (!before) record.weighings.push_back(after);
}

// Past winters are others only for a day of another winter, whichever hemisphere.
bool sameWinter(Date one, Date other) {
    const auto same = [&](Hemisphere hemisphere) { return Winter::containing(one, hemisphere).autumn() == Winter::containing(other, hemisphere).autumn(); };
    return same(Hemisphere::North) && same(Hemisphere::South);
}

} // namespace

Yard::Yard(OpenBook* book, QObject* parent) : QObject(parent), book_(book) {
    if (!book_) return;
    connect(book_, &OpenBook::opened, this, [this] {
        clear();
        readAgain({true, {}, {}});
    });
    connect(book_, &OpenBook::closed, this, [this] {
        clear();
        emit coloniesChanged();
        emit settledDown();
    });
    connect(book_, &OpenBook::changed, this, &Yard::readAgain);
}

void Yard::clear() {
    colonies_.clear();
    yards_.clear();
    shown_ = {};
    open_ = {};
    records_.reset();
    followed_.clear();
    awaited_.clear();
    past_.reset();
    pastFailed_ = false;
    stale_ = {};
    underWay_.clear(); // what was asked of the book before comes back no more
    reading_ = 0;
}

void Yard::forgetFollowed(ColonyId id) {
    if (followed_.erase(id) > 0) emit followedChanged(id);
}

bool Yard::awaitsFollowing(ColonyId id) const {
    const auto* colony = find(id);
    if (!colony || !colony->answered || !day_ || !awaited_.contains(id) || followed(id)) return false;
    return mayLead(colony->answered->question.winter, *day_);
}

void Yard::awaitFollowed(ColonyId id) { awaited_.insert(id); }

void Yard::followedTold(ColonyId id) {
    if (awaited_.erase(id) > 0) emit followedChanged(id);
}

void Yard::forgetAllFollowed() {
    const auto known = std::exchange(followed_, {});
    for (const auto& each : known) emit followedChanged(each.first);
}

// ---- what is shown ---------------------------------------------------------------------------------------------------

ColonyEntry* Yard::entry(ColonyId id) {
    const auto found = std::find_if(colonies_.begin(), colonies_.end(), [id](const auto& colony) { return colony.id == id; });
    return found == colonies_.end() ? nullptr : &*found;
}

const ColonyEntry* Yard::find(ColonyId id) const {
    return const_cast<Yard*>(this)->entry(id);
}

int Yard::position(ColonyId id) const {
    const auto* colony = find(id);
    return colony ? static_cast<int>(colony - colonies_.data()) : -1;
}

const book::Yard* Yard::shownYard() const {
    const auto found = std::find_if(yards_.begin(), yards_.end(), [this](const auto& yard) { return yard.id == shown_; });
    return found == yards_.end() ? nullptr : &*found;
}

QString Yard::title() const {
    if (const auto* yard = shownYard()) return QString::fromStdString(yard->name);
    for (const auto& colony : colonies_)
        if (colony.record.yard && !colony.record.yard->empty()) return QString::fromStdString(*colony.record.yard);
    return tr("The yard");
}

std::optional<Date> Yard::asOf() const {
    return colonies_.empty() && yards_.empty() ? std::nullopt : day_;
}

const ColonyRecords* Yard::records(ColonyId id) const {
    return records_ && id == open_ && records_->colony.id == id ? &*records_ : nullptr;
}

// ---- what is chosen --------------------------------------------------------------------------------------------------

void Yard::showDay(Date day) {
    if (day_ == day) return;
    day_ = day;
    forgetAllFollowed();
    if (past_ && past_->asOf && !sameWinter(*past_->asOf, day)) {
        past_.reset();
        emit pastChanged();
    }
    readAgain({true, {}, {}});
}

void Yard::showYard(book::YardId id) {
    if (shown_ == id) return;
    shown_ = id;
    readAgain({true, {}, {}});
}

void Yard::look(ColonyId id) {
    if (open_ == id) return;
    open_ = id;
    records_.reset();
    if (id != ColonyId{}) readAgain({false, {id}, {}});
}

// ---- edits -----------------------------------------------------------------------------------------------------------

void Yard::apply(book::Edit edit, OpenBook::Done done) {
    if (writable()) book_->apply(std::move(edit), std::move(done));
}

// What was shown of it is read again where the book refuses it.
void Yard::applyShown(book::Edit edit, const BookChange& shown) {
    const auto number = ++lastEdit_;
    underWay_.insert(number);
    book_->apply(std::move(edit), [this, number, shown](const Problems& problems) {
        const bool ofThisBook = underWay_.erase(number) > 0;
        if (ofThisBook && !problems.empty()) readAgain(shown);
    });
}

void Yard::editShown(book::Edit edit, const std::function<void(ColonyEntry&, ColonyRecords*)>& show, ColonyId id) {
    auto* colony = entry(id);
    if (!colony || !writable()) return;
    const auto before = colony->record;
    show(*colony, const_cast<ColonyRecords*>(records(id)));
    applyShown(std::move(edit), {false, {id}, {}});
    forgetFollowed(id);
    if (colony->record == before) return;
    colony->problems.clear();
    colony->pending = !(colony->answered && colony->answered->record == colony->record);
    emit recordChanged(id);
}

book::Look Yard::lookToEdit(ColonyId id) const {
    const auto* colony = find(id);
    const auto* records = this->records(id);
    if (colony && records)
        if (const auto* look = lookOfCase(*records, colony->record)) return *look;
    return book::Look{.colony = id, .date = day_.value_or(*Date::of(2000, 1, 1))};
}

void Yard::changeComb(ColonyId id, std::size_t place, const book::CombRecord& comb) {
    auto look = lookToEdit(id);
    auto* combs = std::get_if<std::vector<book::CombRecord>>(&look.combs);
    if (look.id == book::LookId{} || !combs || place >= combs->size() || (*combs)[place] == comb) return;
    (*combs)[place] = comb;
    editShown(book::SingleEdit(book::ChangeComb{look.id, place, comb}), [&look](ColonyEntry& colony, ColonyRecords* records) {
        showLook(colony.record, look);
        if (records) replace(records->looks, look);
    }, id);
}

void Yard::writeLook(const book::Look& look) {
    const bool added = look.id == book::LookId{};
    const auto before = lookToEdit(look.colony);
    if (!added && before == look) return;
    const bool shown = before.id == look.id;
    editShown(added ? book::SingleEdit(book::AddLook{look}) : book::SingleEdit(book::ChangeLook{look}), [&](ColonyEntry& colony, ColonyRecords* records) {
        if (shown) showLook(colony.record, look);
        if (records && !added) replace(records->looks, look);
    }, look.colony);
}

void Yard::writeWeighing(const book::Weighing& weighing) {
    const bool added = weighing.id == book::WeighingId{};
    editShown(added ? book::SingleEdit(book::AddWeighing{weighing}) : book::SingleEdit(book::ChangeWeighing{weighing}), [&](ColonyEntry& colony, ColonyRecords* records) {
        std::optional<book::WeighingRecord> before;
        if (records)
            for (auto& each : records->weighings)
                if (each.id == weighing.id) before = std::exchange(each, weighing).weighing;
        if (added || before) showWeighing(colony.record, before, weighing.weighing);
    }, weighing.colony);
}

void Yard::writeYard(const book::Yard& yard) {
    if (!writable()) return;
    for (auto& each : yards_)
        if (each.id == yard.id) each = yard;
    applyShown(book::SingleEdit(book::ChangeYard{yard}), {true, {}, {}});
}

// ---- what comes from outside -----------------------------------------------------------------------------------------

void Yard::readAgain(const BookChange& change) {
    stale_.everything = stale_.everything || change.everything || change.added;
    stale_.colonies.insert(change.colonies.begin(), change.colonies.end());
    if (underWay_.empty()) read();
}

void Yard::read() {
    if (!book_ || !book_->isOpen() || !day_ || (!stale_.everything && stale_.colonies.empty())) return;
    YardRequest request{.yard = shown_, .day = *day_, .open = open_, .only = {}, .past = past_};
    if (!stale_.everything) request.only = stale_.colonies;
    stale_ = {};
    ++reading_;
    book_->ask(this, [request](book::Book& book) { return readYard(book, request); }, [this, request](Outcome<YardReading> reading) {
        --reading_;
        const bool stale = !underWay_.empty() || request.day != day_ || request.yard != shown_ || request.past != past_;
        if (!reading.ok()) emit unreadable(reading.problems());
        else if (stale) readAgain({!request.only, request.only.value_or(std::set<ColonyId>{}), {}});
        else takeReading(std::move(reading).value());
        if (!busy()) emit settledDown();
    });
}

void Yard::put(ColonyEntry& entry, Outcome<book::ColonyCase> record, bool& changed) {
    changed = false;
    if (!record.ok()) {
        entry.problems = record.problems();
        entry.pending = false;
        changed = true;
        return;
    }
    if (entry.record == *record) return;
    entry.record = std::move(record).value();
    entry.problems.clear();
    entry.pending = !(entry.answered && entry.answered->record == entry.record);
    changed = true;
}

void Yard::takeReading(YardReading reading) {
    if (!reading.problems.empty()) emit unreadable(reading.problems);
    day_ = reading.day;
    std::vector<ColonyEntry> next;
    std::vector<ColonyId> changed;
    bool visitsOther = false;
    for (auto& [id, record] : reading.colonies) {
        auto* known = entry(id);
        if (!known && !reading.whole) continue;
        ColonyEntry made = known ? std::move(*known) : ColonyEntry{.id = id, .record = blank(reading.day), .answered = nullptr};
        bool other = false;
        put(made, std::move(record), other);
        visitsOther = std::exchange(made.visits, std::move(reading.visits[id])) != made.visits || visitsOther;
        if (other || !known) changed.push_back(id);
        if (reading.whole) next.push_back(std::move(made));
        else *known = std::move(made);
    }
    std::vector<ColonyId> anew;
    for (const auto& each : reading.colonies)
        if (reading.whole || find(each.first)) anew.push_back(each.first);
    if (reading.whole) {
        colonies_ = std::move(next);
        yards_ = std::move(reading.yards);
        shown_ = reading.shown;
        emit coloniesChanged();
    }
    for (const auto id : changed) emit recordChanged(id);
    if (visitsOther) emit visitsChanged();
    takeRecords(std::move(reading.open));
    for (const auto id : anew) emit followWanted(id);
}

void Yard::takeRecords(std::optional<ColonyRecords> records) {
    if (!records || records->colony.id != open_) return;
    records_ = std::move(records);
    emit recordsChanged(open_);
}

bool Yard::takeAnswer(ColonyId id, const AnsweredPointer& answered) {
    auto* colony = entry(id);
    if (!colony || !answered || !(answered->record == colony->record)) return false;
    colony->answered = answered;
    colony->problems.clear();
    colony->pending = false;
    emit answerChanged(id);
    return true;
}

void Yard::takeProblems(ColonyId id, const book::ColonyCase& record, Problems problems) {
    auto* colony = entry(id);
    if (!colony || !(record == colony->record)) return;
    colony->problems = std::move(problems);
    colony->pending = false;
    emit answerChanged(id);
}

void Yard::takeFollowed(ColonyId id, const FollowedPointer& followed) {
    if (!find(id) || !followed || followed->reading.asOf != day_) return;
    followed_[id] = followed;
    emit followedChanged(id);
}

void Yard::takePastFailure() {
    pastFailed_ = true;
    emit pastChanged();
}

void Yard::takePast(const PastPointer& past) {
    past_ = past;
    pastFailed_ = false;
    emit pastChanged();
    readAgain({true, {}, {}});
}

} // namespace winterlarder::desk
