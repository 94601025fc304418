// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/painted_combs.h"

#include "app/golden.h"
#include "app/hanging.h"
#include "theme/colours.h"

#include <QPainter>

namespace winterlarder::desk {

namespace {

template <class Paint> QImage painted(const Colours& colours, const Paint& paint) {
    QImage image(140, 120, QImage::Format_RGB32);
    image.fill(colours.card);
    QPainter painter(&image);
    paint(painter);
    painter.end();
    return image;
}

} // namespace

// A place between whole pixels, and patterns that do not begin at the comb's corner.
TEST(PaintedCombs, AreWhatThePainterPaintsTheFirstTimeAndAgain) {
    const auto drawn = drawnCombs({invented::comb(0.5, 0.1, 0.2, 0.1)}, {hanging::frame()}, 0.65, hanging::spreads());
    const QRectF into(10.3, 7.6, 110.5, 95.2);
    PaintedCombs combs;
    for (const auto* colours : {&lightColours(), &lightColours(), &darkColours(), &lightColours()}) {
        const auto wanted =
            painted(*colours, [&](QPainter& painter) { paintComb(painter, drawn[0].look, into, *colours); });
        const auto made =
            painted(*colours, [&](QPainter& painter) { combs.paint(painter, 0, drawn[0].look, into, *colours, 5); });
        const auto off = golden::difference(wanted, made);
        EXPECT_LT(off.mean, 0.2);
        EXPECT_EQ(off.strong, 0);
    }
}

TEST(PaintedCombs, ArePaintedAnewWhenAnythingOfThemChanges) {
    const auto look =
        drawnCombs({invented::comb(0.5, 0.1, 0, 0)}, {hanging::frame()}, 0.65, hanging::spreads())[0].look;
    PaintedCombs combs;
    const auto paint = [&](const CombAppearance& each, const QRectF& into) {
        return painted(lightColours(),
                       [&](QPainter& painter) { combs.paint(painter, 0, each, into, lightColours(), 5); });
    };
    const auto before = paint(look, {10, 10, 100, 90});
    auto chosen = look;
    chosen.chosen = true;
    EXPECT_NE(paint(chosen, {10, 10, 100, 90}), before);
    EXPECT_EQ(paint(look, {10, 10, 100, 90}), before);
    EXPECT_NE(paint(look, {12, 10, 100, 90}), before);
    auto fuller = look;
    fuller.filling.capped = 0.7;
    EXPECT_NE(paint(fuller, {10, 10, 100, 90}), before);
}

} // namespace winterlarder::desk
