// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/version.h"
#include "combs/comb_drawing.h"
#include "desk/main_window.h"
#include "dialogs/help_window.h"
#include "fields/day_field.h"
#include "forms/record_list.h"
#include "guide/guide_link.h"
#include "models/words.h"
#include "photograph/photograph_view.h"
#include "plots/winter_plot.h"

#include <QApplication>
#include <QMenuBar>
#include <QMessageBox>

namespace winterlarder::desk {

namespace {

QString plainWords(QString action) { return action.remove(QLatin1Char('&')).remove(QChar(0x2026)); }

// A menu's commands that have keys; menus within it too.
void addKeysOf(const QMenu& menu, text::ExplainedSection& section) {
    for (const auto* action : menu.actions()) {
        if (action->menu()) addKeysOf(*action->menu(), section);
        QStringList keys;
        for (const auto& key : action->shortcuts()) keys << key.toString(QKeySequence::NativeText);
        if (!keys.isEmpty())
            section.rows.push_back(
                {keys.join(QStringLiteral(", ")),
                 plainWords(action->text()).section(QLatin1Char(':'), 0, 0)}); // "Undo" of what is no matter here
    }
}

text::ExplainedSection sectionOf(const QString& title, const std::vector<NamedKeys>& keys) {
    text::ExplainedSection section{title, {}};
    for (const auto& each : keys) section.rows.push_back({keyNames(each), words::worded(each.what)});
    return section;
}

} // namespace

void MainWindow::buildHelpMenu() {
    auto* menu = menuBar()->addMenu(tr("&Help"));
    menu->addAction(tr("&Judging stores"), QKeySequence(Qt::Key_F1), this,
                    [this] { openGuide(this, &yard_, guidePageOf(QApplication::focusWidget())); });
    menu->addAction(tr("Words &used here"), QKeySequence(Qt::CTRL | Qt::Key_F1), this, &MainWindow::showWords);
    menu->addAction(tr("&Keys"), QKeySequence(Qt::SHIFT | Qt::Key_F1), this, &MainWindow::showKeys);
    menu->addAction(tr("&Sources"), this, [this] { showSources({}); });
    menu->addAction(tr("&Why this answer?"), QKeySequence(Qt::Key_F2), this,
                    [this] { explain(model_->colonyAt(list_->currentIndex().row())); });
    menu->addSeparator();
    menu->addAction(tr("&About Winterlarder"), this, [this] {
        QMessageBox::about(
            this, tr("About Winterlarder"),
            tr("<h3>Winterlarder %1</h3><p>Will what is in the hive last until the first reliable forage?</p>"
               "<p>Where disease or medicines are concerned, the bee inspector, the vet and local law come first.</p>"
               "<p>Places are from the GeoNames geographical database, CC BY 4.0.</p>"
               "<p>Free software under the GNU General Public License, version 3 or later.</p>")
                .arg(QString::fromStdString(answer::versionInWords())));
    });
}

void MainWindow::showWords() {
    if (!words_) words_ = new HelpWindow(this, tr("Words used here"));
    words_->show(text::glossary(words::style()));
}

void MainWindow::showKeys() {
    if (!keys_) keys_ = new HelpWindow(this, tr("Keys"));
    std::vector<text::ExplainedSection> sections;
    for (const auto* top : menuBar()->actions()) {
        sections.push_back({tr("Menu \u201c%1\u201d").arg(plainWords(top->text())), {}});
        addKeysOf(*top->menu(), sections.back());
    }
    sections.push_back(sectionOf(words::worded(tr("On the %{combs} of the hive")), CombDrawing::namedKeys()));
    sections.push_back(sectionOf(tr("On the winter picture"), WinterPlot::namedKeys()));
    sections.push_back(sectionOf(tr("In a field for a day"), DayField::namedKeys()));
    sections.push_back(sectionOf(tr("In a list of what was written down"), RecordList::namedKeys()));
    sections.push_back(sectionOf(tr("On a photograph"), PhotographView::namedKeys()));
    keys_->show(std::move(sections));
}

} // namespace winterlarder::desk
