// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

//! System calls of the program under test that meet what a test wants them to meet, at the moment it wants it.
namespace winterlarder::book::support {

//! While it lives, the next call of flock finds that `work` was done just before it: once, between opening and locking a file.
class BeforeNextLock {
public:
    explicit BeforeNextLock(std::function<void()> work);
    ~BeforeNextLock();
    BeforeNextLock(const BeforeNextLock&) = delete;
    BeforeNextLock& operator=(const BeforeNextLock&) = delete;
};

//! While it lives, nothing can be written with pwrite: no room is left. (SQLite writes otherwise: failing_disk.h.)
class NoRoomLeft {
public:
    NoRoomLeft();
    ~NoRoomLeft();
    NoRoomLeft(const NoRoomLeft&) = delete;
    NoRoomLeft& operator=(const NoRoomLeft&) = delete;
};

} // namespace winterlarder::book::support
