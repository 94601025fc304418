// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/entry_doubts.h"

#include "app/book_desk.h"
#include "dialogs/scale_log_dialog.h"
#include "fields/fields.h"
#include "forms/doubt_bar.h"
#include "forms/entry_forms.h"
#include "models/colony_edits.h"
#include "pages/look_page.h"

#include <QCheckBox>
#include <QFile>
#include <QLabel>
#include <QPointer>
#include <QPushButton>

namespace winterlarder::desk {

using invented::BookDesk;
using invented::colony;
using invented::day;

namespace {

book::Weighing gross(ColonyId id, double kg, const char* date = "2026-09-13") {
    return {.colony = id, .weighing = {day(date), book::ScaleReading{kilograms(kg)}}};
}

//! The field of a form, by what it is called.
QuantityField* amount(EntryForm* form, const char* name) {
    for (auto* field : form->findChildren<QuantityField*>())
        if (field->accessibleName() == QString::fromUtf8(name)) return field;
    return nullptr;
}

class EarlierDesk : public BookDesk {
protected:
    EarlierDesk() : BookDesk(day("2026-09-10")) {} // asked about is the 14th: a plan
};

} // namespace

TEST_F(EarlierDesk, WhatIsStillToComeIsAskedAboutWhateverDayIsShown) {
    open({colony("A")});
    const auto ask = [&](const QPointer<EntryForm>& form) {
        form->save();
        settle();
        const bool asked = form && form->doubts()->asks(); // a form that was saved is gone
        EXPECT_TRUE(!asked || form->doubts()->question().contains(
                                  QStringLiteral("14 September 2026 is still to come: today is 10 September 2026")))
            << form->doubts()->question().toStdString();
        return asked;
    };
    const auto id = first().id;
    QPointer<EntryForm> note = askForNote(nullptr, &yard, {.colony = id, .date = day("2026-09-11"), .note = "calm"});
    EXPECT_FALSE(ask(note)) << "a day ahead may be the clock of another zone";
    QPointer<EntryForm> sighting = askForSighting(nullptr, &yard, {.colony = id, .date = day("2026-09-14")});
    EXPECT_TRUE(ask(sighting));
    QPointer<EntryForm> treatment =
        askForTreatment(nullptr, &yard, {.colony = id, .date = day("2026-09-14"), .what = "acid"});
    ASSERT_TRUE(ask(treatment));
    EXPECT_TRUE(yard.records(id)->treatments.empty());
    treatment->doubts()->sureButton()->click();
    settle();
    EXPECT_EQ(yard.records(id)->treatments.size(), 1U) << "it keeps no mark, but it is written";
    QPointer<EntryForm> hive =
        askForHive(nullptr, &yard, {.colony = id, .date = day("2026-09-14"), .hive = first().record.hive});
    EXPECT_TRUE(ask(hive));
    for (const auto& form : {note, sighting, treatment, hive}) delete form;
    book.playOn(day("2026-09-14"));
    QPointer<EntryForm> played = askForSighting(nullptr, &yard, {.colony = id, .date = day("2026-09-14")});
    EXPECT_FALSE(ask(played)) << "a yard to be tried out plays on its own day";
    delete played;
}

TEST_F(EarlierDesk, TheLogOfAScaleIsAskedAboutBeforeItIsWrittenDown) {
    open({colony("A")});
    QFile log(folder.filePath(QStringLiteral("log.csv")));
    ASSERT_TRUE(log.open(QIODevice::WriteOnly));
    log.write("time,weight_kg\n");
    for (int hour = 0; hour < 45 * 24; ++hour)
        log.write(QStringLiteral("%1 %2:00,%3\n")
                      .arg(QString::fromStdString(day("2026-08-01").plusDays(hour / 24).iso()))
                      .arg(hour % 24, 2, 10, QLatin1Char('0'))
                      .arg(34 - 0.03 * hour / 24, 0, 'f', 3)
                      .toUtf8());
    log.close();
    QPointer<ScaleLogDialog> dialog = new ScaleLogDialog(&yard, first().id, log.fileName());
    settle();
    EXPECT_TRUE(
        dialog->said().contains(QStringLiteral("the weighing of 2026-09-14: 14 September 2026 is still to come")))
        << dialog->said().toStdString();
    EXPECT_FALSE(dialog->importButton()->isEnabled());
    ASSERT_FALSE(dialog->sure()->isHidden());
    dialog->sure()->setChecked(true);
    ASSERT_TRUE(dialog->importButton()->isEnabled());
    dialog->importButton()->click();
    settle();
    const auto& weighings = yard.records(first().id)->weighings;
    ASSERT_GE(weighings.size(), 3U);
    EXPECT_FALSE(weighings.front().weighing.sure);
    EXPECT_TRUE(weighings.back().weighing.sure);
}

TEST_F(BookDesk, AnEmptyWeightIsHeldAgainstTheHive) {
    open({colony("A")});
    auto hive = first().record.hive;
    hive.tare = kilograms(3);
    QPointer<EntryForm> form =
        askForHive(nullptr, &yard, {.colony = first().id, .date = day("2026-09-14"), .hive = hive});
    form->save();
    settle();
    ASSERT_TRUE(form);
    EXPECT_TRUE(form->doubts()->question().contains(QStringLiteral("An empty weight of 3.0 kg is little")))
        << form->doubts()->question().toStdString();
    EXPECT_TRUE(form->doubts()->sureButton()->isHidden()) << "it cannot be";
    delete form;
}

TEST_F(BookDesk, AnUnlikelyWeightIsAskedAboutAndStaysAsTyped) {
    open({colony("A")});
    QPointer<EntryForm> form = askForWeighing(nullptr, &yard, gross(first().id, 0));
    auto* field = amount(form, "Whole hive");
    ASSERT_TRUE(field);
    const double heaviest = answer::boundsOfCase(first().record, *invented::shipped()).heaviest.value();
    field->setText(QString::number(heaviest * 1.1, 'f', 1) + QStringLiteral(" kg"));
    const QString typed = field->text();
    form->save();
    settle();
    ASSERT_TRUE(form) << "nothing is written yet";
    EXPECT_TRUE(form->doubts()->asks());
    EXPECT_TRUE(form->doubts()->question().contains(QStringLiteral("cannot well be")))
        << form->doubts()->question().toStdString();
    EXPECT_EQ(field->text(), typed);
    const auto* question = form->doubts()->findChild<QLabel*>();
    ASSERT_TRUE(question && question->isVisible());
    EXPECT_GE(question->height(), question->heightForWidth(question->width())) << "no line of it is cut";
    EXPECT_TRUE(form->doubts()->sureButton()->text().contains(typed));
    EXPECT_TRUE(yard.records(first().id)->weighings.empty());
    form->doubts()->sureButton()->click();
    settle();
    ASSERT_EQ(yard.records(first().id)->weighings.size(), 1U);
    EXPECT_TRUE(yard.records(first().id)->weighings[0].weighing.sure);
    delete form;
}

TEST_F(BookDesk, ASlippedCommaIsPutRightByItsButton) {
    open({colony("A")});
    QPointer<EntryForm> form = askForWeighing(nullptr, &yard, gross(first().id, 0));
    amount(form, "Whole hive")->setText(QStringLiteral("345 kg"));
    form->save();
    ASSERT_TRUE(form->doubts()->asks());
    EXPECT_TRUE(form->doubts()->sureButton()->isHidden()) << "it cannot be";
    EXPECT_EQ(form->doubts()->meantButton()->text().toStdString(), "It is 34.5 kg");
    form->doubts()->meantButton()->click();
    settle();
    ASSERT_EQ(yard.records(first().id)->weighings.size(), 1U);
    EXPECT_EQ(yard.records(first().id)->weighings[0].weighing,
              (book::WeighingRecord{day("2026-09-13"), book::ScaleReading{kilograms(34.5)}}));
    delete form;
}

TEST_F(BookDesk, ALikelyWeightIsNotAskedAboutAndIsNotMarked) {
    open({colony("A")});
    QPointer<EntryForm> form = askForWeighing(nullptr, &yard, gross(first().id, 0));
    amount(form, "Whole hive")->setText(QStringLiteral("34.5 kg"));
    form->save();
    settle();
    ASSERT_EQ(yard.records(first().id)->weighings.size(), 1U);
    EXPECT_FALSE(yard.records(first().id)->weighings[0].weighing.sure);
    delete form;
}

TEST_F(BookDesk, AFeedNobodyCanTakeIsRefusedInItsForm) {
    open({colony("A")});
    QPointer<EntryForm> form = askForFeed(
        nullptr, &yard, {.colony = first().id, .feed = {day("2026-09-13"), book::FeedKind::DrySugar, {}, {}, {}, {}}});
    amount(form, "Sugar in it")->setText(QStringLiteral("100 kg"));
    form->save();
    settle();
    ASSERT_TRUE(form);
    EXPECT_TRUE(form->doubts()->asks());
    EXPECT_TRUE(form->doubts()->sureButton()->isHidden());
    EXPECT_TRUE(yard.records(first().id)->feeds.empty());
    delete form;
}

TEST_F(BookDesk, AWeightTypedOnThePageStaysAndIsAskedAboutBesideIt) {
    open({colony("A")});
    LookPage page(&yard);
    page.show(first().id);
    EXPECT_FALSE(page.doubts()->asks());
    yard.writeWeighing(gross(first().id, 345));
    settle();
    ASSERT_TRUE(page.doubts()->asks());
    EXPECT_EQ(page.doubts()->meantButton()->text().toStdString(), "It is 34.5 kg");
    page.doubts()->meantButton()->click();
    settle();
    EXPECT_FALSE(page.doubts()->asks());
    EXPECT_EQ(yard.records(first().id)->weighings.at(0).weighing.reading,
              (decltype(book::WeighingRecord::reading)(book::ScaleReading{kilograms(34.5)})));
}

TEST_F(BookDesk, BeesThatAreSureAreAskedAboutOnce) {
    open({colony("A")});
    LookPage page(&yard);
    page.show(first().id);
    auto look = yard.lookToEdit(first().id);
    const double places = answer::boundsOfCase(first().record, *invented::shipped()).places;
    look.bees = withBees(look.bees, BeesToldBy::Seams, places + 2);
    yard.writeLook(look);
    settle();
    ASSERT_TRUE(page.doubts()->asks()) << places;
    page.doubts()->sureButton()->click();
    settle();
    EXPECT_FALSE(page.doubts()->asks());
    EXPECT_TRUE(yard.lookToEdit(first().id).sure);
    EXPECT_TRUE(onDisk().bees.sure);
}

} // namespace winterlarder::desk
