// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/settings_dialog.h"

#include "app/window_desk.h"
#include "book/backups.h"
#include "climate/site.h"
#include "dialogs/backups_dialog.h"
#include "fields/quantity_field.h"
#include "models/words.h"
#include "theme/colours.h"

#include <QCheckBox>
#include <QComboBox>
#include <QTimer>

//! What can be set, and that it holds at once.
namespace winterlarder::desk::settings_test {

using invented::colony;

class Settings : public invented::WindowDesk {
protected:
    ~Settings() override {
        settings::chooseUnits({});
        words::useUnits(UnitSystem::Metric);
        settings::chooseColours(ColourScheme::AsSystem);
        settings::chooseNotices(NoticeWish::HalfAMinute);
        settings::chooseLanguage({});
        settings::chooseTextSize(usualTextSize);
    }
    SettingsDialog* opened() {
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        QTest::keyClick(&window, Qt::Key_Comma, Qt::ControlModifier);
        auto* dialog = window.findChild<SettingsDialog*>();
        EXPECT_NE(dialog, nullptr);
        return dialog;
    }
    static void choose(QComboBox* choice, const QVariant& value) {
        const int at = choice->findData(value);
        ASSERT_GE(at, 0);
        choice->setCurrentIndex(at);
        emit choice->activated(at);
    }
    static std::string stationOf(const char* country) {
        for (const auto& station : invented::shipped()->stations)
            if (climate::countryCodeOf(station.id) == country) return station.id;
        return {};
    }
};

TEST_F(Settings, EachIsExplained) {
    answerSlowly();
    open({colony("Apple")});
    auto* dialog = opened();
    for (auto* field :
         std::initializer_list<QWidget*>{dialog->units(), dialog->language(), dialog->colours(), dialog->textSize(),
                                         dialog->notices(), dialog->risk(), dialog->reserve(), dialog->learn()})
        EXPECT_GT(field->accessibleDescription().size(), 40) << field->accessibleName().toStdString();
    const auto labels = dialog->findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->text().contains(QStringLiteral("Test orchard"));
    })) << "whose wishes they are";
}

TEST_F(Settings, UnitsAreThePlacesUntilOthersAreChosen) {
    answerSlowly();
    auto record = colony("Apple");
    record.site.where = stationOf("US");
    open({record});
    EXPECT_EQ(words::style().numbers.system, UnitSystem::UnitedStates);
    auto* dialog = opened();
    EXPECT_EQ(dialog->units()->currentIndex(), 0);
    choose(dialog->units(), static_cast<int>(UnitSystem::Imperial));
    EXPECT_EQ(words::style().numbers.system, UnitSystem::Imperial);
    EXPECT_EQ(settings::chosenUnits(), UnitSystem::Imperial);
    choose(dialog->units(), -1);
    EXPECT_EQ(words::style().numbers.system, UnitSystem::UnitedStates);
    EXPECT_EQ(settings::chosenUnits(), std::nullopt);
    auto yard = *window.yard()->shownYard();
    yard.units = UnitSystem::Metric;
    window.yard()->writeYard(yard);
    settle();
    EXPECT_EQ(words::style().numbers.system, UnitSystem::Metric) << "said of the yard itself";
}

TEST_F(Settings, ColoursAndLettersChangeAtOnce) {
    answerSlowly();
    open({colony("Apple")});
    auto* dialog = opened();
    choose(dialog->colours(), static_cast<int>(ColourScheme::Dark));
    EXPECT_TRUE(isDark(window.palette()));
    choose(dialog->colours(), static_cast<int>(ColourScheme::Light));
    EXPECT_FALSE(isDark(window.palette()));
    QLabel* sentence = nullptr;
    for (auto* label : window.colonyView()->findChildren<QLabel*>())
        if (label->accessibleDescription() == QStringLiteral("Answer")) sentence = label;
    ASSERT_NE(sentence, nullptr);
    const double letters = QApplication::font().pointSizeF(), sentence1 = sentence->font().pointSizeF();
    choose(dialog->textSize(), 150);
    EXPECT_NEAR(QApplication::font().pointSizeF(), 1.5 * letters, 0.01);
    EXPECT_NEAR(sentence->font().pointSizeF(), 1.5 * sentence1, 0.01) << "a size of its own grows too";
    choose(dialog->textSize(), usualTextSize);
    EXPECT_NEAR(QApplication::font().pointSizeF(), letters, 0.01);
    EXPECT_NEAR(sentence->font().pointSizeF(), sentence1, 0.01);
}

TEST_F(Settings, NoticesStayAsLongAsWished) {
    answerSlowly();
    open({colony("Apple")});
    auto* dialog = opened();
    window.banner()->showBriefly(QStringLiteral("done"));
    EXPECT_TRUE(window.banner()->passing()->isActive());
    EXPECT_EQ(window.banner()->passing()->interval(), 30'000);
    choose(dialog->notices(), static_cast<int>(NoticeWish::TwoMinutes));
    EXPECT_EQ(window.banner()->passing()->interval(), 120'000);
    choose(dialog->notices(), static_cast<int>(NoticeWish::UntilPutAway));
    window.banner()->showBriefly(QStringLiteral("done"));
    EXPECT_FALSE(window.banner()->passing()->isActive());
    EXPECT_EQ(settings::notices(), NoticeWish::UntilPutAway);
}

TEST_F(Settings, RiskReserveAndLearningAreTheYardsAndCanBeUndone) {
    answerSlowly();
    open({colony("Apple")});
    auto* dialog = opened();
    const auto enter = [this](QuantityField* field, const char* text) {
        type(field, text);
        QTest::keyClick(field, Qt::Key_Return);
        settle();
    };
    enter(dialog->risk(), "120");
    EXPECT_FALSE(dialog->risk()->fault().isEmpty());
    EXPECT_EQ(window.yard()->shownYard()->wish.shortRisk, std::nullopt) << "nothing impossible is written";
    enter(dialog->risk(), "8");
    EXPECT_NEAR(window.yard()->shownYard()->wish.shortRisk.value_or(0), 0.08, 1e-12);
    enter(dialog->reserve(), "4.5 kg");
    EXPECT_NEAR(window.yard()->shownYard()->wish.reserve.value_or(Mass(0)).value(), 4.5, 1e-12);
    const bool learned = window.yard()->shownYard()->learn;
    dialog->learn()->click();
    settle();
    EXPECT_NE(window.yard()->shownYard()->learn, learned);
    undo();
    EXPECT_EQ(window.yard()->shownYard()->learn, learned);
    EXPECT_EQ(dialog->learn()->isChecked(), learned) << "the dialog says what holds";
}

TEST_F(Settings, SayWhereBackupsLieAndShowThem) {
    answerSlowly();
    open({colony("Apple")});
    auto* dialog = opened();
    EXPECT_EQ(dialog->backups()->text().toStdString(), book::backupFolderOf(file().toStdString()).string());
    button(dialog, "Backups\u2026")->click();
    EXPECT_NE(window.findChild<BackupsDialog*>(), nullptr);
}

TEST_F(Settings, ALanguageIsOneThereAreWordsOf) {
    auto* dialog = opened();
    EXPECT_EQ(dialog->risk(), nullptr) << "no yard, no wishes of it";
    choose(dialog->language(), QStringLiteral("en"));
    EXPECT_EQ(settings::language(), QStringLiteral("en"));
    EXPECT_EQ(dialog->language()->findData(QStringLiteral("xx")), -1);
    choose(dialog->language(), QString());
    EXPECT_TRUE(settings::language().isEmpty());
}

} // namespace winterlarder::desk::settings_test
