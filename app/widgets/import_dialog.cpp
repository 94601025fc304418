// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/import_dialog.h"

#include "answer/doubts_of_import.h"
#include "exchange/book_csv.h"
#include "exchange/book_document.h"
#include "models/words.h"
#include "widgets/card.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QListWidget>
#include <QPointer>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace winterlarder::desk {

QString tableOfFile(const QString& file) {
    const QString name = QFileInfo(file).completeBaseName().toLower().replace(QLatin1Char('-'), QLatin1Char('_'));
    QString best;
    for (const auto& table : exchange::csvTables()) {
        const QString each = QString::fromStdString(table);
        if (name.contains(each) && each.size() > best.size()) best = each;
    }
    return best;
}

namespace {

Date today() { return words::fromQDate(QDate::currentDate()); }

// Notes before it and the line itself.
std::string columnNames(const std::string& text) {
    std::size_t begin = 0;
    while (begin < text.size() && text[begin] == '#') {
        const auto end = text.find('\n', begin);
        if (end == text.npos) return text;
        begin = end + 1;
    }
    return text.substr(0, text.find('\n', begin));
}

} // namespace

ImportDialog::ImportDialog(OpenBook* book, const QString& file, QWidget* parent) : QDialog(parent), book_(book), file_(file) {
    setWindowTitle(tr("Import %1").arg(QFileInfo(file).fileName()));
    setAttribute(Qt::WA_DeleteOnClose);
    table_ = new QComboBox(this);
    table_->setAccessibleName(tr("What the table holds"));
    for (const auto& table : exchange::csvTables()) table_->addItem(QString::fromStdString(table));
    said_ = new QLabel(this);
    said_->setWordWrap(true);
    said_->setAccessibleDescription(tr("What would be imported"));
    faults_ = new QListWidget(this);
    faults_->setAccessibleName(tr("What is wrong in the file, by line and column"));
    faults_->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(this);
    import_ = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    auto* form = new QFormLayout;
    form->addRow(tr("the table holds"), table_);
    auto* down = new QVBoxLayout(this);
    down->addLayout(form);
    down->addWidget(said_);
    down->addWidget(faults_, 1);
    sure_ = new QCheckBox(tr("They are &right as they stand"), this);
    sure_->hide();
    connect(sure_, &QCheckBox::toggled, this, &ImportDialog::allowImport);
    down->addWidget(sure_);
    down->addWidget(buttons);
    resize(620, 380);
    connect(buttons, &QDialogButtonBox::accepted, this, &ImportDialog::carryOut);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    QFile read(file);
    const bool readable = read.open(QIODevice::ReadOnly);
    if (readable) text_ = read.readAll().toStdString();
    whole_ = file.endsWith(QLatin1String(".json"), Qt::CaseInsensitive);
    form->setRowVisible(table_, !whole_);
    const QString named = tableOfFile(file);
    if (!named.isEmpty()) table_->setCurrentText(named);
    connect(table_, &QComboBox::currentIndexChanged, this, &ImportDialog::preview);
    if (!readable) showFaults({{ProblemKind::File, {file.toStdString(), 0, 0}, "cannot be read: " + read.errorString().toStdString(), {}}});
    else if (named.isEmpty() && !whole_) guessTable();
    else preview();
}

QString ImportDialog::said() const { return said_->text(); }

void ImportDialog::preview() {
    previewed_.reset();
    faults_->clear();
    faults_->hide();
    sure_->hide();
    sure_->setChecked(false);
    import_->setEnabled(false);
    said_->setText(tr("Reading\u2026"));
    if (whole_) previewBook();
    else previewTable();
}

// The table that finds the fewest faults in the line of column names.
void ImportDialog::guessTable() {
    const int number = ++asked_;
    import_->setEnabled(false);
    said_->setText(tr("Reading\u2026"));
    book_->ask([self = QPointer<ImportDialog>(this), number, text = columnNames(text_), file = file_.toStdString(), who = book_->scribe().who.toStdString()](book::Book& book) -> BookWorker::Finish {
        QString best;
        std::size_t fewest = 0;
        for (const auto& table : exchange::csvTables()) {
            const auto tried = exchange::previewCsv(book, table, text, file, who);
            const std::size_t faults = tried.ok() ? 0 : tried.problems().size();
            if (!best.isEmpty() && faults >= fewest) continue;
            best = QString::fromStdString(table);
            fewest = faults;
        }
        return [self, number, best] {
            if (!self || number != self->asked_) return;
            const QSignalBlocker quiet(self->table_);
            self->table_->setCurrentText(best);
            self->preview();
        };
    });
}

