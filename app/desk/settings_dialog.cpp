// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/settings_dialog.h"

#include "book/backups.h"
#include "desk/language.h"
#include "fields/fields.h"
#include "fields/quantity_field.h"
#include "theme/card.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int asThePlace = -1; // of the choice of units

QString nameOfLanguage(const QString& language) {
    const QString own = QLocale(language).nativeLanguageName();
    return own.isEmpty() ? language : own.left(1).toUpper() + own.mid(1);
}

// A share is typed as so many of a hundred.
std::optional<FieldLimits> inHundredths(const FieldLimits* share) {
    if (!share) return std::nullopt;
    FieldLimits limits = *share;
    if (limits.minimum) *limits.minimum *= 100;
    if (limits.maximum) *limits.maximum *= 100;
    return limits;
}

void choose(QComboBox* choice, const QVariant& value) { choice->setCurrentIndex(std::max(0, choice->findData(value))); }

} // namespace

SettingsDialog::SettingsDialog(Yard* yard, QWidget* parent) : QDialog(parent), yard_(yard) {
    setWindowTitle(tr("Settings"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* inside = new QWidget(this);
    auto* rows = new QGridLayout(inside);
    rows->setColumnStretch(1, 1);
    rows->setVerticalSpacing(2);
    rows->setHorizontalSpacing(16);
    buildOwn(rows);
    if (yard_->shownYard() && yard_->book() && yard_->book()->reference()) buildYard(rows);
    rows->setRowStretch(rows->rowCount(), 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* down = new QVBoxLayout(this);
    down->addWidget(withRoom(inside, this), 1);
    down->addWidget(buttons);
    for (auto* button : buttons->buttons()) static_cast<QPushButton*>(button)->setAutoDefault(false);
    resize(fontMetrics().averageCharWidth() * 92, fontMetrics().height() * 40);
    yard_->onChange(this, {YardChange::Colonies, YardChange::Read}, &SettingsDialog::showYard);
}

void SettingsDialog::addHeading(QGridLayout* rows, const QString& words) {
    auto* heading = plainLabel(this, words);
    QFont font = heading->font();
    font.setBold(true);
    heading->setFont(font);
    heading->setWordWrap(true);
    rows->addWidget(heading, rows->rowCount(), 0, 1, 2);
}

void SettingsDialog::addRow(QGridLayout* rows, const QString& words, QWidget* field, const QString& explained) {
    const int row = rows->rowCount();
    auto* label = plainLabel(this, words);
    label->setBuddy(field);
    auto* line = quietLabel(this);
    line->setText(explained);
    line->setContentsMargins(0, 0, 0, 8);
    const QString named = field->accessibleDescription(); // see nameChoice
    field->setAccessibleDescription(named.isEmpty() ? explained : tr("%1. %2").arg(named, explained));
    rows->addWidget(label, row, 0);
    rows->addWidget(field, row, 1, Qt::AlignLeft);
    rows->addWidget(line, row + 1, 1);
}

QComboBox* SettingsDialog::choice(const QString& name) {
    auto* choice = new QComboBox(this);
    nameChoice(choice, name);
    return choice;
}

void SettingsDialog::buildOwn(QGridLayout* rows) {
    addHeading(rows, tr("On this computer, whatever book is open"));
    units_ = choice(tr("Units"));
    units_->addItem(tr("those of the yard's place"), asThePlace);
    units_->addItem(tr("kilograms and litres"), static_cast<int>(UnitSystem::Metric));
    units_->addItem(tr("pounds and US gallons"), static_cast<int>(UnitSystem::UnitedStates));
    units_->addItem(tr("pounds and imperial gallons"), static_cast<int>(UnitSystem::Imperial));
    const auto system = settings::chosenUnits();
    choose(units_, system ? static_cast<int>(*system) : asThePlace);
    addRow(rows, tr("&units"), units_,
           tr("In which weights and measures are shown. Whatever you type may have a unit of its own beside it."));
    connect(units_, &QComboBox::activated, this, [this] {
        const int chosen = units_->currentData().toInt();
        settings::chooseUnits(chosen == asThePlace ? std::nullopt : std::optional(static_cast<UnitSystem>(chosen)));
        emit unitsChosen();
    });
    buildLanguage(rows);
    colours_ = choice(tr("Colours"));
    colours_->addItem(tr("as the system's"), static_cast<int>(ColourScheme::AsSystem));
    colours_->addItem(tr("light"), static_cast<int>(ColourScheme::Light));
    colours_->addItem(tr("dark"), static_cast<int>(ColourScheme::Dark));
    choose(colours_, static_cast<int>(settings::colours()));
    addRow(rows, tr("&colours"), colours_, tr("Of everything on the screen; what is printed is always dark on white."));
    connect(colours_, &QComboBox::activated, this, [this] {
        const auto wish = static_cast<ColourScheme>(colours_->currentData().toInt());
        settings::chooseColours(wish);
        emit coloursChosen(wish);
    });
    textSize_ = choice(tr("Size of the letters"));
    for (const int percent : textSizes)
        textSize_->addItem(percent == usualTextSize ? tr("as the system's") : tr("%1 %").arg(percent), percent);
    choose(textSize_, settings::textSize());
    addRow(rows, tr("&letters"), textSize_, tr("How large they are on the screen; paper keeps its own size."));
    connect(textSize_, &QComboBox::activated, this, [this] {
        settings::chooseTextSize(textSize_->currentData().toInt());
        emit textSizeChosen(settings::textSize());
    });
    notices_ = choice(tr("Notices"));
    notices_->addItem(tr("for half a minute"), static_cast<int>(NoticeWish::HalfAMinute));
    notices_->addItem(tr("for two minutes"), static_cast<int>(NoticeWish::TwoMinutes));
    notices_->addItem(tr("until they are closed"), static_cast<int>(NoticeWish::UntilPutAway));
    choose(notices_, static_cast<int>(settings::notices()));
    addRow(rows, tr("&notices"), notices_,
           tr("How long the foot of the page says what was done. What went wrong always stays until it is closed."));
    connect(notices_, &QComboBox::activated, this, [this] {
        const auto wish = static_cast<NoticeWish>(notices_->currentData().toInt());
        settings::chooseNotices(wish);
        emit noticesChosen(wish);
    });
}

void SettingsDialog::buildLanguage(QGridLayout* rows) {
    language_ = choice(tr("Language"));
    language_->addItem(tr("as the system's"), QString());
    for (const QString& each : languages()) language_->addItem(nameOfLanguage(each), each);
    choose(language_, settings::language());
    addRow(rows, tr("lan&guage"), language_,
           tr("Taken up when the program is started next. Where the system's is not in this list, English is spoken."));
    connect(language_, &QComboBox::activated, this,
            [this] { settings::chooseLanguage(language_->currentData().toString()); });
}

void SettingsDialog::buildYard(QGridLayout* rows) {
    addHeading(rows,
               tr("Of the yard \u201c%1\u201d; kept in its book, and undone as any entry is").arg(yard_->title()));
    buildWishes(rows);
    learn_ = new QCheckBox(tr("past winters correct the &forecast"), this);
    addRow(
        rows, tr("learning"), learn_,
        tr("Each winter written down to its end shows how much these bees use and how many die; forecasts for this yard are corrected by it."));
    connect(learn_, &QCheckBox::clicked, this,
            [this](bool on) { change([on](book::Yard& yard) { yard.learn = on; }); });
    addHeading(rows, tr("Of the book that is open"));
    backups_ = plainLabel(
        this, QString::fromStdString(book::backupFolderOf(yard_->book()->state()->file.toStdString()).string()));
    backups_->setWordWrap(true);
    backups_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* show = new QPushButton(tr("&Backups\u2026"), this);
    show->setAutoDefault(false);
    connect(show, &QPushButton::clicked, this, &SettingsDialog::backupsAsked);
    addRow(rows, tr("backups lie in"), show,
           tr("One is made at the first edit of a day and before anything large; the last ten are kept."));
    rows->addWidget(backups_, rows->rowCount(), 1);
    showYard();
}

void SettingsDialog::buildWishes(QGridLayout* rows) {
    const auto& reference = *yard_->book()->reference();
    const auto limits = inHundredths(reference.field("wish.short_risk"));
    risk_ = new QuantityField(this, tr("Winters of a hundred that may fall below the reserve"),
                              QuantityField::Kind::Number, limits ? &*limits : nullptr);
    addRow(
        rows, tr("&risk, winters of 100"), risk_,
        tr("How many winters of a hundred may end below the reserve before more is fed. Empty: 10 to 20, fewer where nobody can help in winter."));
    connect(risk_, &QuantityField::valueEntered, this, [this](std::optional<double> value) {
        change([value](book::Yard& yard) { yard.wish.shortRisk = value ? std::optional(*value / 100) : std::nullopt; });
    });
    reserve_ = new QuantityField(this, tr("Reserve that should be left in spring"), QuantityField::Kind::Mass,
                                 reference.field("wish.reserve_kg"));
    addRow(
        rows, tr("rese&rve"), reserve_,
        tr("Stores every hive should still hold when spring forage starts. Empty: what the size of its colony asks for."));
    connect(reserve_, &QuantityField::valueEntered, this, [this](std::optional<double> value) {
        change([value](book::Yard& yard) { yard.wish.reserve = value ? std::optional(Mass(*value)) : std::nullopt; });
    });
}

void SettingsDialog::change(const std::function<void(book::Yard&)>& change) {
    const auto* shown = yard_->shownYard();
    if (!shown || !yard_->writable()) return;
    auto changed = *shown;
    change(changed);
    if (!(changed == *shown)) yard_->writeYard(changed);
}

void SettingsDialog::showYard() {
    const auto* shown = yard_->shownYard();
    if (!risk_) return;
    for (auto* field : std::initializer_list<QWidget*>{risk_, reserve_, learn_})
        field->setEnabled(shown && yard_->writable());
    if (!shown) return;
    risk_->show(shown->wish.shortRisk ? std::optional(100 * *shown->wish.shortRisk) : std::nullopt);
    reserve_->show(shown->wish.reserve ? std::optional(shown->wish.reserve->value()) : std::nullopt);
    learn_->setChecked(shown->learn);
}

} // namespace winterlarder::desk
