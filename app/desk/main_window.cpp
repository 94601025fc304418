// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/main_window.h"

#include "desk/answering.h"
#include "desk/banner.h"
#include "desk/colony_view.h"
#include "desk/following.h"
#include "desk/letter_keys.h"
#include "desk/undo_keys.h"
#include "desk/wheel_guard.h"
#include "desk/yard_pane.h"
#include "dialogs/why_window.h"
#include "fields/day_field.h"
#include "fields/fields.h"
#include "models/follow_sections.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "pages/yard_delegate.h"
#include "pages/yard_view.h"
#include "text/follow_words.h"
#include "theme/card.h"
#include "theme/colours.h"
#include "theme/icons.h"
#include "work/newest_work.h"

#include <QApplication>
#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QPointer>
#include <QScreen>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

constexpr QSize roomForFrame{16, 48}; // what the desktop draws around a window

} // namespace

MainWindow::MainWindow(Arguments arguments, Scribe scribe)
    : arguments_(std::move(arguments)), book_(std::move(scribe)), yard_(&book_) {
    words::useUnits(settings::chosenUnits().value_or(settings::systemUnits()));
    setWindowTitle(tr("Winterlarder"));
    setWindowIcon(applicationIcon());
    answering_ = new Answering(&yard_, this);
    buildPanes();
    books_ = new BookActions(&book_, &yard_, &temporary_, banner_, arguments_, this);
    buildMenus();
    qApp->installEventFilter(new UndoKeys(this));
    qApp->installEventFilter(new WheelGuard(this));
    qApp->installEventFilter(new LetterKeys(this));
    setAcceptDrops(true);
    connectYard();
    connectBook();
    applyColours();
    resize(QSize(1360, 900).boundedTo(screen()->availableSize() - roomForFrame));
    yard_.showDay(arguments_.day.value_or(book_.today()));
    choose({});
    list_->setFocus();
}

// Widgets and services hold pointers to the book and the yard, which are members: they go first, and tell the window nothing more.
MainWindow::~MainWindow() {
    for (auto* each : findChildren<QObject*>()) each->disconnect(this);
    book_.disconnect(this);
    yard_.disconnect(this);
    std::vector<QPointer<QObject>> held;
    for (auto* each : findChildren<QObject*>(Qt::FindDirectChildrenOnly))
        if (each != layout()) held.emplace_back(each);
    for (const auto& each : held) delete each;
}

void MainWindow::buildPanes() {
    auto* desk = new QWidget(this);
    desk->setObjectName(QStringLiteral("desk"));
    auto* yardPane = buildYardPane(desk); // made in the order it is read, which is the order of the Tab key
    banner_ = new Banner(desk);
    yardView_ = new YardView(&yard_, desk);
    colonyView_ = new ColonyView(&yard_, desk);
    connect(colonyView_, &ColonyView::noticeGiven, this,
            [this](const QString& notice) { banner_->showBriefly(notice); });
    right_ = new QStackedWidget(desk);
    start_ = new StartPage(desk);
    right_->addWidget(start_);
    right_->addWidget(yardView_);
    right_->addWidget(colonyView_);
    auto* framed = new QVBoxLayout;
    framed->setContentsMargins(18, 14, 18, 4); // the foot is below
    framed->addWidget(right_);
    yardPane->standBeside(right_);
    auto* across = new QHBoxLayout;
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(0);
    across->addWidget(yardPane);
    across->addLayout(framed, 1);
    auto* down = new QVBoxLayout(desk);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(banner_);
    down->addLayout(across, 1);
    down->addWidget(banner_->foot());
    setCentralWidget(desk);
}

