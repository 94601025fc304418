// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include <vector>

class QTextBrowser;

namespace winterlarder::desk {

//! A reason or caution as it is said, and where it comes from.
struct SaidRemark {
    QString text;
    QString source;
};

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
