#include "ui/direction/direction_desk.h"

#include "core/checkin/attention.h"
#include "core/direction/fit_facts.h"
#include "core/store/client_reader.h"
#include "core/store/decision_reader.h"
#include "core/store/decision_writer.h"
#include "core/store/history_reader.h"
#include "core/store/plan_reader.h"
#include "core/store/plan_writer.h"
#include "core/store/roster_facts.h"
#include "core/store/session_reader.h"
#include "core/store/week_settings.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <set>

namespace chalk::ui::direction {

namespace {

using chalk::direction::ClientPlan;
using chalk::direction::Direction;
using chalk::direction::LiftForPlan;
using store::Result;

constexpr int kDaysOfWeek = 7;
constexpr int kUsualDaysBack = 28;
constexpr int kUsualDaysOn = 14;

std::string nameOf(const lifts::Catalogue& catalogue, const LiftForPlan& lift)
{
    const lifts::Exercise* exercise = catalogue.find(lift.exerciseKey);
    return exercise != nullptr ? exercise->name : common::patternName(lift.pattern).toStdString();
}

/// The days of the week with the most sessions of the last and the next weeks, as many as the client comes.
std::vector<int> usualWeekdays(const std::vector<store::NamedSession>& sessions, base::Date today, int wanted)
{
    std::array<std::pair<int, int>, kDaysOfWeek> counts{};
    for (int day = 0; day < kDaysOfWeek; ++day) {
        counts[static_cast<std::size_t>(day)] = {0, day};
    }
    for (const store::NamedSession& one : sessions) {
        const bool isNear = one.session.date >= today - kUsualDaysBack && one.session.date <= today + kUsualDaysOn;
        if (isNear && one.session.state != sessions::SessionState::Withdrawn) {
            ++counts[static_cast<std::size_t>(one.session.date.weekday())].first;
        }
    }
    std::ranges::stable_sort(counts, [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<int> days;
    for (const auto& [count, day] : counts) {
        if (count > 0 && static_cast<int>(days.size()) < wanted) {
            days.push_back(day);
        }
    }
    std::ranges::sort(days);
    return days;
}

/// Whole days on which nobody can come.
std::vector<ClosedDays> closedDays(const std::vector<store::KeptClosure>& closures)
{
    std::vector<ClosedDays> days;
    for (const store::KeptClosure& one : closures) {
        const chalk::week::Closure& closure = one.closure;
        const bool isWhole = closure.coach.isNone() && !closure.station && closure.fromMinute == 0 && closure.toMinute == chalk::week::kDayMinutes;
        if (isWhole) {
            days.push_back({closure.first, closure.last});
        }
    }
    return days;
}

TalkState talkOf(const checkin::ClientFacts& facts, base::Date today)
{
    const checkin::AttentionThresholds thresholds;
    TalkState talk;
    for (const checkin::LiftFacts& lift : facts.lifts) {
        if (lift.firstWork && (!talk.firstLoad || *lift.firstWork < *talk.firstLoad)) {
            talk.firstLoad = lift.firstWork;
        }
        talk.stalls += lift.flags.has(progression::Flag::Stalled) && !lift.isOnHold ? 1 : 0;
    }
    if (!talk.firstLoad) {
        return talk;
    }
    talk.days = today - *talk.firstLoad;
    talk.dueEarly = *talk.firstLoad + thresholds.directionEarlyDays;
    talk.dueFrom = talk.stalls >= thresholds.directionStalls ? *talk.dueEarly : *talk.firstLoad + thresholds.directionDays;
    talk.isDue = today >= *talk.dueFrom;
    return talk;
}

/// The last plan where it is over and neither it was answered by a decision, nor another one begun.
std::optional<ClientPlan> overOf(const std::vector<ClientPlan>& history, const std::optional<checkin::Decision>& decided, base::Date today)
{
    if (history.empty() || history.front().begunOn > today || chalk::direction::lastDayOf(history.front()) >= today) {
        return std::nullopt;
    }
    const bool isAnswered = decided && decided->day >= chalk::direction::lastDayOf(history.front());
    return isAnswered ? std::nullopt : std::optional(history.front());
}

void addOffers(DirectionCase& client)
{
    std::vector<LiftForPlan> lifts;
    for (const DirectionLift& one : client.lifts) {
        lifts.push_back(one.lift);
    }
    client.facts = chalk::direction::fitFactsOf(lifts, client.cautions, client.client.sessionsPerWeek);
    const auto fits = chalk::direction::fitsOf(client.facts);
    for (const Direction direction : chalk::direction::kDirections) {
        DirectionOffer& offer = client.offers[static_cast<std::size_t>(direction)];
        offer.fit = fits[static_cast<std::size_t>(direction)];
        offer.plan.wishes = chalk::direction::usualWishes(direction, lifts, client.client.sessionsPerWeek, client.today);
        offer.singles = chalk::direction::singlesFor(offer.plan.wishes, lifts);
        if (!chalk::direction::faultOf(offer.plan.wishes)) {
            offer.plan = chalk::direction::planFor(offer.plan.wishes);
        }
    }
}

/// By lift of a plan: its days on which pain was written down.
Result<std::vector<int>> painDaysOf(store::Database& database, const ClientPlan& plan)
{
    std::vector<int> counts;
    for (const chalk::direction::PlannedLift& lift : plan.plan.wishes.lifts) {
        const auto history = store::HistoryReader(database).read(lift.lift);
        if (!history) {
            return tl::make_unexpected(history.error());
        }
        std::set<base::Date> days;
        for (const store::HistoryEntry& entry : *history) {
            const auto* exposure = std::get_if<progression::Exposure>(&entry.event.body);
            if (exposure != nullptr && exposure->pain > 0 && entry.event.date >= plan.begunOn && entry.event.date <= chalk::direction::lastDayOf(plan)) {
                days.insert(entry.event.date);
            }
        }
        counts.push_back(static_cast<int>(days.size()));
    }
    return counts;
}

/// What reads throws away the first failure: every part is read through here.
template <class Value>
Value valueOr(Result<Value> read, std::optional<store::StoreError>& failure)
{
    if (!read && !failure) {
        failure = read.error();
    }
    return read ? *std::move(read) : Value();
}

}  // namespace

DirectionDesk::DirectionDesk(store::Database& database, const lifts::Catalogue& catalogue, std::function<QString()> atUtc)
    : m_database(database), m_catalogue(catalogue), m_atUtc(std::move(atUtc))
{
}

Result<DirectionCase> DirectionDesk::read(base::ClientId id, base::Date today)
{
    std::optional<store::StoreError> failure;
    store::PlanReader plans(m_database);
    store::ClientFile file = valueOr(store::ClientReader(m_database).read(id, today), failure);
    const auto sessions = valueOr(store::SessionReader(m_database).of(id), failure);
    const auto history = valueOr(plans.history(id), failure);
    const auto decisions = valueOr(store::DecisionReader(m_database).history(id), failure);
    DirectionCase client;
    client.today = today;
    for (LiftForPlan& lift : valueOr(plans.lifts(id, today), failure)) {
        std::string name = nameOf(m_catalogue, lift);
        const progression::Prescription next = lift.machine.prescriptionOn(today);
        client.lifts.push_back({std::move(lift), std::move(name), next});
    }
    client.talk = talkOf(store::factsOf(file, sessions, today), today);
    client.client = std::move(file.client);
    client.clearance = std::move(file.clearance);
    client.cautions = std::move(file.cautions);
    client.weekdays = usualWeekdays(sessions, today, client.client.sessionsPerWeek);
    const auto decided = std::ranges::find(decisions, checkin::ChoiceKind::Direction, &checkin::Decision::choice);
    client.decided = decided == decisions.end() ? std::nullopt : std::optional(*decided);
    client.running = valueOr(plans.running(id, today), failure);
    client.over = client.running ? std::nullopt : overOf(history, client.decided, today);
    if (const auto& shown = client.running ? client.running : client.over) {
        client.done = valueOr(plans.done(*shown, today), failure);
    }
    if (client.over) {
        client.painDays = valueOr(painDaysOf(m_database, *client.over), failure);
    }
    const base::Date from = client.running ? std::min(today, client.running->plan.weeks.front().monday) : today;
    client.closures = closedDays(valueOr(store::WeekSettings(m_database).closures(from), failure));
    addOffers(client);
    if (failure) {
        return tl::make_unexpected(*failure);
    }
    return client;
}

Result<store::ActOutcome> DirectionDesk::begin(base::ClientId client, base::Date today, const chalk::direction::BlockPlan& plan,
                                               const std::vector<chalk::direction::PlanSingle>& singles)
{
    return store::PlanWriter(m_database, m_atUtc).begin({{}, client, today, plan, singles, std::nullopt, {}});
}

Result<store::ActOutcome> DirectionDesk::oneMoreCycle(base::ClientId client, base::Date today)
{
    const std::string note = QCoreApplication::translate("Direction", "One more cycle").toStdString();
    return store::DecisionWriter(m_database, m_atUtc)
        .decide({{}, client, std::nullopt, today, checkin::FindingKind::Direction, checkin::ChoiceKind::Direction, note, today + kCycleReviewDays}, std::nullopt);
}

Result<store::ActOutcome> DirectionDesk::change(const ClientPlan& plan, base::Date today, const std::optional<ClientPlan>& seen)
{
    return store::PlanWriter(m_database, m_atUtc).change(plan, today, seen);
}

Result<store::ActOutcome> DirectionDesk::end(const ClientPlan& plan, base::Date today)
{
    return store::PlanWriter(m_database, m_atUtc).end(plan.id, today, plan.note);
}

ClientPlan withLiftsTakenUp(const DirectionCase& client)
{
    ClientPlan plan = *client.running;
    for (std::size_t i = 0; i < plan.singles.size(); ++i) {
        const DirectionLift* lift = client.lift(plan.plan.wishes.lifts[i].lift);
        if (lift != nullptr && lift->lift.single) {
            plan.singles[i] = *lift->lift.single;
        }
    }
    return plan;
}

}  // namespace chalk::ui::direction
