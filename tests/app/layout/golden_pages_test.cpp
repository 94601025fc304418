// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/golden.h"
#include "app/layout/demo_window.h"

//! Every page of a colony and of the yard as a small picture, so that nothing moves, goes or changes its colours unnoticed.
namespace winterlarder::desk {

namespace {

constexpr int shrunk = 4; // so many times

struct Shown {
    QSize size;
    ColourScheme colours = ColourScheme::Light;
};

class GoldenPages : public layout::DemoWindow, public testing::WithParamInterface<Shown> {
protected:
    ~GoldenPages() override { window.useColours(ColourScheme::AsSystem); }
};

std::string seenAs(const testing::TestParamInfo<Shown>& seen) {
    return std::to_string(seen.param.size.width()) + "x" + std::to_string(seen.param.size.height()) +
           (seen.param.colours == ColourScheme::Dark ? "dark" : "light");
}

// Sixteen levels a channel are enough to see what is there, and take little room.
QImage smallPictureOf(QWidget& window) {
    QImage small = window.grab()
                       .toImage()
                       .scaled(window.size() / shrunk, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                       .convertToFormat(QImage::Format_RGB32);
    for (int y = 0; y < small.height(); ++y)
        for (int x = 0; x < small.width(); ++x) {
            const QRgb pixel = small.pixel(x, y);
            const auto level = [](int channel) { return (channel >> 4) * 17; };
            small.setPixel(x, y, qRgb(level(qRed(pixel)), level(qGreen(pixel)), level(qBlue(pixel))));
        }
    return small;
}

} // namespace

TEST_P(GoldenPages, OfAColonyAndOfTheYard) {
    window.useColours(GetParam().colours);
    size(GetParam().size);
    const auto expect = [&](const QString& of) {
        window.setFocus(); // no mark of it on any page
        golden::expectPicture(smallPictureOf(window),
                              QStringLiteral("pages/%1-%2").arg(of, QString::fromStdString(seenAs({GetParam(), 0}))));
    };
    lookAt("Pippin");
    throughPages(window.colonyView()->pages(), [&](const QString& page) {
        expect(QStringLiteral("colony-") + page.toLower().replace(QLatin1Char(' '), QLatin1Char('-')));
    });
    window.choose({});
    rest();
    throughPages(window.yardView()->pages(),
                 [&](const QString& page) { expect(QStringLiteral("yard-") + page.toLower()); });
}

INSTANTIATE_TEST_SUITE_P(Sizes, GoldenPages,
                         testing::Values(Shown{{1024, 700}}, Shown{{1360, 900}}, Shown{{1920, 1080}},
                                         Shown{{1360, 900}, ColourScheme::Dark}),
                         seenAs);

} // namespace winterlarder::desk
