// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What most tests read first, read once for all of them. No test leans on it: each includes what it uses, and a build with
// -DWINTERLARDER_TOGETHER=OFF does without.
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include "advice/advice.h"
#include "reference/reference.h"
#include "support/require.h"

#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <map>
#include <numbers>
#include <regex>
#include <set>
#include <sstream>
