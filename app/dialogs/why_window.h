// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/said_remark.h"

#include <QDialog>

#include <vector>

class QPushButton;
class QTextBrowser;

namespace winterlarder::desk {

//! Why?: the reasons and cautions behind an answer, each with its source; general good practice stands behind a button.
class WhyWindow : public QDialog {
    Q_OBJECT

public:
    explicit WhyWindow(QWidget* parent = nullptr);
    struct Said {
        std::vector<SaidRemark> reasons, cautions, goodPractice;
    };
    void show(const QString& colony, const QString& answer, Said said);
    QString text() const;

private:
    void write();

    QTextBrowser* browser_;
    QPushButton* practice_;
    QString answer_;
    Said said_;
};

} // namespace winterlarder::desk
