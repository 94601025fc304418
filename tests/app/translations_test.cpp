// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/language.h"

#include "app/window_desk.h"

#include <QFile>
#include <QProcess>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTranslator>

#include <set>

namespace winterlarder::desk {

namespace {

using Message = std::pair<std::string, std::string>; // context, text

struct TranslatorsFile {
    std::set<Message> messages;
    std::set<Message> plural;
};

std::string inside(const QString& text, const char* name) {
    const QString open = QLatin1Char('<') + QLatin1String(name) + QLatin1Char('>'), close = QStringLiteral("</") + QLatin1String(name) + QLatin1Char('>');
    const auto from = text.indexOf(open);
    if (from < 0) return {};
    QString found = text.mid(from + open.size(), text.indexOf(close, from) - from - open.size());
    return found.replace(QLatin1String("&lt;"), QLatin1String("<")).replace(QLatin1String("&gt;"), QLatin1String(">")).replace(QLatin1String("&quot;"), QLatin1String("\""))
        .replace(QLatin1String("&apos;"), QLatin1String("'")).replace(QLatin1String("&amp;"), QLatin1String("&")).toStdString();
}

TranslatorsFile readFile(const QString& path) {
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

// What translators get to see, gathered anew from the source, and what the gathering complains of.
struct Gathered {
    TranslatorsFile file;
    QString complaints;
};

const Gathered& gathered() {
    static const Gathered made = [] {
        const QTemporaryDir folder;
        const QString all = folder.filePath(QStringLiteral("all.ts"));
        QProcess lupdate;
        lupdate.setProcessChannelMode(QProcess::MergedChannels);
        lupdate.start(QStringLiteral(LUPDATE), {QStringLiteral("-no-obsolete"), QStringLiteral("-locations"), QStringLiteral("none"), QStringLiteral(SOURCE_FOLDER "/app"),
                                               QStringLiteral("-ts"), all});
        EXPECT_TRUE(lupdate.waitForFinished(60000)) << LUPDATE;
        EXPECT_EQ(lupdate.exitCode(), 0);
        return Gathered{readFile(all), QString::fromUtf8(lupdate.readAll())};
    }();
    return made;
}

// Notes every text that is asked for, and has words for none.
class Listener : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* text, const char*, int) const override {
        if (QByteArrayView(context).startsWith("winterlarder") || !QByteArrayView(context).startsWith('Q')) heard.insert({context, text});
        return {};
    }
    mutable std::set<Message> heard;
};

} // namespace

TEST(Translations, EveryTextHasAContext) {
    for (const auto& line : gathered().complaints.split(QLatin1Char('\n'))) {
        EXPECT_FALSE(line.contains(QStringLiteral("lacks Q_OBJECT"))) << line.toStdString() << ": a bare tr() outside a class; see app/text/contexts.h";
        EXPECT_FALSE(line.contains(QStringLiteral("without context"))) << line.toStdString();
    }
    EXPECT_GT(gathered().file.messages.size(), 1000U);
}

TEST(Translations, EnglishHasBothFormsOfEveryPlural) {
    const QString path = QStringLiteral(SOURCE_FOLDER "/resources/translations/winterlarder_en.ts");
    const auto english = readFile(path);
    for (const auto& [context, text] : gathered().file.plural)
        EXPECT_TRUE(english.plural.contains({context, text})) << context << ": " << text << " (lupdate -pluralonly app -ts resources/translations/winterlarder_en.ts)";
    for (const auto& [context, text] : english.plural) EXPECT_TRUE(gathered().file.plural.contains({context, text})) << context << ": " << text << " is said no more";
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString whole = QString::fromUtf8(file.readAll());
    EXPECT_FALSE(whole.contains(QStringLiteral("unfinished")));
    EXPECT_FALSE(whole.contains(QStringLiteral("<numerusform></numerusform>")));
}

TEST(Translations, OneIsSaidAsOne) {
    EXPECT_EQ(QCoreApplication::translate("winterlarder::desk::YardListModel", "%n colonies", nullptr, 1).toStdString(), "One colony");
    EXPECT_EQ(QCoreApplication::translate("winterlarder::desk::YardListModel", "%n colonies", nullptr, 4).toStdString(), "4 colonies");
}

class TranslatedWindow : public invented::WindowDesk {};

// What the window asks for is what translators can find: the same words under the same name.
TEST_F(TranslatedWindow, AsksForNothingTranslatorsCannotSee) {
    Listener listener;
    QCoreApplication::installTranslator(&listener);
    answerReally();
    open({invented::colony("Apple"), invented::colony("Pear", 3)});
    auto* pages = window.colonyView()->pages();
    for (int page = 0; page < pages->count(); ++page) {
        pages->setCurrentIndex(page);
        settle();
    }
    window.choose({});
    settle();
    QCoreApplication::removeTranslator(&listener);
    EXPECT_GT(listener.heard.size(), 100U);
    for (const auto& said : listener.heard)
        if (!said.second.empty()) EXPECT_TRUE(gathered().file.messages.contains(said)) << said.first << ": " << said.second;
}

} // namespace winterlarder::desk
