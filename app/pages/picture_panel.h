// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"
#include "plots/winter_plot.h"
#include "theme/card.h"

#include <map>

class QBoxLayout;
class QPushButton;
class QToolButton;

namespace winterlarder::desk {

class FlowLayout;

//! The winter picture with its caption (or what is read out of it), the options to lay over it, and ways to keep it.
class PicturePanel : public Card {
    Q_OBJECT

public:
    explicit PicturePanel(QWidget* parent = nullptr);

    void show(const ColonyEntry& colony);
    //! Shows what is tried out in place of the options; nothing: the answer's own picture again.
    void tryOut(const std::shared_ptr<const WinterPicture>& picture, const QString& caption);
    WinterPlot* plot() const { return plot_; }
    //! Options at hand, by kind; each button shows and hides its winters.
    QPushButton* chip(advice::OptionKind kind) const;

    QSize minimumSizeHint() const override;

public slots:
    void saveAs();
    void copyNumbers();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void offer(const advice::Advice& advice);
    QPushButton* addDaysButton(const QString& sign, const QString& name, void (WinterPlot::*see)());
    void showSeen();
    void orderTabs();
    void layOver();
    void makeRoomForWords();
    QString caption() const;
    void showOwn();

    WinterPlot* plot_;
    QLabel* caption_;
    QLabel* offerLabel_;
    QBoxLayout* below_; //!< words and buttons, beside each other or not
    FlowLayout* chipRow_;
    QPushButton* more_;
    QPushButton* fewer_;
    QPushButton* whole_; //!< there while only some days are seen
    QToolButton* keep_;
    std::map<advice::OptionKind, QPushButton*> chips_;
    AnsweredPointer shown_;
    QString trial_; //!< caption of what is tried out; empty: nothing is
    ColonyId colony_;
    std::set<advice::OptionKind> wanted_{advice::OptionKind::Leave};
};

} // namespace winterlarder::desk
