// SPDX-License-Identifier: GPL-3.0-or-later
#include "work/pace.h"

#include <QtGlobal>

#ifdef Q_OS_LINUX
#include <sys/resource.h>
#endif

namespace winterlarder::desk {

void keepPace([[maybe_unused]] Pace pace) {
#ifdef Q_OS_LINUX
    // Here niceness is a thread's own, and 0 means the calling one.
    ::setpriority(PRIO_PROCESS, 0, pace == Pace::Prompt ? 1 : pace == Pace::Steady ? 4 : 8);
#endif
}

} // namespace winterlarder::desk
