// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/entry_forms.h"

#include "book/case_of.h"
#include "exchange/case/hive_room.h"
#include "fields/day_field.h"
#include "forms/form_values.h"
#include "models/colony_edits.h"
#include "models/words.h"
#include "text/choice_words.h"
#include "text/contexts.h"

#include <QCheckBox>
#include <QPlainTextEdit>

namespace winterlarder::desk {

namespace {

using Quantity = QuantityField::Kind;

} // namespace

EntryForm* askForLook(QWidget* parent, Yard* yard, const book::Look& look) {
    auto* form = new EntryForm(
        parent, look.id.number ? say::EntryForms::tr("Change the look") : say::EntryForms::tr("A new look"), yard);
    form->judgedBy(text::GuidePage::Bees);
    auto* day = form->day(say::EntryForms::tr("&Day"), look.date);
    auto* toldBy =
        form->choice<BeesToldBy>(say::EntryForms::tr("&Bees"),
                                 {{say::EntryForms::tr("not counted"), BeesToldBy::NotTold},
                                  {words::worded(say::EntryForms::tr("%{combs} covered")), BeesToldBy::CoveredCombs},
                                  {say::EntryForms::tr("seams of bees"), BeesToldBy::Seams},
                                  {say::EntryForms::tr("bees, counted"), BeesToldBy::Count}},
                                 beesToldBy(look.bees));
    auto* told = form->quantity(say::EntryForms::tr("&How many"), Quantity::Number, "bees.count",
                                beesToldBy(look.bees) == BeesToldBy::NotTold ? std::nullopt
                                                                             : std::optional(beesTold(look.bees)));
    auto* queen = form->maybe(say::EntryForms::tr("&Queen seen"), look.bees.queenSeen);
    auto* eggs = form->maybe(say::EntryForms::tr("&Eggs seen"), look.bees.eggsSeen);
    auto* sealed = form->maybe(say::EntryForms::tr("&Sealed brood seen"), look.sealedBrood);
    auto* pollen = form->maybe(say::EntryForms::tr("&Pollen coming in"), look.pollenComingIn);
    std::vector<std::pair<QString, int>> tempers{{say::EntryForms::tr("not said"), -1}};
    for (const auto& [words, each] : text::choices<book::Temper>()) tempers.emplace_back(words, static_cast<int>(each));
    auto* temper =
        form->choice<int>(say::EntryForms::tr("&Temper"), tempers, look.temper ? static_cast<int>(*look.temper) : -1);
    auto* water = form->quantity(say::EntryForms::tr("&Water in the honey, %"), Quantity::Number, "moisture_percent",
                                 look.moisturePercent);
    auto* trouble = form->flag(say::EntryForms::tr("S&igns of disease"), look.bees.trouble);
    auto* signs = form->line(say::EntryForms::tr("Which si&gns"), look.troubleSigns);
    auto* note = form->lines(say::EntryForms::tr("&Note"), look.note);
    form->setEdit([=]() -> EntryForm::Made {
        auto now = look;
        const auto how = chosen<BeesToldBy>(toldBy);
        if (how != BeesToldBy::NotTold && !told->value())
            return words::worded(say::EntryForms::tr("How many bees, %{combs} or seams were there?"));
        now.date = day->day();
        now.bees = withBees(now.bees, how, told->value().value_or(0));
        now.bees.queenSeen = said(queen);
        now.bees.eggsSeen = said(eggs);
        now.bees.trouble = trouble->isChecked();
        now.sealedBrood = said(sealed);
        now.pollenComingIn = said(pollen);
        const int temperChosen = chosen<int>(temper);
        now.temper = temperChosen < 0 ? std::nullopt : std::optional(static_cast<book::Temper>(temperChosen));
        now.moisturePercent = water->value();
        now.troubleSigns = plain(signs);
        now.note = plain(note);
        return written(now);
    });
    form->open();
    return form;
}

EntryForm* askForNote(QWidget* parent, Yard* yard, const book::Look& look) {
    auto* form = new EntryForm(parent, say::EntryForms::tr("A note"), yard);
    auto* day = form->day(say::EntryForms::tr("&Day"), look.date);
    auto* note = form->lines(say::EntryForms::tr("&Note"), look.note);
    form->setEdit([=]() -> EntryForm::Made {
        auto now = look;
        now.date = day->day();
        now.note = plain(note);
        if (now.note.empty()) return say::EntryForms::tr("Nothing was written.");
        return written(now);
    });
    form->open();
    note->setFocus();
    return form;
}

EntryForm* askForWeighing(QWidget* parent, Yard* yard, const book::Weighing& weighing) {
    auto* form = new EntryForm(
        parent, weighing.id.number ? say::EntryForms::tr("Change the weighing") : say::EntryForms::tr("A new weighing"),
        yard);
    form->judgedBy(text::GuidePage::Weight);
    const auto& reading = weighing.weighing.reading;
    const auto* scale = std::get_if<book::ScaleReading>(&reading);
    const auto* lift = std::get_if<book::LiftReading>(&reading);
    const auto* heft = std::get_if<book::HeftWord>(&reading);
    const bool unread = weighing.id == book::WeighingId{};
    auto* day = form->day(say::EntryForms::tr("&Day"), weighing.weighing.date);
    auto* how = form->choice<WeighedBy>(say::EntryForms::tr("&How"),
                                        {{say::EntryForms::tr("on a scale"), WeighedBy::Scale},
                                         {say::EntryForms::tr("both sides lifted"), WeighedBy::BothSides},
                                         {say::EntryForms::tr("one side lifted"), WeighedBy::OneSide},
                                         {say::EntryForms::tr("hefted"), WeighedBy::Heft}},
                                        weighedBy(weighing.weighing));
    const auto side = [&](std::size_t at) {
        return lift && lift->sides.size() > at ? std::optional(lift->sides[at].value()) : std::nullopt;
    };
    auto* gross = form->quantity(say::EntryForms::tr("&Whole hive"), Quantity::Mass, "weighings.gross_kg",
                                 scale && !unread ? std::optional(scale->gross.value()) : std::nullopt);
    auto* one = form->quantity(say::EntryForms::tr("&One side"), Quantity::Mass, "weighings.lift_kg", side(0));
    auto* other = form->quantity(say::EntryForms::tr("The o&ther side"), Quantity::Mass, "weighings.lift_kg", side(1));
    auto* wet = form->flag(say::EntryForms::tr("Rain or snow lay &on it"), weighing.wet);
    auto* felt = form->choice(say::EntryForms::tr("It &felt"), text::choices<book::HeftWord>(),
                              heft ? *heft : book::HeftWord::Fair);
    auto* note = form->lines(say::EntryForms::tr("&Note"), weighing.note);
    const auto fit = [=] {
        const auto by = chosen<WeighedBy>(how);
        showOnly(gross, by == WeighedBy::Scale);
        showOnly(one, by == WeighedBy::OneSide || by == WeighedBy::BothSides);
        showOnly(other, by == WeighedBy::BothSides);
        showOnly(felt, by == WeighedBy::Heft);
    };
    QObject::connect(how, &QComboBox::currentIndexChanged, form, fit);
    fit();
    form->setEdit([=]() -> EntryForm::Made {
        auto now = weighing;
        now.weighing.date = day->day();
        now.wet = wet->isChecked();
        now.note = plain(note);
        const auto missing = [] { return say::EntryForms::tr("How much did it weigh?"); };
        switch (chosen<WeighedBy>(how)) {
        case WeighedBy::Scale:
            if (!gross->value()) return missing();
            now.weighing.reading = book::ScaleReading{*mass(gross)};
            break;
        case WeighedBy::BothSides:
            if (!one->value() || !other->value()) return missing();
            now.weighing.reading = book::LiftReading{{*mass(one), *mass(other)}};
            break;
        case WeighedBy::OneSide:
            if (!one->value()) return missing();
            now.weighing.reading = book::LiftReading{{*mass(one)}};
            break;
        default: now.weighing.reading = chosen<book::HeftWord>(felt);
        }
        return written(now);
    });
    form->open();
    return form;
}

EntryForm* askForFeed(QWidget* parent, Yard* yard, const book::Feed& feed) {
    auto* form = new EntryForm(
        parent, feed.id.number ? say::EntryForms::tr("Change the feed") : say::EntryForms::tr("What was fed"), yard);
    form->judgedBy(text::GuidePage::Feeding);
    auto* day = form->day(say::EntryForms::tr("&Day"), feed.feed.date);
    auto* kind = form->choice(say::EntryForms::tr("&What"), text::choices<book::FeedKind>(), feed.feed.kind);
    auto* sugar =
        form->quantity(say::EntryForms::tr("&Sugar in it"), Quantity::Mass, "feeds.sugar_kg", number(feed.feed.sugar));
    auto* syrup =
        form->quantity(say::EntryForms::tr("or s&yrup"), Quantity::Volume, "feeds.syrup_l", number(feed.feed.syrup));
    auto* ratio = form->line(say::EntryForms::tr("s&ugar to water, by weight"),
                             feed.feed.ratio.value_or(feed.id.number ? "" : "3:2"));
    auto* fondant =
        form->quantity(say::EntryForms::tr("&Fondant"), Quantity::Mass, "feeds.fondant_kg", number(feed.feed.fondant));
    auto* note = form->lines(say::EntryForms::tr("&Note"), feed.note);
    const auto fit = [=] {
        const auto what = chosen<book::FeedKind>(kind);
        showOnly(sugar, what != book::FeedKind::Fondant);
        showOnly(syrup, what == book::FeedKind::Syrup);
        showOnly(ratio, what == book::FeedKind::Syrup);
        showOnly(fondant, what == book::FeedKind::Fondant);
    };
    QObject::connect(kind, &QComboBox::currentIndexChanged, form, fit);
    fit();
    form->setEdit([=]() -> EntryForm::Made {
        auto now = feed;
        const auto what = chosen<book::FeedKind>(kind);
        const bool liquid = what == book::FeedKind::Syrup;
        now.feed = {.date = day->day(), .kind = what};
        if (now.feed.date == feed.feed.date)
            now.feed.afterLook = feed.feed.afterLook; // of another day it is to be told anew
        if (what == book::FeedKind::Fondant) now.feed.fondant = mass(fondant);
        else now.feed.sugar = mass(sugar);
        if (liquid) now.feed.syrup = volume(syrup);
        if (liquid && now.feed.syrup && !plain(ratio).empty()) now.feed.ratio = plain(ratio);
        if (!now.feed.sugar && !now.feed.syrup && !now.feed.fondant) return say::EntryForms::tr("How much was fed?");
        now.note = plain(note);
        const auto* colony = yard->find(now.colony);
        return feedGiven(now, colony ? colony->visits : std::vector<book::PlannedVisit>{});
    });
    form->open();
    return form;
}

EntryForm* askForHarvest(QWidget* parent, Yard* yard, const book::Harvest& harvest) {
    auto* form = new EntryForm(
        parent, harvest.id.number ? say::EntryForms::tr("Change the harvest") : say::EntryForms::tr("What was taken"),
        yard);
    form->judgedBy(text::GuidePage::Cells);
    const bool unsaid = harvest.id == book::HarvestId{};
    auto* day = form->day(say::EntryForms::tr("&Day"), harvest.harvest.date);
    auto* honey = form->quantity(say::EntryForms::tr("&Honey"), Quantity::Mass, "harvests.kg",
                                 unsaid ? std::nullopt : std::optional(harvest.harvest.honey.value()));
    auto* combs = form->quantity(words::worded(say::EntryForms::tr("&%{Combs}")), Quantity::Whole, "harvests.combs",
                                 harvest.combs ? std::optional<double>(*harvest.combs) : std::nullopt);
    auto* water = form->quantity(say::EntryForms::tr("&Water in it, %"), Quantity::Number, "moisture_percent",
                                 harvest.moisturePercent);
    auto* note = form->lines(say::EntryForms::tr("&Note"), harvest.note);
    honey->require(true);
    form->setEdit([=]() -> EntryForm::Made {
        auto now = harvest;
        now.harvest = {day->day(), *mass(honey)};
        if (now.harvest.date == harvest.harvest.date) now.harvest.afterLook = harvest.harvest.afterLook;
        now.combs = combs->value() ? std::optional(static_cast<int>(*combs->value())) : std::nullopt;
        now.moisturePercent = water->value();
        now.note = plain(note);
        return written(now);
    });
    form->open();
    return form;
}

EntryForm* askForTreatment(QWidget* parent, Yard* yard, const book::Treatment& treatment) {
    auto* form = new EntryForm(
        parent, treatment.id.number ? say::EntryForms::tr("Change the treatment") : say::EntryForms::tr("A treatment"),
        yard);
    form->judgedBy(text::GuidePage::Winter);
    auto* day = form->day(say::EntryForms::tr("&From"), treatment.date);
    auto* ended = form->flag(say::EntryForms::tr("It is &over"), treatment.until.has_value());
    auto* until = form->day(say::EntryForms::tr("&Until"), treatment.until.value_or(treatment.date));
    auto* what = form->line(say::EntryForms::tr("&What was given"), treatment.what);
    auto* note = form->lines(say::EntryForms::tr("&Note"), treatment.note);
    form->say(say::EntryForms::tr(
        "Used only to warn about the honey. Which medicine may be given, how and when, the label, the vet and local law say."));
    until->setEnabled(ended->isChecked());
    until->setRange(treatment.date, std::nullopt);
    QObject::connect(day, &DayField::valueEntered, until, [until](Date from) { until->setRange(from, std::nullopt); });
    QObject::connect(ended, &QCheckBox::toggled, until, &QWidget::setEnabled);
    form->setEdit([=]() -> EntryForm::Made {
        auto now = treatment;
        now.date = day->day();
        now.until = ended->isChecked() ? std::optional(until->day()) : std::nullopt;
        now.what = plain(what);
        now.note = plain(note);
        if (now.what.empty()) return say::EntryForms::tr("What was given?");
        if (now.until && *now.until < now.date) return say::EntryForms::tr("It ends before it begins.");
        return written(now);
    });
    form->open();
    return form;
}

book::Look newLook(const book::ColonyHistory& records, Date day) {
    book::Look look{.colony = records.colony.id, .date = day};
    const auto* last = book::lastLook(records, day);
    if (last && day.daysSince(last->date) <= book::oldestObservationDays) look.combs = last->combs;
    return look;
}

book::Housing housingOn(const book::ColonyHistory& records, Date day) {
    book::Housing now{.colony = records.colony.id, .date = day, .hive = records.colony.hive};
    for (const auto& housing : records.housings) {
        if (housing.date > day) break;
        now.hive = housing.hive;
        if (housing.date == day) now = housing;
    }
    return now;
}

std::vector<book::CombRecord> emptyCombs(const book::HiveRecord& hive, const ReferenceData& reference) {
    std::vector<book::CombRecord> combs;
    for (const auto& box : exchange::roomOfBoxes(hive, reference))
        for (int place = 0; place < box.places; ++place) {
            book::CombRecord comb;
            comb.inSuper = box.super;
            combs.push_back(comb);
        }
    return combs;
}

} // namespace winterlarder::desk
