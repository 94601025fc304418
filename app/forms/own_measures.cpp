// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/own_measures.h"

#include "combs/outline_drawing.h"
#include "fields/quantity_field.h"
#include "models/words.h"
#include "theme/card.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QStyle>

namespace winterlarder::desk {

using MeasureKind = QuantityField::Kind;

book::OwnFormat measuresOf(const HiveFormat& format) {
    const bool sloping = format.bottomWidth != format.combWidth;
    return {format.combWidth, format.combHeight, sloping ? std::optional(format.bottomWidth) : std::nullopt,
            format.combsPerBox, format.pitch};
}

OwnMeasures::OwnMeasures(QWidget* parent, const ReferenceData& reference) : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(18, 0, 0, 4);
    grid->setVerticalSpacing(3);
    const auto measure = [&](const QString& words, MeasureKind kind, const char* limits) {
        auto* field = new QuantityField(this, words, kind, reference.field(limits));
        auto* label = quietLabel(this, Lines::One);
        label->setText(words);
        label->setBuddy(field);
        const int row = static_cast<int>(fields_.size());
        grid->addWidget(label, row, 0);
        grid->addWidget(field, row, 1);
        connect(field, &QLineEdit::textChanged, this, &OwnMeasures::refresh);
        fields_.push_back({words, field});
        return field;
    };
    top_ = measure(tr("comb width at the top"), MeasureKind::Length, "hive.format.comb_width_mm");
    depth_ = measure(tr("comb depth"), MeasureKind::Length, "hive.format.comb_height_mm");
    bottom_ = measure(tr("width at the bottom"), MeasureKind::Length, "hive.format.bottom_width_mm");
    spacing_ = measure(tr("spacing, or bar width"), MeasureKind::Length, "hive.format.pitch_mm");
    combs_ = measure(words::worded(tr("%{combs} the box holds")), MeasureKind::Whole, "hive.format.combs_per_box");
    for (auto* field : {top_, depth_, spacing_, combs_}) field->require(true);
    bottom_->setPlaceholderText(tr("as at the top"));
    drawing_ = new OutlineDrawing(this);
    grid->addWidget(drawing_, 0, 2, static_cast<int>(fields_.size()), 1);
    grid->setColumnStretch(2, 1);
    said_ = plainLabel(this);
    said_->setWordWrap(true);
    said_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    said_->setMinimumHeight(2 * said_->fontMetrics().lineSpacing() +
                            2); // so that nothing moves when it is said in one line or two
    grid->addWidget(said_, static_cast<int>(fields_.size()), 0, 1, 3);
    refresh();
}

void OwnMeasures::show(const book::OwnFormat& format) {
    const auto shown = [](Length measure) {
        return measure > Length(0) ? std::optional(measure.value()) : std::nullopt;
    };
    top_->show(shown(format.combWidth));
    depth_->show(shown(format.combHeight));
    bottom_->show(format.bottomWidth ? shown(*format.bottomWidth) : std::nullopt);
    spacing_->show(shown(format.pitch));
    combs_->show(format.combsPerBox > 0 ? std::optional<double>(format.combsPerBox) : std::nullopt);
    refresh();
}

book::OwnFormat OwnMeasures::format() const {
    const auto length = [](const QuantityField* field) { return Length(field->value().value_or(0)); };
    book::OwnFormat format{
        length(top_), length(depth_), {}, static_cast<int>(combs_->value().value_or(0)), length(spacing_)};
    if (bottom_->value()) format.bottomWidth = length(bottom_);
    return format;
}

std::vector<QWidget*> OwnMeasures::fields() const {
    std::vector<QWidget*> fields;
    for (const auto& each : fields_) fields.push_back(each.field);
    return fields;
}

QWidget* OwnMeasures::faultyField() const {
    for (const auto& each : fields_)
        if (!each.field->fault().isEmpty()) return each.field;
    return nullptr;
}

QString OwnMeasures::fault() const {
    for (const auto& each : fields_)
        if (const QString wrong = each.field->fault(); !wrong.isEmpty()) return tr("%1: %2").arg(each.words, wrong);
    return {};
}

void OwnMeasures::name(int box) {
    for (const auto& each : fields_)
        each.field->setAccessibleName(tr("Box %1, %2").arg(QString::number(box), each.words));
}

void OwnMeasures::showAsSuper(bool super) {
    super_ = super;
    refresh();
}

QString OwnMeasures::said() const { return said_->text(); }

std::optional<hive::CombFormat> OwnMeasures::comb() const {
    if (faultyField()) return std::nullopt;
    const auto own = format();
    return hive::CombFormat{
        {}, {own.combWidth, own.bottomWidth.value_or(own.combWidth), own.combHeight}, own.pitch, {}, own.combsPerBox};
}

void OwnMeasures::refresh() {
    const auto comb = this->comb();
    drawing_->show(comb ? std::optional(comb->outline) : std::nullopt);
    if (comb) {
        const Mass honey = hive::fullComb(*comb, hive::phiFor(comb->pitch, super_));
        said_->setText(tr("A comb has %1 on each side; capped from edge to edge it holds about %2 of honey.")
                           .arg(words::area(hive::faceArea(comb->outline)), words::kilograms(honey)));
    } else {
        said_->setText(fault());
    }
    if (said_->property("fault").toBool() == !comb) return;
    said_->setProperty("fault", !comb);
    said_->style()->unpolish(said_);
    said_->style()->polish(said_);
}

void OwnMeasures::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LocaleChange || !said_) return;
    bottom_->setPlaceholderText(tr("as at the top"));
    refresh();
}

} // namespace winterlarder::desk
