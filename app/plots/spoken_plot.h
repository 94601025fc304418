// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace winterlarder::desk {

//! Has a screen reader call the widget a chart; to be said before its accessible name. Tested: tests/app/winter_plot_test.cpp.
void speakAsChart(QWidget& widget);

} // namespace winterlarder::desk
