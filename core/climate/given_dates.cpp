// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/season.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <limits>
#include <string>

namespace winterlarder::climate {

namespace {

// One date of the season wherever it appears.
struct DateField {
    const char* key;
    std::optional<SeasonDate> SeasonDates::*dated;
    std::optional<SeasonDay> GivenDates::*given;
    double ModelConstants::*sd;
};

constexpr DateField lastIncomeField{"last_income", &SeasonDates::lastIncome, &GivenDates::lastIncome,
                                    &ModelConstants::incomeEndSd};
constexpr DateField broodStopField{"brood_stop", &SeasonDates::broodStop, &GivenDates::broodStop,
                                   &ModelConstants::broodStopSd};
constexpr DateField broodRestartField{"brood_restart", &SeasonDates::broodRestart, &GivenDates::broodRestart,
                                      &ModelConstants::broodRestartSd};
constexpr DateField buildupField{"buildup", &SeasonDates::buildup, &GivenDates::buildup, &ModelConstants::buildupSd};
constexpr DateField forageField{"forage", &SeasonDates::forage, &GivenDates::forage, &ModelConstants::forageSd};
constexpr DateField feedAdvisedByField{"feed_advised_by", &SeasonDates::feedAdvisedBy, &GivenDates::feedAdvisedBy,
                                       &ModelConstants::feedBySd};
constexpr DateField syrupDeadlineField{"syrup_deadline", &SeasonDates::syrupDeadline, &GivenDates::syrupDeadline,
                                       &ModelConstants::syrupSd};
constexpr DateField syrupRefusedField{"syrup_refused", &SeasonDates::syrupRefused, &GivenDates::syrupRefused,
                                      &ModelConstants::syrupRefusedSd};
constexpr std::array fields{lastIncomeField, broodStopField,     broodRestartField,  buildupField,
                            forageField,     feedAdvisedByField, syrupDeadlineField, syrupRefusedField};

// A date and the shortest time after the first of its chain, so that level = day - offset never falls along a chain.
struct Link {
    DateField field;
    int offset = 0;
};

constexpr int restartToForage = daysFromRestartToBuildup + daysFromBuildupToForage;
constexpr std::array broodChain{Link{broodStopField, 0}, Link{broodRestartField, 0},
                                Link{buildupField, daysFromRestartToBuildup}, Link{forageField, restartToForage}};
constexpr std::array springChain{broodChain[2], broodChain[3]};
constexpr std::array syrupChain{Link{feedAdvisedByField, 0}, Link{syrupDeadlineField, 0}, Link{syrupRefusedField, 0}};

class Overlay {
public:
    Overlay(const SeasonDates& derived, const GivenDates& given, SeasonDay asOf, const ModelConstants& constants,
            const std::optional<Winter>& winter)
        : dates_(derived), given_(given), asOf_(asOf), constants_(constants), winter_(winter) {}

    Outcome<SeasonDates> run() {
        checkRange();
        checkBroodPair();
        if (!problems_.empty()) return problems_;
        for (const DateField& field : fields) takeGiven(field);
        if (!dates_.broodless()) checkAgainstSolstice();
        if (dates_.broodless()) settle(broodChain.data(), broodChain.size(), false);
        else settle(springChain.data(), springChain.size(), false);
        settle(syrupChain.data(), syrupChain.size(), true);
        if (!problems_.empty()) return problems_;
        dates_.winterClass = classAfter();
        dates_.atEdgeOfRules = restsOnSearchLimit(dates_);
        return dates_;
    }

private:
    static constexpr int unbounded = std::numeric_limits<int>::max() / 2;

    std::string words(SeasonDay day) const {
        if (!winter_ || day < firstSeasonDay || day > lastSeasonDay) return fmt::format("season day {}", day.w);
        return winter_->date(day).iso();
    }
    std::string words(const DateField& field, SeasonDay day) const {
        return fmt::format("{} {}", field.key, words(day));
    }

    void addProblem(std::string detail, std::string remedy) {
        problems_.push_back({ProblemKind::Input, {}, std::move(detail), std::move(remedy)});
    }

    void checkRange() {
        for (const DateField& field : fields) {
            const auto day = given_.*field.given;
            if (day && (*day < firstSeasonDay || *day > lastSimulatedDay))
                addProblem(
                    fmt::format("{} is outside the winter asked about", words(field, *day)),
                    fmt::format("its dates lie between {} and {}", words(firstSeasonDay), words(lastSimulatedDay)));
        }
    }

    void checkBroodPair() {
        if (dates_.broodless() || given_.broodStop.has_value() == given_.broodRestart.has_value()) return;
        const DateField& lone = given_.broodStop ? broodStopField : broodRestartField;
        const DateField& lacking = given_.broodStop ? broodRestartField : broodStopField;
        addProblem(fmt::format("{} is given alone where laying never stops by the climate",
                               words(lone, *(given_.*lone.given))),
                   fmt::format("give {} as well, or neither", lacking.key));
    }

