// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"

#include <QMetaType>

namespace winterlarder::desk {

//! Makes the types that signals carry known to Qt.
inline void registerQtTypes() {
    qRegisterMetaType<ColonyId>("winterlarder::desk::ColonyId");
    qRegisterMetaType<AnsweredPointer>("winterlarder::desk::AnsweredPointer");
    qRegisterMetaType<Problems>("winterlarder::Problems");
    qRegisterMetaType<BookChange>("winterlarder::desk::BookChange");
}

} // namespace winterlarder::desk
