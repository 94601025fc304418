// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/language.h"

#include "app/translators_file.h"
#include "app/window_desk.h"

#include <QFile>
#include <QProcess>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTranslator>

#include <set>

namespace winterlarder::desk {

namespace {

// Notes every text that is asked for, and has words for none.
class Listener : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* text, const char*, int) const override {
        if (QByteArrayView(context).startsWith("winterlarder") || !QByteArrayView(context).startsWith('Q'))
            heard.insert({context, text});
        return {};
    }
    mutable std::set<Message> heard;
};

} // namespace

TEST(Translations, EveryTextHasAContext) {
    for (const auto& line : gathered().complaints.split(QLatin1Char('\n'))) {
        EXPECT_FALSE(line.contains(QStringLiteral("lacks Q_OBJECT")))
            << line.toStdString() << ": a bare tr() outside a class; see app/text/contexts.h";
        EXPECT_FALSE(line.contains(QStringLiteral("without context"))) << line.toStdString();
    }
    EXPECT_GT(gathered().file.messages.size(), 1000U);
}

TEST(Translations, EnglishHasBothFormsOfEveryPlural) {
    const QString path = QStringLiteral(SOURCE_FOLDER "/resources/translations/winterlarder_en.ts");
    const auto english = readFile(path);
    for (const auto& [context, text] : gathered().file.plural)
        EXPECT_TRUE(english.plural.contains({context, text}))
            << context << ": " << text << " (lupdate -pluralonly app -ts resources/translations/winterlarder_en.ts)";
    for (const auto& [context, text] : english.plural)
        EXPECT_TRUE(gathered().file.plural.contains({context, text})) << context << ": " << text << " is said no more";
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString whole = QString::fromUtf8(file.readAll());
    EXPECT_FALSE(whole.contains(QStringLiteral("unfinished")));
    EXPECT_FALSE(whole.contains(QStringLiteral("<numerusform></numerusform>")));
}

TEST(Translations, OneIsSaidAsOne) {
    EXPECT_EQ(QCoreApplication::translate("winterlarder::desk::YardListModel", "%n colonies", nullptr, 1).toStdString(),
              "One colony");
    EXPECT_EQ(QCoreApplication::translate("winterlarder::desk::YardListModel", "%n colonies", nullptr, 4).toStdString(),
              "4 colonies");
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
        if (!said.second.empty())
            EXPECT_TRUE(gathered().file.messages.contains(said)) << said.first << ": " << said.second;
}

} // namespace winterlarder::desk
