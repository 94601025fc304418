// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/open_book.h"
#include "models/shown_numbers.h"
#include "models/yard_state.h"

#include <QObject>
#include <QString>

#include <algorithm>
#include <functional>
#include <memory>
#include <set>
#include <type_traits>
#include <vector>

namespace winterlarder::desk {

//! The colonies of one yard of the book, on one day: a YardState, what a keeper does with it, and one signal that tells what changed. Edits
//! go to the book, are shown at once, and are taken back where the book refuses them; answers come from outside and are taken only
//! if they were made from the records as they are now. Tested: tests/app/yard_test.cpp.
class Yard : public QObject {
    Q_OBJECT

public:
    //! Without a book it shows what it is given and edits nothing.
    explicit Yard(OpenBook* book = nullptr, QObject* parent = nullptr);
    ~Yard() override; //!< its words go with it

    // ---- what is shown -----------------------------------------------------------------------------------------------
    const YardState& state() const { return state_; }
    const std::vector<ColonyEntry>& colonies() const { return state_.colonies; }
    //! Nothing where the colony is gone. Good until the next event is handled: a reading of the book replaces all entries.
    const ColonyEntry* find(ColonyId id) const { return state_.find(id); }
    int position(ColonyId id) const { return state_.position(id); } //!< -1 where the colony is gone
    QString title() const;                                          //!< the yard's name, or what stands for one
    std::optional<Date> asOf() const; //!< the day asked for; nothing while nothing is open
    Date entryDay() const;            //!< the day new entries begin with: that one, today while nothing is open
    const std::vector<book::Yard>& yards() const { return state_.yards; }
    const book::Yard* shownYard() const { return state_.shownYard(); } //!< nothing where the book has none
    //! Everything of the colony being looked at, edits that are shown at once among it; nothing until it is read.
    const book::ColonyHistory* records(ColonyId id) const { return state_.historyOf(id); }
    ColonyId openColony() const { return state_.open; } //!< the colony being looked at
    //! How its winter goes; nothing until that is worked out, or where it cannot be.
    FollowedPointer followed(ColonyId id) const { return state_.followedOf(id); }
    //! The same, where it is the answer to give; nothing where autumn's question still is.
    FollowedPointer leading(ColonyId id) const {
        auto one = followed(id);
        return one && one->leads() ? one : nullptr;
    }
    //! Whether it is still to be told if a winter leads: until then autumn's question is no answer.
    bool awaitsFollowing(ColonyId id) const { return state_.awaitsFollowing(id); }
    //! Whether the plan of the yard is still being made: an answer is not to be acted on before it stands in that.
    bool awaitsPlan() const { return state_.planAwaited; }
    const PastPointer& past() const {
        return state_.past;
    } //!< what past winters taught; nothing until that is worked out
    bool pastFailed() const { return state_.pastFailed; } //!< it was to be worked out anew and could not be
    bool writable() const { return book_ && book_->writable(); }
    bool busy() const { return !underWay_.empty() || reading_ > 0; } //!< edits or readings are not done yet
    OpenBook* book() const { return book_; }

    // ---- who is told -------------------------------------------------------------------------------------------------
    using Kinds = std::vector<YardChange>;
    //! Calls `then` after every change of these kinds: a member of `context` or a function, with the colony's number or without.
    template <class Context, class Then> void onChange(Context* context, Kinds kinds, Then then);
    //! The same of one colony only: the one whose number `colony`, a member of `context`, holds at that time.
    template <class Context, class Then>
    void onColony(Context* context, const ColonyId& colony, Kinds kinds, Then then);

    // ---- what is chosen ----------------------------------------------------------------------------------------------
    void showDay(Date day);
    void showYard(book::YardId id);
    void look(ColonyId id);                    //!< the colony being looked at: its whole history is read
    void moveCombs(advice::MovingCombs combs); //!< whether the plan of the yard may move combs between hives

    // ---- edits -------------------------------------------------------------------------------------------------------
    //! Any edit of the book; what it changes is shown once it is made.
    void apply(book::Edit edit, OpenBook::Made then = {});
    //! These are shown at once, by what the edit makes of the history of the colony being looked at.
    void changeComb(ColonyId id, std::size_t place, const book::CombRecord& comb);
    void writeLook(const book::Look& look);             //!< id 0: a new one
    void writeWeighing(const book::Weighing& weighing); //!< id 0: a new one
    void writeYard(const book::Yard& yard);             //!< one that is there
    //! The look an edit of the combs or bees of a colony that is shown goes to: the one its case rests on, else a new one on the day.
    book::Look lookToEdit(ColonyId id) const;

    // ---- what comes from outside -------------------------------------------------------------------------------------
    void takeReading(YardReading reading);
    //! False where it is stale.
    bool takeAnswer(ColonyId id, const AnsweredPointer& answered);
    void takeProblems(ColonyId id, const book::ColonyCase& record, Problems problems);
    void takeFollowed(ColonyId id, const FollowedPointer& followed);
    void forgetFollowed(ColonyId id); //!< it was overtaken
    void awaitFollowed(ColonyId id);  //!< it will be told by followedTold()
    void followedTold(ColonyId id);
    void awaitPlan(); //!< it will be told by planTold()
    void planTold();
    //! What was learned goes into every colony's records; they are read anew.
    void takePast(const PastPointer& past);
    void takePastFailure();

signals:
    void changed(winterlarder::desk::YardChange what, winterlarder::desk::ColonyId id); //!< see YardChange
    void settledDown(); //!< no edit and no reading is under way
    void unreadable(const winterlarder::Problems& problems);

private:
    void tell(const YardChanges& changes);
    void clear();
    void readAgain(const BookChange& change);
    void read();
    void send(book::Edit edit, const ShownNumbers::Issued& issued, OpenBook::Made then);
    void applyShown(book::Edit edit, const BookChange& shown, const ShownNumbers::Issued& issued = {});
    void editShown(ColonyId id, book::Edit edit);
    YardChanges showEdit(ColonyId id, const book::Edit& edit, ShownNumbers::Issued& issued);

    OpenBook* book_;
    YardState state_;
    std::shared_ptr<ShownNumbers> numbers_ = std::make_shared<ShownNumbers>();
    BookChange stale_;           //!< what is still to be read
    std::set<quint64> underWay_; //!< edits of this book shown but not yet told as made
    quint64 lastEdit_ = 0;
    std::int64_t lastNumber_ = 0; //!< of an entry shown before the book numbered it
    int reading_ = 0;             //!< readings of this book asked for
};

template <class Context, class Then> void Yard::onChange(Context* context, Kinds kinds, Then then) {
    connect(this, &Yard::changed, context, [context, kinds = std::move(kinds), then](YardChange what, ColonyId id) {
        static_cast<void>(context); // some of what is called below does without
        if (std::find(kinds.begin(), kinds.end(), what) == kinds.end()) return;
        if constexpr (std::is_invocable_v<Then, Context*, ColonyId>) std::invoke(then, context, id);
        else if constexpr (std::is_invocable_v<Then, Context*>) std::invoke(then, context);
        else if constexpr (std::is_invocable_v<Then, ColonyId>) then(id);
        else then();
    });
}

template <class Context, class Then>
void Yard::onColony(Context* context, const ColonyId& colony, Kinds kinds, Then then) {
    onChange(context, std::move(kinds), [context, &colony, then](ColonyId id) {
        if (id == colony) std::invoke(then, context);
    });
}

} // namespace winterlarder::desk
