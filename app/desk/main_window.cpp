// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/main_window.h"

#include "desk/colony_view.h"
#include "desk/core_adviser.h"
#include "desk/reckoning.h"
#include "desk/said_remarks.h"
#include "models/words.h"
#include "widgets/card.h"
#include "widgets/colours.h"
#include "widgets/icons.h"
#include "widgets/why_window.h"
#include "widgets/yard_delegate.h"
#include "widgets/yard_view.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace winterlarder::desk {

MainWindow::MainWindow(Arguments arguments) : arguments_(std::move(arguments)) {
    setWindowTitle(tr("Winterlarder"));
    setWindowIcon(applicationIcon());
    buildPanes();
    buildMenus();
    connectYard();
    applyColours();
    resize(1360, 900);
    choose({});
    list_->setFocus();
}

MainWindow::~MainWindow() = default;

void MainWindow::buildPanes() {
    auto* desk = new QWidget(this);
    desk->setObjectName(QStringLiteral("desk"));
    yardView_ = new YardView(&yard_, desk);
    colonyView_ = new ColonyView(&yard_, desk);
    right_ = new QStackedWidget(desk);
    right_->addWidget(yardView_);
    right_->addWidget(colonyView_);
    auto* framed = new QVBoxLayout;
    framed->setContentsMargins(18, 14, 18, 14);
    framed->addWidget(right_);
    auto* across = new QHBoxLayout(desk);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(0);
    across->addWidget(buildYardPane());
    across->addLayout(framed, 1);
    setCentralWidget(desk);
}

QWidget* MainWindow::buildYardPane() {
    auto* pane = new QFrame(this);
    pane->setObjectName(QStringLiteral("yardPane"));
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
    key->setText(tr("bar: stores today, fading where unsure\ntick: needed until the first forage"));
    key->setContentsMargins(18, 4, 12, 10);
    auto* layout = new QVBoxLayout(pane);
    layout->setContentsMargins(0, 8, 0, 0);
    layout->addWidget(list_, 1);
    layout->addWidget(key);
    pane->setFixedWidth(std::max(290, fontMetrics().averageCharWidth() * 42));
    return pane;
}

void MainWindow::connectYard() {
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &MainWindow::showChosen);
    connect(yardView_, &YardView::colonyChosen, this, &MainWindow::choose);
    connect(colonyView_, &ColonyView::whyAsked, this, &MainWindow::explain);
    connect(&yard_, &Yard::recordChanged, this, [this](ColonyId id) { ask(id, true); });
}

void MainWindow::begin() {
    begun_ = true;
    opener_ = std::jthread([this, arguments = arguments_] {
        auto opened = std::make_shared<Opened>(openAll(arguments));
        QMetaObject::invokeMethod(this, [this, opened] { receive(std::move(*opened)); }, Qt::QueuedConnection);
    });
}

void MainWindow::receive(Opened opened) {
    begun_ = false;
    if (opened.reference && !reference_) {
        reference_ = opened.reference;
        const auto cores = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
        useAdviser(std::make_shared<CoreAdviser>(reference_, deskSampling, cores));
    }
    addColonies(std::move(opened.records));
    tell(opened.problems);
    if (settled()) emit becameSettled();
}

void MainWindow::useAdviser(std::shared_ptr<const Adviser> adviser) {
    adviser_ = std::move(adviser);
    reckoning_ = std::make_unique<Reckoning>(adviser_);
    connect(reckoning_.get(), &Reckoning::answered, this, [this](ColonyId id, const AnsweredPointer& answered) { yard_.takeAnswer(id, answered); });
    connect(reckoning_.get(), &Reckoning::contradicted, this,
            [this](ColonyId id, const book::ColonyCase& record, const Problems& problems) { yard_.takeProblems(id, record, problems); });
    connect(reckoning_.get(), &Reckoning::idleAgain, this, &MainWindow::shareOutWhenIdle);
    for (const auto& colony : yard_.colonies()) ask(colony.id, false);
}

