// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace winterlarder::desk {

//! Has a screen reader call the widget a chart. Tested: tests/app/winter_plot_test.cpp.
void speakAsChart(QWidget& widget);

} // namespace winterlarder::desk
