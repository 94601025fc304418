// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QCustomPlot;

namespace winterlarder::desk {

struct Colours;

//! Takes everything drawn out of a small plot and gives ground, axes and grid the window's colours; without `axes` it is left blank.
void makeFresh(QCustomPlot& plot, const Colours& colours, bool axes);

} // namespace winterlarder::desk
