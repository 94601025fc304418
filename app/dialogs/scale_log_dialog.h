// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/scale_answer.h"
#include "models/yard.h"

#include <QDialog>

#include <memory>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTextBrowser;

namespace winterlarder::desk {

//! The log of a scale under a hive: what was understood of its file is shown and can be put right, then the steps found in it and what
//! would be written down; only then it is, as one step that can be undone. Tested: tests/app/following_test.cpp.
class ScaleLogDialog : public QDialog {
    Q_OBJECT

public:
    ScaleLogDialog(Yard* yard, ColonyId colony, const QString& file, QWidget* parent = nullptr);
    ~ScaleLogDialog() override; //!< waits for no reading
    QPushButton* importButton() const { return import_; }
    QComboBox* unit() const { return unit_; }
    QComboBox* order() const { return order_; }
    QLineEdit* zone() const { return zone_; }
    QLineEdit* ratio() const { return ratio_; }
    QString said() const;
    bool idle() const { return !reading_; }

private:
    void read();
    void take(const Outcome<std::shared_ptr<const answer::ScaleAnswer>>& read);
    void count();
    QString understood() const;
    QString found() const;
    void carryOut();

    Yard* yard_;
    ColonyId colony_;
    QString file_;
    NewestWork::Key key_; //!< of its readings of the file
    bool reading_ = false;
    std::shared_ptr<const answer::ScaleAnswer> answer_;
    QComboBox* unit_;
    QComboBox* order_;
    QLineEdit* zone_;
    QLineEdit* ratio_;
    QTextBrowser* browser_;
    QLabel* added_;
    QPushButton* import_;
};

} // namespace winterlarder::desk
