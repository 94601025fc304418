// SPDX-License-Identifier: GPL-3.0-or-later
// Forms for what is seen of a colony in winter, and for how it came through.
#include "fields/day_field.h"
#include "forms/entry_forms.h"
#include "forms/form_values.h"
#include "models/words.h"
#include "text/choice_words.h"
#include "text/contexts.h"
#include "text/follow_words.h"

#include <QCheckBox>
#include <QPlainTextEdit>

namespace winterlarder::desk {

namespace {

using Quantity = QuantityField::Kind;

//! The questions after a death, seen only where the colony is dead; each may stay unanswered.
struct DeathFields {
    QComboBox *food, *heads, *mites, *brood, *queen;

    DeathFields(EntryForm* form, const book::WinterOutcome& outcome) {
        std::vector<std::pair<QString, int>> patterns{{say::EntryForms::tr("not said"), -1}};
        for (const auto& [words, each] : text::choices<book::BroodPattern>())
            patterns.emplace_back(words, static_cast<int>(each));
        food = form->maybe(text::deathQuestion("food_left"), outcome.foodLeft);
        heads = form->maybe(text::deathQuestion("heads_in_cells"), outcome.headsInCells);
        mites = form->maybe(text::deathQuestion("mites_on_floor"), outcome.mitesOnFloor);
        brood = form->choice<int>(text::deathQuestion("brood_pattern"), patterns,
                                  outcome.broodPattern ? static_cast<int>(*outcome.broodPattern) : -1);
        queen = form->maybe(text::deathQuestion("queen"), outcome.queen);
    }
    void showIf(bool dead) const {
        for (auto* field : {food, heads, mites, brood, queen}) showOnly(field, dead);
    }
    void answerInto(book::WinterOutcome& outcome) const {
        const int pattern = chosen<int>(brood);
        outcome.foodLeft = said(food);
        outcome.headsInCells = said(heads);
        outcome.mitesOnFloor = said(mites);
        outcome.broodPattern = pattern < 0 ? std::nullopt : std::optional(static_cast<book::BroodPattern>(pattern));
        outcome.queen = said(queen);
    }
};

book::WinterOutcome withoutAnswers(book::WinterOutcome outcome) {
    outcome.foodLeft = outcome.headsInCells = outcome.mitesOnFloor = outcome.queen = std::nullopt;
    outcome.broodPattern.reset();
    return outcome;
}

} // namespace

EntryForm* askForOutcome(QWidget* parent, Yard* yard, const book::WinterOutcome& outcome) {
    auto* form = new EntryForm(parent, say::EntryForms::tr("How the winter went"), yard);
    form->judgedBy(text::GuidePage::Winter);
    auto* day = form->day(say::EntryForms::tr("&Found out on"), outcome.date);
    auto* alive = form->flag(say::EntryForms::tr("It is &alive"), outcome.alive);
    auto* covered = form->quantity(words::worded(say::EntryForms::tr("%{Combs} &covered with bees")), Quantity::Number,
                                   "bees.covered_combs", outcome.coveredCombs);
    auto* left = form->quantity(say::EntryForms::tr("&Stores left"), Quantity::Mass, "winter_outcomes.stores_left_kg",
                                number(outcome.storesLeft));
    const DeathFields death(form, outcome);
    auto* note = form->lines(say::EntryForms::tr("&Note"), outcome.note);
    QObject::connect(alive, &QCheckBox::toggled, form, [death](bool lives) { death.showIf(!lives); });
    death.showIf(!outcome.alive);
    form->setEdit([=]() -> EntryForm::Made {
        auto now = withoutAnswers(outcome);
        now.date = day->day();
        now.alive = alive->isChecked();
        now.coveredCombs = covered->value();
        now.storesLeft = mass(left);
        if (!now.alive) death.answerInto(now);
        now.note = plain(note);
        return written(now);
    });
    form->open();
    return form;
}

EntryForm* askForSighting(QWidget* parent, Yard* yard, const book::Sighting& sighting) {
    auto* form = new EntryForm(parent, say::EntryForms::tr("A glance in winter"), yard);
    form->judgedBy(text::GuidePage::Winter);
    auto* day = form->day(say::EntryForms::tr("&Day"), sighting.date);
    auto* saw = form->choice(say::EntryForms::tr("What was &seen"), text::choices<book::SightingKind>(), sighting.saw);
    auto* seams =
        form->quantity(say::EntryForms::tr("Seams the cluster &fills"), Quantity::Number, "bees.seams", sighting.seams);
    auto* stores = form->maybe(say::EntryForms::tr("Sealed s&tores in sight"), sighting.stores);
    auto* note = form->lines(say::EntryForms::tr("&Note"), sighting.note);
    const auto fit = [=] { showOnly(seams, chosen<book::SightingKind>(saw) == book::SightingKind::Cluster); };
    QObject::connect(saw, &QComboBox::currentIndexChanged, form, fit);
    fit();
    form->setEdit([=]() -> EntryForm::Made {
        auto now = sighting;
        now.date = day->day();
        now.saw = chosen<book::SightingKind>(saw);
        now.seams = now.saw == book::SightingKind::Cluster ? seams->value() : std::nullopt;
        now.stores = said(stores);
        now.note = plain(note);
        return written(now);
    });
    form->open();
    return form;
}

} // namespace winterlarder::desk
