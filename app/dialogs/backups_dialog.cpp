// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/backups_dialog.h"

#include "models/problem_words.h"
#include "theme/card.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace winterlarder::desk {

BackupsDialog::BackupsDialog(OpenBook* book, QWidget* parent)
    : QDialog(parent), book_(book), key_(book->newFilesKey()) {
    setWindowTitle(tr("Backups"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* lead = quietLabel(this);
    lead->setText(tr(
        "A backup is made at the first edit of a day and before anything large; the last ten are kept beside the book. Restoring one can be undone."));
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Backups, newest first"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    make_ = buttons->addButton(tr("Make one &now"), QDialogButtonBox::ActionRole);
    restore_ = buttons->addButton(tr("&Restore it"), QDialogButtonBox::ActionRole);
    auto* down = new QVBoxLayout(this);
    down->addWidget(lead);
    down->addWidget(list_, 1);
    down->addWidget(buttons);
    buttons->button(QDialogButtonBox::Close)->setDefault(true);
    resize(480, 360);
    connect(make_, &QPushButton::clicked, this, &BackupsDialog::make);
    connect(restore_, &QPushButton::clicked, this, &BackupsDialog::restore);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        restore_->setEnabled(row >= 0 && !list_->item(row)->data(Qt::UserRole).isNull() && book_->writable());
    });
    refresh();
}

BackupsDialog::~BackupsDialog() { book_->files()->drop(key_); }

void BackupsDialog::refresh() {
    list_->clear();
    restore_->setEnabled(false);
    make_->setEnabled(book_->isOpen());
    if (!book_->isOpen()) return;
    (new QListWidgetItem(tr("Reading\u2026"), list_))->setFlags(Qt::NoItemFlags);
    book_->files()->ask(
        key_, NewestWork::Turn::Last, this,
        [file = book_->state()->file.toStdString()](const std::stop_token&) { return book::backupsOf(file); },
        [this](const Outcome<std::vector<book::Backup>>& backups) {
            list_->clear();
            if (backups.ok()) show(*backups);
            else tell(backups.problems());
        });
}

void BackupsDialog::show(const std::vector<book::Backup>& backups) {
    const QLocale locale;
    if (backups.empty())
        (new QListWidgetItem(tr("There is none yet; the first edit of a day makes one."), list_))
            ->setFlags(Qt::NoItemFlags);
    for (const auto& backup : backups) {
        auto* item = new QListWidgetItem(
            tr("%1 (%2)").arg(locale.toString(QDateTime::fromSecsSinceEpoch(backup.at.seconds), QLocale::ShortFormat),
                              locale.formattedDataSize(static_cast<qint64>(backup.bytes))),
            list_);
        item->setData(Qt::UserRole, QString::fromStdString(backup.file.string()));
    }
    list_->setFocus();
}

void BackupsDialog::tell(const Problems& problems) {
    for (const auto& problem : problems) (new QListWidgetItem(problemWords(problem), list_))->setFlags(Qt::NoItemFlags);
}

void BackupsDialog::make() {
    make_->setEnabled(false);
    book_->ask(
        this, [now = book_->scribe().now()](book::Book& book) { return book.backUp(now); },
        [this](const Outcome<book::Backup>& made) {
            if (made.ok()) return refresh();
            make_->setEnabled(book_->isOpen());
            tell(made.problems());
        });
}

void BackupsDialog::restore() {
    const auto* item = list_->currentItem();
    if (!item) return;
    book_->restore(item->data(Qt::UserRole).toString());
    accept();
}

} // namespace winterlarder::desk
