// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/drawn_combs.h"
#include "text/asked.h"

#include <QStringList>
#include <QWidget>

class QBoxLayout;

namespace winterlarder::desk {

class CombDrawing;
class CombFields;
class CombQuickForm;
class CombStrip;
class ZoneLegend;

//! Everything combs are entered with: the legend with its keys, the hive from above, the combs face on, the chosen comb in
//! numbers, and the quick form where combs were only counted. It changes nothing itself: what is entered goes out as a wish.
//! Tested: tests/app/comb_entry_test.cpp.
class CombEntry : public QWidget {
    Q_OBJECT

public:
    explicit CombEntry(QWidget* parent = nullptr);

    void show(const book::ColonyCase& record, const AnsweredColony* answered, const ReferenceData& reference,
              bool editable);
    //! The look the combs are of, and where its photographs lie.
    void ofLook(book::LookId look, const QStringList& pictures) {
        look_ = look;
        pictures_ = pictures;
    }
    //! Measures the chosen comb on photographs, the one named first; nothing happens where none is chosen or nothing may be changed.
    void measureOn(const QString& picture);
    CombDrawing* drawing() const { return drawing_; }
    CombStrip* strip() const { return strip_; }
    CombFields* fields() const { return fields_; }
    CombQuickForm* quickForm() const { return quick_; }
    ZoneLegend* legend() const { return legend_; }

signals:
    void numberAsked(winterlarder::text::AskedNumber number, QPoint under);
    void combChosen(int comb);
    void combChanged(int comb, const winterlarder::book::CombRecord& record);
    void counted(const winterlarder::book::QuickCountRecord& count);
    //! A comb measured on photographs, where they lie, and the look it was of when that was begun.
    void combMeasured(int comb, const winterlarder::book::CombRecord& record, const QStringList& photographs,
                      winterlarder::book::LookId look);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void connectParts();
    void showChosen();
    void showInNumbers(const std::optional<DrawnComb>& comb);

    ZoneLegend* legend_;
    CombStrip* strip_;
    CombDrawing* drawing_;
    CombFields* fields_;
    CombQuickForm* quick_;
    QWidget* listed_;
    QBoxLayout* top_; //!< legend and hive from above, side by side where there is room
    book::LookId look_{};
    QStringList pictures_;
    bool editable_ = false;
};

} // namespace winterlarder::desk
