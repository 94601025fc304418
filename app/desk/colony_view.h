// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"
#include "text/grounds/grounds.h"

#include <QWidget>

#include <memory>

class QSplitter;
class QTabWidget;

namespace winterlarder::desk {

class Adviser;
class AnswerPanel;
class CombTablePage;
class FeedingPage;
class GroundsPopup;
class LookPage;
class NextEntry;
class PicturePanel;
class ScalePage;
class StoryPage;
class WhatIfRunner;
class WhatIfPage;

//! The pages of a colony, in their order.
enum class ColonyPage { Hive, Combs, Feeding, Scale, Story, WhatIf };

//! Everything about one colony: the answer, the winter picture, and the pages below it.
class ColonyView : public QWidget {
    Q_OBJECT

public:
    explicit ColonyView(Yard* yard, QWidget* parent = nullptr);
    ~ColonyView() override;

    void show(ColonyId id);
    ColonyId colony() const { return colony_; }
    PicturePanel* picture() const { return picture_; }
    LookPage* look() const { return look_; }
    CombTablePage* combTable() const { return combTable_; }
    FeedingPage* feeding() const { return feeding_; }
    ScalePage* scale() const { return scale_; }
    StoryPage* story() const { return story_; }
    WhatIfPage* whatIf() const { return whatIf_; }
    AnswerPanel* answer() const { return answer_; }
    //! What is tried out with another demand is asked of this adviser.
    void useAdviser(std::shared_ptr<const Adviser> adviser);
    bool idle() const; //!< nothing tried out is being answered
    QTabWidget* pages() const { return pages_; }
    QSplitter* halves() const { return halves_; } //!< the picture, and the pages below it
    void showPage(ColonyPage page);
    GroundsPopup* grounds() const { return grounds_; } //!< how a number was got; nothing until one was asked about
    NextEntry* next() const { return next_; }          //!< what to enter before there is an answer
    void beginFirstLook();                             //!< the keeper's hand is put where the first entry is made
    bool pictureWanted() const { return pictureWanted_; }
    void wantPicture(bool wanted); //!< without the winter picture the pages have all the room
    //! Lays itself out; the window need not ask every page how tall it would be at each width whenever a word changes.
    bool hasHeightForWidth() const override { return false; }

signals:
    void whyAsked(winterlarder::desk::ColonyId id);
    void noticeGiven(const QString& notice);             //!< what was done, for the keeper to know
    void wintersWanted(winterlarder::desk::ColonyId id); //!< of its answer, which were let go

private:
    void refresh();
    void nameCombs(const AnsweredColony* colony); //!< in the words of its place
    void showAnswer();
    void showFollowed();
    void connectPages();
    void connectNext();
    bool pictureIsEmpty(const ColonyEntry& colony, bool followed) const;
    void acceptAdvice();
    book::AcceptAdvice acceptance(const ColonyEntry& colony) const; //!< of its answer, which is there
    bool isActedOn(const ColonyEntry& colony) const;                //!< that answer is the plan already
    void explainNumber(text::AskedNumber number, QPoint under);
    std::optional<text::Grounds> groundsOfChosenComb() const;
    std::optional<text::Grounds> groundsShown(text::AskedNumber number) const;
    int visitsOpen() const; //!< planned for a day that is past
    QString comingWords(const ColonyEntry& colony, const FollowedWinter* leading) const;

    Yard* yard_;
    ColonyId colony_;
    AnswerPanel* answer_;
    NextEntry* next_;
    PicturePanel* picture_;
    QSplitter* halves_;
    QTabWidget* pages_;
    LookPage* look_;
    CombTablePage* combTable_;
    FeedingPage* feeding_;
    ScalePage* scale_;
    StoryPage* story_;
    WhatIfPage* whatIf_;
    GroundsPopup* grounds_ = nullptr;
    std::unique_ptr<WhatIfRunner> runner_;
    bool pictureWanted_ = true;
};

} // namespace winterlarder::desk
