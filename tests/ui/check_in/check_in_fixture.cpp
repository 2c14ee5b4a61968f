#include "tests/ui/check_in/check_in_fixture.h"

#include "core/plateau/detector.h"
#include "tests/support/logged_lift.h"
#include "tests/ui/board/client_fixture.h"

namespace chalk::test {

namespace {

using checkin::Choice;
using checkin::ChoiceKind;
using checkin::FindingKind;

progression::Prescription benchWork(int centi, int sets, int reps)
{
    progression::Prescription next;
    next.kind = progression::PrescriptionKind::Work;
    next.stage = progression::Stage::LoadBuild;
    next.load = base::Load::fromCenti(centi);
    next.sets = base::Sets(sets);
    next.repsLow = next.repsHigh = base::Reps(reps);
    next.rest = base::Seconds(210);
    return next;
}

progression::CoachSet settingTo(int centi)
{
    progression::CoachSet set;
    set.load = base::Load::fromCenti(centi);
    return set;
}

void judgeFrom(checkin::LiftEvidence& lift, const std::vector<plateau::LoggedExposure>& log)
{
    const auto rows = plateau::cleaned(log);
    const plateau::CheckDay check{log.back().date, 8, 8};
    lift.judgement = plateau::judge(rows, check);
    lift.evidence = plateau::evidenceFor(lift.judgement, rows, check);
}

checkin::DayRange twelveWeeks()
{
    const base::Date sunday = checkInDay() - checkInDay().weekday() + 6;
    return {sunday - 7 * checkin::kCheckInWeeks + 1, sunday};
}

Choice choiceOf(ChoiceKind kind, std::optional<progression::EventBody> event = {}, std::optional<progression::Prescription> next = {})
{
    Choice choice;
    choice.kind = kind;
    choice.event = std::move(event);
    choice.next = std::move(next);
    return choice;
}

std::vector<Choice> benchChoices()
{
    Choice lighter = choiceOf(ChoiceKind::LighterWeek, progression::LighterWeek{}, benchWork(6000, 2, 5));
    lighter.isSuggested = true;
    lighter.why = checkin::ChoiceReason::Tired;
    lighter.later = benchWork(6750, 3, 5);
    Choice moveOn = choiceOf(ChoiceKind::MoveOn, settingTo(6750), benchWork(6750, 3, 6));
    moveOn.next->stage = progression::Stage::RepBuild;
    return {lighter,
            choiceOf(ChoiceKind::Hold, settingTo(7250), benchWork(7250, 3, 5)),
            moveOn,
            choiceOf(ChoiceKind::Swap),
            choiceOf(ChoiceKind::ByHand),
            choiceOf(ChoiceKind::Rescreen)};
}

checkin::QueueEntry dueEntry(std::int64_t id, const char* name, FindingKind kind, int flatWeeks)
{
    checkin::QueueEntry entry;
    entry.client = base::ClientId(id);
    entry.name = name;
    entry.finding = {kind, {}, flatWeeks};
    entry.exerciseKey = "bench_press";
    entry.came = 11;
    entry.of = 12;
    return entry;
}

}  // namespace

base::Date checkInDay()
{
    return *base::Date::parse("2026-11-24");
}

checkin::LiftEvidence stalledBench()
{
    checkin::LiftEvidence lift;
    lift.lift = base::LiftId(3);
    lift.pattern = lifts::Pattern::HorizontalPush;
    lift.exerciseKey = "bench_press";
    lift.name = "Bench press";
    lift.stage = progression::Stage::LoadBuild;
    lift.cycle = 2;
    lift.next = benchWork(7250, 3, 5);
    const checkin::DayRange days = twelveWeeks();
    for (int week = 0; week < checkin::kCheckInWeeks; ++week) {
        const base::Date monday = days.from + 7 * week;
        const int centi = 7800 + 100 * std::min(week, 7);
        const auto mass = [centi](int more) { return base::Mass::of(base::Load::fromCenti(centi + more), base::MassUnit::Kilogram); };
        if (monday + 1 <= checkInDay()) {
            lift.estimates.push_back({monday + 1, mass(-200), mass(0), mass(200)});
        }
        lift.volume.push_back({monday, 1800.0 + 30 * week, 9});
    }
    lift.stages = {{{days.from, days.from + 40}, progression::Stage::RestCut, 1}, {{days.from + 41, days.to}, progression::Stage::LoadBuild, 2}};
    lift.pain = {{days.from + 30, 3}};
    lift.lighterWeeks = {{days.from + 21, days.from + 27}};
    lift.flat = checkin::DayRange{checkInDay() - 28, checkInDay()};
    auto log = plainLog(20);
    for (std::size_t i = 16; i < log.size(); ++i) {
        setReps(log[i], {7, 7, 6});
    }
    judgeFrom(lift, log);
    lift.reserve = 1.5;
    lift.choices = benchChoices();
    return lift;
}

checkin::LiftEvidence youngSquat()
{
    checkin::LiftEvidence lift;
    lift.lift = base::LiftId(1);
    lift.exerciseKey = "back_squat";
    lift.name = "Back squat";
    lift.stage = progression::Stage::LoadBuild;
    lift.next = benchWork(6000, 3, 8);
    judgeFrom(lift, plainLog(4));
    lift.choices = {choiceOf(ChoiceKind::Hold, settingTo(6000), benchWork(6000, 3, 8))};
    lift.choices.front().isSuggested = true;
    return lift;
}

ui::check_in::CheckInCase tomasz()
{
    ui::check_in::CheckInCase page;
    page.evidence.client = base::ClientId(12);
    page.evidence.name = "Tomasz Wyre";
    page.evidence.age = 39;
    page.evidence.goal = "Shoulder rebuild";
    page.evidence.coachName = "Tobias";
    page.evidence.days = twelveWeeks();
    page.evidence.lifts = {youngSquat(), stalledBench()};
    page.evidence.finding = {FindingKind::Plateau, base::LiftId(3), 4};
    page.evidence.nextReview = checkInDay() + 14;
    page.evidence.readiness = {{checkInDay() - 20, 4, 2, {}}, {checkInDay() - 6, 2, 4, {}}};
    page.evidence.attendance = {{checkInDay() - 12, sessions::SessionState::Recorded},
                                {checkInDay() - 8, sessions::SessionState::CancelledInTime},
                                {checkInDay() - 5, sessions::SessionState::Missed}};
    return page;
}

CheckInStudio::CheckInStudio()
    : queue{dueEntry(11, "Hanne Skov-Adler", FindingKind::Pain, 0), dueEntry(12, "Tomasz Wyre", FindingKind::Plateau, 4),
            dueEntry(13, "Gwen Tarrant", FindingKind::OnCourse, 0)}
{
}

store::Result<std::vector<checkin::QueueEntry>> FakeCheckInSource::queue(base::Date /*day*/)
{
    if (!m_studio.failure.isEmpty()) {
        return store::storeError(store::StoreError::Kind::CannotRead, m_studio.failure);
    }
    return m_studio.queue;
}

store::Result<ui::check_in::CheckInCase> FakeCheckInSource::page(base::ClientId client, base::Date /*day*/)
{
    if (!m_studio.failure.isEmpty()) {
        return store::storeError(store::StoreError::Kind::CannotRead, m_studio.failure);
    }
    auto page = tomasz();
    for (const checkin::QueueEntry& entry : m_studio.queue) {
        if (entry.client == client) {
            page.evidence.client = client;
            page.evidence.name = entry.name;
            page.evidence.finding = entry.finding;
        }
    }
    page.evidence.finding.lift = base::LiftId(3);
    if (m_studio.isInPlan) {
        Choice opening = choiceOf(ChoiceKind::Direction);
        opening.followsPlan = true;
        for (checkin::LiftEvidence& lift : page.evidence.lifts) {
            lift.choices.insert(lift.choices.begin(), opening);
        }
    }
    return page;
}

store::Result<ui::check_in::EditedLift> FakeCheckInSource::lift(base::ClientId /*client*/, base::LiftId lift, base::Date day)
{
    ui::board::LiftCase edited = trainedLift({lifts::Pattern::HorizontalPush, "Bench press", lifts::Region::Upper, fixtureBar(), 60, 4}, lift.value());
    ui::board::settle(edited, day);
    return ui::check_in::EditedLift{std::move(edited), {}};
}

store::Result<base::ActId> FakeCheckInSource::decide(const checkin::Decision& decision, const std::optional<progression::EventBody>& event, base::ActId /*seenOfDay*/)
{
    if (!m_studio.writeFailure.isEmpty()) {
        return store::storeError(store::StoreError::Kind::CannotWrite, m_studio.writeFailure);
    }
    m_studio.decided.push_back(decision);
    m_studio.events.push_back(event);
    for (checkin::QueueEntry& entry : m_studio.queue) {
        if (entry.client == decision.client) {
            entry.decided = decision;
        }
    }
    return base::ActId(static_cast<std::int64_t>(100 + m_studio.decided.size()));
}

}  // namespace chalk::test
