// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_pattern.h"
#include "fields/fields.h"
#include "models/comb_typing.h"
#include "models/plain_tip.h"
#include "models/problem_words.h"
#include "photograph/photograph_view.h"
#include "photograph/photograph_window.h"
#include "theme/card.h"
#include "theme/flow_layout.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QScreen>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTabBar>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int tabPadding = 18; // px beside a label
constexpr int readoutLines = 2;
constexpr NewestWork::Key reading = 1;

// As many lines as may be said there, so that other words do not move what is beside them.
void keepRoom(QLabel* label, int lines) {
    label->setMinimumHeight(lines * label->fontMetrics().lineSpacing());
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
}

std::optional<CombField> fieldOf(hive::TracedKind kind) {
    switch (kind) {
    case hive::TracedKind::Capped: return CombField::Capped;
    case hive::TracedKind::Open: return CombField::Open;
    case hive::TracedKind::Brood: return CombField::Brood;
    case hive::TracedKind::BeeBread: return CombField::BeeBread;
    case hive::TracedKind::Comb: break;
    }
    return CombField::Built;
}

// The chosen label is bold; each has room for that, so that choosing another moves nothing and cuts nothing off.
class Tabs : public QTabBar {
public:
    using QTabBar::QTabBar;

protected:
    QSize tabSizeHint(int index) const override {
        QSize size = QTabBar::tabSizeHint(index);
        QFont bold = font();
        bold.setBold(true);
        const QString words = tabText(index).remove(QLatin1Char('&'));
        const int room = QFontMetrics(bold).horizontalAdvance(words) + 2 * tabPadding;
        size.setWidth(std::max(size.width(), room));
        return size;
    }
    QSize minimumTabSizeHint(int index) const override { return tabSizeHint(index); }
};

QTabBar* tabs(QWidget* parent, const QString& name, const QStringList& labels) {
    auto* bar = new Tabs(parent);
    bar->setAccessibleName(name);
    bar->setExpanding(false);
    bar->setDrawBase(false);
    bar->setUsesScrollButtons(false);
    for (const auto& label : labels) bar->addTab(label);
    return bar;
}

} // namespace

PhotographWindow::PhotographWindow(const DrawnComb& comb, QWidget* parent) : QDialog(parent), comb_(comb) {
    setWindowTitle(tr("Measure on a photograph: %1").arg(comb.name));
    for (auto& each : history_.faces) each.markedBy = usualMarks(comb.format.outline);
    view_ = new PhotographView(this);
    hint_ = quietLabel(this);
    hint_->setAccessibleDescription(tr("What to do"));
    hint_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(buildHead());
    layout->addWidget(hint_);
    layout->addWidget(buildTools());
    layout->addWidget(view_, 1);
    layout->addLayout(buildFoot());
    connectView();
    resize(QSize(960, 760).boundedTo(screen()->availableSize() * 0.95));
    showPicture();
    showUndo();
    open_->setFocus();
}

QLayout* PhotographWindow::buildHead() {
    facesBar_ = tabs(this, tr("Face of the comb"), {tr("One &face"), tr("The ot&her face")});
    steps_ = tabs(this, tr("Step"), {tr("&1 Mark the comb"), tr("&2 Trace the zones")});
    open_ = new QPushButton(tr("&Open picture\u2026"), this);
    open_->setAutoDefault(false);
    connect(open_, &QPushButton::clicked, this, &PhotographWindow::askForPicture);
    connect(facesBar_, &QTabBar::currentChanged, this, &PhotographWindow::showFace);
    connect(steps_, &QTabBar::currentChanged, this,
            [this](int step) { showStep(step == 1 ? Step::Trace : Step::Mark); });
    auto* head = new QHBoxLayout;
    head->addWidget(facesBar_);
    head->addWidget(open_);
    head->addStretch(1);
    head->addWidget(steps_);
    return head;
}

QWidget* PhotographWindow::buildTools() {
    tools_ = new QStackedWidget(this);
    tools_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    auto* marks = new QWidget(tools_);
    markedBy_ = new QComboBox(marks);
    nameChoice(markedBy_, tr("What is marked"));
    markedBy_->addItem(tr("four corners"), static_cast<int>(MarkedBy::Corners));
    if (usualMarks(comb_.format.outline) == MarkedBy::Hanging)
        markedBy_->addItem(tr("bar ends, sides and lowest point"), static_cast<int>(MarkedBy::Hanging));
    connect(markedBy_, &QComboBox::activated, this, [this] {
        if (face().picture.isNull()) return;
        keep();
        auto remade = facePictured(face().path, face().picture, comb_.format.outline,
                                   static_cast<MarkedBy>(markedBy_->currentData().toInt()));
        remade.tracings = face().tracings;
        face() = remade;
        showPicture();
    });
    auto* label = quietLabel(marks, Lines::One);
    label->setText(tr("marked are"));
    label->setBuddy(markedBy_);
    auto* row = new QHBoxLayout(marks);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(label);
    row->addWidget(markedBy_);
    row->addStretch(1);
    auto* kinds = new QWidget(tools_);
    kinds->setLayout(buildKinds());
    tools_->addWidget(marks);
    tools_->addWidget(kinds);
    return tools_;
}

