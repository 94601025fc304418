// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard.h"

#include "book/case_of.h"
#include "models/words.h"
#include "support/require.h"

#include <utility>

namespace winterlarder::desk {

Yard::Yard(OpenBook* book, QObject* parent) : QObject(parent), book_(book) {
    if (!book_) return;
    connect(book_, &OpenBook::opened, this, [this] {
        clear();
        readAgain({.everything = true});
    });
    connect(book_, &OpenBook::closed, this, [this] {
        clear();
        tell({{YardChange::Colonies, ColonyId{}}});
        emit settledDown();
    });
    connect(book_, &OpenBook::changed, this, &Yard::readAgain);
}

Yard::~Yard() { words::useWording({}); }

void Yard::tell(const YardChanges& changes) {
    words::useWording(state_.wording()); // before anybody says the change
    for (const auto& [what, id] : changes) emit changed(what, id);
}

void Yard::clear() {
    state_.forgetBook();
    stale_ = {};
    underWay_.clear(); // what was asked of the book before comes back no more
    reading_ = 0;
}

QString Yard::title() const {
    if (const auto* yard = shownYard()) return QString::fromStdString(yard->name);
    for (const auto& colony : colonies())
        if (colony.record.yard && !colony.record.yard->empty()) return QString::fromStdString(*colony.record.yard);
    return tr("The yard");
}

std::optional<Date> Yard::asOf() const { return colonies().empty() && yards().empty() ? std::nullopt : state_.day; }

Date Yard::entryDay() const {
    if (const auto shown = asOf()) return *shown;
    require(book_ != nullptr, "a yard without a book has no day to begin an entry with");
    return book_->today();
}

// ---- what is chosen --------------------------------------------------------------------------------------------------

void Yard::showDay(Date day) {
    if (state_.day == day) return;
    tell(state_.showDay(day));
    readAgain({.everything = true});
}

void Yard::showYard(book::YardId id) {
    if (state_.shown == id) return;
    state_.shown = id;
    readAgain({.everything = true});
}

void Yard::look(ColonyId id) {
    if (state_.open == id) return;
    state_.look(id);
    if (id != ColonyId{}) readAgain({false, {id}, {}});
}

void Yard::moveCombs(advice::MovingCombs combs) { tell(state_.moveCombs(combs)); }

// ---- edits -----------------------------------------------------------------------------------------------------------

// Entries that were shown under numbers of our own are known to the book by those it gave.
void Yard::send(book::Edit edit, const ShownNumbers::Issued& issued, OpenBook::Made then) {
    book_->change(
        [edit = std::move(edit), issued, numbers = numbers_](book::Book& book, book::Timestamp now,
                                                             const std::string& who) {
            auto applied = book.apply(numbers->asInBook(edit), now, who);
            if (applied.ok()) numbers->note(issued, applied->touched);
            return applied;
        },
        std::move(then));
}

void Yard::apply(book::Edit edit, OpenBook::Made then) {
    if (writable()) send(std::move(edit), {}, std::move(then));
}

// What was shown of it is read again where the book refuses it.
void Yard::applyShown(book::Edit edit, const BookChange& shown, const ShownNumbers::Issued& issued) {
    const auto number = ++lastEdit_;
    underWay_.insert(number);
    send(std::move(edit), issued, [this, number, shown](const Outcome<BookChange>& made) {
        const bool ofThisBook = underWay_.erase(number) > 0;
        if (ofThisBook && !made.ok()) readAgain(shown);
    });
}

// What the edit makes of the colony, worked out as the book will. An edit that cannot be made is the book's to refuse.
YardChanges Yard::showEdit(ColonyId id, const book::Edit& edit, ShownNumbers::Issued& issued) {
    const auto* history = records(id);
    if (!history) return {};
    const auto number = [&](book::Kind kind) { return issued.emplace_back(kind, --lastNumber_).second; };
    auto after = book::afterEdit(edit, *history, book_->scribe().who.toStdString(), number);
    if (!after.ok() || !*after) return {};
    return state_.showHistory(**std::move(after), *book_->reference());
}

void Yard::editShown(ColonyId id, book::Edit edit) {
    if (!find(id) || !writable()) return;
    ShownNumbers::Issued issued;
    const auto changes = showEdit(id, edit, issued);
    applyShown(std::move(edit), {false, {id}, {}}, issued);
    forgetFollowed(id);
    tell(changes);
}

book::Look Yard::lookToEdit(ColonyId id) const {
    const auto* colony = find(id);
    require(colony, "there is no colony {} in the yard that is shown", id.number);
    const auto* history = records(id);
    const auto* look = history ? book::lookOfCase(*history, colony->record.asOf) : nullptr;
    return look ? *look : book::Look{.colony = id, .date = colony->record.asOf};
}

void Yard::changeComb(ColonyId id, std::size_t place, const book::CombRecord& comb) {
    if (!find(id)) return;
    const auto look = lookToEdit(id);
    const auto* combs = std::get_if<std::vector<book::CombRecord>>(&look.combs);
    if (look.id == book::LookId{} || !combs || place >= combs->size() || (*combs)[place] == comb) return;
    editShown(id, book::SingleEdit(book::ChangeComb{look.id, place, comb}));
}

void Yard::writeLook(const book::Look& look) {
    if (!find(look.colony)) return;
    if (look.id == book::LookId{}) return editShown(look.colony, book::SingleEdit(book::AddLook{look}));
    if (lookToEdit(look.colony) != look) editShown(look.colony, book::SingleEdit(book::ChangeLook{look}));
}

void Yard::writeWeighing(const book::Weighing& weighing) {
    const bool added = weighing.id == book::WeighingId{};
    editShown(weighing.colony,
              added ? book::SingleEdit(book::AddWeighing{weighing}) : book::SingleEdit(book::ChangeWeighing{weighing}));
}

void Yard::writeYard(const book::Yard& yard) {
    if (!writable()) return;
    for (auto& each : state_.yards)
        if (each.id == yard.id) each = yard;
    applyShown(book::SingleEdit(book::ChangeYard{yard}), {.everything = true});
}

// ---- what comes from outside -----------------------------------------------------------------------------------------

void Yard::readAgain(const BookChange& change) {
    stale_.everything = stale_.everything || change.everything || change.added;
    stale_.colonies.insert(change.colonies.begin(), change.colonies.end());
    if (underWay_.empty()) read();
}

void Yard::read() {
    const auto& day = state_.day;
    if (!book_ || !book_->isOpen() || !day || (!stale_.everything && stale_.colonies.empty())) return;
    YardRequest request{.yard = state_.shown, .day = *day, .open = state_.open, .only = {}, .past = state_.past};
    if (!stale_.everything) request.only = stale_.colonies;
    stale_ = {};
    ++reading_;
    book_->ask(
        this, [request](book::Book& book) { return readYard(book, request); },
        [this, request](Outcome<YardReading> reading) {
            --reading_;
            const bool stale = !underWay_.empty() || request.day != state_.day || request.yard != state_.shown ||
                               request.past != state_.past;
            if (!reading.ok()) emit unreadable(reading.problems());
            else if (stale) readAgain({!request.only, request.only.value_or(std::set<ColonyId>{}), {}});
            else takeReading(std::move(reading).value());
            if (!busy()) emit settledDown();
        });
}

void Yard::takeReading(YardReading reading) {
    if (!reading.problems.empty()) emit unreadable(reading.problems);
    tell(state_.take(std::move(reading)));
}

bool Yard::takeAnswer(ColonyId id, const AnsweredPointer& answered) {
    const auto changes = state_.takeAnswer(id, answered);
    tell(changes);
    return !changes.empty();
}

void Yard::takeProblems(ColonyId id, const book::ColonyCase& record, Problems problems) {
    tell(state_.takeProblems(id, record, std::move(problems)));
}

void Yard::takeFollowed(ColonyId id, const FollowedPointer& followed) { tell(state_.takeFollowed(id, followed)); }

void Yard::forgetFollowed(ColonyId id) { tell(state_.forgetFollowed(id)); }

void Yard::awaitFollowed(ColonyId id) { state_.awaited.insert(id); }

void Yard::followedTold(ColonyId id) { tell(state_.followedTold(id)); }

void Yard::awaitPlan() { tell(state_.awaitPlan(true)); }

void Yard::planTold() { tell(state_.awaitPlan(false)); }

void Yard::takePastFailure() { tell(state_.takePastFailure()); }

void Yard::takePast(const PastPointer& past) {
    tell(state_.takePast(past));
    readAgain({.everything = true});
}

} // namespace winterlarder::desk
