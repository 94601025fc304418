// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/book_desk.h"
#include "app/golden.h"
#include "app/hanging.h"
#include "models/yard_list_model.h"
#include "pages/yard_delegate.h"
#include "plots/winter_plot.h"

#include <QApplication>
#include <QFontInfo>
#include <QListView>

namespace winterlarder::desk {

enum class Wear { Light, Dark, Grey };

class Golden : public testing::TestWithParam<Wear> {
protected:
    const Colours& colours() const { return GetParam() == Wear::Dark ? darkColours() : lightColours(); }
    void dress(QWidget& widget, int width, int height) const {
        QFont font(QStringLiteral("DejaVu Sans"));
        font.setPixelSize(12);
        ASSERT_EQ(QFontInfo(font).family(), QStringLiteral("DejaVu Sans"))
            << "the pictures need the package fonts-dejavu-core";
        widget.setFont(font);
        widget.setPalette(paletteIn(colours()));
        wearColours(widget, colours());
        widget.setAutoFillBackground(true);
        widget.resize(width, height);
    }
    void expect(QWidget& widget, const QString& name) const {
        const char* suffix[] = {"light", "dark", "grey"};
        const QImage made = widget.grab().toImage().convertToFormat(QImage::Format_RGB32);
        golden::expectPicture(GetParam() == Wear::Grey ? golden::inGrey(made) : made,
                              QStringLiteral("%1-%2").arg(name, QLatin1String(suffix[static_cast<int>(GetParam())])));
    }
};

namespace {

std::string wornBy(const testing::TestParamInfo<Wear>& wear) {
    const char* names[] = {"Light", "Dark", "Grey"};
    return names[static_cast<int>(wear.param)];
}

std::vector<book::CombRecord> someLook() {
    auto window = invented::comb(0.7, 0.1, 0, 0.05), oneFace = invented::comb(0.3, 0.1, 0.4, 0.1),
         traced = invented::comb(0.2, 0.1, 0.5, 0.1);
    window = withSeen(window, Seen::ThroughWindow);
    oneFace = withSeen(oneFace, Seen::OneFace);
    traced.measured = true;
    return {invented::comb(1, 0, 0, 0),
            invented::comb(0.8, 0.15, 0, 0),
            oneFace,
            traced,
            hanging::unseen(),
            window,
            emptied({}),
            invented::comb(0.6, 0.2, 0, 0)};
}

const AnsweredPointer& harvestOfTheDemo() {
    for (const auto& answered : invented::demoAnswers())
        if (answered->answer.advice.verdict == advice::Verdict::Harvest) return answered;
    return invented::demoAnswers().front();
}

} // namespace

TEST_P(Golden, CombsInFrames) {
    CombDrawing drawing;
    dress(drawing, 760, 250);
    auto boxes = std::vector(2, hanging::frame());
    boxes[0].combsPerBox = boxes[1].combsPerBox = 4;
    drawing.show(drawnCombs(someLook(), boxes, 0.65, hanging::spreads()));
    drawing.choose(3);
    expect(drawing, QStringLiteral("combs-frames"));
}

TEST_P(Golden, CombsWithSlopingSides) {
    CombDrawing drawing;
    dress(drawing, 760, 250);
    auto look = someLook();
    look[7] = withBuilt(look[7], 0.7);
    drawing.show(drawnCombs(look, {hanging::topBar()}, 0.65, hanging::spreads()));
    expect(drawing, QStringLiteral("combs-sloping"));
}

TEST_P(Golden, TheWinterPicture) {
    WinterPlot plot;
    dress(plot, 760, 360);
    plot.setColours(colours());
    const auto& answered = harvestOfTheDemo();
    plot.show(std::shared_ptr<const WinterPicture>(answered, &answered->picture));
    expect(plot, QStringLiteral("winter"));
}

TEST_P(Golden, TheYardList) {
    Yard yard;
    for (const auto& answered : invented::demoAnswers())
        yard.takeAnswer(invented::add(yard, answered->record), answered);
    YardListModel model(&yard);
    QListView list;
    list.setModel(&model);
    list.setItemDelegate(new YardDelegate(&list));
    list.setFrameShape(QFrame::NoFrame);
    dress(list, 300, 520);
    list.setCurrentIndex(model.index(2));
    expect(list, QStringLiteral("yard"));
}

INSTANTIATE_TEST_SUITE_P(Pictures, Golden, testing::Values(Wear::Light, Wear::Dark, Wear::Grey), wornBy);

TEST(GoldenPictures, AMovedZoneWouldBeSeen) {
    CombDrawing drawing;
    drawing.resize(400, 200);
    drawing.show(drawnCombs({invented::comb(0.5, 0.1, 0, 0)}, {hanging::frame()}, 0.65, hanging::spreads()));
    const QImage one = drawing.grab().toImage();
    drawing.show(drawnCombs({invented::comb(0.75, 0.1, 0, 0)}, {hanging::frame()}, 0.65, hanging::spreads()));
    const auto off = golden::difference(one, drawing.grab().toImage());
    EXPECT_TRUE(off.mean >= 2 || off.strong >= 0.02) << off.mean << ", " << off.strong;
}

} // namespace winterlarder::desk
