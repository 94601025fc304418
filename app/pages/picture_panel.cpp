// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/picture_panel.h"

#include "dialogs/documents.h"
#include "models/plain_tip.h"
#include "models/words.h"
#include "theme/flow_layout.h"

#include <QApplication>
#include <QBoxLayout>
#include <QClipboard>
#include <QFileDialog>
#include <QLocale>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

PicturePanel::PicturePanel(QWidget* parent) : Card(parent) {
    plot_ = new WinterPlot(this);
    caption_ = quietLabel(this);
    caption_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    offerLabel_ = quietLabel(this, Lines::One);
    offerLabel_->setText(tr("Show:"));
    keep_ = new QToolButton(this);
    keep_->setText(tr("Save picture"));
    keep_->setAccessibleName(tr("Save the picture or its numbers"));
    keep_->setProperty("chip", true);
    keep_->setPopupMode(QToolButton::InstantPopup);
    auto* menu = new QMenu(keep_);
    menu->addAction(tr("&Save picture\u2026"), this, &PicturePanel::saveAs);
    menu->addAction(tr("&Copy numbers"), this, &PicturePanel::copyNumbers);
    keep_->setMenu(menu);

    whole_ = new QPushButton(tr("Whole winter"), this);
    whole_->setProperty("chip", true);
    whole_->setToolTip(tr("Shows all days again (0)"));
    whole_->hide();
    connect(whole_, &QPushButton::clicked, plot_, &WinterPlot::seeWholeWinter);
    more_ = addDaysButton(QStringLiteral("\u2212"), tr("Show more days (-)"), &WinterPlot::seeMoreDays);
    fewer_ = addDaysButton(QStringLiteral("+"), tr("Show fewer days (+)"), &WinterPlot::seeFewerDays);

    auto* controls = new QWidget(this);
    chipRow_ = new FlowLayout(controls, 6, 4);
    for (QWidget* each : std::initializer_list<QWidget*>{whole_, more_, fewer_, offerLabel_, keep_})
        chipRow_->addWidget(each);
    below_ = new QBoxLayout(QBoxLayout::LeftToRight);
    below_->setContentsMargins(10, 0, 8, 6);
    below_->setSpacing(6);
    below_->addWidget(caption_, 1);
    below_->addWidget(controls);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 0);
    layout->setSpacing(0);
    layout->addWidget(plot_, 1);
    layout->addLayout(below_);
    connect(plot_, &WinterPlot::dayRead, this,
            [this](const QString& text) { caption_->setText(text.isEmpty() ? caption() : text); });
    connect(plot_, &WinterPlot::seenChanged, this, &PicturePanel::showSeen);
}

QPushButton* PicturePanel::addDaysButton(const QString& sign, const QString& name, void (WinterPlot::*see)()) {
    auto* button = new QPushButton(sign, this);
    button->setProperty("chip", true);
    button->setToolTip(plainTip(name));
    button->setAccessibleName(name);
    button->setAutoRepeat(true);
    connect(button, &QPushButton::clicked, plot_, see);
    return button;
}

void PicturePanel::showSeen() {
    if (whole_->hasFocus() && !plot_->seen()) plot_->setFocus();
    whole_->setVisible(plot_->seen().has_value());
    caption_->setText(caption());
}

QPushButton* PicturePanel::chip(advice::OptionKind kind) const {
    const auto found = chips_.find(kind);
    return found == chips_.end() ? nullptr : found->second;
}

QString PicturePanel::caption() const {
    if (!trial_.isEmpty()) return trial_;
    if (!shown_ || shown_->picture.empty()) return tr("No winter can be simulated from what is known.");
    const auto& picture = shown_->picture;
    const QString winters = QLocale().toString(picture.winters);
    const auto seen = plot_->seen();
    const QString reserve = words::wholeKilograms(Mass(picture.reserveKg));
    if (!seen)
        return tr("Twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %2.")
            .arg(winters, reserve);
    const auto dateAt = [&](double place) {
        return words::date(picture.winter.date(
            std::clamp(SeasonDay{static_cast<int>(std::lround(place))}, firstSeasonDay, lastSeasonDay)));
    };
    return tr("%2 to %3: twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %4.")
        .arg(winters, dateAt(seen->first), dateAt(seen->last), reserve);
}

void PicturePanel::show(const ColonyEntry& colony) {
    // While an answer is made the old picture is greyed, never shown as if it were the new one.
    plot_->setEnabled(!colony.pending);
    if (!colony.answered || colony.pending || !colony.problems.empty()) {
        if (!colony.answered || !colony.problems.empty() || colony_ != colony.id) plot_->show(nullptr);
        caption_->setText(colony.problems.empty() ? tr("Simulating the winters\u2026") : QString());
        colony_ = colony.id;
        return;
    }
    if (colony_ != colony.id) {
        wanted_ = {advice::OptionKind::Leave};
        plot_->seeWholeWinter();
    }
    colony_ = colony.id;
    shown_ = colony.answered;
    trial_.clear();
    offer(shown_->answer.advice);
    showOwn();
}

