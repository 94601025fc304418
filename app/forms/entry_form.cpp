// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/entry_form.h"

#include "fields/day_field.h"
#include "forms/doubt_bar.h"
#include "models/entry_doubts.h"
#include "models/problem_words.h"
#include "theme/card.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPointer>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace winterlarder::desk {

std::string plain(const QLineEdit* field) { return field->text().trimmed().toStdString(); }

std::string plain(const QPlainTextEdit* field) { return field->toPlainText().trimmed().toStdString(); }

EntryForm::EntryForm(QWidget* parent, const QString& title, Yard* yard) : QDialog(parent), yard_(yard) {
    setWindowTitle(title);
    setAttribute(Qt::WA_DeleteOnClose);
    form_ = new QFormLayout;
    form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    fault_ = plainLabel(this);
    fault_->setWordWrap(true);
    fault_->setProperty("fault", true);
    fault_->setAccessibleDescription(tr("What is wrong"));
    fault_->hide();
    doubts_ = new DoubtBar(this);
    connect(doubts_, &DoubtBar::meant, this, &EntryForm::saveAsMeant);
    connect(doubts_, &DoubtBar::sure, this, [this] {
        sure_ = true;
        save();
        sure_ = false;
    });
    auto* down = new QVBoxLayout(this);
    down->addLayout(form_);
    down->addWidget(fault_);
    down->addStretch(1);
    setMinimumWidth(fontMetrics().averageCharWidth() * 64);
    connect(new QShortcut(Qt::Key_F1, this), &QShortcut::activated, this,
            [this] { openGuide(this, yard_, guidePageOf(focusWidget())); });
}

// Made once all fields are, so that the Tab key comes to them last.
void EntryForm::setEdit(std::function<Made()> edit) {
    edit_ = std::move(edit);
    auto* foot = new QHBoxLayout;
    if (guide_) foot->addWidget(new GuideLink(this, yard_, *guide_));
    auto* buttons = new QDialogButtonBox(this);
    saveButton_ = buttons->addButton(tr("W&rite down"), QDialogButtonBox::AcceptRole);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &EntryForm::save);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    foot->addWidget(buttons, 1);
    static_cast<QVBoxLayout*>(layout())->addLayout(foot);
}

void EntryForm::add(const QString& label, QWidget* field) {
    auto* name = plainLabel(this, label);
    name->setBuddy(field);
    form_->addRow(name, field);
    if (field->accessibleName().isEmpty()) field->setAccessibleName(QString(label).remove(QLatin1Char('&')));
}

void EntryForm::judgedBy(text::GuidePage page) {
    guide_ = page;
    setGuidePage(this, page);
}

void EntryForm::say(const QString& words) {
    auto* label = quietLabel(this);
    label->setText(words);
    form_->addRow(label);
}

QuantityField* EntryForm::quantity(const QString& label, QuantityField::Kind kind, const char* field,
                                   std::optional<double> value) {
    auto* quantity = new QuantityField(this, QString(label).remove(QLatin1Char('&')), kind,
                                       yard_->book()->reference()->field(field));
    quantity->show(value);
    quantities_.push_back(quantity);
    connect(quantity, &QLineEdit::textEdited, doubts_, &DoubtBar::clear);
    add(label, quantity);
    return quantity;
}

DayField* EntryForm::day(const QString& label, Date day) {
    auto* field = new DayField(this, QString(label).remove(QLatin1Char('&')));
    field->show(day);
    field->line()->selectAll(); // where the form opens with it, it is typed over
    days_.push_back(field);
    add(label, field);
    return field;
}

QLineEdit* EntryForm::line(const QString& label, const std::string& text) {
    auto* field = new QLineEdit(QString::fromStdString(text), this);
    add(label, field);
    return field;
}

QPlainTextEdit* EntryForm::lines(const QString& label, const std::string& text) {
    auto* field = new QPlainTextEdit(QString::fromStdString(text), this);
    field->setTabChangesFocus(true);
    field->setFixedHeight(field->fontMetrics().height() * 4);
    add(label, field);
    return field;
}

QCheckBox* EntryForm::flag(const QString& label, bool on) {
    auto* field = new QCheckBox(label, this);
    field->setChecked(on);
    form_->addRow(QString(), field);
    return field;
}

