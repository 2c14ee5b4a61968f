#include "ui/direction/plan_editor_edits.h"

#include "core/direction/scheme_ramp.h"

#include <algorithm>

namespace chalk::ui::direction {

namespace {

using chalk::direction::BlockPlan;
using chalk::direction::ClientPlan;
using chalk::direction::LiftForPlan;
using chalk::direction::PlannedWork;
using chalk::direction::PlanWeek;
using chalk::direction::PlanWishes;
using chalk::direction::WeekKind;

constexpr int kSundayAfter = 6;

bool isWithin(int value, int least, int most)
{
    return value >= least && value <= most;
}

std::optional<EditFault> faultOf(const WorkEdit& edit)
{
    const auto unless = [](bool holds, EditFault fault) { return holds ? std::nullopt : std::optional(fault); };
    switch (edit.field) {
    case WorkField::Sets: return unless(isWithin(edit.value, 1, kMostPlanSets), EditFault::SetsRange);
    case WorkField::Reps:
        if (!isWithin(edit.value, 1, kMostPlanReps) || edit.most > kMostPlanReps) {
            return EditFault::RepsRange;
        }
        return unless(edit.most >= edit.value, EditFault::RepsOrder);
    case WorkField::Share: return unless(isWithin(edit.value, 1, kWholeShare), EditFault::ShareRange);
    case WorkField::Rest: return unless(isWithin(edit.value, 0, kLongestPlanRest), EditFault::RestRange);
    case WorkField::Reserve: return unless(isWithin(edit.value, 0, kMostPlanReserve), EditFault::ReserveRange);
    case WorkField::Pause:
    case WorkField::Test: return std::nullopt;
    }
    return std::nullopt;
}

void apply(PlannedWork& work, const WorkEdit& edit)
{
    switch (edit.field) {
    case WorkField::Sets: work.scheme.sets = base::Sets(edit.value); return;
    case WorkField::Reps:
        work.scheme.reps = base::Reps(edit.value);
        work.repsMost = base::Reps(edit.most);
        return;
    case WorkField::Share: work.scheme.share = base::Milli(edit.value); return;
    case WorkField::Rest: work.scheme.rest = base::Seconds(edit.value); return;
    case WorkField::Reserve: work.scheme.reserve = edit.value; return;
    case WorkField::Pause: work.isPauseAsked = edit.value != 0; return;
    case WorkField::Test: work.isTest = edit.value != 0; return;
    }
}

void lighten(PlanWeek& week)
{
    for (auto& exposures : week.work) {
        std::transform(exposures.begin(), exposures.end(), exposures.begin(), chalk::direction::lightened);
    }
}

/// Which week of the plan made from the wishes alone each week of the plan was: by their order; where some were squeezed out, by what they look like.
std::vector<std::size_t> slotsOf(const BlockPlan& plan, const BlockPlan& plain)
{
    std::vector<std::size_t> slots;
    std::size_t next = 0;
    for (std::size_t i = 0; i < plan.weeks.size(); ++i) {
        const PlanWeek& week = plan.weeks[i];
        const std::size_t left = plan.weeks.size() - i;
        const std::size_t last = plain.weeks.size() >= next + left ? plain.weeks.size() - left : next;
        const auto from = plain.weeks.begin() + static_cast<std::ptrdiff_t>(std::min(next, plain.weeks.size()));
        const auto to = plain.weeks.begin() + static_cast<std::ptrdiff_t>(std::min(last + 1, plain.weeks.size()));
        auto found = std::find_if(from, to, [&week](const PlanWeek& one) { return one.kind == week.kind && one.work == week.work; });
        if (found == to) {
            found = std::find_if(from, to, [&week](const PlanWeek& one) { return one.kind == week.kind && one.phase == week.phase; });
        }
        const std::size_t slot = found == to ? next : static_cast<std::size_t>(found - plain.weeks.begin());
        slots.push_back(slot);
        next = slot + 1;
    }
    return slots;
}

/// The work of a lift in a week; nothing where the plan does not have it.
const std::vector<PlannedWork>* workOf(const BlockPlan& plan, std::size_t week, base::LiftId lift)
{
    const auto& lifts = plan.wishes.lifts;
    const auto found = std::find_if(lifts.begin(), lifts.end(), [lift](const auto& one) { return one.lift == lift; });
    return found == lifts.end() || week >= plan.weeks.size() ? nullptr : &plan.weeks[week].work[static_cast<std::size_t>(found - lifts.begin())];
}

/// What a lighter week of the plan is as a week of work.
std::vector<std::vector<PlannedWork>> fullWork(const BlockPlan& plan, std::size_t week)
{
    const BlockPlan plain = planFor(plan.wishes);
    const std::size_t slot = slotsOf(plan, plain)[week];
    if (slot < plain.weeks.size() && plain.weeks[slot].kind == WeekKind::Work) {
        return plain.weeks[slot].work;
    }
    const auto at = plan.weeks.begin() + static_cast<std::ptrdiff_t>(week);
    const auto isWork = [](const PlanWeek& one) { return one.kind == WeekKind::Work; };
    const auto before = std::find_if(std::make_reverse_iterator(at), plan.weeks.rend(), isWork);
    const auto after = std::find_if(at + 1, plan.weeks.end(), isWork);
    if (before != plan.weeks.rend()) {
        return before->work;
    }
    return after != plan.weeks.end() ? after->work : at->work;
}

/// Takes what was set by hand in a week of the plan over into the same week of the fresh one.
void keepEdits(BlockPlan& fresh, std::size_t slot, const BlockPlan& plan, std::size_t week, const BlockPlan& plain)
{
    if (slot >= fresh.weeks.size() || slot >= plain.weeks.size()) {
        return;
    }
    const PlanWeek& was = plan.weeks[week];
    if (was.kind != plain.weeks[slot].kind && was.kind != WeekKind::Test && fresh.weeks[slot].kind != WeekKind::Test) {
        if (was.kind == WeekKind::Lighter && fresh.weeks[slot].kind == WeekKind::Work) {
            lighten(fresh.weeks[slot]);
        }
        fresh.weeks[slot].kind = was.kind;
    }
    for (std::size_t i = 0; i < fresh.wishes.lifts.size(); ++i) {
        const base::LiftId lift = fresh.wishes.lifts[i].lift;
        const auto* edited = workOf(plan, week, lift);
        const auto* untouched = workOf(plain, slot, lift);
        auto& into = fresh.weeks[slot].work[i];
        const std::size_t common = edited == nullptr || untouched == nullptr ? 0 : std::min({edited->size(), untouched->size(), into.size()});
        for (std::size_t e = 0; e < common; ++e) {
            if ((*edited)[e] != (*untouched)[e]) {
                into[e] = (*edited)[e];
            }
        }
    }
}

/// A week that is over, for the lifts that the plan has now.
PlanWeek weekAsItWas(const BlockPlan& plan, std::size_t week, const PlanWishes& wishes)
{
    PlanWeek kept = plan.weeks[week];
    kept.work.clear();
    for (const auto& lift : wishes.lifts) {
        const auto* work = workOf(plan, week, lift.lift);
        kept.work.push_back(work == nullptr ? std::vector<PlannedWork>() : *work);
    }
    return kept;
}

std::vector<chalk::direction::PlanSingle> singlesKept(const ClientPlan& plan, const PlanWishes& wishes, std::span<const LiftForPlan> lifts)
{
    std::vector<chalk::direction::PlanSingle> singles = singlesFor(wishes, lifts);
    for (std::size_t i = 0; i < wishes.lifts.size(); ++i) {
        for (std::size_t j = 0; j < plan.plan.wishes.lifts.size(); ++j) {
            if (plan.plan.wishes.lifts[j].lift == wishes.lifts[i].lift) {
                singles[i] = plan.singles[j];
            }
        }
    }
    return singles;
}

/// The Monday of each of `count` weeks: those that the plan has, then week after week.
void layOn(std::vector<PlanWeek>& weeks, const BlockPlan& plan)
{
    for (std::size_t i = 0; i < weeks.size(); ++i) {
        weeks[i].monday = i < plan.weeks.size() ? plan.weeks[i].monday : weeks[i - 1].monday + kSundayAfter + 1;
    }
}

}  // namespace

bool isWeekOver(const BlockPlan& plan, std::size_t week, base::Date today)
{
    return plan.weeks[week].monday + kSundayAfter < today;
}

EditedPlan withEdit(ClientPlan plan, const WorkPlace& place, const WorkEdit& edit, base::Date today)
{
    auto& weeks = plan.plan.weeks;
    if (place.week >= weeks.size() || place.lift >= weeks[place.week].work.size() || place.exposure >= weeks[place.week].work[place.lift].size()) {
        return tl::unexpected(EditFault::NotThere);
    }
    if (isWeekOver(plan.plan, place.week, today)) {
        return tl::unexpected(EditFault::WeekIsOver);
    }
    if (const auto fault = faultOf(edit)) {
        return tl::unexpected(*fault);
    }
    apply(weeks[place.week].work[place.lift][place.exposure], edit);
    return plan;
}

EditedPlan withKind(ClientPlan plan, std::size_t week, WeekKind kind, base::Date today)
{
    auto& weeks = plan.plan.weeks;
    if (week >= weeks.size()) {
        return tl::unexpected(EditFault::NotThere);
    }
    if (isWeekOver(plan.plan, week, today)) {
        return tl::unexpected(EditFault::WeekIsOver);
    }
    if (kind == WeekKind::Test || weeks[week].kind == WeekKind::Test) {
        return tl::unexpected(EditFault::TestWeek);
    }
    if (weeks[week].kind == kind) {
        return plan;
    }
    weeks[week].kind = kind;
    if (kind == WeekKind::Lighter) {
        lighten(weeks[week]);
    } else {
        weeks[week].work = fullWork(plan.plan, week);
    }
    return plan;
}

EditedPlan copiedDown(ClientPlan plan, std::size_t week, std::size_t lift, base::Date today)
{
    auto& weeks = plan.plan.weeks;
    if (week + 1 >= weeks.size() || lift >= weeks[week].work.size()) {
        return tl::unexpected(EditFault::NotThere);
    }
    if (isWeekOver(plan.plan, week + 1, today)) {
        return tl::unexpected(EditFault::WeekIsOver);
    }
    if (weeks[week + 1].kind == WeekKind::Test) {
        return tl::unexpected(EditFault::TestWeek);
    }
    const auto& from = weeks[week].work[lift];
    auto& into = weeks[week + 1].work[lift];
    for (std::size_t e = 0; e < std::min(from.size(), into.size()); ++e) {
        const auto aim = into[e].aim;
        into[e] = from[e];
        into[e].aim = aim;
    }
    return plan;
}

int handEdits(const BlockPlan& plan)
{
    const BlockPlan plain = planFor(plan.wishes);
    const std::vector<std::size_t> slots = slotsOf(plan, plain);
    int edits = 0;
    for (std::size_t w = 0; w < plan.weeks.size(); ++w) {
        if (slots[w] >= plain.weeks.size()) {
            continue;
        }
        const PlanWeek& untouched = plain.weeks[slots[w]];
        edits += plan.weeks[w].kind == untouched.kind ? 0 : 1;
        for (std::size_t l = 0; l < plan.weeks[w].work.size(); ++l) {
            for (std::size_t e = 0; e < std::min(plan.weeks[w].work[l].size(), untouched.work[l].size()); ++e) {
                edits += plan.weeks[w].work[l][e] == untouched.work[l][e] ? 0 : 1;
            }
        }
    }
    return edits;
}

ClientPlan refitted(const ClientPlan& plan, PlanWishes wishes, std::span<const LiftForPlan> lifts, bool keepsEdits, base::Date today)
{
    const BlockPlan& was = plan.plan;
    const BlockPlan plain = planFor(was.wishes);
    const std::vector<std::size_t> slots = slotsOf(was, plain);
    std::size_t over = 0;
    while (over < was.weeks.size() && isWeekOver(was, over, today)) {
        ++over;
    }
    const std::size_t next = over == 0 ? 0 : slots[over - 1] + 1;
    if (over > 0) {
        wishes.start = was.wishes.start;
        wishes.weeks = std::clamp(wishes.weeks, std::min(static_cast<int>(next) + 1, chalk::direction::kMostWeeks), chalk::direction::kMostWeeks);
    }
    BlockPlan fresh = planFor(wishes);
    for (std::size_t w = over; keepsEdits && w < was.weeks.size(); ++w) {
        keepEdits(fresh, slots[w], was, w, plain);
    }
    std::vector<PlanWeek> weeks;
    for (std::size_t w = 0; w < over; ++w) {
        weeks.push_back(weekAsItWas(was, w, wishes));
    }
    weeks.insert(weeks.end(), fresh.weeks.begin() + static_cast<std::ptrdiff_t>(std::min(next, fresh.weeks.size())), fresh.weeks.end());
    if (wishes.start == was.wishes.start) {
        layOn(weeks, was);
    }
    fresh.weeks = std::move(weeks);
    ClientPlan changed = plan;
    changed.singles = singlesKept(plan, wishes, lifts);
    changed.plan = std::move(fresh);
    return changed;
}

}  // namespace chalk::ui::direction
