// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/what_if.h"
#include "models/yard.h"

#include <QWidget>

#include <map>
#include <optional>

class QBoxLayout;
class QCheckBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QSlider;
class QSpinBox;

namespace winterlarder::desk {

//! What if: amounts and demand to be tried out by sliders, the chances in words beside them; nothing is written down until it is made the
//! plan. Amounts are laid over the winters at hand; another demand is asked for and comes back through takeAnswer().
//! Tested: tests/app/what_if_test.cpp.
class WhatIfPage : public QWidget {
    Q_OBJECT

public:
    explicit WhatIfPage(Yard* yard, QWidget* parent = nullptr);

    void show(ColonyId id);
    const WhatIf& whatIf() const { return whatIf_; }
    //! An answer to the demand wished; `preview`: over few winters, the full one follows. One of another wish is not shown.
    void takeAnswer(const AnsweredPointer& answered, bool preview);
    void takeProblems(const Problems& problems);

    QDoubleSpinBox* take() const { return take_; }
    QDoubleSpinBox* sugar() const { return sugar_; }
    QSpinBox* bees() const { return bees_; }
    QPushButton* planButton() const { return plan_; }
    QString said() const;
    QSize minimumSizeHint() const override;

signals:
    void demandWished(int position, const winterlarder::book::ColonyCase& record);
    void demandDropped();
    void wintersWanted(); //!< those of the answer were let go
    //! What the picture is to show; nothing: the answer itself.
    void tried(const std::shared_ptr<const winterlarder::desk::WinterPicture>& picture, const QString& caption);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    QLayout* buildAmounts();
    QLayout* buildDemand();
    QWidget* sliderWith(QDoubleSpinBox* number, const QString& name);
    QWidget* sliderWith(QSpinBox* number, const QString& name);
    void connectFields();
    void readAmounts();
    void readDemand();
    void reset();
    void refresh();
    bool isUnderWay() const;
    void tryOut();
    void say(const Trials::Trial& trial);
    void makePlan();

    Yard* yard_;
    QBoxLayout* columns_ = nullptr;
    ColonyId colony_;
    WhatIf whatIf_;
    AnsweredPointer own_;             //!< the colony's answer the page stands on
    std::optional<Trials> ownTrials_; //!< of that answer; nothing while its winters are not there
    std::optional<Trials> trials_;    //!< of the answer with the demand wished
    std::optional<Trials::Trial> trial_;
    std::optional<book::ColonyCase> wished_; //!< what the demand was last asked with; nothing before that
    bool preview_ = false;
    bool stale_ = true; //!< something changed since the last refresh
    QDoubleSpinBox *take_, *sugar_;
    std::map<QDoubleSpinBox*, QSlider*> sliders_;
    QCheckBox* wrapped_;
    QSpinBox *bees_, *forage_;
    QLabel *chances_, *recipe_, *state_;
    QPushButton *plan_, *back_;
};

} // namespace winterlarder::desk
