// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>

//! Pictures compared with the ones kept in tests/app/golden. tests/app/remake-golden makes them anew and shows old beside new.
namespace winterlarder::desk::golden {

struct Difference {
    double mean = 0;   //!< of all channels, in levels of 256
    double strong = 0; //!< share of pixels off by more than 48 levels in some channel
};

inline Difference difference(const QImage& one, const QImage& other) {
    Difference found;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x) {
            const QRgb a = one.pixel(x, y), b = other.pixel(x, y);
            const int off[] = {std::abs(qRed(a) - qRed(b)), std::abs(qGreen(a) - qGreen(b)),
                               std::abs(qBlue(a) - qBlue(b))};
            found.mean += (off[0] + off[1] + off[2]) / 3.0;
            found.strong += std::max({off[0], off[1], off[2]}) > 48;
        }
    const double pixels = static_cast<double>(one.width()) * one.height();
    return {found.mean / pixels, found.strong / pixels};
}

inline QImage beside(const QImage& old, const QImage& made) {
    QImage both(old.width() + made.width() + 8, std::max(old.height(), made.height()), QImage::Format_RGB32);
    both.fill(Qt::magenta);
    QPainter painter(&both);
    painter.drawImage(0, 0, old);
    painter.drawImage(old.width() + 8, 0, made);
    return both;
}

inline bool remaking() {
    const char* update = std::getenv("WINTERLARDER_UPDATE_GOLDEN");
    return update && *update == '1';
}

//! Tolerance: letters are drawn a little differently by other releases of FreeType and Qt, so a mean of 2 levels and 2 % of
//! strongly different pixels; a zone, line or word that is missing or moved is more.
inline void expectPicture(const QImage& made, const QString& name) {
    const QString kept = QStringLiteral(SOURCE_FOLDER "/tests/app/golden/%1.png").arg(name);
    const QString shown = QStringLiteral(BUILD_FOLDER "/golden/%1.png").arg(name);
    const QImage old(kept);
    for (const QString& file : {kept, shown}) QDir().mkpath(QFileInfo(file).path());
    if (remaking()) {
        if (!old.isNull() && old.convertToFormat(QImage::Format_RGB32) != made.convertToFormat(QImage::Format_RGB32))
            beside(old, made).save(shown);
        ASSERT_TRUE(made.save(kept, "PNG", 0));
        return;
    }
    ASSERT_FALSE(old.isNull()) << kept.toStdString() << " is missing; tests/app/remake-golden makes it";
    const bool sameSize = old.size() == made.size();
    const auto off = sameSize ? difference(old, made) : Difference{255, 1};
    if (off.mean >= 2 || off.strong >= 0.02) beside(old, made).save(shown);
    EXPECT_TRUE(sameSize) << "old " << old.width() << " x " << old.height() << ", new " << made.width() << " x "
                          << made.height();
    EXPECT_LT(off.mean, 2) << "see old beside new: " << shown.toStdString();
    EXPECT_LT(off.strong, 0.02) << "see old beside new: " << shown.toStdString();
}

inline QImage inGrey(const QImage& picture) { return picture.convertToFormat(QImage::Format_Grayscale8); }

} // namespace winterlarder::desk::golden
