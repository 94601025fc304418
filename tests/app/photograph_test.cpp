// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/photographed.h"
#include "models/comb_edits.h"

#include <QImageWriter>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <iostream>
#include <random>

namespace winterlarder::desk {

namespace {

using namespace photographed;

double worst(const CombFilling& known, const hive::TracedShares& found) {
    return std::max({std::abs(known.built - found.built), std::abs(known.capped - found.capped),
                     std::abs(known.open - found.open), std::abs(known.brood - found.brood),
                     std::abs(known.beeBread - found.beeBread)});
}

} // namespace

// Rendered combs of known areas, photographed by a camera turned and tilted up to 30 degrees, marked and traced by a hand that is
// 2 px off in the picture and 1 mm off on the comb: shares within 2 points.
TEST(PhotographOfAComb, MarkedByCornersAndTracedWithFewPointsIsWithinTwoPoints) {
    std::mt19937 hand(7);
    double worstOfAll = 0;
    for (const auto& comb : combs()) {
        for (const auto& view : views()) {
            const auto photo = photograph(comb, view);
            auto face = facePictured(QStringLiteral("a.jpg"), photo, comb.outline, MarkedBy::Corners);
            const auto corners = hive::cornersOf(comb.outline);
            for (std::size_t i = 0; i < 4; ++i) face.marks[i] = shaken(view(corners[i]), 2, hand);
            face.tracings = traced(comb, 1, hand);
            const double off = worst(comb.filling, seenThrough(comb.outline, face, view));
            EXPECT_LT(off, 0.02) << comb.name << " turned " << view.turned << ", tilted " << view.tilted;
            worstOfAll = std::max(worstOfAll, off);
        }
    }
    std::cout << "worst share over " << combs().size() * views().size() << " pictures: " << 100 * worstOfAll
              << " points off\n";
}

TEST(PhotographOfAComb, HangingCombsAreMarkedByBarSidesAndLowestPoint) {
    std::mt19937 hand(8);
    for (const auto& comb : combs()) {
        if (usualMarks(comb.outline) != MarkedBy::Hanging || comb.filling.built < 1) continue;
        for (const auto& view : views()) {
            auto face = facePictured(QStringLiteral("a.jpg"), photograph(comb, view), comb.outline, MarkedBy::Hanging);
            const auto corners = hive::cornersOf(comb.outline);
            const auto side = [&](double sign) {
                const double low = 0.75;
                return hive::PlanePoint{sign * std::lerp(corners[1].x, corners[2].x, low),
                                        low * comb.outline.height.value()};
            };
            const hive::PlanePoint places[] = {
                corners[0], corners[1], side(-1), side(1), {0, comb.outline.height.value()}};
            for (std::size_t i = 0; i < 5; ++i) face.marks[i] = shaken(view(places[i]), 2, hand);
            face.tracings = traced(comb, 1, hand);
            EXPECT_LT(worst(comb.filling, seenThrough(comb.outline, face, view)), 0.02)
                << comb.name << " turned " << view.turned << ", tilted " << view.tilted;
        }
    }
}

// The picture itself, not only its geometry: after rectifying, each colour covers the share of the comb it was painted on.
TEST(PhotographOfAComb, TheRectifiedPictureShowsEachZoneWithItsArea) {
    for (const auto& comb : combs()) {
        for (const auto& view : views()) {
            auto face = facePictured(QStringLiteral("a.jpg"), photograph(comb, view), comb.outline, MarkedBy::Corners);
            const auto corners = hive::cornersOf(comb.outline);
            for (std::size_t i = 0; i < 4; ++i) face.marks[i] = view(corners[i]);
            const auto rectified = rectify(comb.outline, face, 1.5);
            ASSERT_TRUE(rectified);
            EXPECT_LT(worst(comb.filling, colouredShares(*rectified)), 0.02)
                << comb.name << " turned " << view.turned << ", tilted " << view.tilted;
        }
    }
}

TEST(PhotographOfAComb, UntouchedMarksOfATiltedPictureWouldBeWrong) {
    const auto comb = combs().front();
    const View view{25, 20};
    auto face = facePictured(QStringLiteral("a.jpg"), photograph(comb, view), comb.outline, MarkedBy::Corners);
    const auto rectified = rectify(comb.outline, face, 1.5);
    EXPECT_GT(worst(comb.filling, colouredShares(*rectified)), 0.02) << "the bound above is not met by chance";
}

TEST(PhotographOfAComb, IsTurnedUprightAsItsFileSays) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("turned.jpg"));
    QImage sideways(400, 300, QImage::Format_RGB32);
    sideways.fill(Qt::white);
    QPainter(&sideways).fillRect(0, 0, 100, 300, Qt::red);
    QImageWriter writer(path);
    writer.setTransformation(QImageIOHandler::TransformationRotate90);
    ASSERT_TRUE(writer.write(sideways));
    QString fault;
    const auto upright = readUpright(path, fault);
    ASSERT_TRUE(upright);
    EXPECT_EQ(upright->size(), QSize(300, 400));
    EXPECT_EQ(qRed(upright->pixel(150, 10)) > 200 && qGreen(upright->pixel(150, 10)) < 80, true)
        << "what was at the left is now on top";
    EXPECT_FALSE(readUpright(folder.filePath(QStringLiteral("none.jpg")), fault));
    EXPECT_TRUE(fault.contains(QStringLiteral("none.jpg")));
}

TEST(MeasuredComb, IsTheMeanOfItsFacesAndSaysHowItWasSeen) {
    std::mt19937 hand(9);
    Comb one = combs().front(), other = one;
    one.filling = {1, 0.6, 0, 0, 0};
    other.filling = {1, 0.4, 0.1, 0, 0};
    std::vector<PhotographedFace> faces(2);
    faces[0].tracings = traced(one, 0, hand);
    book::CombRecord before;
    before.width = millimetres(38);
    before.throughWindow = true;
    const auto single = measuredComb(before, one.outline, faces);
    EXPECT_EQ(single.facesSeen, 1);
    EXPECT_TRUE(single.measured);
    EXPECT_FALSE(single.throughWindow);
    EXPECT_EQ(single.width, millimetres(38));
    EXPECT_NEAR(shareOf(single, Zone::Capped), 0.6, 0.01);
    faces[1].tracings = traced(other, 0, hand);
    const auto both = measuredComb(before, one.outline, faces);
    EXPECT_EQ(both.facesSeen, 2);
    EXPECT_NEAR(shareOf(both, Zone::Capped), 0.5, 0.01);
    EXPECT_NEAR(shareOf(both, Zone::Open), 0.05, 0.01);
    EXPECT_EQ(measuredComb(before, one.outline, {{}, {}}), before) << "nothing traced, nothing measured";
}

TEST(InsertPoint, GoesBetweenItsNeighbours) {
    std::vector<hive::PlanePoint> square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    insertPoint(square, {5, -1});
    EXPECT_EQ(square[1], (hive::PlanePoint{5, -1}));
    insertPoint(square, {-1, 5});
    EXPECT_EQ(square.back(), (hive::PlanePoint{-1, 5})) << "between the last and the first";
}

} // namespace winterlarder::desk