void ImportDialog::previewTable() {
    const int number = ++asked_;
    book_->ask([self = QPointer<ImportDialog>(this), number, text = text_, table = table_->currentText().toStdString(), file = file_.toStdString(),
                who = book_->scribe().who.toStdString()](book::Book& book) -> BookWorker::Finish {
        auto made = std::make_shared<Outcome<exchange::CsvPreview>>(exchange::previewCsv(book, table, text, file, who));
        Problems doubts, impossible;
        if (made->ok()) {
            auto asSure = **made;
            doubts = answer::doubtsOfRows(book, **made, file, today(), false, {});
            impossible = answer::doubtsOfRows(book, asSure, file, today(), true, {});
        }
        return [self, number, made, doubts, impossible] {
            if (!self || number != self->asked_) return;
            if (!made->ok()) return self->showFaults(made->problems());
            self->previewed_ = std::shared_ptr<const exchange::CsvPreview>(made, &made->value());
            self->showTable(**made);
            if (!doubts.empty()) self->askAbout(doubts, !impossible.empty());
        };
    });
}

void ImportDialog::showTable(const exchange::CsvPreview& preview) {
    const auto count = [](const std::vector<int>& lines) { return static_cast<int>(lines.size()); };
    said_->setText(tr("%1; %2; %3. Everything or nothing is imported, as one step that can be undone; a backup is made first.")
                       .arg(tr("%n new", nullptr, count(preview.added)), tr("%n changed", nullptr, count(preview.changed)), tr("%n said already, left out", nullptr, count(preview.duplicates))));
    importable_ = book_->writable() && (!preview.added.empty() || !preview.changed.empty());
    allowImport();
}

// What cannot be is put right in the file; what is not likely may be said to be right.
void ImportDialog::askAbout(const Problems& doubts, bool impossible) {
    for (const auto& doubt : doubts) faults_->addItem(QString::fromStdString(describe(doubt)));
    faults_->show();
    sure_->setVisible(!impossible);
    importable_ = importable_ && !impossible;
    allowImport();
}

void ImportDialog::allowImport() {
    import_->setEnabled(importable_ && (sure_->isHidden() || sure_->isChecked()));
}

void ImportDialog::previewBook() {
    const auto read = exchange::readBook(text_, file_.toStdString(), *book_->reference());
    if (!read.ok()) return showFaults(read.problems());
    said_->setText(tr("A whole book of %n entries. The book at hand becomes this one, no more and no less; that can be undone, and a backup is made first.", nullptr,
                      static_cast<int>(read->size())));
    import_->setEnabled(book_->writable());
}

void ImportDialog::showFaults(const Problems& problems) {
    import_->setEnabled(false);
    said_->setText(tr("Nothing can be imported before this is put right in the file: %n faults.", nullptr, static_cast<int>(problems.size())));
    for (const auto& problem : problems) faults_->addItem(QString::fromStdString(describe(problem)));
    faults_->show();
}

void ImportDialog::carryOut() {
    import_->setEnabled(false);
    const auto done = [self = QPointer<ImportDialog>(this)](const Problems& problems) {
        if (!self) return;
        if (problems.empty()) self->accept();
        else self->showFaults(problems);
    };
    if (whole_) {
        book_->change([text = text_, file = file_.toStdString()](book::Book& book, book::Timestamp now, const std::string& who) {
            return exchange::importBook(book, text, file, now, who);
        }, done);
    } else if (previewed_) {
        book_->change([preview = previewed_, file = file_.toStdString(), sure = sure_->isChecked()](book::Book& book, book::Timestamp now, const std::string& who) {
            auto rows = *preview;
            if (sure)
                if (auto impossible = answer::doubtsOfRows(book, rows, file, today(), true, {}); !impossible.empty())
                    return Outcome<book::Applied>(std::move(impossible));
            return exchange::importCsv(book, rows, now, who);
        }, done);
    }
}

} // namespace winterlarder::desk
