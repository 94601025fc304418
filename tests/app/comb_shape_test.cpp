// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_shape.h"

#include "hive/hive.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

namespace winterlarder::desk {

namespace {

const QRectF face(0, 0, 420, 210);

double pixels(const QPainterPath& path) {
    QImage image(440, 230, QImage::Format_Grayscale8);
    image.fill(Qt::black);
    QPainter painter(&image);
    painter.translate(10, 10);
    painter.fillPath(path, Qt::white);
    painter.end();
    double count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) count += qGray(image.pixel(x, y)) / 255.0;
    return count;
}

struct Case {
    const char* name;
    hive::Outline outline;
    CombFilling filling;
};

} // namespace

// The stated bound: zones have the area of their shares to 1 % of the built face.
TEST(CombShape, ZonesHaveTheAreasOfTheirShares) {
    const hive::Outline deepFrame{millimetres(428), millimetres(428), millimetres(205)};
    const hive::Outline slopingSides{millimetres(440), millimetres(151), millimetres(250)};
    const hive::Outline narrowOnTop{millimetres(200), millimetres(400), millimetres(173)};
    const Case cases[] = {
        {"full", deepFrame, {1, 1, 0, 0, 0}},
        {"nest", deepFrame, {1, 0.2, 0.1, 0.45, 0.08}},
        {"sloping nest", slopingSides, {1, 0.2, 0.1, 0.4, 0.1}},
        {"narrow side up", narrowOnTop, {1, 0.3, 0.1, 0.3, 0.1}},
        {"part built", slopingSides, {0.6, 0.5, 0.2, 0, 0}},
        {"part built nest", deepFrame, {0.8, 0.1, 0.1, 0.4, 0.2}},
        {"nothing in it", deepFrame, {1, 0, 0, 0, 0}},
        {"bee bread alone", deepFrame, {1, 0.5, 0.1, 0, 0.2}},
    };
    for (const auto& each : cases) {
        SCOPED_TRACE(each.name);
        const auto shape = shapeOf(each.outline, each.filling, face);
        const double built = pixels(shape.comb);
        EXPECT_NEAR(built / pixels(shape.full), each.filling.built, 0.01);
        EXPECT_NEAR(pixels(shape.capped) / built, each.filling.capped, 0.01);
        EXPECT_NEAR(pixels(shape.open) / built, each.filling.open, 0.01);
        EXPECT_NEAR(pixels(shape.brood) / built, each.filling.brood, 0.01);
        EXPECT_NEAR(pixels(shape.beeBread) / built, each.filling.beeBread, 0.01);
    }
}

TEST(CombShape, HoneyLiesAboveBrood) {
    const auto shape = shapeOf({millimetres(428), millimetres(428), millimetres(205)}, {1, 0.3, 0.1, 0.3, 0.1}, face);
    EXPECT_LT(shape.capped.boundingRect().center().y(), shape.open.boundingRect().center().y());
    EXPECT_LT(shape.open.boundingRect().center().y(), shape.brood.boundingRect().center().y());
    EXPECT_TRUE(shape.beeBread.boundingRect().adjusted(-1, -1, 1, 1).contains(shape.brood.boundingRect()));
}

} // namespace winterlarder::desk
