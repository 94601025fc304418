// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/start_page.h"

#include "forms/format_field.h"
#include "forms/own_measures.h"
#include "models/words.h"
#include "theme/card.h"

#include <QCheckBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

QLabel* heading(QWidget* parent, const QString& words, double factor) {
    auto* label = plainLabel(parent, words);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * factor);
    font.setBold(true);
    label->setFont(font);
    label->setWordWrap(factor > 1.2); // a long one
    return label;
}

} // namespace

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
    auto* inside = new QWidget(this);
    inside->setObjectName(QStringLiteral("page"));
    auto* down = new QVBoxLayout(inside);
    down->setSpacing(8);
    columns_ = new QBoxLayout(QBoxLayout::LeftToRight);
    columns_->setSpacing(32);
    columns_->addLayout(buildWhere(inside), 1); // made first: the Tab key begins with the questions
    columns_->addLayout(buildColonies(inside), 1);
    down->addLayout(columns_, 1);
    fault_ = plainLabel(inside);
    fault_->setProperty("fault", true);
    fault_->setWordWrap(true);
    fault_->setAccessibleDescription(tr("What is wrong"));
    fault_->hide();
    down->addWidget(fault_);
    begin_ = new QPushButton(tr("Be&gin the book"), inside);
    begin_->setProperty("accent", true);
    down->insertLayout(0, buildHead(inside));
    down->addSpacing(8);
    down->addWidget(begin_, 0, Qt::AlignLeft);
    inside->setMaximumWidth(fontMetrics().averageCharWidth() * 190);

    auto* room = new QScrollArea(this);
    room->setWidgetResizable(true);
    room->setFrameShape(QFrame::NoFrame);
    room->setFocusPolicy(Qt::NoFocus);
    room->setWidget(inside);
    room->viewport()->setObjectName(QStringLiteral("page"));
    auto* whole = new QVBoxLayout(this);
    whole->addWidget(room);
    connect(begin_, &QPushButton::clicked, this, &StartPage::begin);
    connect(place_, &PlaceField::chosen, this, &StartPage::propose);
    connect(format_, &FormatField::chosen, this, &StartPage::proposeBoxes);
    setFocusProxy(place_);
    sayOpen({});
}

// What it is about, and beside it the ways that begin nothing.
QLayout* StartPage::buildHead(QWidget* inside) {
    auto* words = new QVBoxLayout; // spacing that is not said would be that of the layout around
    words->setSpacing(4);
    words->addWidget(heading(inside, tr("Will what is in the hive last until spring forage starts?"), 1.5));
    auto* lead = quietLabel(inside);
    lead->setText(tr(
        "Three questions, then your yard. Everything you write is kept in one file on your computer, and every step can be taken back."));
    words->addWidget(lead);
    open_ = quietLabel(inside);
    words->addWidget(open_);
    auto* demo = new QPushButton(tr("&Try the demo"), inside);
    demo->setToolTip(tr("An invented orchard yard to look round in; nothing of yours is changed"));
    auto* open = new QPushButton(tr("&Open a book or case files\u2026"), inside);
    back_ = new QPushButton(tr("Bac&k (Esc)"), inside);
    auto* ways = new QVBoxLayout;
    ways->setSpacing(6);
    for (auto* button : {demo, open, back_}) ways->addWidget(button);
    ways->addStretch(1);
    connect(open, &QPushButton::clicked, this, &StartPage::openAsked);
    connect(demo, &QPushButton::clicked, this, &StartPage::demoAsked);
    connect(back_, &QPushButton::clicked, this, &StartPage::backAsked);
    auto* across = new QHBoxLayout;
    across->setSpacing(24);
    across->addLayout(words, 1);
    across->addLayout(ways);
    return across;
}

QLayout* StartPage::buildWhere(QWidget* inside) {
    auto* down = new QVBoxLayout;
    down->setSpacing(6);
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
    down->addSpacing(10);
    down->addWidget(heading(inside, tr("2. What hive do they live in?"), 1.1));
    format_ = new FormatField(inside);
    down->addWidget(format_, 1);
    ownCombs_ = new QCheckBox(tr("its combs have measures of their o&wn"), inside);
    down->addWidget(ownCombs_);
    connect(ownCombs_, &QCheckBox::toggled, this, &StartPage::showMeasures);
    where_ = down;
    return down;
}

QLayout* StartPage::buildColonies(QWidget* inside) {
    auto* down = new QVBoxLayout;
    down->setSpacing(6);
    down->addWidget(heading(inside, tr("3. Which colonies?"), 1.1));
    colonies_ = new ColoniesField(inside);
    down->addWidget(colonies_);
    down->addSpacing(10);
    down->addWidget(heading(inside, tr("Numbers in"), 1.1));
    down->addWidget(buildUnits());
    down->addStretch(1);
    return down;
}

