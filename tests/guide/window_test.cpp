// SPDX-License-Identifier: GPL-3.0-or-later
// The guide in the window: how it is reached, and that nothing of it is cut off.
#include "app/every_form.h"
#include "app/window_desk.h"
#include "combs/comb_drawing.h"
#include "fields/fields.h"
#include "guide/guide_html.h"
#include "guide/guide_link.h"
#include "guide/guide_window.h"
#include "pages/comb_entry.h"
#include "pages/look_page.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QListWidget>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTabWidget>

#include <algorithm>
#include <map>

namespace winterlarder::desk {

using invented::colony;
using text::GuidePage;

class GuideInTheWindow : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerSlowly();
        open({colony("Apple"), colony("Pear")});
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    static GuideWindow* guideOver(QWidget* top) {
        auto* guide = top->findChild<GuideWindow*>();
        return guide && guide->isVisible() ? guide : nullptr;
    }
    GuidePage pageByF1(QWidget* in) {
        QTest::keyClick(in, Qt::Key_F1);
        auto* guide = guideOver(in->window());
        EXPECT_NE(guide, nullptr);
        if (!guide) return GuidePage::When;
        guide->close();
        return guide->page();
    }
    template <class Part> Part* part() { return window.colonyView()->findChild<Part*>(); }
};

TEST_F(GuideInTheWindow, F1OpensThePageOfTheFieldAtHand) {
    auto* look = part<LookPage>();
    EXPECT_EQ(guidePageOf(look->bees()->kind()), GuidePage::Bees);
    EXPECT_EQ(guidePageOf(look->weighing()->kind()), GuidePage::Weight);
    EXPECT_EQ(guidePageOf(look->share(Zone::Brood)), GuidePage::Cells);
    EXPECT_EQ(guidePageOf(look->drawing()), GuidePage::FullComb);
    look->bees()->kind()->setFocus();
    EXPECT_EQ(pageByF1(&window), GuidePage::Bees);
    look->weighing()->kind()->setFocus();
    EXPECT_EQ(pageByF1(&window), GuidePage::Weight);
    window.yardPane()->setFocus();
    EXPECT_EQ(pageByF1(&window), GuidePage::When);
}

TEST_F(GuideInTheWindow, EveryPageOnWhichSomethingIsJudgedLeadsToItsPage) {
    auto* pages = window.colonyView()->pages();
    const std::vector<std::vector<GuidePage>> wanted{{GuidePage::FullComb, GuidePage::Bees, GuidePage::Weight},
                                                     {GuidePage::Cells},
                                                     {GuidePage::Feeding},
                                                     {GuidePage::Weight, GuidePage::Winter}};
    for (std::size_t page = 0; page < wanted.size(); ++page) {
        pages->setCurrentIndex(static_cast<int>(page));
        QTest::qWait(1);
        std::vector<GuidePage> led;
        for (auto* link : pages->widget(static_cast<int>(page))->findChildren<GuideLink*>()) {
            EXPECT_FALSE(link->toolTip().isEmpty());
            QTest::mouseClick(link, Qt::LeftButton);
            auto* guide = guideOver(&window);
            ASSERT_NE(guide, nullptr);
            EXPECT_EQ(guide->page(), link->page());
            guide->close();
            led.push_back(link->page());
        }
        for (const auto each : wanted[page])
            EXPECT_NE(std::find(led.begin(), led.end(), each), led.end())
                << text::guideId(each) << " from " << pages->tabText(static_cast<int>(page)).toStdString();
    }
}

TEST_F(GuideInTheWindow, EveryFieldOfEveryFormThatIsJudgedHasAPage) {
    const std::map<std::string, GuidePage> judged{
        {"look", GuidePage::Bees},          {"weighing", GuidePage::Weight},  {"feed", GuidePage::Feeding},
        {"harvest", GuidePage::Cells},      {"treatment", GuidePage::Winter}, {"outcome", GuidePage::Winter},
        {"sighting", GuidePage::Winter},    {"hive", GuidePage::FullComb},    {"colony", GuidePage::FullComb},
        {"new colony", GuidePage::FullComb}};
    std::size_t seen = 0;
    for (const auto& [what, ask] : invented::everyForm(window, entry().id)) {
        auto* form = ask();
        QTest::qWait(1);
        const auto page = judged.find(what);
        const auto expected = page == judged.end() ? GuidePage::When : page->second;
        for (auto* field : form->findChildren<QWidget*>())
            if (field->focusPolicy() & Qt::TabFocus)
                EXPECT_EQ(guidePageOf(field), expected) << field->accessibleName().toStdString() << " of " << what;
        EXPECT_EQ(form->findChildren<GuideLink*>().size(), page == judged.end() ? 0 : 1) << what;
        EXPECT_EQ(pageByF1(form), expected) << what;
        seen += page != judged.end();
        form->reject();
        QTest::qWait(1);
    }
    EXPECT_EQ(seen, judged.size());
}

