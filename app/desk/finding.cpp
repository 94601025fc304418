// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/case_of.h"
#include "book/colony_history.h"
#include "desk/banner.h"
#include "desk/colony_view.h"
#include "desk/find_dialog.h"
#include "desk/main_window.h"
#include "dialogs/help_window.h"
#include "fields/place_field.h"
#include "forms/record_list.h"
#include "guide/guide_link.h"
#include "models/record_rows.h"
#include "models/words.h"
#include "pages/place_page.h"
#include "pages/story_page.h"
#include "pages/yard_view.h"
#include "text/place_words.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPointer>
#include <QTabWidget>

#include <utility>

//! What can be found from anywhere in the window, and how it is shown.
namespace winterlarder::desk {

namespace {

constexpr std::size_t mostPlaces = 12;

QString asText(const std::string& words) { return QString::fromStdString(words); }

//! Everything a book holds in words.
struct ReadToFind {
    std::vector<book::Yard> yards;
    std::vector<book::ColonyHistory> colonies;
};

Outcome<ReadToFind> readToFind(book::Book& book) {
    ReadToFind read;
    auto yards = book.all<book::Yard>();
    if (!yards.ok()) return yards.problems();
    read.yards = std::move(yards).value();
    const auto colonies = book.all<book::Colony>();
    if (!colonies.ok()) return colonies.problems();
    for (const auto& colony : *colonies) {
        auto history = book::historyOf(book, colony.id);
        if (!history.ok()) return history.problems();
        read.colonies.push_back(std::move(history).value());
    }
    return read;
}

QString yardName(const std::vector<book::Yard>& yards, book::YardId id) {
    for (const auto& yard : yards)
        if (yard.id == id) return asText(yard.name);
    return {};
}

} // namespace

void MainWindow::find() {
    auto* dialog = new FindDialog(this);
    dialog->offer(findableReference());
    dialog->alsoAsk([this](const QString& typed) { return findablePlaces(typed); });
    dialog->open();
    if (!book_.isOpen()) return;
    book_.ask(
        dialog, [](book::Book& book) { return readTogether(book, [&] { return readToFind(book); }); },
        [this, dialog](const Outcome<ReadToFind>& read) {
            if (!read.ok()) return tell(read.problems());
            std::vector<Findable> all;
            for (const auto& yard : read->yards) addFindable(all, yard);
            for (const auto& colony : read->colonies)
                addFindable(all, colony,
                            yardName(read->yards,
                                     book::yardOn(colony.colony, colony.moves, yard_.asOf().value_or(book_.today()))));
            dialog->offer(std::move(all));
        });
}

void MainWindow::addFindable(std::vector<Findable>& all, const book::Yard& yard) {
    const auto show = [this, id = yard.id] {
        yard_.showYard(id);
        choose({});
        yardView_->showPage(YardPage::Place);
    };
    all.push_back({tr("yard"), asText(yard.name), {}, show});
    for (const auto& note : {yard.forageNotes, yard.note})
        if (!note.empty()) all.push_back({tr("note of the yard"), asText(note), asText(yard.name), show});
}

void MainWindow::addFindable(std::vector<Findable>& all, const book::ColonyHistory& colony, const QString& yard) {
    const auto id = colony.colony.id;
    const auto yardId = book::yardOn(colony.colony, colony.moves, yard_.asOf().value_or(book_.today()));
    const QString name = asText(colony.colony.name);
    all.push_back({tr("colony"), name, yard, [=, this] { showFound(yardId, id, name, {}); }});
    if (!colony.colony.note.empty())
        all.push_back({tr("note of the colony"), asText(colony.colony.note), name,
                       [=, this] { showFound(yardId, id, name, {}); }});
    for (const auto& row : recordRows(colony))
        all.push_back({row.what, row.details, tr("%1, %2").arg(name, words::dateWithYear(row.date)),
                       [=, this, entry = FoundEntry{row.kind, row.id}] { showFound(yardId, id, name, entry); }});
}

std::vector<Findable> MainWindow::findableReference() {
    std::vector<Findable> all;
    for (const auto page : text::allGuidePages)
        all.push_back({tr("guide"), text::guideTitle(page), {}, [this, page] { openGuide(this, &yard_, page); }});
    if (!reference_) return all;
    for (const auto& station : reference_->stations)
        all.push_back({tr("climate station"), asText(station.place),
                       tr("%1, %2").arg(asText(station.country), words::height(station.elevationM)),
                       [this, name = asText(station.place)] { showPlace(name); }});
    for (const auto& source : reference_->sources)
        all.push_back({tr("source"), asText(source.citation), {}, [this, citation = asText(source.citation)] {
                           showSources(citation);
                       }});
    return all;
}

std::vector<Findable> MainWindow::findablePlaces(const QString& typed) {
    std::vector<Findable> all;
    const auto& places = book_.places();
    if (!places) return all;
    for (const auto& found : places->find(typed.toStdString(), mostPlaces))
        all.push_back({tr("place"), text::foundName(found, *places), words::height(found.place->heightM),
                       [this, name = asText(places->fullName(*found.place))] { showPlace(name); }});
    return all;
}

// The colony may be of another yard, and its records are read once it is looked at.
void MainWindow::showFound(book::YardId yard, ColonyId colony, const QString& name, std::optional<FoundEntry> entry) {
    if (!yard_.shownYard() || yard_.shownYard()->id != yard) yard_.showYard(yard);
    onceSettled([=, this] {
        if (!yard_.find(colony))
            return banner_->showBriefly(
                tr("%1 is not among the living colonies of the day asked about. Choose an earlier day to see it.")
                    .arg(name));
        choose(colony);
        if (!entry) return;
        colonyView_->showPage(ColonyPage::Story);
        colonyView_->story()->which()->setCurrentIndex(0);
        onceSettled([=, this] { colonyView_->story()->records()->choose(entry->kind, entry->id); });
    });
}

// At once and not as an event of its own: the window would seem settled before it.
void MainWindow::onceSettled(const std::function<void()>& act) {
    if (!yard_.busy()) return act();
    whenNextSettled(act);
}

void MainWindow::whenNextSettled(const std::function<void()>& act) {
    connect(&yard_, &Yard::settledDown, this, act, Qt::SingleShotConnection);
}

// It is looked for in the yard's own field: only the keeper says that the yard lies there.
void MainWindow::showPlace(const QString& name) {
    if (!yard_.shownYard()) {
        start_->place()->search()->setFocus();
        start_->place()->lookFor(name);
        return;
    }
    choose({});
    yardView_->showPage(YardPage::Place);
    yardView_->place()->refresh();
    yardView_->place()->place()->lookFor(name);
}

void MainWindow::showSources(const QString& lookFor) {
    if (!reference_) return;
    if (!sources_) sources_ = new HelpWindow(this, tr("Sources"));
    text::ExplainedSection section{tr("Where the numbers come from"), {}};
    for (const auto& source : reference_->sources) {
        QStringList files;
        for (const auto& file : source.usedBy) files << asText(file);
        section.rows.push_back({asText(source.citation), tr("used in: %1").arg(files.join(tr(", ")))});
    }
    sources_->searchLine()->setText(lookFor);
    sources_->show({section});
}

} // namespace winterlarder::desk
