// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

//! A disk that fails on demand: an SQLite VFS over the system's, made the default while one of these lives, that lets a chosen write
//! (or truncation, or sync) fail in a chosen way.
namespace winterlarder::book::support {

enum class DiskFailure {
    Error,      //!< the write is not made
    ShortWrite, //!< half of it is made, then it fails
    Full,       //!< no space; nothing more can be written till healed
    Sync,       //!< the write is made, syncing it fails
};

class FailingDisk {
public:
    FailingDisk();
    ~FailingDisk();
    FailingDisk(const FailingDisk&) = delete;
    FailingDisk& operator=(const FailingDisk&) = delete;

    //! From now on the write number `write` (counted from 0) fails, and every later one until heal(): a disk does not get well by itself.
    void failAt(int write, DiskFailure failure);
    void heal();
    //! Writes since failAt or heal.
    int writes() const;
    //! Whether the failure was met.
    bool failed() const;
};

} // namespace winterlarder::book::support
