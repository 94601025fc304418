# SPDX-License-Identifier: GPL-3.0-or-later
# cmake -DSOURCE=folder -DOUT=file.cpp -P revision.cmake: writes the revision the sources were checked out at, with a plus where they were
# changed since; nothing where they came without a history. The file is left alone while it stays true.
execute_process(COMMAND git -C ${SOURCE} describe --always --abbrev=12 --exclude=* --dirty=+
  OUTPUT_VARIABLE REVISION OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET RESULT_VARIABLE FAILED)
if(FAILED)
  set(REVISION "")
endif()
file(CONFIGURE OUTPUT ${OUT} CONTENT [[
// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/version.h"

const char* const winterlarder::answer::sourceRevision = "@REVISION@";
]] @ONLY)
