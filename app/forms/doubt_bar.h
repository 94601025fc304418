// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/plausible.h"

#include <QWidget>

#include <optional>

class QLabel;
class QPushButton;

namespace winterlarder::desk {

//! The question about an entry that is in doubt, beside its field, with the answers that may be given: the amount that may be
//! meant, or that it is right as it stands (not where it cannot be). Hidden while nothing is asked.
//! Tested: tests/app/entry_doubts_test.cpp.
class DoubtBar : public QWidget {
    Q_OBJECT

public:
    explicit DoubtBar(QWidget* parent = nullptr);

    //! `said`: the amount as it was typed, for "It is ...".
    void ask(const stores::Doubt& doubt, const QString& said);
    void clear();
    bool asks() const { return doubt_.has_value(); }
    const std::optional<stores::Doubt>& doubt() const { return doubt_; }
    QString question() const; //!< as shown
    QPushButton* meantButton() const { return meant_; }
    QPushButton* sureButton() const { return sure_; }

signals:
    void meant(double kilograms); //!< another weight was meant
    void sure();                  //!< it is right as it stands

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void makeRoom();

    std::optional<stores::Doubt> doubt_;
    QLabel* question_;
    QPushButton* meant_;
    QPushButton* sure_;
};

} // namespace winterlarder::desk
