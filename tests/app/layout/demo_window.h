// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/window_desk.h"
#include "desk/yard_pane.h"
#include "pages/yard_view.h"

#include <QFile>
#include <QFontInfo>
#include <QTabWidget>

namespace winterlarder::desk::layout {

//! The whole window on a copy of the demo yard, in a font that is the same wherever fonts-dejavu-core is installed.
class DemoWindow : public invented::WindowDesk {
protected:
    DemoWindow() : before_(QApplication::font()) {
        QFont font(QStringLiteral("DejaVu Sans"));
        font.setPointSizeF(9);
        QApplication::setFont(font);
    }
    ~DemoWindow() override { QApplication::setFont(before_); }

    void SetUp() override {
        ASSERT_EQ(QFontInfo(QApplication::font()).family(), QStringLiteral("DejaVu Sans"));
        ASSERT_TRUE(QFile::copy(QStringLiteral(BUILD_FOLDER "/demo/orchard.larder"), file()));
        ASSERT_TRUE(QFile::setPermissions(file(), QFile::ReadOwner | QFile::WriteOwner));
        answerReally();
        openFile();
    }
    void size(QSize wanted) {
        window.resize(wanted);
        rest();
    }
    //! Until all is laid out and drawn.
    void rest() {
        for (int i = 0; i < 4; ++i) {
            QTest::qWait(1);
            QApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
        }
        window.grab();
    }
    void lookAt(const char* name) {
        for (const auto& colony : window.yard()->colonies())
            if (colony.record.colony == name) window.choose(colony.id);
        settle();
        rest();
        ASSERT_EQ(entry().record.colony, name);
    }
    //! Calls back on each page of the colony looked at, or of the yard.
    template <class Visit> void throughPages(QTabWidget* pages, const Visit& visit) {
        for (int page = 0; page < pages->count(); ++page) {
            pages->setCurrentIndex(page);
            rest();
            visit(pages->tabText(page).remove(QLatin1Char('&')));
        }
    }
    template <class Visit> void throughWindow(const Visit& visit) {
        for (const char* name : {"Russet", "Gravenstein"}) {
            lookAt(name);
            throughPages(window.colonyView()->pages(),
                         [&](const QString& page) { visit(QStringLiteral("%1, %2").arg(QLatin1String(name), page)); });
        }
        window.choose({});
        rest();
        throughPages(window.yardView()->pages(), [&](const QString& page) { visit(QStringLiteral("yard, ") + page); });
    }

private:
    QFont before_;
};

} // namespace winterlarder::desk::layout
