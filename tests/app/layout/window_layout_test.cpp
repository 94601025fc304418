// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/layout/demo_window.h"
#include "app/layout/drawn_faults.h"

#include <QProcess>

//! Nothing is cut, covered or too small to be hit, on any page at any size.
namespace winterlarder::desk {

namespace {

QStringList faultsOf(const QWidget& window) {
    return layout::cutWords(window) + layout::reachingOut(window) + layout::overlaps(window) +
           layout::badTargets(window) + layout::badColumns(window) + layout::badPlots(window);
}

class WindowLayout : public layout::DemoWindow, public testing::WithParamInterface<QSize> {};

std::string named(const testing::TestParamInfo<QSize>& size) {
    return std::to_string(size.param.width()) + "x" + std::to_string(size.param.height());
}

} // namespace

TEST_P(WindowLayout, NothingIsCutCoveredOrTooSmallToHit) {
    size(GetParam());
    ASSERT_EQ(window.size(), GetParam());
    int seen = 0;
    throughWindow([&](const QString& page) {
        ++seen;
        for (const auto& fault : faultsOf(window)) ADD_FAILURE() << page.toStdString() << ": " << fault.toStdString();
    });
    EXPECT_EQ(seen, 14) << "six pages of two colonies, and two of the yard";
}

// 660 x 400: 1360 x 900 at 200 %, less what a desktop draws around a window; 1024 x 700: 1536 x 1050 at 150 %.
INSTANTIATE_TEST_SUITE_P(Sizes, WindowLayout,
                         testing::Values(QSize(660, 400), QSize(1024, 700), QSize(1360, 900), QSize(1920, 1080)),
                         named);

// Drawn at another scale lengths are rounded otherwise: the same walk in a process of its own.
TEST(WindowLayoutAtScale, NothingIsCutAtOneAndAHalfNorAtTwice) {
    for (const auto& [scale, sizes] : {std::pair("1.5", "*1024x700"), std::pair("2", "*660x400")}) {
        QProcess other;
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("QT_SCALE_FACTOR"), QLatin1String(scale));
        other.setProcessEnvironment(environment);
        other.start(QCoreApplication::applicationFilePath(),
                    {QStringLiteral("--gtest_filter=Sizes/WindowLayout.") + QLatin1String(sizes)});
        ASSERT_TRUE(other.waitForFinished(240000));
        const QByteArray said = other.readAllStandardOutput();
        EXPECT_EQ(other.exitCode(), 0) << scale << ":\n" << said.toStdString();
        EXPECT_TRUE(said.contains("[  PASSED  ] 1 test")) << said.toStdString();
    }
}

} // namespace winterlarder::desk
