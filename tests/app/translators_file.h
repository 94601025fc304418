// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <set>
#include <string>
#include <utility>

//! Every text of the window as it is written down for translators.
namespace winterlarder::desk {

using Message = std::pair<std::string, std::string>; // context, text

struct TranslatorsFile {
    std::set<Message> messages;
    std::set<Message> plural;
};

inline std::string inside(const QString& text, const char* name) {
    const QString open = QLatin1Char('<') + QLatin1String(name) + QLatin1Char('>'),
                  close = QStringLiteral("</") + QLatin1String(name) + QLatin1Char('>');
    const auto from = text.indexOf(open);
    if (from < 0) return {};
    QString found = text.mid(from + open.size(), text.indexOf(close, from) - from - open.size());
    return found.replace(QLatin1String("&lt;"), QLatin1String("<"))
        .replace(QLatin1String("&gt;"), QLatin1String(">"))
        .replace(QLatin1String("&quot;"), QLatin1String("\""))
        .replace(QLatin1String("&apos;"), QLatin1String("'"))
        .replace(QLatin1String("&amp;"), QLatin1String("&"))
        .toStdString();
}

inline TranslatorsFile readFile(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    TranslatorsFile read;
    for (const auto& context : QString::fromUtf8(file.readAll()).split(QStringLiteral("<context>")).mid(1)) {
        const auto name = inside(context, "name");
        for (const auto& message : context.split(QStringLiteral("<message")).mid(1)) {
            const Message said{name, inside(message, "source")};
            read.messages.insert(said);
            if (message.startsWith(QStringLiteral(" numerus=\"yes\""))) read.plural.insert(said);
        }
    }
    return read;
}

//! What translators get to see, gathered anew from the source, and what the gathering complains of.
struct Gathered {
    TranslatorsFile file;
    QString complaints;
};

inline const Gathered& gathered() {
    static const Gathered made = [] {
        const QTemporaryDir folder;
        const QString all = folder.filePath(QStringLiteral("all.ts"));
        QProcess lupdate;
        lupdate.setProcessChannelMode(QProcess::MergedChannels);
        lupdate.start(QStringLiteral(LUPDATE),
                      {QStringLiteral("-no-obsolete"), QStringLiteral("-locations"), QStringLiteral("none"),
                       QStringLiteral(SOURCE_FOLDER "/app"), QStringLiteral("-ts"), all});
        EXPECT_TRUE(lupdate.waitForFinished(60000)) << LUPDATE;
        EXPECT_EQ(lupdate.exitCode(), 0);
        return Gathered{readFile(all), QString::fromUtf8(lupdate.readAll())};
    }();
    return made;
}

} // namespace winterlarder::desk
