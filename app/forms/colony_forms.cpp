// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/day_field.h"
#include "fields/place_field.h"
#include "forms/boxes_field.h"
#include "forms/entry_forms.h"
#include "text/choice_words.h"
#include "text/contexts.h"

#include <QCheckBox>
#include <QPlainTextEdit>

namespace winterlarder::desk {

namespace {

using Quantity = QuantityField::Kind;

//! Fields of a hive, shared by the colony it began in and every later one.
struct HiveFields {
    BoxesField* boxes;
    QComboBox* shell;
    QCheckBox* top;
    QCheckBox* nucleus;
    QuantityField* tare;

    HiveFields(EntryForm* form, Yard* yard, const book::HiveRecord& hive) {
        boxes = new BoxesField(form, *yard->book()->reference());
        boxes->show(hive.boxes);
        form->add(say::EntryForms::tr("&Boxes, as they stand"), boxes);
        shell = form->choice(say::EntryForms::tr("&Walls"), text::choices<book::Shell>(), hive.shell);
        top = form->flag(say::EntryForms::tr("Insulated on &top"), hive.topInsulation);
        nucleus = form->flag(say::EntryForms::tr("Kept &small on purpose"), hive.nucleus);
        tare = form->quantity(say::EntryForms::tr("&Empty weight, if known"), Quantity::Mass, "hive.tare_kg",
                              hive.tare ? std::optional(hive.tare->value()) : std::nullopt);
    }
    //! What is wrong with the boxes, with the focus on it.
    QString fault() const {
        const QString wrong = boxes->fault();
        if (!wrong.isEmpty()) boxes->goToFault();
        return wrong;
    }
    book::HiveRecord read(book::HiveRecord hive) const {
        hive.boxes = boxes->boxes();
        hive.shell = chosen<book::Shell>(shell);
        hive.topInsulation = top->isChecked();
        hive.nucleus = nucleus->isChecked();
        hive.tare = tare->value() ? std::optional(Mass(*tare->value())) : std::nullopt;
        return hive;
    }
};

template <class Choice> std::vector<std::pair<QString, int>> orNotSaid() {
    std::vector<std::pair<QString, int>> all{{say::EntryForms::tr("not said"), -1}};
    for (const auto& [words, each] : text::choices<Choice>()) all.emplace_back(words, static_cast<int>(each));
    return all;
}

template <class Choice> std::optional<Choice> chosenOrNot(const QComboBox* box) {
    const int value = chosen<int>(box);
    return value < 0 ? std::nullopt : std::optional(static_cast<Choice>(value));
}

template <class Choice> int orNot(const std::optional<Choice>& choice) {
    return choice ? static_cast<int>(*choice) : -1;
}

} // namespace

EntryForm* askForColony(QWidget* parent, Yard* yard, const book::Colony& colony) {
    const bool added = colony.id == book::ColonyId{};
    auto* form =
        new EntryForm(parent, added ? say::EntryForms::tr("A new colony") : say::EntryForms::tr("The colony"), yard);
    form->judgedBy(text::GuidePage::FullComb);
    auto* name = form->line(say::EntryForms::tr("&Name"), colony.name);
    const auto hive = added ? std::make_shared<HiveFields>(form, yard, colony.hive) : nullptr;
    auto* bees =
        form->choice<int>(say::EntryForms::tr("&Kind of bees"), orNotSaid<book::BeeKind>(), orNot(colony.beeKind));
    auto* year = form->quantity(say::EntryForms::tr("Year of the &queen"), Quantity::Whole, "colonies.queen_year",
                                colony.queenYear ? std::optional<double>(*colony.queenYear) : std::nullopt);
    auto* colour = form->choice<int>(say::EntryForms::tr("&Colour of her mark, if another than her year's"),
                                     orNotSaid<book::QueenColour>(), orNot(colony.queenColour));
    auto* feeder = form->choice<int>(say::EntryForms::tr("&Feeder"), orNotSaid<book::FeederKind>(),
                                     colony.feeder ? static_cast<int>(colony.feeder->kind) : -1);
    auto* holds = form->quantity(
        say::EntryForms::tr("It &holds"), Quantity::Volume, "feeder.capacity_l",
        colony.feeder && colony.feeder->capacity ? std::optional(colony.feeder->capacity->value()) : std::nullopt);
    auto* origin = form->line(say::EntryForms::tr("Where it ca&me from"), colony.origin);
    auto* note = form->lines(say::EntryForms::tr("N&ote"), colony.note);
    form->setEdit([=]() -> EntryForm::Made {
        auto now = colony;
        now.name = plain(name);
        if (now.name.empty()) return say::EntryForms::tr("The colony needs a name.");
        if (const QString wrong = hive ? hive->fault() : QString(); !wrong.isEmpty()) return wrong;
        if (hive) now.hive = hive->read(now.hive);
        now.beeKind = chosenOrNot<book::BeeKind>(bees);
        now.queenYear = year->value() ? std::optional(static_cast<int>(*year->value())) : std::nullopt;
        now.queenColour = chosenOrNot<book::QueenColour>(colour);
        const auto kind = chosenOrNot<book::FeederKind>(feeder);
        now.feeder.reset();
        if (kind)
            now.feeder =
                book::FeederRecord{*kind, holds->value() ? std::optional(Volume(*holds->value())) : std::nullopt};
        now.origin = plain(origin);
        now.note = plain(note);
        return book::Edit(added ? book::SingleEdit(book::AddColony{now}) : book::SingleEdit(book::ChangeColony{now}));
    });
    form->open();
    name->setFocus();
    return form;
}

EntryForm* askForHive(QWidget* parent, Yard* yard, const book::Housing& housing) {
    auto* form = new EntryForm(parent, say::EntryForms::tr("The hive"), yard);
    form->judgedBy(text::GuidePage::FullComb);
    auto* day = form->day(say::EntryForms::tr("From this &day on"), housing.date);
    const auto hive = std::make_shared<HiveFields>(form, yard, housing.hive);
    auto* note = form->lines(say::EntryForms::tr("&Note"), housing.note);
    form->setEdit([=]() -> EntryForm::Made {
        if (const QString wrong = hive->fault(); !wrong.isEmpty()) return wrong;
        auto now = housing;
        now.date = day->day();
        now.hive = hive->read(now.hive);
        now.note = plain(note);
        const bool added = now.id == book::HousingId{};
        return book::Edit(added ? book::SingleEdit(book::AddHousing{now}) : book::SingleEdit(book::ChangeHousing{now}));
    });
    form->open();
    return form;
}

EntryForm* askForFate(QWidget* parent, Yard* yard, const book::Fate& fate) {
    auto* form = new EntryForm(parent, say::EntryForms::tr("What became of it"), yard);
    auto* day = form->day(say::EntryForms::tr("&Day"), fate.date);
    auto* what = form->choice(say::EntryForms::tr("&What"), text::choices<book::FateKind>(), fate.fate);
    std::vector<std::pair<QString, std::int64_t>> others;
    for (const auto& each : yard->colonies())
        if (each.id != fate.colony)
            others.emplace_back(QString::fromStdString(each.record.colony.value_or("")), each.id.number);
    auto* into = form->choice<std::int64_t>(say::EntryForms::tr("&Into"), others,
                                            fate.into        ? fate.into->number
                                            : others.empty() ? 0
                                                             : others.front().second);
    auto* cause = form->line(say::EntryForms::tr("&Of what, as far as is known"), fate.cause);
    auto* note = form->lines(say::EntryForms::tr("&Note"), fate.note);
    form->say(say::EntryForms::tr(
        "The colony leaves the yard from this day on; everything written of it stays in the book. Where disease may be the cause, the bee inspector comes first."));
    const auto fit = [=] {
        into->setEnabled(chosen<book::FateKind>(what) == book::FateKind::United);
        cause->setEnabled(chosen<book::FateKind>(what) == book::FateKind::Dead);
    };
    QObject::connect(what, &QComboBox::currentIndexChanged, form, fit);
    fit();
    form->setEdit([=]() -> EntryForm::Made {
        auto now = fate;
        now.date = day->day();
        now.fate = chosen<book::FateKind>(what);
        now.note = plain(note);
        now.cause = now.fate == book::FateKind::Dead ? plain(cause) : std::string();
        now.into.reset();
        if (now.fate == book::FateKind::United) {
            if (into->currentIndex() < 0) return say::EntryForms::tr("Into which colony?");
            now.into = book::ColonyId{chosen<std::int64_t>(into)};
        }
        const bool added = now.id == book::FateId{};
        if (added && now.into)
            return book::Edit(book::SingleEdit(book::UniteColonies{now.colony, *now.into, now.date, now.note}));
        return book::Edit(added ? book::SingleEdit(book::AddFate{now}) : book::SingleEdit(book::ChangeFate{now}));
    });
    form->open();
    return form;
}

EntryForm* askForYard(QWidget* parent, Yard* yard, const book::Yard& added) {
    auto* form = new EntryForm(parent, say::EntryForms::tr("A new yard"), yard);
    auto* name = form->line(say::EntryForms::tr("&Name"), added.name);
    auto* place = new PlaceField(form);
    place->useReference(yard->book()->reference());
    place->usePlaces(yard->book()->places());
    form->add(say::EntryForms::tr("&Where it is"), place);
    form->setEdit([=]() -> EntryForm::Made {
        auto now = added;
        now.name = plain(name);
        if (now.name.empty()) return say::EntryForms::tr("The yard needs a name.");
        if (!place->place())
            return say::EntryForms::tr("Choose a place from the list, or type latitude and longitude.");
        now.site.where = *place->place();
        now.site.elevationM = place->heightM();
        return book::Edit(book::SingleEdit(book::AddYard{now}));
    });
    form->open();
    name->setFocus();
    return form;
}

EntryForm* askForMove(QWidget* parent, Yard* yard, const book::Move& move) {
    auto* form = new EntryForm(parent, say::EntryForms::tr("To another yard"), yard);
    auto* day = form->day(say::EntryForms::tr("From this &day on"), move.date);
    std::vector<std::pair<QString, std::int64_t>> yards;
    for (const auto& each : yard->yards()) yards.emplace_back(QString::fromStdString(each.name), each.id.number);
    auto* to = form->choice<std::int64_t>(say::EntryForms::tr("It stands &in"), yards, move.yard.number);
    auto* note = form->lines(say::EntryForms::tr("&Note"), move.note);
    form->setEdit([=]() -> EntryForm::Made {
        auto now = move;
        now.date = day->day();
        now.yard = {chosen<std::int64_t>(to)};
        now.note = plain(note);
        const bool added = now.id == book::MoveId{};
        return book::Edit(added ? book::SingleEdit(book::AddMove{now}) : book::SingleEdit(book::ChangeMove{now}));
    });
    form->open();
    return form;
}

} // namespace winterlarder::desk