TEST_F(GuideInTheWindow, AllItsPagesAreInReachByKeys) {
    auto* guide = openGuide(&window, window.yard(), GuidePage::When);
    for (const auto page : text::allGuidePages) {
        EXPECT_EQ(guide->page(), page);
        EXPECT_TRUE(guide->browser()->toPlainText().startsWith(text::guideTitle(page)))
            << guide->browser()->toPlainText().left(60).toStdString();
        QTest::keyClick(guide->pages(), Qt::Key_Down);
    }
    QTest::keyClick(guide, Qt::Key_Escape);
    EXPECT_EQ(guideOver(&window), nullptr);
    EXPECT_EQ(openGuide(&window, window.yard(), GuidePage::Bees), guide) << "a window has one guide";
}

TEST_F(GuideInTheWindow, LinksAndDrawingsAreFound) {
    auto* guide = openGuide(&window, window.yard(), GuidePage::When);
    int drawings = 0;
    for (const auto page : text::allGuidePages) {
        guide->show(page);
        auto found =
            QRegularExpression(QStringLiteral("(?:src|href)=\"([^\"]+)\"")).globalMatch(guide->browser()->toHtml());
        while (found.hasNext()) {
            const QString name = found.next().captured(1);
            if (name == QLatin1String(allHivesLink)) continue;
            ASSERT_TRUE(drawingCalled(name)) << name.toStdString();
            const auto image =
                guide->browser()->document()->resource(QTextDocument::ImageResource, QUrl(name)).value<QImage>();
            EXPECT_GT(image.width(), 200) << name.toStdString();
            ++drawings;
        }
    }
    EXPECT_EQ(drawings, static_cast<int>(text::allGuideDrawings.size()));
}

TEST_F(GuideInTheWindow, SpeaksOfTheHivesOfTheYardAndOfAllWhereAsked) {
    auto* guide = openGuide(&window, window.yard(), GuidePage::FullComb);
    const auto shows = [&](const char* words) {
        return guide->browser()->toPlainText().contains(QString::fromUtf8(words));
    };
    EXPECT_TRUE(shows("Langstroth deep"));
    EXPECT_FALSE(shows("Zander"));
    emit guide->browser()->anchorClicked(QUrl(QLatin1String(allHivesLink)));
    EXPECT_TRUE(shows("Zander"));
    EXPECT_TRUE(shows("Only my hives"));
    emit guide->browser()->anchorClicked(QUrl(QLatin1String(allHivesLink)));
    EXPECT_FALSE(shows("Zander"));
}

TEST_F(GuideInTheWindow, NothingIsCutOffWhateverTheSizeOfLetters) {
    for (const double larger : {1.0, 1.5}) {
        auto* guide = new GuideWindow(window.yard(), &window);
        QFont font = window.font();
        font.setPointSizeF(font.pointSizeF() * larger);
        guide->setFont(font);
        for (const QSize size : {QSize(700, 560), QSize(1100, 800)}) {
            guide->resize(size);
            for (const auto page : text::allGuidePages) {
                guide->show(page);
                QTest::qWait(1);
                const auto* bar = guide->browser()->horizontalScrollBar();
                EXPECT_EQ(bar->maximum(), 0) << text::guideId(page) << " at " << larger << ", " << size.width();
                EXPECT_LE(guide->browser()->document()->size().width(), guide->browser()->viewport()->width() + 1);
                const auto* list = guide->pages();
                for (int row = 0; row < list->count(); ++row)
                    EXPECT_LE(list->fontMetrics().horizontalAdvance(list->item(row)->text()), list->viewport()->width())
                        << list->item(row)->text().toStdString() << " at " << larger;
            }
        }
        delete guide;
    }
}

TEST_F(GuideInTheWindow, FollowsTheColours) {
    auto* guide = openGuide(&window, window.yard(), GuidePage::Cells);
    const auto ground = [&] {
        return guide->browser()
            ->document()
            ->resource(QTextDocument::ImageResource, QUrl(drawingName(text::GuideDrawing::CellKinds)))
            .value<QImage>();
    };
    window.useColours(ColourScheme::Light);
    QTest::qWait(2);
    const QImage light = ground();
    window.useColours(ColourScheme::Dark);
    QTest::qWait(2);
    EXPECT_NE(light, ground());
    window.useColours(ColourScheme::Light);
}

} // namespace winterlarder::desk