QLayout* PhotographWindow::buildKinds() {
    kinds_ = new QButtonGroup(this);
    auto* row = new FlowLayout(nullptr, 6);
    for (const auto kind : {hive::TracedKind::Capped, hive::TracedKind::Open, hive::TracedKind::Brood,
                            hive::TracedKind::BeeBread, hive::TracedKind::Comb}) {
        const auto letter = letterOf(*fieldOf(kind));
        auto* button = new QPushButton(tr("%1 (%2)", "a zone and its key").arg(nameOf(kind), letter), tools_);
        button->setCheckable(true);
        button->setAutoDefault(false);
        button->setProperty("chip", true);
        const auto zone = zoneOf(*fieldOf(kind));
        if (zone) {
            QPixmap swatch(16, 16);
            QPainter(&swatch).fillRect(swatch.rect(), patternOf(zone, coloursOf(*this), 1));
            button->setIcon(QIcon(swatch));
        }
        kinds_->addButton(button, static_cast<int>(kind));
        row->addWidget(button);
    }
    kinds_->button(static_cast<int>(kind_))->setChecked(true);
    connect(kinds_, &QButtonGroup::idClicked, this,
            [this](int kind) { pickByHand(static_cast<hive::TracedKind>(kind)); });
    auto* another = new QPushButton(tr("&Another patch"), tools_);
    another->setAutoDefault(false);
    another->setToolTip(
        tr("A zone in two places is traced as two patches; its key pressed again goes from one to the other"));
    connect(another, &QPushButton::clicked, this, [this] {
        beginCurve();
        view_->setFocus();
    });
    row->addWidget(another);
    return row;
}

QLayout* PhotographWindow::buildFoot() {
    readout_ = quietLabel(this);
    readout_->setAccessibleDescription(tr("What was measured"));
    keepRoom(readout_, readoutLines);
    auto* foot = new QVBoxLayout;
    foot->addWidget(readout_);
    foot->addLayout(buildButtons());
    return foot;
}

QLayout* PhotographWindow::buildButtons() {
    undoButton_ = new QPushButton(tr("&Undo"), this);
    redoButton_ = new QPushButton(tr("&Redo"), this);
    auto* closer = new QPushButton(tr("&Closer"), this);
    auto* farther = new QPushButton(tr("Farth&er"), this);
    auto* whole = new QPushButton(tr("&Whole picture"), this);
    connect(undoButton_, &QPushButton::clicked, this, &PhotographWindow::undo);
    connect(redoButton_, &QPushButton::clicked, this, &PhotographWindow::redo);
    connect(closer, &QPushButton::clicked, view_, [this] { view_->zoomAtChosen(PhotographView::zoomStep); });
    connect(farther, &QPushButton::clicked, view_, [this] { view_->zoomAtChosen(1 / PhotographView::zoomStep); });
    connect(whole, &QPushButton::clicked, view_, &PhotographView::fit);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    take_ = buttons->addButton(tr("&Take these shares"), QDialogButtonBox::AcceptRole);
    take_->setAutoDefault(false);
    take_->setProperty("accent", true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* row = new QHBoxLayout;
    for (auto* button : {undoButton_, redoButton_, closer, farther, whole}) {
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    row->addStretch(1);
    row->addWidget(buttons);
    return row;
}

void PhotographWindow::connectView() {
    connect(view_, &PhotographView::pointMoved, this, &PhotographWindow::movePoint);
    connect(view_, &PhotographView::pointNudged, this, &PhotographWindow::nudgePoint);
    connect(view_, &PhotographView::pointAdded, this, &PhotographWindow::addPoint);
    connect(view_, &PhotographView::pointAddedAfter, this, &PhotographWindow::addPointAfter);
    connect(view_, &PhotographView::pointRemoved, this, &PhotographWindow::removePoint);
}

void PhotographWindow::askForPicture() {
    const QString pictures = QStandardPaths::writableLocation(QStandardPaths::PicturesLocation);
    const QString folder = !face().path.isEmpty()        ? face().path
                           : QFileInfo::exists(pictures) ? pictures
                                                         : QDir::homePath();
    const QString path = QFileDialog::getOpenFileName(this, tr("A photograph of the comb"), folder,
                                                      tr("Pictures (*.jpg *.jpeg *.png *.webp *.tif *.tiff)"));
    if (!path.isEmpty()) openPicture(path);
}

void PhotographWindow::offerPictures(const QStringList& paths) {
    if (paths.isEmpty()) return;
    auto* menu = new QMenu(open_);
    for (const auto& path : paths) {
        const QString name = QFileInfo(path).fileName();
        menu->addAction(name, this, [this, path] { openPicture(path); })->setToolTip(plainTip(name));
    }
    menu->addSeparator();
    menu->addAction(tr("Another picture\u2026"), this, &PhotographWindow::askForPicture);
    open_->setMenu(menu);
    disconnect(open_, &QPushButton::clicked, this, nullptr); // else it asks once more when the menu is closed
}

void PhotographWindow::openPicture(const QString& path) {
    struct Read {
        std::optional<QImage> picture;
        QString fault;
    };
    say(tr("Opening %1\u2026").arg(QFileInfo(path).fileName()), false);
    work_.ask(
        reading, NewestWork::Turn::First, this,
        [path](const std::stop_token& stop) {
            Read read;
            read.picture = readUpright(path, read.fault, stop);
            return read;
        },
        [this, path, face = shownFace_](const Outcome<Read>& read) {
            if (!read.ok()) say(problemWords(read.problems()), true);
            else if (!read->picture) say(read->fault, true);
            else takePicture(face, path, *read->picture);
        });
}

void PhotographWindow::takePicture(int face, const QString& path, const QImage& picture) {
    keep();
    auto& into = history_.faces[static_cast<std::size_t>(face)];
    into = facePictured(path, picture, comb_.format.outline, into.markedBy);
    if (face != shownFace_) return;
    curve_.reset();
    step_ = Step::Mark;
    showPicture();
    view_->setFocus();
}

} // namespace winterlarder::desk
