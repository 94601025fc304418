// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

class QLineEdit;
class QSpinBox;
class QVBoxLayout;

namespace winterlarder::desk {

//! Colonies entered at once: how many, what each is called, and how many boxes it winters in. Tested: tests/app/first_run_test.cpp.
class ColoniesField : public QWidget {
    Q_OBJECT

public:
    struct Entered {
        QString name;
        int boxes = 1;
    };

    explicit ColoniesField(QWidget* parent = nullptr);
    std::vector<Entered> colonies() const;
    QSpinBox* number() const { return number_; }
    QLineEdit* name(int colony) const; //!< from 0
    QSpinBox* boxes(int colony) const;
    //! What colonies are proposed to have whose boxes were not entered by hand; in a hive of one room there is nothing to enter.
    void proposeBoxes(int boxes, bool oneRoom);
    //! What is wrong (a name that is missing or there twice), empty where all is right; goToFault() puts the focus there.
    QString fault() const;
    void goToFault();

private:
    struct Row {
        QWidget* whole;
        QLineEdit* name;
        QSpinBox* boxes;
        bool byHand = false;
    };
    void setRows(int count);
    void addRow();
    int faultyRow() const; //!< -1: none

    QSpinBox* number_;
    QVBoxLayout* down_;
    std::vector<Row> rows_;
    int proposed_ = 1;
    bool oneRoom_ = false;
};

} // namespace winterlarder::desk
