// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "pages/yard_view.h"

#include <QAbstractButton>
#include <QHeaderView>
#include <QTabWidget>
#include <QTableView>

//! What a button without words does, and what stands in a column, is said where the pointer rests.
namespace winterlarder::desk {

using invented::colony;
using invented::WindowDesk;

namespace {

QString nameOf(const QWidget* widget) {
    return QStringLiteral("%1 in %2")
        .arg(QLatin1String(widget->metaObject()->className()),
             QLatin1String(widget->parentWidget()->metaObject()->className()));
}

void checkButtonsWithoutWords(const QWidget& window) {
    for (const auto* button : window.findChildren<QAbstractButton*>()) {
        if (!button->isVisible() || !button->text().isEmpty()) continue;
        EXPECT_FALSE(button->toolTip().isEmpty()) << nameOf(button).toStdString();
        EXPECT_FALSE(button->accessibleName().isEmpty()) << nameOf(button).toStdString();
    }
}

int checkColumns(const QWidget& window) {
    int found = 0;
    for (const auto* table : window.findChildren<QTableView*>()) {
        if (!table->isVisible() || !table->horizontalHeader()->isVisible()) continue;
        for (int column = 0; column < table->model()->columnCount(); ++column) {
            const auto said = [&](int role) {
                return table->model()->headerData(column, Qt::Horizontal, role).toString();
            };
            if (said(Qt::DisplayRole).isEmpty()) continue;
            ++found;
            EXPECT_GT(said(Qt::ToolTipRole).size(), said(Qt::DisplayRole).size())
                << table->accessibleName().toStdString() << ": " << said(Qt::DisplayRole).toStdString();
        }
    }
    return found;
}

} // namespace

TEST_F(WindowDesk, WhatHasNoWordsIsExplainedWhereThePointerRests) {
    answerSlowly();
    open({colony("Apple"), colony("Pear")});
    int explained = 0;
    const auto walk = [&](QTabWidget* pages) {
        for (int page = 0; page < pages->count(); ++page) {
            pages->setCurrentIndex(page);
            QTest::qWait(1);
            checkButtonsWithoutWords(window);
            explained += checkColumns(window);
        }
    };
    walk(window.colonyView()->pages());
    window.choose({});
    walk(window.yardView()->pages());
    EXPECT_GT(explained, 12) << "the combs, what was written down, and what is to do";
}

} // namespace winterlarder::desk
