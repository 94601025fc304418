// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/start_page.h"

#include "fields/fields.h"
#include "forms/boxes_field.h"
#include "models/words.h"
#include "theme/card.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

QLabel* heading(QWidget* parent, const QString& words, double factor) {
    auto* label = plainLabel(parent, words);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * factor);
    font.setBold(true);
    label->setFont(font);
    label->setWordWrap(true);
    return label;
}

} // namespace

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
    auto* inside = new QWidget(this);
    inside->setObjectName(QStringLiteral("page"));
    auto* down = new QVBoxLayout(inside);
    down->setSpacing(8);
    down->addWidget(heading(inside, tr("Will what is in the hive last until spring forage starts?"), 1.5));
    auto* lead = quietLabel(inside);
    lead->setText(tr("Three questions, then your yard. Everything you write is kept in one file on your computer, and every step can be taken back."));
    down->addWidget(lead);

    down->addWidget(heading(inside, tr("1. Where are your bees?"), 1.1));
    place_ = new PlaceField(inside);
    down->addWidget(place_);
    yard_ = new QLineEdit(tr("Home yard"), inside);
    yard_->setAccessibleName(tr("Name of the yard"));
    auto* named = quietLabel(inside, Lines::One);
    named->setText(tr("What you call the place:"));
    named->setBuddy(yard_);
    auto* nameRow = new QHBoxLayout;
    nameRow->addWidget(named);
    nameRow->addWidget(yard_, 1);
    down->addLayout(nameRow);

    down->addWidget(heading(inside, tr("2. What hive do they live in?"), 1.1));
    format_ = new QComboBox(inside);
    nameChoice(format_, tr("Hive format"));
    boxes_ = new QSpinBox(inside);
    boxes_->setRange(1, 6);
    boxes_->setValue(2);
    boxes_->setAccessibleName(tr("Boxes in winter"));
    boxes_->setPrefix(tr("boxes: "));
    auto* hiveRow = new QHBoxLayout;
    hiveRow->addWidget(format_, 1);
    hiveRow->addWidget(boxes_);
    down->addLayout(hiveRow);

    down->addWidget(heading(inside, tr("3. Which units do you think in?"), 1.1));
    down->addWidget(buildUnits());
    fault_ = plainLabel(inside);
    fault_->setProperty("fault", true);
    fault_->setWordWrap(true);
    fault_->setAccessibleDescription(tr("What is wrong"));
    fault_->hide();
    down->addWidget(fault_);

    begin_ = new QPushButton(tr("Be&gin the book"), inside);
    begin_->setProperty("accent", true);
    auto* open = new QPushButton(tr("&Open a book or case files\u2026"), inside);
    auto* demo = new QPushButton(tr("&Look round in an invented yard"), inside);
    auto* buttons = new QHBoxLayout;
    for (auto* button : {begin_, open, demo}) buttons->addWidget(button);
    buttons->addStretch(1);
    down->addSpacing(8);
    down->addLayout(buttons);
    down->addStretch(1);
    inside->setMaximumWidth(fontMetrics().averageCharWidth() * 110);

    auto* room = new QScrollArea(this);
    room->setWidgetResizable(true);
    room->setFrameShape(QFrame::NoFrame);
    room->setFocusPolicy(Qt::NoFocus);
    room->setWidget(inside);
    room->viewport()->setObjectName(QStringLiteral("page"));
    auto* whole = new QVBoxLayout(this);
    whole->addWidget(room);
    connect(begin_, &QPushButton::clicked, this, &StartPage::begin);
    connect(open, &QPushButton::clicked, this, &StartPage::openAsked);
    connect(demo, &QPushButton::clicked, this, &StartPage::demoAsked);
    setFocusProxy(place_);
}

QWidget* StartPage::buildUnits() {
    auto* row = new QWidget(this);
    metric_ = new QRadioButton(tr("kilograms and litres"), row);
    states_ = new QRadioButton(tr("pounds and US gallons"), row);
    imperial_ = new QRadioButton(tr("pounds and imperial gallons"), row);
    auto* across = new QHBoxLayout(row);
    across->setContentsMargins(0, 0, 0, 0);
    for (auto* button : {metric_, states_, imperial_}) across->addWidget(button);
    across->addStretch(1);
    unitsButton(words::style().numbers.system)->setChecked(true);
    return row;
}

QRadioButton* StartPage::unitsButton(UnitSystem system) const {
    return system == UnitSystem::Metric ? metric_ : system == UnitSystem::UnitedStates ? states_ : imperial_;
}

void StartPage::useReference(std::shared_ptr<const ReferenceData> reference) {
    place_->useReference(reference);
    format_->clear();
    offerFormats(format_, *reference);
    const int usual = format_->findData(QStringLiteral("langstroth-deep"));
    if (usual >= 0) format_->setCurrentIndex(usual);
}

QString StartPage::fault() const {
    return fault_->isHidden() ? QString() : fault_->text();
}

void StartPage::begin() {
    QString wrong;
    if (!place_->place()) wrong = tr("Say where the bees are: choose a station from the list, or type latitude and longitude.");
    else if (yard_->text().trimmed().isEmpty()) wrong = tr("The yard needs a name.");
    fault_->setText(wrong);
    fault_->setVisible(!wrong.isEmpty());
    if (!wrong.isEmpty()) return (place_->place() ? static_cast<QWidget*>(yard_) : place_->search())->setFocus();
    const auto units = metric_->isChecked() ? UnitSystem::Metric : states_->isChecked() ? UnitSystem::UnitedStates : UnitSystem::Imperial;
    emit finished({yard_->text().trimmed(), *place_->place(), format_->currentData().toString(), boxes_->value(), units});
}

} // namespace winterlarder::desk