    void takeGiven(const DateField& field) {
        if (const auto day = given_.*field.given)
            dates_.*field.dated = SeasonDate{*day, constants_.*field.sd, DateOrigin::Case, *day <= asOf_};
    }

    void checkAgainstSolstice() {
        for (const Link& link : springChain) {
            const auto day = given_.*link.field.given;
            if (day && *day < solstice + link.offset)
                addProblem(fmt::format("{} is too early where laying never stops", words(link.field, *day)),
                           fmt::format("it is on or after {}", words(solstice + link.offset)));
        }
    }

    std::optional<int> givenLevel(const Link& link) const {
        const auto day = given_.*link.field.given;
        return day ? std::optional(day->w - link.offset) : std::nullopt;
    }

    void settle(const Link* chain, std::size_t length, bool missingIsLate) {
        if (!givenInOrder(chain, length)) return;
        for (std::size_t i = 0; i < length; ++i)
            if (!(given_.*chain[i].field.given)) fit(chain, length, i, missingIsLate);
    }

    bool givenInOrder(const Link* chain, std::size_t length) {
        const std::size_t before = problems_.size();
        const Link* earlier = nullptr;
        for (const Link* link = chain; link != chain + length; ++link) {
            if (!givenLevel(*link)) continue;
            if (earlier && *givenLevel(*earlier) > *givenLevel(*link)) addConflict(*earlier, *link);
            earlier = link;
        }
        return problems_.size() == before;
    }

    void addConflict(const Link& earlier, const Link& later) {
        const std::string first = words(earlier.field, *(given_.*earlier.field.given));
        const std::string second = words(later.field, *(given_.*later.field.given));
        const int gap = later.offset - earlier.offset;
        if (gap == 0)
            addProblem(fmt::format("{} is before {}", second, first),
                       fmt::format("{} is not earlier than {}", later.field.key, earlier.field.key));
        else
            addProblem(fmt::format("{} is less than {} days after {}", second, gap, first),
                       fmt::format("{} is at least {} days after {}", later.field.key, gap, earlier.field.key));
    }

    // Moves a derived date between the nearest given ones on both sides.
    void fit(const Link* chain, std::size_t length, std::size_t i, bool missingIsLate) {
        const Link& link = chain[i];
        auto& date = dates_.*link.field.dated;
        if (!date && !missingIsLate) return;
        const Link* below = nullptr;
        const Link* above = nullptr;
        for (std::size_t k = 0; k < i; ++k)
            if (givenLevel(chain[k])) below = &chain[k];
        for (std::size_t k = length; k-- > i + 1;)
            if (givenLevel(chain[k])) above = &chain[k];
        const int lowest = below ? *givenLevel(*below) : -unbounded;
        const int highest = above ? *givenLevel(*above) : unbounded;
        const int level = date ? date->day.w - link.offset : unbounded;
        const int moved = std::clamp(level, lowest, highest);
        if (moved != level) moveTo({moved + link.offset}, link.field, moved == lowest ? *below : *above);
    }

    void moveTo(SeasonDay day, const DateField& field, const Link& cause) {
        if (day < firstSeasonDay || day > lastSimulatedDay) {
            addProblem(fmt::format("{} leaves no room for {} within the winter",
                                   words(cause.field, *(given_.*cause.field.given)), field.key),
                       fmt::format("give {} as well, or another {}", field.key, cause.field.key));
            return;
        }
        dates_.*field.dated = SeasonDate{day, constants_.*field.sd, DateOrigin::ClimateMoved, false};
    }

    // Where laying is made to stop, the winter is one the bees fly in: by the rules such places are too mild to confine them.
    // Where no date could be derived, the normals never fall below the thresholds of spring, so the same holds.
    WinterClass classAfter() const {
        const WinterClass before = dates_.winterClass;
        if (!dates_.derivable()) return WinterClass::NotDerivable;
        if (before == WinterClass::Confined || before == WinterClass::Flying) return before;
        return dates_.broodless() ? WinterClass::Flying : WinterClass::Dearth;
    }

    SeasonDates dates_;
    const GivenDates& given_;
    SeasonDay asOf_;
    const ModelConstants& constants_;
    const std::optional<Winter>& winter_;
    Problems problems_;
};

} // namespace

Outcome<SeasonDates> applyGivenDates(const SeasonDates& derived, const GivenDates& given, SeasonDay asOf,
                                     const ModelConstants& constants, const std::optional<Winter>& winter) {
    return Overlay(derived, given, asOf, constants, winter).run();
}

} // namespace winterlarder::climate
