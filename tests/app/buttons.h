// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QString>
#include <QWidget>

#include <gtest/gtest.h>

namespace winterlarder::desk {

//! The button in a widget that says these words, its key's sign left out; a failure where there is none.
inline QAbstractButton* button(const QWidget* in, const char* words) {
    for (auto* each : in->findChildren<QAbstractButton*>())
        if (each->text().remove(QLatin1Char('&')) == QString::fromUtf8(words)) return each;
    ADD_FAILURE() << "there is no button " << words;
    return nullptr;
}

} // namespace winterlarder::desk
