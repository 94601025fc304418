// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/askable_label.h"
#include "models/yard.h"

#include <QPushButton>
#include <QWidget>

namespace winterlarder::desk {

class AskRow;

//! The answer in the order it is said: what to do next, what to winter on, what is there and how surely, how winters then end; and
//! the one question whose answer would change it most.
class AnswerPanel : public QWidget {
    Q_OBJECT

public:
    explicit AnswerPanel(QWidget* parent = nullptr);

    void show(const ColonyEntry& colony);
    //! A winter that is followed: how it goes.
    void show(const FollowedWinter& followed);
    //! For the yard as a whole, or while nothing is open.
    void say(const QString& sentence, const QString& small);

    QPushButton* planButton() const { return plan_; }
    void showFollowing(); //!< how the winter goes is being worked out
    //! Whether the advice can be made the plan.
    struct PlanState {
        bool offered = false; //!< the book can be written
        bool inPlan = true;   //!< it stands in the plan of the yard already
        bool actedOn = false; //!< it was made the keeper's plan
    };
    void offerPlan(PlanState state, const ReferenceData* reference);
    void remind(const QString& text); //!< below the rest, until something else is shown

signals:
    void whyAsked();
    void planAsked();
    void numberAsked(winterlarder::text::AskedNumber number, QPoint under);
    void askAnswered(winterlarder::advice::AskKind kind, double value); //!< the question asked back

protected:
    void changeEvent(QEvent* event) override;

private:
    void enlarge();
    void showIcon(const QString& name, const QString& meaning);
    void saySmall(const QString& words, const QString& what);
    void sayOfLook(const QString& words);
    void sayOfTarget(const QString& words);
    void showPlanButton(const AnsweredColony& answered);
    void orderTabs();

    QLabel* icon_;
    AskableLabel* sentence_;
    AskableLabel* target_;
    AskableLabel* risk_;
    AskableLabel* look_;
    AskRow* ask_;
    QPushButton* why_;
    QPushButton* plan_;
    PlanState planState_;
    const ReferenceData* reference_ = nullptr;
    QString iconName_;
    QString lookSaid_; //!< with its marks, and what is reminded of
};

} // namespace winterlarder::desk
