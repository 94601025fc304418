// SPDX-License-Identifier: GPL-3.0-or-later
#include "system_calls.h"

#include <cerrno>
#include <sys/file.h>
#include <sys/syscall.h>
#include <unistd.h>
#include <utility>

namespace {

std::function<void()> beforeLock;
bool noRoom = false;

} // namespace

extern "C" int flock(int descriptor, int operation) noexcept {
    if (const auto work = std::exchange(beforeLock, nullptr)) work();
    return static_cast<int>(::syscall(SYS_flock, descriptor, operation));
}

extern "C" ssize_t pwrite(int descriptor, const void* bytes, size_t count, off_t at) {
    if (noRoom) {
        errno = ENOSPC;
        return -1;
    }
    return ::syscall(SYS_pwrite64, descriptor, bytes, count, at);
}

namespace winterlarder::book::support {

BeforeNextLock::BeforeNextLock(std::function<void()> work) { beforeLock = std::move(work); }
BeforeNextLock::~BeforeNextLock() { beforeLock = nullptr; }
NoRoomLeft::NoRoomLeft() { noRoom = true; }
NoRoomLeft::~NoRoomLeft() { noRoom = false; }

} // namespace winterlarder::book::support