QWidget* MainWindow::buildYardHead() {
    auto* head = new QWidget(this);
    yards_ = new QComboBox(head);
    nameChoice(yards_, tr("Which yard"));
    yards_->hide();
    day_ = new DayField(head, tr("Day asked about"));
    day_->setForm(tr("d MMMM yyyy"));
    day_->setToolTip(tr("The day asked about: what was written down later does not count yet"));
    day_->setRange(Date::of(1900, 1, 1), Date::of(2200, 12, 31));
    auto* label = quietLabel(head, Lines::One);
    label->setText(tr("as of"));
    label->setBuddy(day_);
    label->setFixedHeight(day_->line()->sizeHint().height()); // beside the day, whatever is said below that
    auto* across = new QHBoxLayout;
    across->addWidget(label, 0, Qt::AlignTop);
    across->addWidget(day_, 1);
    auto* down = new QVBoxLayout(head);
    down->setContentsMargins(16, 2, 12, 2);
    down->addWidget(yards_);
    down->addLayout(across);
    connect(yards_, &QComboBox::activated, this,
            [this](int at) { yard_.showYard({yards_->itemData(at).toLongLong()}); });
    connect(day_, &DayField::valueEntered, &yard_, &Yard::showDay);
    return head;
}

YardPane* MainWindow::buildYardPane(QWidget* desk) {
    auto* pane = new YardPane(desk);
    auto* head = buildYardHead();
    model_ = new YardListModel(&yard_, this);
    list_ = new QListView(pane);
    list_->setModel(model_);
    list_->setItemDelegate(new YardDelegate(list_));
    list_->setAccessibleName(tr("The yard and its colonies"));
    list_->setMouseTracking(true);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setFrameShape(QFrame::NoFrame);
    auto* key = quietLabel(pane);
    key->setText(tr("bar: stores today, fading where unsure\ntick: needed until spring forage starts"));
    key->setContentsMargins(18, 4, 12, 10);
    pane->hold(head, list_, key);
    yardPane_ = pane;
    return pane;
}

void MainWindow::connectYard() {
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &MainWindow::showChosen);
    connect(model_, &QAbstractItemModel::modelReset, this, [this] { choose(colonyView_->colony()); });
    // The same colonies of another book: no row changes, but what is looked at is to be read from that one.
    yard_.onChange(this, {YardChange::Colonies}, [this] { yard_.look(model_->colonyAt(list_->currentIndex().row())); });
    connect(yardView_, &YardView::colonyWanted, this, &MainWindow::newColony);
    connect(start_, &StartPage::finished, this, &MainWindow::beginBook);
    connect(start_, &StartPage::unitsProposed, this, [this](UnitSystem system) {
        if (!book_.isOpen()) showUnits(system); // else the book that stays open is shown as it was
    });
    connect(start_, &StartPage::openAsked, books_, &BookActions::openByHand);
    connect(start_, &StartPage::backAsked, this, &MainWindow::leaveFirstPage);
    connect(start_, &StartPage::demoAsked, books_, &BookActions::openDemo);
    connect(yardView_, &YardView::colonyChosen, this, &MainWindow::choose);
    connect(colonyView_, &ColonyView::whyAsked, this, &MainWindow::explain);
    connect(colonyView_, &ColonyView::wintersWanted, answering_, &Answering::recall);
    yard_.onChange(this, {YardChange::Colonies}, &MainWindow::showHead);
    yard_.onChange(this, {YardChange::Colonies}, &MainWindow::followUnits);
    connect(&yard_, &Yard::unreadable, this, &MainWindow::tell);
    connect(&yard_, &Yard::settledDown, this, &MainWindow::tellIfSettled);
    connect(answering_, &Answering::idleAgain, this, &MainWindow::tellIfSettled);
    connect(answering_, &Answering::failed, this, &MainWindow::tell);
}

void MainWindow::useReference(std::shared_ptr<const ReferenceData> reference) {
    reference_ = std::move(reference);
    book_.useReference(reference_);
    start_->useReference(reference_);
}

void MainWindow::useAdviser(std::shared_ptr<const Adviser> adviser) {
    colonyView_->useAdviser(adviser);
    answering_->useAdviser(std::move(adviser));
}

