// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/form/edits.h"

#include "book/entries/date_of.h"
#include "book/form/entry_rows.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::book {
namespace {

using Targets = std::vector<Target>;

Problem gone(const std::string& what, std::int64_t id) {
    return {ProblemKind::Input, {}, fmt::format("there is no {} {}", what, id), "it may have been removed meanwhile"};
}

//! Works out one edit after the other; later ones see what earlier ones of the same step have made.
class Expansion {
public:
    Expansion(std::string who, EditReader& reader) : who_(std::move(who)), reader_(reader) {}

    template <class Entry> void operator()(const Add<Entry>& edit) { add(edit.entry); }
    template <class Entry> void operator()(const Change<Entry>& edit) { change(edit.entry); }
    template <class Entry> void operator()(const Remove<Entry>& edit) {
        if (!current(kindOf<Entry>, edit.id.number)) return fail<Entry>(edit.id);
        if (std::is_same_v<Entry, Yard> && yardInUse(edit.id.number)) return;
        remove(kindOf<Entry>, edit.id.number);
    }
    void operator()(const ChangeComb& edit) {
        auto look = find(edit.look);
        if (!look) return;
        auto* combs = std::get_if<std::vector<CombRecord>>(&look->combs);
        if (!combs || edit.place >= combs->size()) {
            problems.push_back({ProblemKind::Input,
                                {},
                                fmt::format("look {} has no comb {}", edit.look.number, edit.place + 1),
                                "count the combs it lists"});
            return;
        }
        (*combs)[edit.place] = edit.comb;
        change(*look);
    }
    void operator()(const MarkVisitDone& edit) {
        auto visit = find(edit.visit);
        if (!visit) return;
        visit->state = VisitState::Done;
        visit->doneOn = edit.on;
        change(*visit);
        const bool fed = visit->sugar || visit->syrup || visit->fondant;
        if (visit->what == VisitKind::Check || !fed) return;
        const auto kind = visit->what == VisitKind::Fondant ? FeedKind::Fondant : FeedKind::Syrup;
        add(Feed{.colony = visit->colony,
                 .feed = {edit.on, kind, visit->sugar, visit->syrup, edit.ratio, visit->fondant}});
    }
    void operator()(const SkipVisit& edit) {
        auto visit = find(edit.visit);
        if (!visit) return;
        visit->state = VisitState::Skipped;
        visit->doneOn.reset();
        change(*visit);
    }
    void operator()(const AcceptAdvice& edit) {
        const ActedAdviceId advice = add(edit.advice);
        for (auto visit : edit.visits) {
            visit.advice = advice;
            add(std::move(visit));
        }
    }
    void operator()(const ChangeHive& edit) {
        add(edit.done);
        add(edit.hive);
    }
    void operator()(const MoveCombs& edit) {
        add(edit.done);
        if (edit.from) add(*edit.from);
        if (edit.to) add(*edit.to);
    }
    void operator()(const UniteColonies& edit) {
        add(Fate{.colony = edit.from, .date = edit.on, .fate = FateKind::United, .into = edit.into, .note = edit.note});
    }

    Targets targets;
    Problems problems;

private:
    template <class Entry> void fail(Id<Entry> id) {
        problems.push_back(gone(tableOf(kindOf<Entry>).singular, id.number));
    }

    std::optional<Row> current(Kind kind, std::int64_t id) {
        for (auto target = targets.rbegin(); target != targets.rend(); ++target)
            if (target->kind == kind && target->id == id) return target->row;
        return reader_.row(kind, id);
    }

    template <class Entry> std::optional<Entry> find(Id<Entry> id) {
        const auto row = current(kindOf<Entry>, id.number);
        if (!row) return fail(id), std::nullopt;
        auto entry = entryOf<Entry>(id.number, *row);
        if (entry) return std::move(entry).value();
        problems.insert(problems.end(), entry.problems().begin(), entry.problems().end());
        return std::nullopt;
    }

    template <class Entry> Id<Entry> add(Entry entry) {
        const Id<Entry> id{reader_.newId(kindOf<Entry>)};
        if (entry.by.empty()) entry.by = who_;
        if constexpr (std::is_same_v<Entry, Feed>) tellOrder(entry, entry.feed.afterLook);
        if constexpr (std::is_same_v<Entry, Harvest>) tellOrder(entry, entry.harvest.afterLook);
        targets.push_back({kindOf<Entry>, id.number, rowOf(std::move(entry))});
        return id;
    }

    //! Whoever writes down a feed or harvest when the look of its day is already there made it after that look, unless it is said.
    template <class Entry> void tellOrder(Entry& entry, std::optional<bool>& afterLook) {
        if (!afterLook) afterLook = lookedAtOn(entry.colony, dateOf(entry));
    }
    bool lookedAtOn(ColonyId colony, Date day) {
        const auto isThatLook = [&](const Row& row) {
            const auto look = entryOf<Look>(0, row);
            return look && look->colony == colony && look->date == day;
        };
        for (const auto& target : targets)
            if (target.kind == Kind::Look && target.row && isThatLook(*target.row)) return true;
        for (const auto id : reader_.referring(Kind::Look, "colony", colony.number)) {
            const auto row = current(Kind::Look, id);
            if (row && isThatLook(*row)) return true;
        }
        return false;
    }

