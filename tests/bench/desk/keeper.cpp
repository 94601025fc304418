// SPDX-License-Identifier: GPL-3.0-or-later
#include "keeper.h"

#include <QAbstractScrollArea>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>
#include <QWheelEvent>

namespace winterlarder::bench {

namespace {

constexpr int frame = 16; // ms
constexpr int betweenLetters = 90;
constexpr int afterAClick = 600;

} // namespace

void Keeper::key(Qt::Key key, Qt::KeyboardModifiers with, int pauseAfter) {
    auto* to = QApplication::focusWidget() ? QApplication::focusWidget() : &window_;
    application_.act([&] { QTest::keyClick(to, key, with); });
    pause(pauseAfter);
}

void Keeper::keys(Qt::Key key, int times, int pauseAfter) {
    for (int time = 0; time < times; ++time) this->key(key, {}, pauseAfter);
}

void Keeper::type(const QString& text) {
    for (const QChar letter : text) {
        application_.act([&] { QTest::keyClicks(QApplication::focusWidget(), QString(letter)); });
        pause(betweenLetters);
    }
}

void Keeper::click(QWidget* on) { clickAt(on, on->rect().center()); }

void Keeper::clickAt(QWidget* on, QPoint at) {
    application_.act([&] { QTest::mouseClick(on, Qt::LeftButton, {}, at); });
    pause(afterAClick);
}

void Keeper::clickTab(QTabWidget* pages, int page) {
    clickAt(pages->tabBar(), pages->tabBar()->tabRect(page).center());
}

void Keeper::focus(QWidget* on) {
    application_.act([on] { on->setFocus(); });
    pause(frame);
}

void Keeper::move(QWidget* over, QPoint from, QPoint to, int milliseconds, bool held) {
    const int places = std::max(2, milliseconds / frame);
    if (held) application_.act([&] { QTest::mousePress(over, Qt::LeftButton, {}, from); });
    for (int place = 1; place <= places; ++place) {
        application_.act([&] { QTest::mouseMove(over, from + (to - from) * place / places); });
        pause(frame);
    }
    if (held) application_.act([&] { QTest::mouseRelease(over, Qt::LeftButton, {}, to); });
    pause(afterAClick);
}

void Keeper::turnWheel(QAbstractScrollArea* over, int notches) {
    auto* on = over->viewport();
    const QPointF at = on->rect().center();
    for (int notch = 0; notch < std::abs(notches); ++notch) {
        application_.act([&] {
            QWheelEvent event(at, on->mapToGlobal(at), {}, {0, notches > 0 ? -120 : 120}, Qt::NoButton, Qt::NoModifier,
                              Qt::NoScrollPhase, false);
            QCoreApplication::sendEvent(on, &event);
        });
        pause(60);
    }
}

} // namespace winterlarder::bench
