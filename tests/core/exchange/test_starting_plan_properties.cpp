#include "core/planning/starting_plan.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/plan_template_json.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

/// Plans from the catalogue and the templates that come with the program, for any client.
namespace chalk::exchange {

namespace {

using lifts::CautionTag;
using lifts::EquipmentKind;
using lifts::Pattern;
using planning::GapReason;
using planning::PlannedKind;
using planning::PlannedLift;
using planning::PlanRequest;
using planning::StartingPlan;
using progression::Stage;
using progression::StartState;

constexpr int kTagCount = static_cast<int>(CautionTag::GripStrength) + 1;
constexpr int kKindCount = static_cast<int>(EquipmentKind::AddedToBody) + 1;

lifts::Equipment someEquipment(EquipmentKind kind)
{
    const auto load = [](int whole) { return base::Load::fromCenti(whole * 100); };
    if (kind == EquipmentKind::Barbell || kind == EquipmentKind::TrapBar) {
        return lifts::Barbell{load(20), {{load(10), 2}, {load(5), 1}}};
    }
    if (kind == EquipmentKind::Stack) {
        return lifts::Stack{load(5), load(80), load(5)};
    }
    if (kind == EquipmentKind::AddedToBody) {
        return lifts::BodyAdded{{load(-20), load(0), load(5)}};
    }
    return lifts::FixedSet{{load(4), load(8), load(12), load(16)}};
}

PlanRequest anyRequest()
{
    PlanRequest request;
    request.firstDay = base::Date::fromDays(*rc::gen::inRange(20'000, 21'000));
    request.hours.sessionMinutes = *rc::gen::element(30, 45, 60, 90);
    for (int i = *rc::gen::inRange(0, 6); i > 0; --i) {
        const int begin = *rc::gen::inRange(10, 40);
        static_cast<void>(request.hours.free.add({*rc::gen::inRange(0, 7), begin * 30, (begin + *rc::gen::inRange(1, 8)) * 30}));
    }
    for (int kind = 1; kind < kKindCount; ++kind) {
        if (*rc::gen::arbitrary<bool>()) {
            const auto one = static_cast<EquipmentKind>(kind);
            request.equipment.push_back({std::string(keyOf(one)), one, someEquipment(one)});
        }
    }
    for (int i = *rc::gen::inRange(0, 4); i > 0; --i) {
        request.cautions.push_back(static_cast<CautionTag>(*rc::gen::inRange(0, kTagCount)));
    }
    for (planning::PatternStanding& standing : request.standings) {
        standing.state = *rc::gen::weightedElement<StartState>({{1, StartState::NotScreened}, {1, StartState::OnHold}, {6, StartState::Starts}});
        standing.stage = *rc::gen::element(Stage::Pattern, Stage::Control, Stage::BaseLoad);
        if (*rc::gen::arbitrary<bool>()) {
            standing.startLoad = base::Load::fromCenti(*rc::gen::inRange(-30, 60) * 100);
        }
    }
    request.isLoadBlocked = *rc::gen::inRange(0, 4) == 0;
    return request;
}

/// Read once: it takes longer than a plan.
const lifts::Catalogue& wholeCatalogue()
{
    static const lifts::Catalogue catalogue = builtInCatalogue();
    return catalogue;
}

const std::vector<planning::PlanTemplate>& wholeTemplates()
{
    static const std::vector<planning::PlanTemplate> templates = builtInPlanTemplates(wholeCatalogue());
    return templates;
}

/// What every property looks at: one request and its plan.
struct PlanOnTest {
    const lifts::Catalogue& catalogue = wholeCatalogue();
    PlanRequest request = anyRequest();
    planning::PlanTemplate from = *planning::templateFor(wholeTemplates(), *rc::gen::inRange(1, 5));
    StartingPlan plan = planning::startingPlanOf(from, request, catalogue);