QWidget* StartPage::buildUnits() {
    auto* row = new QWidget(this);
    metric_ = new QRadioButton(tr("kilograms and litres"), row);
    states_ = new QRadioButton(tr("pounds and US gallons"), row);
    imperial_ = new QRadioButton(tr("pounds and imperial gallons"), row);
    auto* down = new QVBoxLayout(row);
    down->setContentsMargins(0, 0, 0, 0);
    for (auto* button : {metric_, states_, imperial_}) {
        down->addWidget(button);
        connect(button, &QRadioButton::clicked, this, [this] { unitsByHand_ = true; });
        connect(button, &QRadioButton::toggled, this, [this](bool on) {
            if (on) emit unitsProposed(units());
        });
    }
    unitsButton(words::style().numbers.system)->setChecked(true);
    return row;
}

QRadioButton* StartPage::unitsButton(UnitSystem system) const {
    return system == UnitSystem::Metric ? metric_ : system == UnitSystem::UnitedStates ? states_ : imperial_;
}

UnitSystem StartPage::units() const {
    return metric_->isChecked()   ? UnitSystem::Metric
           : states_->isChecked() ? UnitSystem::UnitedStates
                                  : UnitSystem::Imperial;
}

void StartPage::useReference(std::shared_ptr<const ReferenceData> reference) {
    place_->useReference(reference);
    if (!measures_) {
        measures_ = new OwnMeasures(ownCombs_->parentWidget(), *reference);
        measures_->hide();
        where_->addWidget(measures_);
        QWidget* before = ownCombs_;
        for (auto* field : measures_->fields()) {
            setTabOrder(before, field);
            before = field;
        }
    }
    format_->useReference(std::move(reference));
    proposeBoxes();
}

void StartPage::usePlaces(std::shared_ptr<const climate::Gazetteer> places) {
    places_ = places;
    place_->usePlaces(std::move(places));
}

void StartPage::sayOpen(const QString& yard) {
    open_->setText(tr("%1 stays open until the new book is begun.").arg(yard));
    open_->setVisible(!yard.isEmpty());
    back_->setVisible(!yard.isEmpty());
}

void StartPage::propose() {
    const std::string country = place_->country();
    format_->suggest(country, QString::fromStdString(places_ ? places_->countryName(country) : country));
    if (!unitsByHand_) unitsButton(country == "US" ? UnitSystem::UnitedStates : UnitSystem::Metric)->setChecked(true);
}

// In America two deep boxes are usual, elsewhere one.
void StartPage::proposeBoxes() {
    const auto* format = format_->format();
    if (!format) return;
    const std::string country = place_->country();
    const bool america = country.empty() || country == "CA" || country == "US";
    colonies_->proposeBoxes(format->family == "Langstroth" && america ? 2 : 1, format->isOneRoom());
}

// They begin as those of the format that is chosen.
void StartPage::showMeasures() {
    if (!measures_) return;
    if (const auto* format = format_->format(); format && measures_->format() == book::OwnFormat{})
        measures_->show(measuresOf(*format));
    measures_->setVisible(ownCombs_->isChecked());
}

QString StartPage::measuresFault() const {
    return ownCombs_->isChecked() && measures_ ? measures_->fault() : QString();
}

QString StartPage::fault() const { return fault_->isHidden() ? QString() : fault_->text(); }

void StartPage::begin() {
    QString wrong;
    if (!place_->place())
        wrong = tr("Say where the bees are: choose a place from the list, or type latitude and longitude.");
    else if (yard_->text().trimmed().isEmpty()) wrong = tr("The yard needs a name.");
    else if (!measuresFault().isEmpty()) wrong = measuresFault();
    else wrong = colonies_->fault();
    fault_->setText(wrong);
    fault_->setVisible(!wrong.isEmpty());
    if (!place_->place()) return place_->search()->setFocus();
    if (yard_->text().trimmed().isEmpty()) return yard_->setFocus();
    if (!measuresFault().isEmpty()) return measures_->faultyField()->setFocus();
    if (!wrong.isEmpty()) return colonies_->goToFault();
    emit finished({yard_->text().trimmed(), *place_->place(), place_->heightM(),
                   QString::fromStdString(format_->format()->id), colonies_->colonies(), units(),
                   ownCombs_->isChecked() ? std::optional(measures_->format()) : std::nullopt});
}

// The hand is where the first answer goes.
void StartPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    place_->search()->setFocus();
}

void StartPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return emit backAsked();
    QWidget::keyPressEvent(event);
}

// Beside each other where both columns have room, else one below the other in the order they are asked.
void StartPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool beside = width() > fontMetrics().averageCharWidth() * 125;
    columns_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

} // namespace winterlarder::desk
