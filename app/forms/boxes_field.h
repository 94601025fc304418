// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "reference/reference.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QComboBox;
class QPushButton;
class QSpinBox;
class QVBoxLayout;

namespace winterlarder::desk {

class OwnMeasures;

//! The boxes of a hive as they stand, the topmost first: the format or the keeper's own measures, how many combs hang in each, and
//! whether it is a super.
//! Tested: tests/app/fields_test.cpp.
class BoxesField : public QWidget {
    Q_OBJECT

public:
    BoxesField(QWidget* parent, const ReferenceData& reference);

    void show(const std::vector<book::BoxRecord>& boxes); //!< from the floor up
    std::vector<book::BoxRecord> boxes() const;           //!< from the floor up
    //! What is wrong with the own measures of some box; empty where all is right.
    QString fault() const;
    void goToFault();                     //!< puts the focus there
    OwnMeasures* measures(int box) const; //!< of a box, from the floor up, from 0
    QPushButton* addButton() const { return add_; }

private:
    struct Line {
        QWidget* whole;
        OwnMeasures* own; //!< seen where own measures are chosen
        QComboBox* format;
        QSpinBox* combs;
        QCheckBox* super;
        QPushButton* away;
        std::optional<Date> putOn; //!< kept as it was
    };
    void addLine(const book::BoxRecord& box);
    void removeLine(const QWidget* line);
    void connectLine(const Line& line);
    void orderTab(const Line& line);
    void name();

    const ReferenceData& reference_;
    QVBoxLayout* down_;
    QPushButton* add_;
    std::vector<Line> lines_; //!< from the floor up
};

//! The shipped hive formats, for a choice: names, each with its id.
void offerFormats(QComboBox* box, const ReferenceData& reference);

} // namespace winterlarder::desk
