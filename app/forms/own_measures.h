// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "hive/hive.h"
#include "reference/reference.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;

namespace winterlarder::desk {

class OutlineDrawing;
class QuantityField;

//! The keeper's own measures of a box's combs: typed in any unit, drawn face on, with the comb's area and the honey of a full one.
//! Tested: tests/app/own_measures_test.cpp.
class OwnMeasures : public QWidget {
    Q_OBJECT

public:
    OwnMeasures(QWidget* parent, const ReferenceData& reference);

    void show(const book::OwnFormat& format);
    //! What is typed; a measure that is missing or wrong is nothing (0).
    book::OwnFormat format() const;
    //! The first thing wrong, where it is and what would be right; empty where all is right.
    QString fault() const;
    std::vector<QWidget*> fields() const; //!< in the order they are read
    QWidget* faultyField() const;         //!< the field it is in, or nothing
    void name(int box);                   //!< for screen readers: which box these are the measures of, from the floor
    void showAsSuper(bool super);

    QuantityField* top() const { return top_; }
    QuantityField* depth() const { return depth_; }
    QuantityField* bottom() const { return bottom_; }
    QuantityField* spacing() const { return spacing_; }
    QuantityField* combs() const { return combs_; }
    QString said() const; //!< the line below: area and honey, or what is wrong
    OutlineDrawing* drawing() const { return drawing_; }

protected:
    void changeEvent(QEvent* event) override; //!< area and honey in other units

private:
    struct Named {
        QString words;
        QuantityField* field;
    };
    std::optional<hive::CombFormat> comb() const; //!< nothing while something is wrong
    void refresh();

    std::vector<Named> fields_;
    QuantityField *top_, *depth_, *bottom_, *spacing_, *combs_;
    OutlineDrawing* drawing_;
    QLabel* said_ = nullptr;
    bool super_ = false;
};

//! A shipped format's measures, to begin with.
book::OwnFormat measuresOf(const HiveFormat& format);

} // namespace winterlarder::desk
