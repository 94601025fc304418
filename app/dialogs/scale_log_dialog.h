// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/scale_answer.h"
#include "answer/scale_doubts.h"
#include "models/yard.h"

#include <QDialog>

#include <functional>
#include <memory>
#include <stop_token>
#include <string>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTextBrowser;

namespace winterlarder::desk {

//! The log of a scale under a hive: what was understood of its file is shown and can be put right, then the steps found in it and what
//! would be written down, and what is asked about it; only then it is, as one step that can be undone. Tested: tests/app/following_test.cpp.
class ScaleLogDialog : public QDialog {
    Q_OBJECT

public:
    //! Reads a log on another thread, until it is stopped.
    using Read = std::function<Outcome<std::shared_ptr<const answer::ScaleAnswer>>(
        const std::string& file, const exchange::ScaleLogOptions& options, const answer::ScaleClocks& clocks,
        const std::stop_token& stop)>;
    static const Read readLog;
    ScaleLogDialog(Yard* yard, ColonyId colony, const QString& file, QWidget* parent = nullptr, Read read = readLog);
    ~ScaleLogDialog() override; //!< waits for no reading
    QPushButton* importButton() const { return import_; }
    QCheckBox* sure() const { return sure_; } //!< shown where records that are not likely are asked about
    QString said() const;
    bool idle() const { return !reading_; }

private:
    void read();
    void take(const Outcome<std::shared_ptr<const answer::ScaleAnswer>>& read);
    void count();
    void showCounted(const answer::ScaleRecords& records, const answer::ScaleDoubts& doubts);
    void allowImport();
    QString understood() const;
    QString found() const;
    void carryOut();

    Yard* yard_;
    ColonyId colony_;
    QString file_;
    Read readLog_;
    NewestWork::Key key_; //!< of its readings of the file
    bool reading_ = false;
    bool importable_ = false; //!< once what is asked about is said to be right
    std::shared_ptr<const answer::ScaleAnswer> answer_;
    QComboBox* unit_;
    QComboBox* order_;
    QLineEdit* zone_;
    QLineEdit* ratio_;
    QTextBrowser* browser_;
    QLabel* added_;
    QCheckBox* sure_;
    QPushButton* import_;
};

} // namespace winterlarder::desk
