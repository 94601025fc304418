// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/icons.h"

#include <QDir>
#include <QFile>
#include <gtest/gtest.h>

namespace winterlarder::desk {

namespace {

QStringList drawings() {
    auto names = QDir(QStringLiteral(":/icons")).entryList({QStringLiteral("*.svg")});
    names.removeAll(QStringLiteral("winterlarder.svg"));
    return names;
}

} // namespace

TEST(Drawings, EveryActionHasOneInOneStyle) {
    for (const char* wanted : {"add", "look", "weighing", "feed", "harvest", "treatment", "undo", "redo", "print",
                               "open", "copy", "backup", "settings", "photograph", "note"})
        EXPECT_TRUE(drawings().contains(QStringLiteral("%1.svg").arg(QLatin1String(wanted)))) << wanted;
    for (const auto& name : drawings()) {
        QFile file(QStringLiteral(":/icons/") + name);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QByteArray drawing = file.readAll();
        EXPECT_TRUE(drawing.contains("viewBox=\"0 0 16 16\"")) << name.toStdString();
        EXPECT_TRUE(drawing.contains("#123456")) << name.toStdString() << " takes no colour";
        EXPECT_FALSE(drawing.contains("<text")) << name.toStdString();
    }
}

TEST(Drawings, AreToldApartAtSixteenPixels) {
    std::vector<std::pair<QString, QImage>> seen;
    for (const auto& name : drawings()) {
        const QImage image = drawnIcon(name.chopped(4), Qt::black, 16, 1).toImage();
        int inked = 0;
        for (int y = 0; y < 16; ++y)
            for (int x = 0; x < 16; ++x) inked += qAlpha(image.pixel(x, y)) > 96;
        EXPECT_GT(inked, 20) << name.toStdString();
        for (const auto& [other, drawn] : seen) {
            int different = 0;
            for (int y = 0; y < 16; ++y)
                for (int x = 0; x < 16; ++x)
                    different += std::abs(qAlpha(image.pixel(x, y)) - qAlpha(drawn.pixel(x, y))) > 96;
            EXPECT_GT(different, 20) << name.toStdString() << " looks like " << other.toStdString();
        }
        seen.emplace_back(name, image);
    }
}

} // namespace winterlarder::desk
