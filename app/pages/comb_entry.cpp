// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comb_entry.h"

#include "combs/comb_drawing.h"
#include "combs/comb_fields.h"
#include "combs/comb_quick_form.h"
#include "combs/comb_strip.h"
#include "combs/zone_legend.h"
#include "guide/guide_link.h"
#include "photograph/photograph_window.h"

#include <QBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int narrowestStrip = 300; // px

} // namespace

CombEntry::CombEntry(QWidget* parent) : QWidget(parent) {
    listed_ = new QWidget(this);
    legend_ = new ZoneLegend(listed_);
    strip_ = new CombStrip(listed_);
    drawing_ = new CombDrawing(listed_);
    fields_ = new CombFields(listed_);
    quick_ = new CombQuickForm(this);
    auto* inside = new QVBoxLayout(listed_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(4);
    top_ = new QBoxLayout(QBoxLayout::LeftToRight);
    top_->setSpacing(6);
    top_->addWidget(legend_, 0, Qt::AlignLeft | Qt::AlignTop);
    top_->addWidget(strip_, 1);
    inside->addLayout(top_);
    inside->addWidget(drawing_, 1);
    inside->addWidget(fields_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(listed_, 1);
    layout->addWidget(quick_);
    for (QWidget* part : std::initializer_list<QWidget*>{legend_, fields_}) setGuidePage(part, text::GuidePage::Cells);
    connectParts();
}

void CombEntry::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool wide = width() >= legend_->sizeHint().width() + narrowestStrip;
    top_->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void CombEntry::connectParts() {
    connect(drawing_, &CombDrawing::combChosen, this, [this](int comb) {
        strip_->choose(comb);
        showChosen();
        emit combChosen(comb);
    });
    connect(drawing_, &CombDrawing::combEdited, this, [this](const CombEdit& edit) {
        strip_->show(drawing_->combs(), drawing_->chosen());
        showChosen();
        emit combChanged(edit.comb, edit.record);
    });
    connect(drawing_, &CombDrawing::combDragged, this, &CombEntry::showInNumbers);
    connect(drawing_, &CombDrawing::fieldPicked, legend_, &ZoneLegend::pick);
    connect(legend_, &ZoneLegend::picked, this, [this](CombField field) {
        drawing_->pick(field);
        drawing_->setFocus();
    });
    connect(strip_, &CombStrip::combChosen, drawing_, &CombDrawing::choose);
    connect(fields_, &CombFields::combEdited, this,
            [this](const book::CombRecord& comb) { emit combChanged(drawing_->chosen(), comb); });
    connect(fields_, &CombFields::numberAsked, this, &CombEntry::numberAsked);
    connect(fields_, &CombFields::photographAsked, this, [this] { measureOn({}); });
    connect(quick_, &CombQuickForm::counted, this, &CombEntry::counted);
}

void CombEntry::show(const book::ColonyCase& record, const AnsweredColony* answered, const ReferenceData& reference,
                     bool editable) {
    editable_ = editable;
    const bool listed = std::holds_alternative<std::vector<book::CombRecord>>(record.combs);
    const auto* count = std::get_if<book::QuickCountRecord>(&record.combs);
    listed_->setVisible(listed);
    quick_->setVisible(!listed);
    quick_->setEnabled(editable);
    quick_->useLimits(reference);
    fields_->useLimits(reference);
    if (!listed) quick_->show(count ? *count : book::QuickCountRecord{});
    drawing_->setEditable(editable);
    drawing_->show(drawnCombs(record, answered, reference));
    strip_->show(drawing_->combs(), drawing_->chosen());
    showChosen();
}

void CombEntry::showChosen() {
    const int chosen = drawing_->chosen();
    showInNumbers(chosen >= 0 ? std::optional(drawing_->combs()[static_cast<std::size_t>(chosen)]) : std::nullopt);
}

void CombEntry::showInNumbers(const std::optional<DrawnComb>& comb) {
    const auto& combs = drawing_->combs();
    fields_->show(comb, std::any_of(combs.begin(), combs.end(), [](const DrawnComb& each) { return each.box > 0; }));
    if (!editable_) fields_->setEnabled(false);
}

void CombEntry::measureOn(const QString& picture) {
    const int chosen = drawing_->chosen();
    if (chosen < 0 || !editable_) return;
    // Other combs may be shown by the time it is measured: the comb is known by its look and its place there.
    auto* window = new PhotographWindow(drawing_->combs()[static_cast<std::size_t>(chosen)], this);
    window->setAttribute(Qt::WA_DeleteOnClose);
    window->offerPictures(pictures_);
    connect(window, &QDialog::accepted, this, [this, window, chosen, look = look_] {
        emit combMeasured(chosen, window->measured(), window->pictures(), look);
    });
    window->open();
    if (!picture.isEmpty()) window->openPicture(picture);
}

} // namespace winterlarder::desk
