// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "stores/evidence.h"

#include <QWidget>

#include <optional>

class QDoubleSpinBox;
class QLabel;

namespace winterlarder::desk {

//! The quick form for those who only counted: about so many combs full, so many half full, so much of it capped. It says that a
//! count is less sure than a look. Tested: tests/app/comb_fields_test.cpp.
class CombQuickForm : public QWidget {
    Q_OBJECT

public:
    explicit CombQuickForm(QWidget* parent = nullptr);
    void useLimits(const ReferenceData& reference);
    void show(const book::QuickCountRecord& count);
    QDoubleSpinBox* full() const { return full_; }
    QDoubleSpinBox* half() const { return half_; }

signals:
    void counted(const winterlarder::book::QuickCountRecord& count);

protected:
    void showEvent(QShowEvent* event) override; //!< in the words of the place, which may be another by now

private:
    void name();
    void tell();
    QDoubleSpinBox* full_;
    QDoubleSpinBox* half_;
    QDoubleSpinBox* capped_;
    QLabel *fullLabel_, *halfLabel_, *sureness_;
    std::optional<stores::CombSpreads> spreads_; //!< how sure a count and a look are; said once they are known
};

} // namespace winterlarder::desk
