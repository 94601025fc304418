// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/import_dialog.h"

#include "answer/doubts_of_import.h"
#include "exchange/book/book_csv.h"
#include "exchange/book/book_document.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "theme/card.h"
#include "work/read_file.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QDialogButtonBox>
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

ImportDialog::ImportDialog(OpenBook* book, const QString& file, QWidget* parent)
    : QDialog(parent), book_(book), file_(file), key_(book->newFilesKey()) {
    setWindowTitle(tr("Import %1").arg(QFileInfo(file).fileName()));
    setAttribute(Qt::WA_DeleteOnClose);
    table_ = new QComboBox(this);
    table_->setAccessibleName(tr("What the table holds"));
    for (const auto& table : exchange::csvTables()) table_->addItem(QString::fromStdString(table));
    said_ = plainLabel(this);
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
    whole_ = file.endsWith(QLatin1String(".json"), Qt::CaseInsensitive);
    form->setRowVisible(table_, !whole_);
    if (const QString named = tableOfFile(file); !named.isEmpty()) table_->setCurrentText(named);
    connect(table_, &QComboBox::currentIndexChanged, this, &ImportDialog::preview);
    sayReading();
    if (whole_) readBook();
    else readTable();
}

ImportDialog::~ImportDialog() { book_->files()->drop(key_); }

QString ImportDialog::said() const { return said_->text(); }

void ImportDialog::sayReading() {
    previewed_.reset();
    faults_->clear();
    faults_->hide();
    sure_->hide();
    sure_->setChecked(false);
    import_->setEnabled(false);
    said_->setText(tr("Reading\u2026"));
}

void ImportDialog::readTable() {
    book_->files()->ask(
        key_, NewestWork::Turn::Last, this,
        [file = file_](const std::stop_token& stop) { return readFile(file, limits::tableText, stop); },
        [this](Outcome<std::string> text) {
            if (!text.ok()) return showFaults(text.problems());
            text_ = std::make_shared<const std::string>(std::move(text).value());
            if (tableOfFile(file_).isEmpty()) guessTable();
            else preview();
        });
}

namespace {

// A whole book as read, and what is to be asked about its entries.
struct JudgedDocument {
    std::vector<book::Target> entries;
    Problems doubts;
};

Outcome<JudgedDocument> judgedDocument(const QString& file, const ReferenceData& reference, Date today,
                                       const std::stop_token& stop) {
    const auto text = readFile(file, limits::documentText, stop);
    if (!text.ok()) return text.problems();
    std::vector<Place> places;
    auto entries = exchange::readBook(*text, file.toStdString(), reference, &places);
    if (!entries.ok()) return entries.problems();
    auto doubts = answer::doubtsOfDocument(*entries, places, today, reference, {});
    return JudgedDocument{std::move(entries).value(), std::move(doubts)};
}

} // namespace

void ImportDialog::readBook() {
    book_->files()->ask(
        key_, NewestWork::Turn::Last, this,
        [file = file_, reference = book_->reference(), today = book_->today()](const std::stop_token& stop) {
            return judgedDocument(file, *reference, today, stop);
        },
        [this](Outcome<JudgedDocument> read) {
            if (!read.ok()) return showFaults(read.problems());
            entries_ = std::make_shared<const std::vector<book::Target>>(std::move(read->entries));
            said_->setText(tr(
                "A whole book of %n entries. The book at hand becomes this one, no more and no less; that can be undone, and a backup is made first.",
                nullptr, static_cast<int>(entries_->size())));
            importable_ = book_->writable();
            sure_->setText(tr("Take the &book as it stands: no answer believes these"));
            allowImport();
            if (!read->doubts.empty()) askAbout(read->doubts, false);
        });
}

