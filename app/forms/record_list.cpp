// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/record_list.h"

#include "forms/chosen_row.h"
#include "forms/entry_forms.h"
#include "theme/card.h"
#include "theme/flow_layout.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

template <class Entry, class Ask> void openIn(const std::vector<Entry>& entries, std::int64_t id, Ask ask) {
    const auto found =
        std::find_if(entries.begin(), entries.end(), [id](const Entry& entry) { return entry.id.number == id; });
    if (found != entries.end()) ask(*found);
}

bool isNote(const book::Look& look) {
    return look.bees == book::BeesRecord{} && std::holds_alternative<std::monostate>(look.combs);
}

} // namespace

void openRecord(QWidget* parent, Yard* yard, ColonyId colony, book::Kind kind, std::int64_t id) {
    const auto* records = yard->records(colony);
    if (!records || !yard->writable()) return;
    const auto with = [&](auto ask) { return [=](const auto& entry) { ask(parent, yard, entry); }; };
    switch (kind) {
    case book::Kind::Move: return openIn(records->moves, id, with(askForMove));
    case book::Kind::Fate: return openIn(records->fates, id, with(askForFate));
    case book::Kind::Housing: return openIn(records->housings, id, with(askForHive));
    case book::Kind::Look:
        return openIn(records->looks, id, [&](const book::Look& look) {
            isNote(look) ? askForNote(parent, yard, look) : askForLook(parent, yard, look);
        });
    case book::Kind::Weighing: return openIn(records->weighings, id, with(askForWeighing));
    case book::Kind::Feed: return openIn(records->feeds, id, with(askForFeed));
    case book::Kind::Harvest: return openIn(records->harvests, id, with(askForHarvest));
    case book::Kind::Treatment: return openIn(records->treatments, id, with(askForTreatment));
    case book::Kind::WinterOutcome: return openIn(records->outcomes, id, with(askForOutcome));
    case book::Kind::Sighting: return openIn(records->sightings, id, with(askForSighting));
    default: return;
    }
}

std::optional<book::SingleEdit> removalOf(book::Kind kind, std::int64_t id) {
    using namespace book;
    switch (kind) {
    case Kind::Move: return RemoveMove{{id}};
    case Kind::Fate: return RemoveFate{{id}};
    case Kind::Housing: return RemoveHousing{{id}};
    case Kind::Look: return RemoveLook{{id}};
    case Kind::Weighing: return RemoveWeighing{{id}};
    case Kind::Feed: return RemoveFeed{{id}};
    case Kind::Harvest: return RemoveHarvest{{id}};
    case Kind::Treatment: return RemoveTreatment{{id}};
    case Kind::Manipulation: return RemoveManipulation{{id}};
    case Kind::ActedAdvice: return RemoveActedAdvice{{id}};
    case Kind::PlannedVisit: return RemovePlannedVisit{{id}};
    case Kind::WinterOutcome: return RemoveWinterOutcome{{id}};
    case Kind::Sighting: return RemoveSighting{{id}};
    case Kind::Yard:
    case Kind::Colony:
    case Kind::WeatherLog: return std::nullopt;
    }
    return std::nullopt;
}

RecordList::RecordList(QWidget* parent, Yard* yard, const QString& name, std::vector<book::Kind> kinds,
                       const QString& whenEmpty)
    : QWidget(parent), yard_(yard), kinds_(std::move(kinds)), model_(new RecordListModel(this)) {
    table_ = new QTableView(this);
    table_->setModel(model_);
    table_->setAccessibleName(name);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setAlternatingRowColors(true);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->setWordWrap(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table_->installEventFilter(this);
    empty_ = quietLabel(this);
    empty_->setText(whenEmpty);
    empty_->setAlignment(Qt::AlignCenter);
    change_ = new QPushButton(tr("Change\u2026"), this);
    remove_ = new QPushButton(tr("Remove"), this);
    connect(change_, &QPushButton::clicked, this, &RecordList::changeChosen);
    connect(remove_, &QPushButton::clicked, this, &RecordList::removeChosen);
    connect(table_, &QTableView::doubleClicked, this, &RecordList::changeChosen);
    addRow_ = new QWidget(this);
    adds_ = new FlowLayout(addRow_, 6);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(addRow_, 1);
    buttons->addWidget(change_, 0, Qt::AlignBottom);
    buttons->addWidget(remove_, 0, Qt::AlignBottom);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->addWidget(table_, 1);
    down->addWidget(empty_, 1);
    down->addLayout(buttons);
    onChosenRow(table_, this, [this] { fitButtons(); });
    yard_->onColony(this, colony_, {YardChange::History}, &RecordList::refresh);
    refresh();
}

QPushButton* RecordList::addButton(const QString& words, std::function<void()> act) {
    auto* button = new QPushButton(words, addRow_);
    connect(button, &QPushButton::clicked, this, [act = std::move(act)] { act(); });
    adds_->addWidget(button);
    setTabOrder(adding_.empty() ? static_cast<QWidget*>(table_) : adding_.back(), button);
    button->setEnabled(yard_->writable() && yard_->records(colony_));
    adding_.push_back(button);
    return button;
}

void RecordList::show(ColonyId id) {
    colony_ = id;
    refresh();
}

const RecordRow* RecordList::chosen() const {
    const int row = chosenRow(*table_);
    return row >= 0 && row < model_->rowCount() ? &model_->rows()[static_cast<std::size_t>(row)] : nullptr;
}

void RecordList::choose(book::Kind kind, std::int64_t id) {
    for (int row = 0; row < model_->rowCount(); ++row)
        if (const auto& each = model_->rows()[static_cast<std::size_t>(row)]; each.kind == kind && each.id == id)
            table_->setCurrentIndex(model_->index(row, 0));
}

// The entry chosen stays chosen where it is still there.
void RecordList::refresh() {
    std::optional<RecordRow> held;
    if (const auto* row = chosen()) held = *row;
    const auto* records = yard_->records(colony_);
    model_->show(!records         ? std::vector<RecordRow>()
                 : kinds_.empty() ? recordRows(*records)
                                  : recordRows(*records, kinds_));
    if (held) choose(held->kind, held->id);
    const bool any = model_->rowCount() > 0;
    table_->setVisible(any);
    empty_->setVisible(!any);
    change_->setVisible(any);
    remove_->setVisible(any);
    fitButtons();
    for (auto* button : adding_) button->setEnabled(records && yard_->writable());
}

void RecordList::fitButtons() {
    for (auto* button : {change_, remove_}) button->setEnabled(chosen() && yard_->writable());
}

void RecordList::changeChosen() {
    if (const auto* row = chosen()) openRecord(this, yard_, colony_, row->kind, row->id);
}

void RecordList::removeChosen() {
    const auto* row = chosen();
    if (!row || !yard_->writable()) return;
    if (const auto edit = removalOf(row->kind, row->id)) yard_->apply(*edit);
}

std::vector<NamedKeys> RecordList::namedKeys() {
    return {{{Qt::Key_Return, Qt::Key_Enter}, tr("opens the entry")},
            {{Qt::Key_Delete}, tr("takes the entry out of the book; undo brings it back")}};
}

bool RecordList::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) return changeChosen(), true;
        if (key == Qt::Key_Delete) return removeChosen(), true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace winterlarder::desk
