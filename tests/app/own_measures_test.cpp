// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "combs/outline_drawing.h"
#include "fields/quantity_field.h"
#include "forms/boxes_field.h"
#include "forms/entry_forms.h"
#include "forms/own_measures.h"
#include "models/words.h"
#include "theme/colours.h"

#include <QComboBox>
#include <QSpinBox>

namespace winterlarder::desk {

using invented::colony;

class Measures : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerSlowly();
        open({colony("Apple")});
    }
    ~Measures() override { words::useUnits(UnitSystem::Metric); }
    EntryForm* hiveForm() {
        auto* form = askForHive(&window, window.yard(), housingOn(records(), invented::day("2026-09-14")));
        boxes = form->findChild<BoxesField*>();
        return form;
    }
    //! Chooses "own measures" for the box by the keyboard.
    OwnMeasures* chooseOwn(int box) {
        auto* format =
            field<QComboBox>(boxes, qPrintable(QStringLiteral("Format of box %1 from the floor").arg(box + 1)));
        format->setFocus();
        QTest::keyClick(format, Qt::Key_End);
        EXPECT_EQ(format->currentText().toStdString(), "own measures");
        return boxes->measures(box);
    }
    void enter(OwnMeasures* own, std::initializer_list<const char*> texts) {
        auto fields = own->fields();
        auto at = fields.begin();
        for (const char* text : texts) {
            (*at)->setFocus();
            auto* line = qobject_cast<QLineEdit*>(*at++);
            type(line, text);
            if (!*text) QTest::keyClick(line, Qt::Key_Delete);
        }
    }
    book::HiveRecord hive() { return housingOn(records(), invented::day("2026-09-14")).hive; }

    BoxesField* boxes = nullptr;
};

TEST_F(Measures, AreTypedDrawnAndKept) {
    const auto before = hive();
    auto* form = hiveForm();
    EXPECT_FALSE(boxes->measures(0)->isVisible());
    auto* own = chooseOwn(0);
    ASSERT_TRUE(own->isVisible());
    EXPECT_EQ(own->format().combWidth, millimetres(428)) << "begun from the format they take the place of";
    enter(own, {"480", "10 in", "30 cm", "38", "14"});
    const book::OwnFormat typed{millimetres(480), millimetres(254), millimetres(300), 14, millimetres(38)};
    EXPECT_EQ(own->format(), typed);
    const hive::Outline outline{typed.combWidth, *typed.bottomWidth, typed.combHeight};
    const auto honey = hive::fullComb({{}, outline, typed.pitch, {}, 14}, hive::phiComb);
    EXPECT_EQ(own->said(),
              QStringLiteral("A comb has %1 on each side; capped from edge to edge it holds about %2 of honey.")
                  .arg(QStringLiteral("9.9 dm\u00b2"), words::kilograms(honey)));
    const auto face = own->drawing()->face();
    EXPECT_NEAR(face.width() / face.height(), 480.0 / 254, 0.01) << "in its true proportions";
    EXPECT_EQ(own->drawing()->accessibleName().toStdString(),
              "The comb face on: 480 mm wide at the top, 254 mm deep, 300 mm wide at the bottom");
    write(form);
    ASSERT_EQ(hive().boxes.size(), before.boxes.size());
    EXPECT_EQ(hive().boxes[0].format, book::FormatChoice(typed));
    form = hiveForm();
    EXPECT_EQ(boxes->measures(0)->format(), typed) << "reopened it shows the same";
    EXPECT_EQ(boxes->boxes(), hive().boxes);
    EXPECT_TRUE(boxes->measures(0)->isVisible());
    EXPECT_NE(housingOn(records(), invented::day("2026-09-14")).id, book::HousingId{})
        << "the entry of that day is changed, no second one added";
    form->reject();
    undo();
    EXPECT_EQ(hive(), before) << "one step takes it back";
}

TEST_F(Measures, StayTheSameInInches) {
    auto* form = hiveForm();
    auto* own = chooseOwn(0);
    enter(own, {"333", "217.5", "", "34.5", "9"});
    write(form);
    const auto kept = hive();
    for (const auto system : {UnitSystem::UnitedStates, UnitSystem::Metric}) {
        window.useUnits(system);
        form = hiveForm();
        EXPECT_EQ(boxes->measures(0)->depth()->text().toStdString(),
                  system == UnitSystem::Metric ? "217.5 mm" : "8 9/16 in");
        EXPECT_EQ(boxes->boxes(), kept.boxes) << "only shown, nothing drifts";
        EXPECT_TRUE(boxes->measures(0)->said().contains(system == UnitSystem::Metric ? QStringLiteral("7.2 dm\u00b2")
                                                                                     : QStringLiteral("112 sq in")))
            << boxes->measures(0)->said().toStdString();
        form->reject();
    }
}

TEST_F(Measures, ThatCannotBeAreSaidAndNotWritten) {
    const auto before = hive();
    auto* form = hiveForm();
    auto* own = chooseOwn(0);
    enter(own, {"480", "9999"});
    EXPECT_EQ(own->said().toStdString(), "comb depth: It must be between 50 mm and 1000 mm.");
    EXPECT_TRUE(own->drawing()->face().isEmpty());
    write(form);
    EXPECT_TRUE(form->isVisible());
    EXPECT_EQ(form->fault().toStdString(), "Box 1 from the floor, comb depth: It must be between 50 mm and 1000 mm.");
    EXPECT_EQ(form->focusWidget(), own->depth());
    EXPECT_EQ(hive(), before);
    enter(own, {"480", "254", "", ""});
    EXPECT_EQ(own->said().toStdString(), "spacing, or bar width: Something must be written here.");
    enter(own, {"480", "254", "", "38"});
    EXPECT_FALSE(own->drawing()->face().isEmpty());
    write(form);
    EXPECT_EQ(hive().boxes[0].format,
              book::FormatChoice(book::OwnFormat{millimetres(480), millimetres(254), {}, 10, millimetres(38)}));
}

TEST_F(Measures, AreDrawnAsTheCombHangs) {
    OutlineDrawing drawing;
    drawing.resize(drawing.sizeHint());
    const auto drawn = [&](const hive::Outline& outline) {
        drawing.show(outline);
        const QImage picture = drawing.grab().toImage();
        const QRectF face = drawing.face();
        // Whether the comb is there at the edge of its wider side, just under the bar and just above its lower end.
        const auto there = [&](double y) {
            return picture.pixelColor(QPoint(static_cast<int>(face.left() + face.width() * 0.06),
                                             static_cast<int>(y))) == coloursOf(drawing).empty;
        };
        return std::pair(there(face.top() + 6), there(face.bottom() - 6));
    };
    EXPECT_EQ(drawn({millimetres(400), millimetres(200), millimetres(250)}), std::pair(true, false))
        << "sides that slope inwards";
    EXPECT_EQ(drawn({millimetres(400), millimetres(400), millimetres(250)}), std::pair(true, true));
    EXPECT_EQ(drawn({millimetres(200), millimetres(400), millimetres(250)}), std::pair(false, true));
}

TEST_F(Measures, ALongBoxKeepsItsCombs) {
    BoxesField row(nullptr, *invented::shipped());
    const std::vector<book::BoxRecord> whole{
        {book::OwnFormat{millimetres(300), millimetres(250), {}, 50, millimetres(36)}, 55, false}};
    row.show(whole);
    EXPECT_EQ(row.boxes(), whole);
}

} // namespace winterlarder::desk