namespace {

// The table that finds the fewest faults in the line of column names.
QString likeliestTable(book::Book& book, const std::string& columns, const std::string& file, const std::string& who) {
    QString best;
    std::size_t fewest = 0;
    for (const auto& table : exchange::csvTables()) {
        const auto tried = exchange::previewCsv(book, table, columns, file, who);
        const std::size_t faults = tried.ok() ? 0 : tried.problems().size();
        if (!best.isEmpty() && faults >= fewest) continue;
        best = QString::fromStdString(table);
        fewest = faults;
    }
    return best;
}

// The rows of a table, and what is to be asked about them.
struct JudgedPreview {
    exchange::CsvPreview rows;
    Problems doubts;
    bool impossible = false; //!< some of the doubts are of what cannot be
};

Outcome<JudgedPreview> judgedPreview(book::Book& book, const std::string& table, const std::string& text,
                                     const std::string& file, const std::string& who, Date today) {
    auto rows = exchange::previewCsv(book, table, text, file, who);
    if (!rows.ok()) return rows.problems();
    JudgedPreview judged{std::move(rows).value(), {}, false};
    judged.doubts = answer::doubtsOfRows(book, judged.rows, file, today, false, {});
    auto asSure = judged.rows;
    judged.impossible = !answer::doubtsOfRows(book, asSure, file, today, true, {}).empty();
    return judged;
}

} // namespace

void ImportDialog::guessTable() {
    book_->ask(
        this,
        [columns = columnNames(*text_), file = file_.toStdString(), who = book_->scribe().who.toStdString()](
            book::Book& book) { return likeliestTable(book, columns, file, who); },
        [this, number = ++asked_](const Outcome<QString>& best) {
            if (number != asked_) return;
            if (!best.ok()) return showFaults(best.problems());
            const QSignalBlocker quiet(table_);
            table_->setCurrentText(*best);
            preview();
        });
}

void ImportDialog::preview() {
    sayReading();
    if (!text_) return; // it is previewed once it is read
    book_->ask(
        this,
        [text = text_, table = table_->currentText().toStdString(), file = file_.toStdString(),
         who = book_->scribe().who.toStdString(),
         today = book_->today()](book::Book& book) { return judgedPreview(book, table, *text, file, who, today); },
        [this, number = ++asked_](Outcome<JudgedPreview> made) {
            if (number != asked_) return;
            if (!made.ok()) return showFaults(made.problems());
            previewed_ = std::make_shared<const exchange::CsvPreview>(std::move(made->rows));
            showTable(*previewed_);
            if (!made->doubts.empty()) askAbout(made->doubts, made->impossible);
        });
}

void ImportDialog::showTable(const exchange::CsvPreview& preview) {
    const auto count = [](const std::vector<int>& lines) { return static_cast<int>(lines.size()); };
    said_->setText(
        tr("%1; %2; %3. Everything or nothing is imported, as one step that can be undone; a backup is made first.")
            .arg(tr("%n new", nullptr, count(preview.added)), tr("%n changed", nullptr, count(preview.changed)),
                 tr("%n said already, left out", nullptr, count(preview.duplicates))));
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

void ImportDialog::allowImport() { import_->setEnabled(importable_ && (sure_->isHidden() || sure_->isChecked())); }

void ImportDialog::showFaults(const Problems& problems) {
    import_->setEnabled(false);
    if (isOurs(problems)) said_->setText(tr("Nothing was imported."));
    else
        said_->setText(tr("Nothing can be imported before this is put right in the file: %n faults.", nullptr,
                          static_cast<int>(problems.size())));
    for (const auto& problem : problems) faults_->addItem(problemWords(problem));
    faults_->show();
}

void ImportDialog::carryOut() {
    import_->setEnabled(false);
    const auto done = [self = QPointer<ImportDialog>(this)](const Outcome<BookChange>& made) {
        if (!self) return;
        if (made.ok()) self->accept();
        else self->showFaults(made.problems());
    };
    if (entries_) {
        book_->change(
            [entries = entries_](book::Book& book, book::Timestamp now, const std::string& who) {
                return exchange::importBook(book, *entries, now, who);
            },
            done);
    } else if (previewed_) {
        book_->change(
            [preview = previewed_, file = file_.toStdString(), sure = sure_->isChecked(),
             today = book_->today()](book::Book& book, book::Timestamp now, const std::string& who) {
                auto rows = *preview;
                if (sure)
                    if (auto impossible = answer::doubtsOfRows(book, rows, file, today, true, {}); !impossible.empty())
                        return Outcome<book::Applied>(std::move(impossible));
                return exchange::importCsv(book, rows, now, who);
            },
            done);
    }
}

} // namespace winterlarder::desk