QComboBox* EntryForm::choiceBox(const QString& label) {
    auto* box = new QComboBox(this);
    add(label, box);
    return box;
}

QComboBox* EntryForm::maybe(const QString& label, std::optional<bool> said) {
    return choice<int>(label, {{tr("not said"), -1}, {tr("yes"), 1}, {tr("no"), 0}}, said ? (*said ? 1 : 0) : -1);
}

QString EntryForm::fault() const { return fault_->isHidden() ? QString() : fault_->text(); }

QString EntryForm::faultOfFields() {
    QWidget* faulty = nullptr;
    QString wrong;
    const auto note = [&](QWidget* field, const QString& fault) {
        if (faulty || fault.isEmpty() || !field->isVisibleTo(this) || !field->isEnabled()) return;
        faulty = field;
        wrong = tr("%1: %2").arg(field->accessibleName(), fault);
    };
    for (auto* field : days_) note(field, field->take() ? QString() : field->fault());
    for (auto* field : quantities_) note(field, field->fault());
    if (faulty) faulty->setFocus();
    return wrong;
}

void EntryForm::save() {
    const QString wrong = faultOfFields();
    if (!wrong.isEmpty() || !edit_) return showFault(wrong);
    auto made = edit_();
    if (const auto* fault = std::get_if<QString>(&made)) return showFault(*fault);
    showFault({});
    auto& edit = std::get<book::Edit>(made);
    if (askedAbout(edit)) return;
    write(withSure(std::move(edit), doubts_->asks()));
}

// What is sure was asked about before, and is not asked again; where that is no longer so it is not sure of anything.
bool EntryForm::askedAbout(const book::Edit& made) {
    const auto doubt = doubtOfEdit(made, *yard_);
    if (!doubt) {
        doubts_->clear();
        return false;
    }
    const bool answered = sure_ && !doubt->impossible && doubts_->asks() && doubts_->doubt()->says.id == doubt->says.id;
    askBeside(fieldInDoubt(doubt->says.id), *doubt);
    return !answered;
}

void EntryForm::askBeside(QWidget* field, stores::Doubt doubt) {
    int row = -1;
    QFormLayout::ItemRole role{};
    form_->getWidgetPosition(doubts_, &row, &role);
    if (row >= 0) delete form_->takeRow(row).fieldItem;
    row = -1;
    if (field) form_->getWidgetPosition(field, &row, &role);
    form_->insertRow(row < 0 ? form_->rowCount() : row + 1, doubts_);
    const auto* amount = qobject_cast<QuantityField*>(field);
    const auto weight = doubt.says.details.find("weight");
    const bool ofThisField = amount && weight != doubt.says.details.end() &&
                             std::get<Mass>(weight->second) == Mass(amount->value().value_or(0));
    if (!ofThisField) doubt.says.details.erase("meant"); // of both sides together
    doubts_->ask(doubt, amount ? amount->text() : QString());
}

QuantityField* EntryForm::firstAmount() const {
    for (auto* field : quantities_)
        if (field->isVisibleTo(this) && field->value()) return field;
    return nullptr;
}

QWidget* EntryForm::fieldInDoubt(const std::string& id) const {
    if (id == "doubt-before" || id == "doubt-later") return days_.empty() ? nullptr : days_.front();
    if (id == "doubt-moisture" && !quantities_.empty()) return quantities_.back();
    return firstAmount();
}

void EntryForm::saveAsMeant(double kilograms) {
    auto* field = firstAmount();
    if (!field) return;
    field->show(kilograms);
    save();
}

void EntryForm::write(book::Edit made) {
    saveButton_->setEnabled(false);
    yard_->apply(std::move(made), [form = QPointer<EntryForm>(this)](const Outcome<BookChange>& written) {
        if (!form) return;
        form->saveButton_->setEnabled(true);
        if (!written.ok()) return form->showFault(problemWords(written.problems().front()));
        form->accept();
        if (form->then_) form->then_(*written);
    });
}

void EntryForm::showFault(const QString& wrong) {
    fault_->setText(wrong);
    fault_->setVisible(!wrong.isEmpty());
}

std::optional<bool> said(const QComboBox* maybe) {
    const auto value = chosen<int>(maybe);
    return value < 0 ? std::nullopt : std::optional(value == 1);
}

} // namespace winterlarder::desk