void MainWindow::addColonies(std::vector<book::ColonyCase> records) {
    for (auto& record : records) ask(yard_.add(std::move(record)), false);
    const auto today = yard_.asOf();
    setWindowTitle(today ? tr("%1, %2 \u2013 Winterlarder").arg(yard_.title(), words::longDate(*today)) : tr("Winterlarder"));
}

void MainWindow::ask(ColonyId id, bool first) {
    const auto* colony = yard_.find(id);
    if (reckoning_ && colony && colony->pending) reckoning_->ask(id, yard_.position(id), colony->record, first);
}

// Once every colony has its answer, the yard is looked over as a whole: combs that could go from one to another.
void MainWindow::shareOutWhenIdle() {
    std::vector<ColonyId> ids;
    std::vector<AnsweredPointer> answers;
    for (const auto& colony : yard_.colonies()) {
        if (colony.pending || !colony.answered || !colony.problems.empty()) continue;
        ids.push_back(colony.id);
        answers.push_back(colony.answered);
    }
    sharing_ = true;
    sharer_ = std::jthread([this, ids, answers, adviser = adviser_] {
        auto shared = adviser->shareOut(answers);
        QMetaObject::invokeMethod(this, [this, ids, answers, shared = std::move(shared)] {
            sharing_ = false;
            for (std::size_t i = 0; i < shared.size() && i < ids.size(); ++i)
                if (shared[i] != answers[i]) yard_.takeAnswer(ids[i], shared[i]);
            if (settled()) emit becameSettled();
        }, Qt::QueuedConnection);
    });
}

bool MainWindow::settled() const {
    return !begun_ && !sharing_ && (!reckoning_ || reckoning_->idle());
}

void MainWindow::choose(ColonyId id) {
    list_->setCurrentIndex(model_->index(model_->rowOf(id)));
    showChosen();
}

void MainWindow::showChosen() {
    const auto id = model_->colonyAt(list_->currentIndex().row());
    if (!yard_.find(id)) {
        right_->setCurrentWidget(yardView_);
        return;
    }
    colonyView_->show(id);
    right_->setCurrentWidget(colonyView_);
}

WhyWindow* MainWindow::whyWindow() {
    if (!why_) why_ = new WhyWindow(this);
    return why_;
}

void MainWindow::explain(ColonyId id) {
    const auto* colony = yard_.find(id);
    if (!colony || !colony->answered || colony->pending || !reference_) return;
    const auto& advice = colony->answered->answer.advice;
    whyWindow()->show(QString::fromStdString(colony->record.colony.value_or("")), words::answerSentence(*colony->answered),
                      saidRemarks(advice.reasons, *reference_), saidRemarks(advice.cautions, *reference_));
}

void MainWindow::tell(const Problems& problems) {
    if (problems.empty()) return;
    openingProblems_.insert(openingProblems_.end(), problems.begin(), problems.end());
    if (arguments_.pictures) return;
    QStringList lines;
    for (const auto& problem : problems) lines << QString::fromStdString(describe(problem));
    auto* box = new QMessageBox(QMessageBox::Warning, tr("Not everything could be opened"), lines.join(QLatin1Char('\n')), QMessageBox::Ok, this);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->open();
}

void MainWindow::wishColours(ColourWish wish) {
    colourWish_ = wish;
    applyColours();
}

void MainWindow::applyColours() {
    const bool dark = colourWish_ == ColourWish::Dark || (colourWish_ == ColourWish::AsSystem && isDark(QApplication::palette()));
    const auto& colours = dark ? darkColours() : lightColours();
    applyingColours_ = true;
    wearColours(*this, colours);
    setStyleSheet(styleSheetIn(colours));
    // Under a style sheet a palette does not reach the children by itself.
    const QPalette worn = paletteIn(colours);
    for (auto* child : findChildren<QWidget*>()) child->setPalette(worn);
    applyingColours_ = false;
}

void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::ApplicationPaletteChange && !applyingColours_) applyColours();
}

} // namespace winterlarder::desk