    [[nodiscard]] const planning::PatternStanding& standingOf(Pattern pattern) const { return request.standings[static_cast<std::size_t>(pattern)]; }
    [[nodiscard]] bool isAllowed(const std::string& key) const
    {
        const lifts::Exercise& exercise = *catalogue.find(key);
        const auto allowed = planning::allowedExercises(exercise.pattern, request, catalogue, false);
        return std::find(allowed.begin(), allowed.end(), &exercise) != allowed.end();
    }
};

bool isSessionOf(const planning::PlannedSession& session, Pattern pattern)
{
    return std::find(session.patterns.begin(), session.patterns.end(), pattern) != session.patterns.end();
}

}  // namespace

RC_GTEST_PROP(StartingPlanProperties, EveryPatternIsTrainedEachWeekOrHasAReason, ())
{
    const PlanOnTest on;
    for (const Pattern pattern : lifts::kPatterns) {
        const auto gap = std::find_if(on.plan.gaps.begin(), on.plan.gaps.end(), [pattern](const planning::PatternGap& one) { return one.pattern == pattern; });
        const bool isGap = gap != on.plan.gaps.end();
        RC_ASSERT(isGap != (on.plan.find(pattern) != nullptr));
        if (isGap) {
            RC_ASSERT(gap->reason != GapReason::NotInTemplate);
            RC_ASSERT((gap->reason == GapReason::NothingAllowed) == !gap->passedOver.empty());
            RC_ASSERT(gap->reason != GapReason::OnHold || on.standingOf(pattern).state == StartState::OnHold);
            RC_ASSERT(gap->reason != GapReason::NoDay || !on.plan.week.unplaced.empty());
            continue;
        }
        for (const int week : {0, 7}) {
            RC_ASSERT(std::any_of(on.plan.sessions.begin(), on.plan.sessions.end(), [&](const planning::PlannedSession& session) {
                const int day = session.date - on.request.firstDay;
                return day >= week && day < week + 7 && isSessionOf(session, pattern);
            }));
        }
    }
}

RC_GTEST_PROP(StartingPlanProperties, NothingThatACautionOrTheKitRulesOut, ())
{
    const PlanOnTest on;
    for (const PlannedLift& lift : on.plan.lifts) {
        RC_ASSERT(on.isAllowed(lift.exerciseKey));
        RC_ASSERT((lift.rehearsalKey.empty() || on.isAllowed(lift.rehearsalKey)));
        RC_ASSERT(on.catalogue.find(lift.exerciseKey)->pattern == lift.pattern);
        RC_ASSERT((on.catalogue.find(lift.exerciseKey)->equipment == EquipmentKind::None) == lift.equipmentKey.empty());
    }
}

RC_GTEST_PROP(StartingPlanProperties, NoLoadThatIsNotEarnedOrIsBlocked, ())
{
    const PlanOnTest on;
    for (const PlannedLift& lift : on.plan.lifts) {
        const auto& standing = on.standingOf(lift.pattern);
        const bool canLoad = standing.state == StartState::Starts && standing.stage == Stage::BaseLoad && !on.request.isLoadBlocked;
        RC_ASSERT((lift.kind == PlannedKind::Work) == canLoad);
        RC_ASSERT(lift.firstLoad.has_value() == canLoad);
        RC_ASSERT((lift.rehearseReason == planning::RehearseReason::None) == canLoad);
        if (!canLoad) {
            RC_ASSERT(on.catalogue.find(lift.rehearsalKey)->equipment == EquipmentKind::None);
        }
    }
}

RC_GTEST_PROP(StartingPlanProperties, TheFirstLoadCanBeSetUp, ())
{
    const PlanOnTest on;
    for (const PlannedLift& lift : on.plan.lifts) {
        const auto kit = std::find_if(on.request.equipment.begin(), on.request.equipment.end(), [&](const auto& one) { return one.key == lift.equipmentKey; });
        if (!lift.firstLoad || kit == on.request.equipment.end()) {
            continue;
        }
        const auto loads = lifts::LoadTable::of(kit->equipment).value();
        const auto& wanted = on.standingOf(lift.pattern).startLoad;
        RC_ASSERT(loads.canGive(*lift.firstLoad));
        RC_ASSERT((wanted ? *lift.firstLoad <= std::max(*wanted, loads.lightest()) : *lift.firstLoad == loads.lightest()));
    }
}

RC_GTEST_PROP(StartingPlanProperties, FortyEightHoursAreKeptOrReported, ())
{
    const PlanOnTest on;
    const auto minuteOf = [&](const planning::PlannedSession& session) { return (session.date - on.request.firstDay) * 24 * 60 + session.startMinute; };
    for (std::size_t i = 0; i < on.plan.sessions.size(); ++i) {
        for (std::size_t j = i + 1; j < on.plan.sessions.size(); ++j) {
            const auto& first = on.plan.sessions[i];
            const auto& second = on.plan.sessions[j];
            const bool isShared = std::any_of(first.patterns.begin(), first.patterns.end(), [&](Pattern pattern) { return isSessionOf(second, pattern); });
            const bool isReported = std::any_of(on.plan.week.tooClose.begin(), on.plan.week.tooClose.end(), [&](const planning::CloseSessions& close) {
                return close.first == first.session && close.second == second.session;
            });
            RC_ASSERT((!isShared || minuteOf(second) - minuteOf(first) >= 48 * 60 || isReported));
        }
    }
}

RC_GTEST_PROP(StartingPlanProperties, SessionsLieInTheFreeHours, ())
{
    const PlanOnTest on;
    std::set<base::Date> days;
    for (const planning::PlannedSession& session : on.plan.sessions) {
        RC_ASSERT((on.request.hours.free.isEmpty() || on.request.hours.free.covers(session.date.weekday(), session.startMinute, on.request.hours.sessionMinutes)));
        RC_ASSERT(days.insert(session.date).second);
        RC_ASSERT(session.date >= on.request.firstDay);
    }
    RC_ASSERT(on.plan.week.slots.size() + on.plan.week.unplaced.size() == on.from.sessions.size());
}

}  // namespace chalk::exchange
