// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/asked.h"

#include "app/window_desk.h"
#include "dialogs/grounds_popup.h"
#include "fields/askable_label.h"
#include "models/words.h"
#include "pages/answer_panel.h"
#include "series/use_parts.h"

#include <QSignalSpy>

namespace winterlarder::desk {

using invented::answered;
using invented::colony;
using invented::WindowDesk;
using text::AskedNumber;

TEST(Asked, ASentenceIsTheSameWithAndWithoutItsMarks) {
    const auto answer = answered(colony("A"), {advice::Verdict::Feed, 9, 20});
    const QString marked = words::answerSentence(*answer, text::askably);
    QString said;
    std::vector<AskedNumber> numbers;
    for (const auto& part : text::partsOf(marked)) {
        said += part.text;
        if (part.number) numbers.push_back(*part.number);
    }
    EXPECT_EQ(said, words::answerSentence(*answer));
    EXPECT_NE(marked, said);
    EXPECT_EQ(numbers, (std::vector{AskedNumber::Sugar}));
}

TEST(Asked, PartsKeepTheirOrderAndNothingIsLost) {
    const auto parts =
        text::partsOf(QStringLiteral("about ") + text::askably(AskedNumber::Stores, QStringLiteral("9 kg")) +
                      QStringLiteral(", ") + text::askably(AskedNumber::Need, QStringLiteral("20 kg")));
    ASSERT_EQ(parts.size(), 4U);
    EXPECT_EQ(parts[1].text, QStringLiteral("9 kg"));
    EXPECT_EQ(parts[1].number, AskedNumber::Stores);
    EXPECT_FALSE(parts[2].number);
    EXPECT_TRUE(text::partsOf({}).empty());
    EXPECT_TRUE(text::askably(AskedNumber::Need, {}).isEmpty()) << "what is not there cannot be asked about";
}

TEST(AskableLabel, NamesWithMarkupAreShownAsTheyAre) {
    AskableLabel label;
    label.say(QStringLiteral("<b>Pear & Co</b> ") + text::askably(AskedNumber::Given, QStringLiteral("1 kg")));
    EXPECT_TRUE(label.text().contains(QStringLiteral("&lt;b&gt;Pear &amp; Co&lt;/b&gt;")));
    EXPECT_EQ(label.said(), QStringLiteral("<b>Pear & Co</b> 1 kg"));
    label.say(QStringLiteral("<i>no number</i>"));
    EXPECT_EQ(label.text(), QStringLiteral("<i>no number</i>"));
    EXPECT_EQ(label.textFormat(), Qt::PlainText);
}

TEST(UseParts, AreSummedToFirstForage) {
    const auto answer = invented::demoAnswers().at(0);
    const auto parts = usePartsOf(answer->picture, answer->answer.advice.season);
    ASSERT_TRUE(parts);
    double all = 0;
    const int days = answer->answer.advice.season.forage->day - answer->picture.first;
    for (int day = 0; day < days; ++day) {
        const auto& use = answer->picture.daily[static_cast<std::size_t>(day)];
        all += use.adults + use.broodWarmth + use.broodFood;
    }
    EXPECT_NEAR((parts->adults + parts->broodWarmth + parts->broodFood).value(), all / 1000, 1e-9);
    EXPECT_NEAR((parts->adults + parts->broodWarmth + parts->broodFood).value(),
                answer->answer.advice.use->typical.value(), 0.15 * answer->answer.advice.use->typical.value())
        << "means by cause and the median of the whole tell of the same winters";
    EXPECT_FALSE(usePartsOf({}, answer->answer.advice.season));
}

TEST_F(WindowDesk, AClickOnANumberTellsHowItWasGot) {
    answerReally();
    open({colony("A")});
    auto* sentence = answerLabel();
    ASSERT_NE(sentence, nullptr);
    QSignalSpy asked(sentence, &AskableLabel::numberClicked);
    // Across the sentence, as a pointer would find the first number.
    for (int x = 2; x < sentence->width() && asked.isEmpty(); x += 6)
        QTest::mouseClick(sentence, Qt::LeftButton, {}, QPoint(x, sentence->fontMetrics().height() / 2));
    ASSERT_FALSE(asked.isEmpty()) << sentence->said().toStdString();
    auto* grounds = window.colonyView()->grounds();
    ASSERT_NE(grounds, nullptr);
    EXPECT_TRUE(grounds->isVisible());
    EXPECT_FALSE(grounds->said().isEmpty());
    QTest::keyClick(grounds, Qt::Key_Escape);
    EXPECT_FALSE(grounds->isVisible());
}

TEST_F(WindowDesk, NumbersAreReachedByKeyboard) {
    answerReally();
    open({colony("A")});
    auto* sentence = answerLabel();
    ASSERT_NE(sentence, nullptr);
    EXPECT_TRUE(sentence->focusPolicy() & Qt::TabFocus);
    sentence->setFocus(Qt::TabFocusReason);
    QSignalSpy asked(sentence, &AskableLabel::numberClicked);
    QTest::keyClick(sentence, Qt::Key_Return);
    if (asked.isEmpty()) { // the first Tab goes to the first number
        QTest::keyClick(sentence, Qt::Key_Tab);
        QTest::keyClick(sentence, Qt::Key_Return);
    }
    ASSERT_EQ(asked.size(), 1);
    ASSERT_NE(window.colonyView()->grounds(), nullptr);
    EXPECT_TRUE(window.colonyView()->grounds()->isVisible());
}

} // namespace winterlarder::desk
