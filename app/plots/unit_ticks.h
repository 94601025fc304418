// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <qcustomplot.h>

namespace winterlarder::desk {

//! Shows an axis in the units chosen for the window: its coordinates stay in kg, g or degC, its ticks stand at round numbers of the
//! unit shown, which its label names. Tested: tests/app/unit_ticks_test.cpp.
void showStores(QCPAxis& axis);     //!< coordinates in kg: "stores, kg", or "stores, lb"
void showFoodOfADay(QCPAxis& axis); //!< coordinates in g: "eaten, g a day", or "eaten, oz a day"
void showAir(QCPAxis& axis);        //!< coordinates in degC: "air, \u00b0C", or "air, \u00b0F"

} // namespace winterlarder::desk
