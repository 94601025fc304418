// SPDX-License-Identifier: GPL-3.0-or-later
#include "failing_disk.h"

#include <cstring>
#include <sqlite3.h>
#include <stdexcept>

namespace winterlarder::book::support {
namespace {

struct State {
    int writes = 0;
    int failAt = -1;
    bool failed = false;
    DiskFailure failure = DiskFailure::Error;
    sqlite3_vfs vfs{};
    sqlite3_io_methods methods{};
    sqlite3_vfs* system = nullptr;
} state;

//! The system's file lies behind ours in memory.
struct File {
    sqlite3_file base;
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};
File* ours(sqlite3_file* file) { return reinterpret_cast<File*>(file); }
sqlite3_file* real(sqlite3_file* file) { return ours(file)->real(); }

//! True where the operation that comes next must fail.
bool failsNow() {
    const bool fails = state.failAt >= 0 && state.writes >= state.failAt;
    ++state.writes;
    if (fails) state.failed = true;
    return fails;
}

int close(sqlite3_file* file) { return real(file)->pMethods->xClose(real(file)); }
int read(sqlite3_file* file, void* to, int count, sqlite3_int64 at) {
    return real(file)->pMethods->xRead(real(file), to, count, at);
}
int write(sqlite3_file* file, const void* from, int count, sqlite3_int64 at) {
    if (state.failure != DiskFailure::Sync && failsNow()) {
        if (state.failure == DiskFailure::Full) return SQLITE_FULL;
        if (state.failure == DiskFailure::ShortWrite) real(file)->pMethods->xWrite(real(file), from, count / 2, at);
        return SQLITE_IOERR_WRITE;
    }
    return real(file)->pMethods->xWrite(real(file), from, count, at);
}
int truncate(sqlite3_file* file, sqlite3_int64 size) { return real(file)->pMethods->xTruncate(real(file), size); }
int sync(sqlite3_file* file, int flags) {
    if (state.failure == DiskFailure::Sync && failsNow()) return SQLITE_IOERR_FSYNC;
    return real(file)->pMethods->xSync(real(file), flags);
}
int fileSize(sqlite3_file* file, sqlite3_int64* size) { return real(file)->pMethods->xFileSize(real(file), size); }
int lock(sqlite3_file* file, int level) { return real(file)->pMethods->xLock(real(file), level); }
int unlock(sqlite3_file* file, int level) { return real(file)->pMethods->xUnlock(real(file), level); }
int checkReserved(sqlite3_file* file, int* result) {
    return real(file)->pMethods->xCheckReservedLock(real(file), result);
}
int control(sqlite3_file* file, int what, void* argument) {
    return real(file)->pMethods->xFileControl(real(file), what, argument);
}
int sectorSize(sqlite3_file* file) { return real(file)->pMethods->xSectorSize(real(file)); }
int characteristics(sqlite3_file* file) { return real(file)->pMethods->xDeviceCharacteristics(real(file)); }

int open(sqlite3_vfs*, sqlite3_filename name, sqlite3_file* file, int flags, int* outFlags) {
    const int code = state.system->xOpen(state.system, name, real(file), flags, outFlags);
    ours(file)->base.pMethods = real(file)->pMethods ? &state.methods : nullptr;
    return code;
}

} // namespace

FailingDisk::FailingDisk() {
    state = State{};
    state.system = sqlite3_vfs_find("unix");
    if (!state.system) throw std::runtime_error("no system VFS");
    state.methods.iVersion = 1;
    state.methods.xClose = close;
    state.methods.xRead = read;
    state.methods.xWrite = write;
    state.methods.xTruncate = truncate;
    state.methods.xSync = sync;
    state.methods.xFileSize = fileSize;
    state.methods.xLock = lock;
    state.methods.xUnlock = unlock;
    state.methods.xCheckReservedLock = checkReserved;
    state.methods.xFileControl = control;
    state.methods.xSectorSize = sectorSize;
    state.methods.xDeviceCharacteristics = characteristics;
    state.vfs = *state.system;
    state.vfs.zName = "failing";
    state.vfs.pNext = nullptr;
    state.vfs.szOsFile = static_cast<int>(sizeof(File)) + state.system->szOsFile;
    state.vfs.xOpen = open;
    sqlite3_vfs_register(&state.vfs, 1);
}

FailingDisk::~FailingDisk() {
    sqlite3_vfs_unregister(&state.vfs);
    sqlite3_vfs_register(state.system, 1);
}

void FailingDisk::failAt(int write, DiskFailure failure) {
    state.failAt = write;
    state.failure = failure;
    state.writes = 0;
    state.failed = false;
}

void FailingDisk::heal() {
    state.failAt = -1;
    state.writes = 0;
}

int FailingDisk::writes() const { return state.writes; }
bool FailingDisk::failed() const { return state.failed; }

} // namespace winterlarder::book::support
