// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/golden.h"
#include "app/layout/demo_window.h"

#include <QProcess>

//! Every page of a colony and of the yard as a small picture, so that nothing moves, goes or changes its colours unnoticed: in windows of
//! 1024 x 700, 1360 x 900 and 1920 x 1080 dots, at 100, 150 and 200 %, light and dark. At 200 % the smallest of them holds less than the
//! window may be; it is left out.
namespace winterlarder::desk {

namespace {

constexpr int shrunk = 4; // so many times

struct Shown {
    QSize dots;
    int percent = 100;
    ColourScheme colours = ColourScheme::Light;
};

class GoldenPages : public layout::DemoWindow, public testing::WithParamInterface<Shown> {
protected:
    ~GoldenPages() override { window.useColours(ColourScheme::AsSystem); }
};

std::string seenAs(const testing::TestParamInfo<Shown>& seen) {
    const auto& [dots, percent, colours] = seen.param;
    return std::to_string(dots.width()) + "x" + std::to_string(dots.height()) +
           (percent == 100 ? "" : "at" + std::to_string(percent)) + (colours == ColourScheme::Dark ? "dark" : "light");
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
    size(GetParam().dots * 100 / GetParam().percent);
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

std::vector<Shown> inBothColours(const std::vector<std::pair<QSize, int>>& sizes) {
    std::vector<Shown> all;
    for (const auto& [dots, percent] : sizes)
        for (const auto colours : {ColourScheme::Light, ColourScheme::Dark}) all.push_back({dots, percent, colours});
    return all;
}

INSTANTIATE_TEST_SUITE_P(
    Sizes, GoldenPages, testing::ValuesIn(inBothColours({{{1024, 700}, 100}, {{1360, 900}, 100}, {{1920, 1080}, 100}})),
    seenAs);

// In processes of their own, which draw at that scale.
INSTANTIATE_TEST_SUITE_P(
    DISABLED_Scaled, GoldenPages,
    testing::ValuesIn(inBothColours(
        {{{1024, 700}, 150}, {{1360, 900}, 150}, {{1920, 1080}, 150}, {{1360, 900}, 200}, {{1920, 1080}, 200}})),
    seenAs);

class GoldenPagesAtScale : public testing::TestWithParam<const char*> {};

TEST_P(GoldenPagesAtScale, AreAsTheyWere) {
    const QString percent = QLatin1String(GetParam());
    QProcess other;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("QT_SCALE_FACTOR"), QString::number(percent.toDouble() / 100));
    other.setProcessEnvironment(environment);
    other.start(QCoreApplication::applicationFilePath(),
                {QStringLiteral("--gtest_also_run_disabled_tests"),
                 QStringLiteral("--gtest_filter=DISABLED_Scaled/GoldenPages.*at%1*").arg(percent)});
    ASSERT_TRUE(other.waitForFinished(240000));
    const QByteArray said = other.readAllStandardOutput();
    EXPECT_EQ(other.exitCode(), 0) << said.toStdString();
    EXPECT_TRUE(said.contains("[  PASSED  ] ")) << said.toStdString();
}

INSTANTIATE_TEST_SUITE_P(Scales, GoldenPagesAtScale, testing::Values("150", "200"));

} // namespace winterlarder::desk
