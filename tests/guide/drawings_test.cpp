// SPDX-License-Identifier: GPL-3.0-or-later
// The drawings of the guide: there, within their sheet, words on nothing but the ground, readable in both colours.
#include "app/invented.h"
#include "app/layout/contrast.h"
#include "guide/guide_drawings.h"

#include <QDir>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <gtest/gtest.h>

#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr int scale = 2, around = 40; // pixels a unit, units of ground beside the sheet

text::GuideReader keeperOf(const char* format, UnitSystem system = UnitSystem::Metric) {
    const auto& reference = *invented::shipped();
    const auto* shipped = reference.format(format);
    text::GuideReader reader{reference, {}, {{QString::fromStdString(shipped->name), hive::combFormat(*shipped)}}};
    reader.style.numbers.system = system;
    return reader;
}

// The drawing with ground around it, so that what leaves the sheet is seen.
QImage painted(const QByteArray& svg, QSizeF size) {
    QSvgRenderer renderer(svg);
    EXPECT_TRUE(renderer.isValid());
    renderer.setViewBox(QRectF(-around, -around, size.width() + 2 * around, size.height() + 2 * around));
    QImage image((renderer.viewBoxF().size() * scale).toSize(), QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    renderer.render(&painter);
    return image;
}

int inked(const QImage& image, const QRect& within) {
    int count = 0;
    const QRect all = within & image.rect();
    for (int y = all.top(); y <= all.bottom(); ++y)
        for (int x = all.left(); x <= all.right(); ++x) count += qAlpha(image.pixel(x, y)) > 30;
    return count;
}

QRect pixelsOf(const QRectF& units) {
    return QRectF((units.left() + around) * scale, (units.top() + around) * scale, units.width() * scale,
                  units.height() * scale)
        .toAlignedRect();
}

QByteArray withoutWords(QByteArray svg) {
    return QString::fromUtf8(svg).remove(QRegularExpression(QStringLiteral("<text[^\n]*\n"))).toUtf8();
}

// A drawing with a hive, its colours, its units.
struct Shown {
    const char* format;
    const Colours* colours;
    UnitSystem system;
};

class EveryDrawing : public testing::TestWithParam<Shown> {
protected:
    static QFont font() { return QFont(QStringLiteral("DejaVu Sans")); }
    DrawnGuide drawn(text::GuideDrawing which) const {
        return drawGuide(which, keeperOf(GetParam().format, GetParam().system), *GetParam().colours, font());
    }
};

} // namespace

TEST_P(EveryDrawing, ShowsSomethingAndStaysWithinItsSheet) {
    for (const auto which : text::allGuideDrawings) {
        const auto drawing = drawn(which);
        const QImage image = painted(drawing.svg, drawing.size);
        const int all = inked(image, image.rect()), inside = inked(image, pixelsOf(QRectF(QPointF(), drawing.size)));
        EXPECT_GT(inside, image.width() * image.height() / 50) << static_cast<int>(which);
        EXPECT_EQ(all, inside) << static_cast<int>(which) << " leaves its sheet";
    }
}

TEST_P(EveryDrawing, WordsStandOnTheGroundAndApart) {
    for (const auto which : text::allGuideDrawings) {
        const auto drawing = drawn(which);
        const QImage shapes = painted(withoutWords(drawing.svg), drawing.size);
        EXPECT_FALSE(drawing.labels.empty()) << static_cast<int>(which);
        for (std::size_t at = 0; at < drawing.labels.size(); ++at) {
            const QRectF label = drawing.labels[at].adjusted(1, 2, -1, -2);
            EXPECT_TRUE(QRectF(QPointF(), drawing.size).contains(label)) << static_cast<int>(which) << ", label " << at;
            EXPECT_LE(inked(shapes, pixelsOf(label)), 0)
                << static_cast<int>(which) << ", label " << at << " stands on something drawn";
            for (std::size_t other = 0; other < at; ++other)
                EXPECT_FALSE(label.intersects(drawing.labels[other].adjusted(1, 2, -1, -2)))
                    << static_cast<int>(which) << ", labels " << at << " and " << other;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Guide, EveryDrawing,
                         testing::Values(Shown{"langstroth-deep", &lightColours(), UnitSystem::Metric},
                                         Shown{"langstroth-deep", &darkColours(), UnitSystem::UnitedStates},
                                         Shown{"topbar-sloping-440", &lightColours(), UnitSystem::Metric},
                                         Shown{"warszawski", &lightColours(), UnitSystem::Imperial},
                                         Shown{"national-shallow", &darkColours(), UnitSystem::Metric}));

TEST(GuideDrawings, WordsAreReadableOnTheCard) {
    for (const auto* colours : {&lightColours(), &darkColours()})
        for (const auto which : text::allGuideDrawings) {
            const QString svg = QString::fromUtf8(drawGuide(which, keeperOf("langstroth-deep"), *colours, QFont()).svg);
            auto found = QRegularExpression(QStringLiteral("<text[^>]* fill='(#[0-9a-f]{6})'")).globalMatch(svg);
            EXPECT_TRUE(found.hasNext());
            while (found.hasNext())
                EXPECT_GE(contrast(QColor(found.next().captured(1)), colours->card), 4.5) << static_cast<int>(which);
        }
}

TEST(GuideDrawings, HalfAndThreeQuartersLookDifferent) {
    const auto quarterAt = [](text::GuideDrawing which) {
        return painted(drawGuide(which, keeperOf("langstroth-deep"), lightColours(), QFont()).svg, {guideWidth, 135});
    };
    const QImage combs = quarterAt(text::GuideDrawing::PartFull);
    const auto capped = [&](double x) {
        int count = 0;
        const QRect comb = pixelsOf({x, 14, 134, 82});
        for (int y = comb.top(); y < comb.bottom(); ++y)
            for (int px = comb.left(); px < comb.right(); ++px)
                count += combs.pixelColor(px, y) == lightColours().capped;
        return count;
    };
    const double quarter = capped(34), half = capped(218), most = capped(402);
    EXPECT_NEAR(half / quarter, 2, 0.25);
    EXPECT_NEAR(most / quarter, 3, 0.35);
}

//! Writes every drawing, light and dark, into BUILD/guide to be looked at.
TEST(GuideDrawings, DISABLED_WriteThem) {
    const QDir folder(QStringLiteral(BUILD_FOLDER "/guide"));
    ASSERT_TRUE(folder.mkpath(QStringLiteral(".")));
    for (const auto* colours : {&lightColours(), &darkColours()})
        for (const auto which : text::allGuideDrawings) {
            const auto drawing =
                drawGuide(which, keeperOf("langstroth-deep"), *colours, QFont(QStringLiteral("DejaVu Sans")));
            QImage image((drawing.size * scale).toSize(), QImage::Format_RGB32);
            image.fill(colours->card);
            QPainter painter(&image);
            QSvgRenderer(drawing.svg).render(&painter);
            painter.end();
            EXPECT_TRUE(image.save(
                folder.filePath(QStringLiteral("%1-%2.png")
                                    .arg(static_cast<int>(which), 2, 10, QLatin1Char('0'))
                                    .arg(colours->dark ? QStringLiteral("dark") : QStringLiteral("light")))));
        }
}

} // namespace winterlarder::desk
