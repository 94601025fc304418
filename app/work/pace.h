// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace winterlarder::desk {

//! How much a computing thread gives way where it and others want a core: the interface thread always goes before all
//! of these.
enum class Pace {
    Prompt, //!< somebody waits for it with a hand on a slider
    Steady, //!< answers of the yard
    Slow,   //!< what nobody asked for just now
};

//! The calling thread keeps to this pace from now on, and so do the threads it starts. Does nothing where the system
//! cannot.
void keepPace(Pace pace);

} // namespace winterlarder::desk
