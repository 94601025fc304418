// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QListView;
class QToolButton;

namespace winterlarder::desk {

//! The yard's list at the left of the window. In a window narrower than 800 px it folds into a strip of names; its button opens the list in
//! the place of the page until a row is chosen. Tested: tests/app/layout/parts_layout_test.cpp.
class YardPane : public QFrame {
    Q_OBJECT

public:
    //! `desk`: whose width decides; its layout holds this pane and the page beside it.
    explicit YardPane(QWidget* desk);

    //! What stands in it from top to bottom; only the list is in the strip.
    void hold(QWidget* head, QListView* list, QWidget* key);
    void standBeside(QWidget* page) { page_ = page; }
    bool isStrip() const { return narrow_ && !opened_; }
    bool isOpened() const { return narrow_ && opened_; }
    QToolButton* opener() const { return opener_; } //!< shown in a narrow window alone

public slots:
    void fit();
    void open(bool opened);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;
    void hideEvent(QHideEvent* event) override; //!< there is no list without a book: the page is there again

private:
    QWidget* desk_;
    QWidget* page_ = nullptr;
    QWidget* head_ = nullptr;
    QListView* list_ = nullptr;
    QWidget* key_ = nullptr;
    QToolButton* opener_;
    bool narrow_ = false, opened_ = false;
};

} // namespace winterlarder::desk
