// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/weather_part.h"

#include "answer/doubts.h"
#include "exchange/logs/daily_temperatures.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "text/remarks.h"
#include "theme/card.h"
#include "theme/flow_layout.h"
#include "work/read_file.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPointer>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace winterlarder::desk {

WeatherPart::WeatherPart(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    said_ = quietLabel(this);
    said_->setAccessibleDescription(tr("The weather so far"));
    add_ = new QPushButton(tr("&Daily temperatures\u2026"), this);
    add_->setToolTip(tr("Your own daily temperatures since autumn stand in for the simulated days that are past"));
    remove_ = new QPushButton(tr("Take the last table out"), this);
    auto* row = new QWidget(this);
    auto* across = new FlowLayout(row, 8);
    across->addWidget(add_);
    across->addWidget(remove_);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->addWidget(said_);
    down->addWidget(row);
    connect(add_, &QPushButton::clicked, this, &WeatherPart::askForFile);
    connect(remove_, &QPushButton::clicked, this, &WeatherPart::removeLast);
}

void WeatherPart::refresh() {
    const auto* shown = yard_->shownYard();
    add_->setEnabled(shown && yard_->writable());
    if (!shown || !yard_->book()) return;
    yard_->book()->ask(
        this,
        [yard = shown->id](book::Book& book) -> Outcome<std::vector<book::WeatherLog>> {
            auto logs = book.all<book::WeatherLog>();
            if (logs.ok()) std::erase_if(*logs, [yard](const book::WeatherLog& log) { return log.yard != yard; });
            return logs;
        },
        [this, number = ++asked_](const Outcome<std::vector<book::WeatherLog>>& logs) {
            if (number != asked_) return;
            if (logs.ok()) show(*logs);
            else yard_->book()->report(logs.problems());
        });
}

void WeatherPart::show(const std::vector<book::WeatherLog>& logs) {
    last_ = logs.empty() ? book::WeatherLogId{} : logs.back().id;
    remove_->setVisible(!logs.empty());
    remove_->setEnabled(yard_->writable());
    std::set<Date> days;
    for (const auto& log : logs)
        for (const auto& day : log.days) days.insert(day.date);
    said_->setText(days.empty()
                       ? tr("No measured temperatures yet: past days of a winter are simulated like those to come.")
                       : tr("Days measured: %1, %2 to %3; the last table: %4.")
                             .arg(days.size())
                             .arg(words::longDate(*days.begin()), words::longDate(*days.rbegin()),
                                  QString::fromStdString(logs.back().origin)));
}

QString WeatherPart::said() const { return said_->text(); }

void WeatherPart::askForFile() {
    const QString file = QFileDialog::getOpenFileName(this, tr("Daily temperatures"), {},
                                                      tr("Tables (*.csv *.txt *.tsv);;All files (*)"));
    if (!file.isEmpty()) importFile(file);
}

void WeatherPart::importFile(const QString& file) { (new WeatherDialog(yard_, file, this))->open(); }

void WeatherPart::removeLast() {
    if (last_ != book::WeatherLogId{}) yard_->apply(book::SingleEdit(book::RemoveWeatherLog{last_}));
}

// ---- the table ---------------------------------------------------------------------------------------------------------

WeatherDialog::WeatherDialog(Yard* yard, const QString& file, QWidget* parent)
    : QDialog(parent), yard_(yard), file_(file), key_(yard->book()->newFilesKey()) {
    setWindowTitle(tr("Daily temperatures: %1").arg(QFileInfo(file).fileName()));
    setAttribute(Qt::WA_DeleteOnClose);
    columns_ = new QLineEdit(this);
    columns_->setAccessibleName(tr("Columns"));
    columns_->setPlaceholderText(tr("date=D,mean=T or date=D,min=TMIN,max=TMAX"));
    unit_ = new QComboBox(this);
    unit_->setAccessibleName(tr("Unit"));
    unit_->addItems({tr("\u00b0C"), tr("\u00b0F")});
    said_ = plainLabel(this);
    said_->setWordWrap(true);
    said_->setAccessibleDescription(tr("What would be imported"));
    sure_ = new QCheckBox(tr("They are &right as they stand"), this);
    sure_->hide();
    auto* buttons = new QDialogButtonBox(this);
    import_ = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    auto* form = new QFormLayout;
    form->addRow(tr("columns (empty: date, and mean or min and max)"), columns_);
    form->addRow(tr("unit"), unit_);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    auto* down = new QVBoxLayout(this);
    down->addLayout(form);
    down->addWidget(said_, 1);
    down->addWidget(sure_);
    down->addWidget(buttons);
    resize(560, 260);
    connect(buttons, &QDialogButtonBox::accepted, this, &WeatherDialog::carryOut);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(columns_, &QLineEdit::editingFinished, this, &WeatherDialog::preview);
    connect(unit_, &QComboBox::currentIndexChanged, this, &WeatherDialog::preview);
    connect(sure_, &QCheckBox::toggled, this, &WeatherDialog::allowImport);
    preview();
}