void PicturePanel::showOwn() {
    plot_->setVisible(!shown_->picture.empty()); // axes without a winter would say nothing
    plot_->useWording(words::styleOf(shown_->question).wording);
    plot_->showOptions(wanted_);
    plot_->show(std::shared_ptr<const WinterPicture>(shown_, &shown_->picture));
    caption_->setText(caption());
    makeRoomForWords();
}

void PicturePanel::tryOut(const std::shared_ptr<const WinterPicture>& picture, const QString& caption) {
    if (!shown_) return;
    const bool tried = picture != nullptr;
    trial_ = tried ? caption : QString();
    for (auto& [kind, button] : chips_) button->setEnabled(!tried);
    if (!tried) return showOwn();
    std::set<advice::OptionKind> all;
    for (const auto& option : picture->options) all.insert(option.kind);
    plot_->setVisible(true);
    plot_->useWording(words::styleOf(shown_->question).wording);
    plot_->showOptions(all);
    plot_->show(picture);
    caption_->setText(trial_);
}

void PicturePanel::offer(const advice::Advice& advice) {
    // Shown and hidden only where that changes: each time the whole window is laid out.
    const auto offers = [&](advice::OptionKind kind) {
        return std::any_of(advice.options.begin(), advice.options.end(),
                           [kind](const auto& option) { return option.kind == kind; });
    };
    for (auto& [kind, button] : chips_)
        if (!offers(kind)) button->hide();
    const auto told = words::styleOf(shown_->question);
    for (const auto& option : advice.options) {
        auto*& button = chips_[option.kind];
        if (!button) {
            button = new QPushButton(this);
            button->setProperty("chip", true);
            button->setCheckable(true);
            connect(button, &QPushButton::clicked, this, &PicturePanel::layOver);
            chipRow_->insert(chipRow_->count() - 1, button); // before the button that keeps the picture
        }
        button->setText(words::option(option.kind, told));
        button->setToolTip(plainTip(words::optionWithAmount(option, told)));
        button->setAccessibleName(tr("Show: %1").arg(words::optionWithAmount(option, told)));
        button->setChecked(wanted_.contains(option.kind));
        button->show();
    }
    orderTabs();
    offerLabel_->setVisible(!advice.options.empty());
    for (QWidget* each : std::initializer_list<QWidget*>{keep_, more_, fewer_})
        each->setEnabled(!advice.options.empty());
}

// Made last, the options would be reached last.
void PicturePanel::orderTabs() {
    QWidget* before = plot_;
    for (int place = 0; place < chipRow_->count(); ++place) {
        auto* next = chipRow_->itemAt(place)->widget();
        if (next == offerLabel_) continue;
        setTabOrder(before, next);
        before = next;
    }
}

// The longest words that are read out have room, so that nothing moves while the hand goes over the days.
void PicturePanel::makeRoomForWords() {
    const int wide = below_->direction() == QBoxLayout::LeftToRight ? width() / 2 : width();
    const QString longest = shown_ && !shown_->picture.empty() ? plot_->readout(shown_->picture.first) : QString();
    const auto metrics = caption_->fontMetrics();
    const int tall =
        metrics.boundingRect(QRect(0, 0, std::max(100, wide - 40), 10000), Qt::TextWordWrap, longest).height();
    caption_->setMinimumHeight(std::max(2 * metrics.height(), tall) + 2);
    updateGeometry();
}

void PicturePanel::resizeEvent(QResizeEvent* event) {
    Card::resizeEvent(event);
    const bool beside = width() >= 2 * chipRow_->sizeHint().width() + 40;
    below_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    makeRoomForWords();
}

// What goes over several lines has them.
QSize PicturePanel::minimumSizeHint() const {
    const QMargins edge = contentsMargins();
    const int least = layout()->totalMinimumSize().width();
    const int inside = std::max(width(), least) - edge.left() - edge.right();
    return {least, layout()->minimumHeightForWidth(inside) + edge.top() + edge.bottom()};
}

void PicturePanel::layOver() {
    std::set<advice::OptionKind> chosen;
    for (const auto& [kind, button] : chips_)
        if (button->isVisibleTo(this) && button->isChecked()) chosen.insert(kind);
    if (chosen.empty()) {
        chosen.insert(advice::OptionKind::Leave);
        if (auto* leave = chip(advice::OptionKind::Leave)) leave->setChecked(true);
    }
    wanted_ = chosen;
    plot_->showOptions(wanted_);
    makeRoomForWords();
}

void PicturePanel::saveAs() {
    if (!shown_ || shown_->picture.empty()) return;
    const QString name = QString::fromStdString(shown_->record.colony.value_or("winter"));
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save picture"), inDocuments(name + QStringLiteral(".png")), tr("Pictures (*.png *.svg *.pdf)"));
    if (path.isEmpty()) return;
    const auto picture = std::shared_ptr<const WinterPicture>(shown_, &shown_->picture);
    if (!savePaperPicture(picture, wanted_, words::styleOf(shown_->question).wording,
                          tr("%1. %2").arg(name, words::answerSentence(*shown_)), path, plot_->seen()))
        warnPlainly(this, tr("Not saved"),
                    tr("The picture could not be written to %1. Choose another folder.").arg(path));
}

void PicturePanel::copyNumbers() { QApplication::clipboard()->setText(plot_->numbers()); }

} // namespace winterlarder::desk
