// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/said_remark.h"

#include <QDialog>

#include <vector>

class QTextBrowser;

namespace winterlarder::desk {

//! Why?: the reasons and cautions behind an answer, each with its source.
class WhyWindow : public QDialog {
    Q_OBJECT

public:
    explicit WhyWindow(QWidget* parent = nullptr);
    void show(const QString& colony, const QString& answer, const std::vector<SaidRemark>& reasons, const std::vector<SaidRemark>& cautions);
    QString text() const;

private:
    QTextBrowser* browser_;
};

} // namespace winterlarder::desk
