// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/find_dialog.h"

#include "models/plain_tip.h"
#include "support/plain_letters.h"
#include "theme/card.h"
#include "theme/list_keys.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <iterator>
#include <utility>

namespace winterlarder::desk {

namespace {

constexpr std::size_t mostListed = 200;
constexpr int lettersToAskElsewhere = 3;

bool holdsAll(const std::string& letters, const std::vector<std::string>& wanted) {
    return std::all_of(wanted.begin(), wanted.end(),
                       [&](const std::string& word) { return letters.find(word) != std::string::npos; });
}

} // namespace

FindDialog::FindDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Find"));
    setAttribute(Qt::WA_DeleteOnClose);
    line_ = new QLineEdit(this);
    line_->setAccessibleName(tr("What to look for"));
    line_->setPlaceholderText(tr("a colony, a note, an entry, a place, a source\u2026"));
    line_->setClearButtonEnabled(true);
    line_->installEventFilter(this);
    found_ = new QListWidget(this);
    found_->setAccessibleName(tr("What was found"));
    found_->setAlternatingRowColors(true);
    found_->setWordWrap(true);
    said_ = quietLabel(this);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    for (auto* button : buttons->buttons()) static_cast<QPushButton*>(button)->setAutoDefault(false);
    auto* down = new QVBoxLayout(this);
    down->addWidget(line_);
    down->addWidget(found_, 1);
    down->addWidget(said_);
    down->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 90, fontMetrics().height() * 28);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(line_, &QLineEdit::textChanged, this, &FindDialog::list);
    connect(found_, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) { show(found_->row(item)); });
    connect(found_, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) { show(found_->row(item)); });
    list();
}

FindDialog::Searched FindDialog::searched(Findable what) {
    auto letters =
        plainLetters((what.kind + QLatin1Char(' ') + what.words + QLatin1Char(' ') + what.details).toStdString());
    return {std::move(what), std::move(letters)};
}

void FindDialog::offer(std::vector<Findable> more) {
    for (auto& each : more) all_.push_back(searched(std::move(each)));
    list();
}

void FindDialog::alsoAsk(std::function<std::vector<Findable>(const QString& typed)> elsewhere) {
    elsewhere_ = std::move(elsewhere);
    list();
}

void FindDialog::list() {
    const QString typed = line_->text().trimmed();
    const auto wanted = plainWords(typed.toStdString());
    found_->clear();
    listed_.clear();
    said_->setText(tr("Type some letters of what you look for."));
    if (wanted.empty()) return;
    for (const auto& each : all_)
        if (holdsAll(each.letters, wanted)) listed_.push_back(each.what);
    if (elsewhere_ && typed.size() >= lettersToAskElsewhere) {
        auto more = elsewhere_(typed);
        std::move(more.begin(), more.end(), std::back_inserter(listed_));
    }
    const bool all = listed_.size() <= mostListed;
    if (!all) listed_.resize(mostListed);
    for (const auto& each : listed_) addRow(each);
    found_->setCurrentRow(0);
    if (listed_.empty()) said_->setText(tr("Nothing holds these letters."));
    else
        said_->setText(all ? tr("%n found. Enter shows what is chosen.", nullptr, static_cast<int>(listed_.size()))
                           : tr("More than %n; type more letters.", nullptr, static_cast<int>(mostListed)));
}

void FindDialog::addRow(const Findable& found) {
    const QString line = found.details.isEmpty() ? tr("%1: %2").arg(found.kind, found.words)
                                                 : tr("%1: %2 \u2013 %3").arg(found.kind, found.words, found.details);
    (new QListWidgetItem(line, found_))->setToolTip(plainTip(line));
}

// What is shown may need the window, which this dialog lies over: so it is closed first.
void FindDialog::show(int row) {
    if (row < 0 || row >= static_cast<int>(listed_.size())) return;
    const auto act = listed_[static_cast<std::size_t>(row)].show;
    accept();
    act();
}

bool FindDialog::eventFilter(QObject* watched, QEvent* event) {
    if (isForTheList(*event)) return QApplication::sendEvent(found_, event);
    if (event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: show(found_->currentRow()); return true;
    default: return QDialog::eventFilter(watched, event);
    }
}

} // namespace winterlarder::desk