void MainWindow::followWinters(winter::Sampling sampling, int threads) {
    following_ = new WinterFollower(&yard_, sampling, threads, this);
    learning_ = new Learning(&yard_, sampling, threads, this);
    connect(following_, &WinterFollower::idleAgain, this, &MainWindow::tellIfSettled);
    connect(learning_, &Learning::idleAgain, this, &MainWindow::tellIfSettled);
    connect(following_, &WinterFollower::failed, this, &MainWindow::tell);
    connect(learning_, &Learning::failed, this, &MainWindow::tell);
}

bool MainWindow::settled() const {
    const bool followed = !following_ || (following_->idle() && learning_->idle());
    return books_->idle() && book_.idle() && !yard_.busy() && answering_->idle() && followed &&
           (!calendar_ || calendar_->idle());
}

void MainWindow::tellIfSettled() {
    if (settled()) emit becameSettled();
}

// Which yard, which day, and both in the window's title.
void MainWindow::showHead() {
    const auto day = yard_.asOf();
    if (day) day_->show(*day);
    yards_->clear();
    for (const auto& each : yard_.yards())
        yards_->addItem(QString::fromStdString(each.name), static_cast<qlonglong>(each.id.number));
    if (const auto* shown = yard_.shownYard())
        yards_->setCurrentIndex(yards_->findData(static_cast<qlonglong>(shown->id.number)));
    yards_->setVisible(yards_->count() > 1);
    setWindowTitle(day ? tr("%1, %2 \u2013 Winterlarder").arg(yard_.title(), words::longDate(*day))
                       : tr("Winterlarder"));
}

void MainWindow::choose(ColonyId id) {
    list_->setCurrentIndex(model_->index(model_->rowOf(id)));
    showChosen();
}

void MainWindow::showChosen() {
    const auto id = model_->colonyAt(list_->currentIndex().row());
    yard_.look(id);
    if (beginning_ && book_.isOpen() && !list_->hasFocus()) return;
    beginning_ = false;
    if (!yard_.find(id)) {
        right_->setCurrentWidget(book_.isOpen() ? static_cast<QWidget*>(yardView_) : start_);
        return;
    }
    const bool other = colonyView_->colony() != id;
    colonyView_->show(id);
    right_->setCurrentWidget(colonyView_);
    if (other && !list_->hasFocus()) yardPane_->open(false); // found by another way than the list
}

WhyWindow* MainWindow::whyWindow() {
    if (!why_) why_ = new WhyWindow(this);
    return why_;
}

void MainWindow::explain(ColonyId id) {
    const auto* colony = yard_.find(id);
    if (const auto followed = yard_.leading(id); colony && followed && reference_) {
        const auto& f = *followed->following;
        const auto style = words::styleOf(followed->colony.autumn);
        return whyWindow()->show(QString::fromStdString(colony->record.colony.value_or("")),
                                 text::followHeadline(*followed->colony.question, f, style),
                                 {saidRemarks(followReasons(*followed), *reference_, style),
                                  saidRemarks(f.cautions, *reference_, style),
                                  saidRemarks(f.goodPractice, *reference_, style)});
    }
    if (!colony || !colony->answered || colony->pending || !reference_) return;
    const auto& advice = colony->answered->answer.advice;
    const auto style = words::styleOf(colony->answered->question);
    whyWindow()->show(
        QString::fromStdString(colony->record.colony.value_or("")), words::answerSentence(*colony->answered),
        {saidRemarks(advice.reasons, *reference_, style), saidRemarks(advice.cautions, *reference_, style),
         saidRemarks(advice.goodPractice, *reference_, style)});
}

void MainWindow::tell(const Problems& problems) {
    if (problems.empty()) return;
    openingProblems_.insert(openingProblems_.end(), problems.begin(), problems.end());
    const QString lines = problemWords(problems);
    banner_->showMessage(QStringLiteral("problems"),
                         isOurs(problems) ? lines : tr("Not everything could be opened.\n%1").arg(lines));
}

} // namespace winterlarder::desk
