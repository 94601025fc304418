// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/colony.h"
#include "models/followed_winter.h"
#include "models/open_book.h"
#include "models/yard_reading.h"

#include <QObject>
#include <QString>

#include <map>
#include <set>
#include <vector>

namespace winterlarder::desk {

//! One colony of the yard as the window holds it: what the book knows of it on the day, and the newest answer that belongs to that.
struct ColonyEntry {
    ColonyId id;
    book::ColonyCase record;
    AnsweredPointer answered; //!< of an earlier record while `pending`
    bool pending = true;      //!< the records changed after the answer was made
    Problems problems{};      //!< why there is no answer, where the records contradict each other
    std::vector<book::PlannedVisit> visits{}; //!< planned, neither made nor skipped, by day
};

//! The colonies of one yard of the book, on one day. Edits go to the book, are shown at once, and are taken back where the book
//! refuses them; answers come from outside and are taken only if they were made from the records as they are now.
//! Tested: tests/app/yard_test.cpp.
class Yard : public QObject {
    Q_OBJECT

public:
    //! Without a book it shows what it is given and edits nothing.
    explicit Yard(OpenBook* book = nullptr, QObject* parent = nullptr);

    // ---- what is shown -----------------------------------------------------------------------------------------------
    const std::vector<ColonyEntry>& colonies() const { return colonies_; }
    //! Nothing where the colony is gone. Good until the next event is handled: a reading of the book replaces all entries.
    const ColonyEntry* find(ColonyId id) const;
    int position(ColonyId id) const;  //!< -1 where the colony is gone
    QString title() const;            //!< the yard's name, or what stands for one
    std::optional<Date> asOf() const; //!< the day asked for; nothing while nothing is open
    const std::vector<book::Yard>& yards() const { return yards_; }
    const book::Yard* shownYard() const; //!< nothing where the book has none
    //! Everything of the colony being looked at; nothing until it is read.
    const ColonyRecords* records(ColonyId id) const;
    ColonyId openColony() const { return open_; } //!< the colony being looked at
    //! How its winter goes; nothing until that is worked out, or where it cannot be.
    FollowedPointer followed(ColonyId id) const {
        const auto found = followed_.find(id);
        return found == followed_.end() ? nullptr : found->second;
    }
    //! The same, where it is the answer to give; nothing where autumn's question still is.
    FollowedPointer leading(ColonyId id) const {
        auto one = followed(id);
        return one && one->leads() ? one : nullptr;
    }
    //! Whether it is still to be told if a winter leads: until then autumn's question is no answer.
    bool awaitsFollowing(ColonyId id) const;
    const PastPointer& past() const { return past_; } //!< what past winters taught; nothing until that is worked out
    bool pastFailed() const { return pastFailed_; }   //!< it was to be worked out anew and could not be
    bool writable() const { return book_ && book_->writable(); }
    bool busy() const { return !underWay_.empty() || reading_ > 0; } //!< edits or readings are not done yet
    OpenBook* book() const { return book_; }

    // ---- what is chosen ----------------------------------------------------------------------------------------------
    void showDay(Date day);
    void showYard(book::YardId id);
    void look(ColonyId id); //!< the colony being looked at: its whole records are read

    // ---- edits -------------------------------------------------------------------------------------------------------
    //! Any edit of the book; what it changes is shown once it is made.
    void apply(book::Edit edit, OpenBook::Done done = {});
    //! These are shown at once.
    void changeComb(ColonyId id, std::size_t place, const book::CombRecord& comb);
    void writeLook(const book::Look& look);             //!< id 0: a new one
    void writeWeighing(const book::Weighing& weighing); //!< id 0: a new one
    void writeYard(const book::Yard& yard);             //!< one that is there
    //! The look an edit of this colony's combs or bees goes to: the one its case rests on, else a new one on the day.
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
    //! What was learned goes into every colony's records; they are read anew.
    void takePast(const PastPointer& past);
    void takePastFailure();

signals:
    void coloniesChanged(); //!< other colonies, another yard or another day
    void recordChanged(winterlarder::desk::ColonyId id);
    void answerChanged(winterlarder::desk::ColonyId id);
    void recordsChanged(winterlarder::desk::ColonyId id); //!< the whole records of the colony being looked at were read anew
    void followedChanged(winterlarder::desk::ColonyId id); //!< how its winter goes is known anew, or no longer
    void visitsChanged(); //!< of any colony
    void followWanted(winterlarder::desk::ColonyId id); //!< what is known of its winter is to be worked out (again)
    void pastChanged();
    void settledDown();                                   //!< no edit and no reading is under way
    void unreadable(const winterlarder::Problems& problems);

private:
    void clear();
    void forgetAllFollowed();
    void readAgain(const BookChange& change);
    void read();
    void takeRecords(std::optional<ColonyRecords> records);
    void applyShown(book::Edit edit, const BookChange& shown);
    void editShown(book::Edit edit, const std::function<void(ColonyEntry&, ColonyRecords*)>& show, ColonyId id);
    void put(ColonyEntry& entry, Outcome<book::ColonyCase> record, bool& changed);
    ColonyEntry* entry(ColonyId id);

    OpenBook* book_;
    std::vector<ColonyEntry> colonies_;
    std::vector<book::Yard> yards_;
    book::YardId shown_{};
    std::optional<Date> day_;
    ColonyId open_{};
    std::optional<ColonyRecords> records_;
    std::map<ColonyId, FollowedPointer> followed_; //!< as far as they are worked out
    std::set<ColonyId> awaited_; //!< whose winter is being worked out
    PastPointer past_;
    bool pastFailed_ = false;
    BookChange stale_; //!< what is still to be read
    std::set<quint64> underWay_; //!< edits of this book shown but not yet told as made
    quint64 lastEdit_ = 0;
    int reading_ = 0; //!< readings of this book asked for
};

} // namespace winterlarder::desk
