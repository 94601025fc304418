// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/comb_typing.h"
#include "widgets/card.h"
#include "widgets/comb_pattern.h"
#include "widgets/fields.h"
#include "widgets/flow_layout.h"
#include "widgets/photograph_view.h"
#include "widgets/photograph_window.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QStandardPaths>
#include <QTabBar>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

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

QTabBar* tabs(QWidget* parent, const QString& name, const QStringList& labels) {
    auto* bar = new QTabBar(parent);
    bar->setAccessibleName(name);
    bar->setExpanding(false);
    bar->setDrawBase(false);
    for (const auto& label : labels) bar->addTab(label);
    return bar;
}

} // namespace

PhotographWindow::PhotographWindow(const DrawnComb& comb, QWidget* parent) : QDialog(parent), comb_(comb) {
    setWindowTitle(tr("Measure on a photograph: %1").arg(comb.name));
    for (auto& each : faces_) each.markedBy = usualMarks(comb.format.outline);
    view_ = new PhotographView(this);
    hint_ = quietLabel(this);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(buildHead());
    layout->addWidget(hint_);
    kindsRow_ = new QWidget(this);
    kindsRow_->setLayout(buildKinds());
    layout->addWidget(kindsRow_);
    layout->addWidget(view_, 1);
    layout->addLayout(buildFoot());
    connectView();
    resize(900, 680);
    showPicture();
}

QLayout* PhotographWindow::buildHead() {
    facesBar_ = tabs(this, tr("Face of the comb"), {tr("One face"), tr("The other face")});
    steps_ = tabs(this, tr("Step"), {tr("1 Mark the comb"), tr("2 Trace the zones")});
    markedBy_ = new QComboBox(this);
    nameChoice(markedBy_, tr("What is marked"));
    markedBy_->addItem(tr("four corners"), static_cast<int>(MarkedBy::Corners));
    if (usualMarks(comb_.format.outline) == MarkedBy::Hanging) markedBy_->addItem(tr("bar ends, sides and lowest point"), static_cast<int>(MarkedBy::Hanging));
    open_ = new QPushButton(tr("&Open picture\u2026"), this);
    open_->setAutoDefault(false);
    connect(open_, &QPushButton::clicked, this, &PhotographWindow::askForPicture);
    connect(facesBar_, &QTabBar::currentChanged, this, &PhotographWindow::showFace);
    connect(steps_, &QTabBar::currentChanged, this, [this](int step) { showStep(step == 1 ? Step::Trace : Step::Mark); });
    connect(markedBy_, &QComboBox::activated, this, [this] {
        if (face().picture.isNull()) return;
        keep();
        auto remade = facePictured(face().path, face().picture, comb_.format.outline, static_cast<MarkedBy>(markedBy_->currentData().toInt()));
        remade.tracings = face().tracings;
        face() = remade;
        showPicture();
    });
    auto* head = new QHBoxLayout;
    head->addWidget(facesBar_);
    head->addWidget(open_);
    head->addStretch(1);
    head->addWidget(markedBy_);
    head->addWidget(steps_);
    return head;
}

QLayout* PhotographWindow::buildKinds() {
    kinds_ = new QButtonGroup(this);
    auto* row = new FlowLayout(nullptr, 6);
    for (const auto kind : {hive::TracedKind::Capped, hive::TracedKind::Open, hive::TracedKind::Brood, hive::TracedKind::BeeBread, hive::TracedKind::Comb}) {
        const auto letter = letterOf(*fieldOf(kind));
        auto* button = new QPushButton(tr("%1 (%2)", "a zone and its key").arg(nameOf(kind), letter), kindsRow_);
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
    connect(kinds_, &QButtonGroup::idClicked, this, [this](int kind) { pickKind(static_cast<hive::TracedKind>(kind)); });
    auto* another = new QPushButton(tr("&Another patch"), kindsRow_);
    another->setAutoDefault(false);
    connect(another, &QPushButton::clicked, this, &PhotographWindow::beginCurve);
    row->addWidget(another);
    return row;
}

QLayout* PhotographWindow::buildFoot() {
    readout_ = quietLabel(this);
    readout_->setAccessibleDescription(tr("What was measured"));
    auto* undoButton = new QPushButton(tr("&Undo"), this);
    auto* redoButton = new QPushButton(tr("&Redo"), this);
    for (auto* button : {undoButton, redoButton}) button->setAutoDefault(false);
    connect(undoButton, &QPushButton::clicked, this, &PhotographWindow::undo);
    connect(redoButton, &QPushButton::clicked, this, &PhotographWindow::redo);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    take_ = buttons->addButton(tr("&Take these shares"), QDialogButtonBox::AcceptRole);
    take_->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* row = new QHBoxLayout;
    row->addWidget(undoButton);
    row->addWidget(redoButton);
    row->addStretch(1);
    row->addWidget(buttons);
    auto* foot = new QVBoxLayout;
    foot->addWidget(readout_);
    foot->addLayout(row);
    return foot;
}

void PhotographWindow::connectView() {
    connect(view_, &PhotographView::pointMoved, this, &PhotographWindow::movePoint);
    connect(view_, &PhotographView::pointAdded, this, &PhotographWindow::addPoint);
    connect(view_, &PhotographView::pointRemoved, this, &PhotographWindow::removePoint);
}

void PhotographWindow::askForPicture() {
    const QString folder = face().path.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::PicturesLocation) : face().path;
    const QString path = QFileDialog::getOpenFileName(this, tr("A photograph of the comb"), folder, tr("Pictures (*.jpg *.jpeg *.png *.webp *.tif *.tiff)"));
    if (!path.isEmpty()) openPicture(path);
}

void PhotographWindow::offerPictures(const QStringList& paths) {
    if (paths.isEmpty()) return;
    auto* menu = new QMenu(open_);
    for (const auto& path : paths) menu->addAction(QFileInfo(path).fileName(), this, [this, path] { openPicture(path); });
    menu->addSeparator();
    menu->addAction(tr("Another picture\u2026"), this, &PhotographWindow::askForPicture);
    open_->setMenu(menu);
}

bool PhotographWindow::openPicture(const QString& path) {
    QString fault;
    const auto picture = readUpright(path, fault);
    if (!picture) {
        hint_->setText(fault);
        return false;
    }
    keep();
    face() = facePictured(path, *picture, comb_.format.outline, face().markedBy);
    curve_.reset();
    step_ = Step::Mark;
    showPicture();
    return true;
}

} // namespace winterlarder::desk
