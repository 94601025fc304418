// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QKeySequence>
#include <QStringList>

#include <vector>

namespace winterlarder::desk {

//! Keys of a part of the window and what they do there. Each part that hears keys names them beside where it hears them; the window of
//! keys shows them. Tested: tests/app/help_test.cpp, which presses every one.
struct NamedKeys {
    std::vector<QKeySequence> keys; //!< any of them
    QString what;
};

//! The keys as the system writes them: "Space", "Left, Right".
inline QString keyNames(const NamedKeys& named) {
    QStringList each;
    for (const auto& key : named.keys) each << key.toString(QKeySequence::NativeText);
    if (named.keys.size() > 4) return each.front() + QStringLiteral(" \u2026 ") + each.back(); // digits
    return each.join(QStringLiteral(", "));
}

} // namespace winterlarder::desk
