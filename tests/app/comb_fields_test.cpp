// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/hanging.h"
#include "combs/comb_fields.h"
#include "combs/comb_quick_form.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace winterlarder::desk {

class Fields : public testing::Test {
protected:
    Fields() {
        fields.show(drawnCombs({invented::comb(0.5, 0.1, 0, 0)}, {hanging::frame()}, 0.65, hanging::spreads()).front(),
                    false);
        QObject::connect(&fields, &CombFields::combEdited, &fields,
                         [this](const book::CombRecord& comb) { wishes.push_back(comb); });
    }
    CombFields fields;
    std::vector<book::CombRecord> wishes;
};

TEST_F(Fields, AShareIsTyped) {
    auto* capped = fields.share(Zone::Capped);
    capped->selectAll();
    QTest::keyClicks(capped, QStringLiteral("95"));
    QTest::keyClick(capped, Qt::Key_Return);
    ASSERT_EQ(wishes.size(), 1U);
    EXPECT_NEAR(shareOf(wishes[0], Zone::Capped), 0.95, 1e-9);
    EXPECT_NEAR(shareOf(wishes[0], Zone::Open), 0.05, 1e-9) << "open nectar gave way";
}

TEST_F(Fields, HowItWasSeenIsChosen) {
    auto* seen = fields.seen();
    seen->setCurrentIndex(seen->findData(static_cast<int>(Seen::ThroughWindow)));
    emit seen->activated(seen->currentIndex());
    ASSERT_EQ(wishes.size(), 1U);
    EXPECT_TRUE(wishes[0].throughWindow);
    EXPECT_EQ(wishes[0].facesSeen, 1);
}

TEST_F(Fields, ShowingIsNoWish) {
    fields.show(drawnCombs({invented::comb(0.2, 0, 0.4, 0)}, {hanging::frame()}, 0.65, hanging::spreads()).front(),
                true);
    EXPECT_TRUE(wishes.empty());
    EXPECT_EQ(fields.share(Zone::Brood)->value(), 40);
    fields.show(std::nullopt, true);
    EXPECT_FALSE(fields.isEnabled());
}

TEST(CombQuickForm, SaysHowSureACountAndALookAreByTheTables) {
    const auto said = [](const ReferenceData& reference) {
        CombQuickForm form;
        form.useLimits(reference);
        QString all;
        for (const auto* label : form.findChildren<QLabel*>()) all += label->text();
        return all;
    };
    const auto shipped = said(*invented::shipped());
    EXPECT_TRUE(shipped.contains(QStringLiteral("about 20 %"))) << shipped.toStdString();
    EXPECT_TRUE(shipped.contains(QStringLiteral("to 15 %"))) << shipped.toStdString();
    auto other = *invented::shipped();
    other.constants.quickCountSd = 0.3;
    other.constants.combAreaSd = 0.4;
    other.constants.combFillSd = 0.3;
    EXPECT_TRUE(said(other).contains(QStringLiteral("about 30 %"))) << said(other).toStdString();
    EXPECT_TRUE(said(other).contains(QStringLiteral("to 50 %"))) << said(other).toStdString();
}

TEST(CombQuickForm, ACountIsTyped) {
    CombQuickForm form;
    form.show({5, 2, 0.9});
    QSignalSpy counted(&form, &CombQuickForm::counted);
    form.full()->selectAll();
    QTest::keyClicks(form.full(), QStringLiteral("6"));
    QTest::keyClick(form.full(), Qt::Key_Return);
    ASSERT_EQ(counted.size(), 1);
    const auto count = counted[0][0].value<book::QuickCountRecord>();
    EXPECT_EQ(count.fullOfStores, 6);
    EXPECT_EQ(count.half, 2);
    EXPECT_NEAR(count.cappedShare, 0.9, 1e-9);
}

} // namespace winterlarder::desk