    template <class Entry> void change(const Entry& entry) {
        if (!current(kindOf<Entry>, entry.id.number)) return fail(entry.id);
        targets.push_back({kindOf<Entry>, entry.id.number, rowOf(entry)});
    }

    bool yardInUse(std::int64_t id) {
        const auto colonies = reader_.referring(Kind::Colony, "yard", id).size();
        const auto moves = reader_.referring(Kind::Move, "yard", id).size();
        if (colonies + moves == 0) return false;
        problems.push_back({ProblemKind::Input,
                            {},
                            fmt::format("yard {} is in use by {} colonies and {} moves", id, colonies, moves),
                            "move or remove its colonies first"});
        return true;
    }

    //! Removes the entry, whatever cannot be without it, and every mention of it elsewhere.
    void remove(Kind kind, std::int64_t id) {
        for (const auto& table : tables())
            for (const auto& column : table.columns)
                if (column.refersTo == kind)
                    for (const auto referring : reader_.referring(table.kind, column.name, id))
                        forget(table, column, referring);
        targets.push_back({kind, id, std::nullopt});
    }
    void forget(const Table& table, const Column& column, std::int64_t id) {
        auto row = current(table.kind, id);
        if (!row) return;
        if (column.required) return remove(table.kind, id);
        row->values[*table.column(column.name)] = {};
        targets.push_back({table.kind, id, std::move(row)});
    }

    std::string who_;
    EditReader& reader_;
};

struct VerbName {
    template <class Entry> std::string operator()(const Add<Entry>&) const {
        return "add " + tableOf(kindOf<Entry>).singular;
    }
    template <class Entry> std::string operator()(const Change<Entry>&) const {
        return "change " + tableOf(kindOf<Entry>).singular;
    }
    template <class Entry> std::string operator()(const Remove<Entry>&) const {
        return "remove " + tableOf(kindOf<Entry>).singular;
    }
    std::string operator()(const ChangeComb&) const { return "change comb"; }
    std::string operator()(const MarkVisitDone&) const { return "mark visit done"; }
    std::string operator()(const SkipVisit&) const { return "skip visit"; }
    std::string operator()(const AcceptAdvice&) const { return "accept advice"; }
    std::string operator()(const ChangeHive&) const { return "change hive"; }
    std::string operator()(const MoveCombs&) const { return "move combs"; }
    std::string operator()(const UniteColonies&) const { return "unite colonies"; }
};

} // namespace

template <class Verb>
requires isAmong<Verb, AnyVerb> SingleEdit::SingleEdit(Verb verb)
    : AnyVerb(std::in_place_type<Verb>, std::move(verb)) {}
#define WINTERLARDER_VERBS_OF(Entry)                                                                                   \
    template SingleEdit::SingleEdit(Add<Entry>);                                                                       \
    template SingleEdit::SingleEdit(Change<Entry>);                                                                    \
    template SingleEdit::SingleEdit(Remove<Entry>);
WINTERLARDER_FOR_ENTRIES(WINTERLARDER_VERBS_OF)
#undef WINTERLARDER_VERBS_OF
template SingleEdit::SingleEdit(ChangeComb);
template SingleEdit::SingleEdit(MarkVisitDone);
template SingleEdit::SingleEdit(SkipVisit);
template SingleEdit::SingleEdit(AcceptAdvice);
template SingleEdit::SingleEdit(ChangeHive);
template SingleEdit::SingleEdit(MoveCombs);
template SingleEdit::SingleEdit(UniteColonies);
SingleEdit::SingleEdit(const SingleEdit&) = default;
SingleEdit::SingleEdit(SingleEdit&&) noexcept = default;
SingleEdit& SingleEdit::operator=(const SingleEdit&) = default;
SingleEdit& SingleEdit::operator=(SingleEdit&&) noexcept = default;
SingleEdit::~SingleEdit() = default;

std::string verbOf(const Edit& edit) {
    if (const auto* together = std::get_if<EditGroup>(&edit)) return together->verb;
    if (const auto* put = std::get_if<PutEntries>(&edit)) return put->verb;
    return std::visit(VerbName{}, static_cast<const AnyVerb&>(std::get<SingleEdit>(edit)));
}

Outcome<std::vector<Target>> targetsOf(const Edit& edit, const std::string& who, EditReader& reader) {
    if (const auto* put = std::get_if<PutEntries>(&edit)) return put->targets;
    Expansion expansion(who, reader);
    if (const auto* together = std::get_if<EditGroup>(&edit))
        for (const auto& single : together->edits) std::visit(expansion, static_cast<const AnyVerb&>(single));
    else std::visit(expansion, static_cast<const AnyVerb&>(std::get<SingleEdit>(edit)));
    if (!expansion.problems.empty()) return expansion.problems;
    return std::move(expansion.targets);
}

} // namespace winterlarder::book