WeatherDialog::~WeatherDialog() { yard_->book()->files()->drop(key_); }

QString WeatherDialog::said() const { return said_->text(); }

namespace {

// By date.
Outcome<std::vector<book::DayTemperature>> readDays(const QString& file, const std::string& columnNames,
                                                    exchange::TemperatureScale scale, const std::stop_token& stop) {
    const auto columns = exchange::temperatureColumns(columnNames);
    if (!columns) return columns.problems();
    const auto text = readFile(file, limits::tableText, stop);
    if (!text.ok()) return text.problems();
    const auto read = exchange::readDailyTemperatures(*text, file.toStdString(), *columns, scale);
    if (!read) return read.problems();
    std::vector<book::DayTemperature> days;
    for (const auto& day : *read) days.push_back({day.date, day.meanC});
    std::sort(days.begin(), days.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    return days;
}

} // namespace

void WeatherDialog::preview() {
    days_.clear();
    sure_->setChecked(false);
    sure_->hide();
    import_->setEnabled(false);
    said_->setText(tr("Reading\u2026"));
    const auto scale =
        unit_->currentIndex() == 1 ? exchange::TemperatureScale::Fahrenheit : exchange::TemperatureScale::Celsius;
    yard_->book()->files()->ask(
        key_, NewestWork::Turn::Last, this,
        [file = file_, columns = columns_->text().trimmed().toStdString(), scale](const std::stop_token& stop) {
            return readDays(file, columns, scale, stop);
        },
        [this](Outcome<std::vector<book::DayTemperature>> days) {
            if (days.ok()) show(std::move(days).value());
            else tell(days.problems());
        });
}

void WeatherDialog::tell(const Problems& problems) {
    constexpr int most = 12;
    QStringList lines;
    for (const auto& problem : problems) lines << problemWords(problem);
    const auto more = static_cast<int>(lines.size()) - most;
    lines = lines.mid(0, most);
    if (more > 0) lines << tr("and %n more", nullptr, more);
    said_->setText(lines.join(QLatin1Char('\n')));
}

void WeatherDialog::show(std::vector<book::DayTemperature> days) {
    days_ = std::move(days);
    if (days_.empty()) return said_->setText(tr("No day with a temperature is in it."));
    const auto coldest =
        std::min_element(days_.begin(), days_.end(), [](const auto& a, const auto& b) { return a.meanC < b.meanC; });
    said_->setText(
        tr("Days: %1, %2 to %3, the coldest %4. They hold for every colony of the yard; where tables overlap the later one counts.")
            .arg(days_.size())
            .arg(words::longDate(days_.front().date), words::longDate(days_.back().date),
                 words::temperature(celsius(coldest->meanC), 1)));
    if (const auto doubt = answer::doubtOfDays(days_, yard_->book()->today())) {
        said_->setText(said_->text() + QLatin1Char('\n') + text::sentence(doubt->says, words::style()));
        sure_->show();
    }
    allowImport();
}

void WeatherDialog::allowImport() {
    import_->setEnabled(yard_->writable() && !days_.empty() && (sure_->isHidden() || sure_->isChecked()));
}

void WeatherDialog::carryOut() {
    const auto* shown = yard_->shownYard();
    if (!shown || days_.empty()) return;
    book::WeatherLog log{.yard = shown->id, .origin = QFileInfo(file_).fileName().toStdString()};
    log.days = days_;
    yard_->apply(book::SingleEdit(book::AddWeatherLog{log}),
                 [self = QPointer<WeatherDialog>(this)](const Outcome<BookChange>& made) {
                     if (self && made.ok()) self->accept();
                 });
}

} // namespace winterlarder::desk
