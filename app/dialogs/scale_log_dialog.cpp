// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/scale_log_dialog.h"

#include "models/problem_words.h"
#include "models/words.h"
#include "text/scale_words.h"
#include "theme/card.h"
#include "work/read_file.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

#include <algorithm>
#include <istream>

namespace winterlarder::desk {

namespace {

constexpr std::size_t mostFaultsShown = 200, mostDoubtsShown = 6;

exchange::ScaleLogOptions optionsOf(const QComboBox& unit, const QComboBox& order) {
    exchange::ScaleLogOptions options;
    if (unit.currentIndex() > 0) options.unit = static_cast<MassUnit>(unit.currentData().toInt());
    if (order.currentIndex() > 0)
        options.dateOrder = exchange::dateOrderOf(order.currentData().toString().toStdString());
    return options;
}

using AnswerPointer = std::shared_ptr<const answer::ScaleAnswer>;

Outcome<AnswerPointer> logOf(const std::string& file, const exchange::ScaleLogOptions& options,
                             const answer::ScaleClocks& clocks, const std::stop_token& stop) {
    StoppableBuffer buffer(stop);
    if (!buffer.open(file, std::ios::in | std::ios::binary))
        return Problem{ProblemKind::File, {file, 0, 0}, "cannot be opened", "a file that can be read"};
    std::istream stream(&buffer);
    auto log = exchange::readScaleLog(stream, file, options);
    if (!log) return log.problems();
    auto made = answer::answerOf(std::move(log).value(), clocks);
    if (!made.ok()) return made.problems();
    return AnswerPointer(std::make_shared<const answer::ScaleAnswer>(std::move(made).value()));
}

std::optional<feeding::Ratio> ratioIn(const QString& text) {
    const auto ratio = feeding::parseRatio(text.trimmed().toStdString());
    return ratio.ok() ? std::optional(*ratio) : std::nullopt;
}

QString html(const QString& text) { return text.toHtmlEscaped(); }

} // namespace

const ScaleLogDialog::Read ScaleLogDialog::readLog = logOf;

ScaleLogDialog::ScaleLogDialog(Yard* yard, ColonyId colony, const QString& file, QWidget* parent, Read readWith)
    : QDialog(parent), yard_(yard), colony_(colony), file_(file), readLog_(std::move(readWith)),
      key_(yard->book()->newFilesKey()) {
    setWindowTitle(tr("The log of a scale: %1").arg(QFileInfo(file).fileName()));
    setAttribute(Qt::WA_DeleteOnClose);
    unit_ = new QComboBox(this);
    unit_->setAccessibleName(tr("Unit of the weights"));
    unit_->addItem(tr("as found"));
    for (const auto each : {MassUnit::Kilogram, MassUnit::Gram, MassUnit::Pound})
        unit_->addItem(QString::fromStdString(std::string(symbol(each))), static_cast<int>(each));
    order_ = new QComboBox(this);
    order_->setAccessibleName(tr("Order of day, month and year"));
    order_->addItem(tr("as found"));
    order_->addItem(tr("day, month, year"), QStringLiteral("dmy"));
    order_->addItem(tr("month, day, year"), QStringLiteral("mdy"));
    order_->addItem(tr("year, month, day"), QStringLiteral("ymd"));
    zone_ = new QLineEdit(this);
    zone_->setAccessibleName(tr("Clock of the place"));
    zone_->setPlaceholderText(tr("times as they are written; or America/Halifax, UTC, +02:00"));
    ratio_ = new QLineEdit(this);
    ratio_->setAccessibleName(tr("Ratio of the syrup fed meanwhile, sugar to water"));
    ratio_->setPlaceholderText(tr("3:2; empty: not known, the weight alone counts"));
    browser_ = new QTextBrowser(this);
    browser_->setAccessibleName(tr("What was understood, and the steps found"));
    browser_->setTabChangesFocus(true);
    added_ = plainLabel(this);
    added_->setWordWrap(true);
    sure_ = new QCheckBox(tr("They are &right as they stand"), this);
    sure_->hide();
    auto* form = new QFormLayout;
    form->addRow(tr("unit"), unit_);
    form->addRow(tr("date order"), order_);
    form->addRow(tr("clock of the place"), zone_);
    form->addRow(tr("syrup"), ratio_);
    auto* buttons = new QDialogButtonBox(this);
    import_ = buttons->addButton(tr("W&rite down"), QDialogButtonBox::AcceptRole);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    auto* down = new QVBoxLayout(this);
    down->addLayout(form);
    down->addWidget(browser_, 1);
    down->addWidget(added_);
    down->addWidget(sure_);
    down->addWidget(buttons);
    resize(680, 560);
    connect(buttons, &QDialogButtonBox::accepted, this, &ScaleLogDialog::carryOut);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    for (auto* each : {unit_, order_}) connect(each, &QComboBox::currentIndexChanged, this, &ScaleLogDialog::read);
    connect(zone_, &QLineEdit::editingFinished, this, &ScaleLogDialog::read);
    connect(ratio_, &QLineEdit::editingFinished, this, &ScaleLogDialog::count);
    connect(sure_, &QCheckBox::toggled, this, &ScaleLogDialog::allowImport);
    read();
}

// On a thread of its own: twenty years of readings take seconds.
void ScaleLogDialog::read() {
    answer_.reset();
    import_->setEnabled(false);
    added_->clear();
    sure_->hide();
    browser_->setPlainText(tr("Reading\u2026"));
    answer::ScaleClocks clocks;
    if (!zone_->text().trimmed().isEmpty()) clocks.place = zone_->text().trimmed().toStdString();
    reading_ = true;
    yard_->book()->files()->ask(
        key_, NewestWork::Turn::Last, this,
        [readWith = readLog_, file = file_.toStdString(), options = optionsOf(*unit_, *order_),
         clocks](const std::stop_token& stop) { return readWith(file, options, clocks, stop); },
        [this](const Outcome<AnswerPointer>& read) { take(read); });
}

ScaleLogDialog::~ScaleLogDialog() { yard_->book()->files()->drop(key_); }

void ScaleLogDialog::take(const Outcome<std::shared_ptr<const answer::ScaleAnswer>>& read) {
    reading_ = false;
    if (!read.ok()) return browser_->setPlainText(problemWords(read.problems()));
    answer_ = *read;
    browser_->setHtml(understood() + found());
    count();
}

QString ScaleLogDialog::understood() const {
    const auto& columns = answer_->columns;
    const auto& summary = answer_->summary;
    const auto column = [](const exchange::LogColumn& each) {
        return each.name.empty() ? tr("column %1 (%2)").arg(each.number).arg(text::toldBy(each.told))
                                 : tr("column %1, \"%2\" (%3)")
                                       .arg(each.number)
                                       .arg(text::printable(each.name), text::toldBy(each.told));
    };
    QStringList rows;
    if (columns.date) rows << tr("Date: %1").arg(column(*columns.date));
    rows << tr("Time: %1").arg(column(columns.time));
    if (columns.dateOrder)
        rows << tr("Date order: %1 (%2)")
                    .arg(QString::fromStdString(std::string(exchange::word(*columns.dateOrder))),
                         text::toldBy(columns.dateOrderTold));
    rows << tr("Weight: %1, in %2 (%3)")
                .arg(column(columns.weight), QString::fromStdString(std::string(symbol(columns.unit))),
                     text::toldBy(columns.unitTold));
    const auto& days = summary.days;
    if (!days.empty())
        rows << tr("Days: %1, %2 to %3")
                    .arg(days.size())
                    .arg(words::longDate(days.front().date), words::longDate(days.back().date));
    rows << tr("Readings: %1").arg(summary.readings);
    if (!summary.jumps.empty()) rows << tr("Jumps of the clock, put right: %1").arg(summary.jumps.size());
    if (answer_->utcDays) rows << tr("Days are those of UTC; name the clock of the place above for its own.");
    QString text = QStringLiteral("<h3>%1</h3><ul>").arg(html(tr("What was understood")));
    for (const auto& row : rows) text += QStringLiteral("<li>%1</li>").arg(html(row));
    return text + QStringLiteral("</ul>");
}

QString ScaleLogDialog::found() const {
    const auto& summary = answer_->summary;
    QString text = QStringLiteral("<h3>%1</h3>").arg(html(tr("Steps found")));
    if (summary.steps.empty()) text += QStringLiteral("<p>%1</p>").arg(html(tr("None.")));
    text += QStringLiteral("<ul>");
    for (const auto& step : summary.steps)
        text += QStringLiteral("<li>%1</li>")
                    .arg(html(tr("%1: %2, %3")
                                  .arg(words::longDate(step.date), words::kilograms(step.jump.change),
                                       text::stepKind(step.kind))));
    text += QStringLiteral("</ul><h3>%1</h3><ul>").arg(html(tr("Months")));
    for (const auto& month : summary.months)
        if (month.change)
            text += QStringLiteral("<li>%1</li>")
                        .arg(html(tr("%1: %2").arg(text::month(month.year, month.month, words::style()),
                                                   words::kilograms(*month.change))));
    text += QStringLiteral("</ul>");
    if (answer_->faults.empty()) return text;
    text += QStringLiteral("<h3>%1</h3><ul>").arg(html(tr("Rows left out: %1").arg(answer_->faults.size())));
    for (std::size_t i = 0; i < std::min(mostFaultsShown, answer_->faults.size()); ++i)
        text +=
            QStringLiteral("<li>%1</li>")
                .arg(html(tr("line %1: %2").arg(answer_->faults[i].line).arg(text::rowFault(answer_->faults[i].why))));
    return text + QStringLiteral("</ul>");
}

namespace {

struct Counted {
    answer::ScaleRecords records;
    answer::ScaleDoubts doubts;
};

// What would be written down, beside what the book has already, and what is to be asked about it.
Outcome<Counted> counted(book::Book& book, ColonyId colony, const answer::ScaleAnswer& log,
                         const std::optional<feeding::Ratio>& ratio, const std::string& file, Date today, bool sure,
                         const text::WordStyle& style) {
    auto records = answer::scaleRecordsOf(book, colony, log.proposals, ratio);
    if (!records.ok()) return records.problems();
    auto doubts = answer::judge(book, *records, file, today, sure, {}, style);
    if (!doubts.ok()) return doubts.problems();
    return Counted{std::move(records).value(), std::move(doubts).value()};
}

} // namespace

void ScaleLogDialog::count() {
    if (!answer_) return;
    yard_->book()->ask(
        this,
        [colony = colony_, answer = answer_, ratio = ratioIn(ratio_->text()),
         file = QFileInfo(file_).fileName().toStdString(), today = yard_->book()->today(), style = words::style()](
            book::Book& book) { return counted(book, colony, *answer, ratio, file, today, false, style); },
        [this, answer = answer_](const Outcome<Counted>& made) {
            if (answer_ != answer) return;
            if (made.ok()) showCounted(made->records, made->doubts);
            else added_->setText(problemWords(made.problems()));
        });
}

// What cannot be is put right in the log; what is not likely may be said to be right.
void ScaleLogDialog::showCounted(const answer::ScaleRecords& records, const answer::ScaleDoubts& doubts) {
    const auto count = [](const auto& entries) { return static_cast<int>(entries.size()); };
    QString said =
        tr("To be written down: weighings %1, feeds %2, harvests %3, changes of equipment %4; on days the book has already: %5.")
            .arg(count(records.weighings))
            .arg(count(records.feeds))
            .arg(count(records.harvests))
            .arg(count(records.works))
            .arg(records.left);
    const std::size_t shown = std::min(mostDoubtsShown, doubts.problems.size());
    for (std::size_t i = 0; i < shown; ++i) said += QLatin1Char('\n') + problemWords(doubts.problems[i]);
    if (const auto more = static_cast<int>(doubts.problems.size() - shown); more > 0)
        said += QLatin1Char('\n') + tr("and %n more", nullptr, more);
    added_->setText(said);
    sure_->setChecked(false);
    sure_->setVisible(!doubts.problems.empty() && !doubts.impossible);
    importable_ = yard_->writable() && !records.empty() && !doubts.impossible;
    allowImport();
}

void ScaleLogDialog::allowImport() { import_->setEnabled(importable_ && (sure_->isHidden() || sure_->isChecked())); }

void ScaleLogDialog::carryOut() {
    if (!answer_) return;
    import_->setEnabled(false);
    yard_->book()->change(
        [colony = colony_, answer = answer_, ratio = ratioIn(ratio_->text()),
         file = QFileInfo(file_).fileName().toStdString(), today = yard_->book()->today(), sure = sure_->isChecked(),
         style = words::style()](book::Book& book, book::Timestamp now,
                                 const std::string& who) -> Outcome<book::Applied> {
            const auto made = counted(book, colony, *answer, ratio, file, today, sure, style);
            if (!made.ok()) return made.problems();
            if (!made->doubts.problems.empty()) return made->doubts.problems;
            return book.apply(made->records.asOneStep(), now, who);
        },
        [self = QPointer<ScaleLogDialog>(this)](const Outcome<BookChange>& made) {
            if (self && made.ok()) self->accept();
            else if (self) self->added_->setText(problemWords(made.problems()));
        });
}

QString ScaleLogDialog::said() const { return browser_->toPlainText() + QLatin1Char('\n') + added_->text(); }

} // namespace winterlarder::desk
