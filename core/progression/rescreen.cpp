#include "core/progression/rescreen.h"

#include "core/base/enum_keys.h"

#include <algorithm>

namespace chalk::progression {

namespace {

using screens::Mark;
using screens::MovementScreen;
using screens::PatternScreen;
using screens::PauseMark;
using screens::PauseTry;

constexpr std::array<std::string_view, 4> kChangeKeys{"better", "same", "worse", "not_comparable"};
constexpr std::array<std::string_view, 4> kRescreenKeys{"never_screened", "eight_weeks", "layoff", "hold"};

/// By numbers of which the greater is the better.
Change changeBetween(int before, int after)
{
    if (before == after) {
        return Change::Same;
    }
    return after > before ? Change::Better : Change::Worse;
}

int worthOf(Mark mark)
{
    return mark == Mark::Met ? 2 : mark == Mark::Partly ? 1 : 0;
}

int worthOf(PauseMark mark)
{
    return mark == PauseMark::Held ? 2 : mark == PauseMark::Shaky ? 1 : 0;
}

Change changeOf(Mark before, Mark after)
{
    if (before == Mark::NotJudged || after == Mark::NotJudged) {
        return Change::NotComparable;
    }
    return changeBetween(worthOf(before), worthOf(after));
}

Change changeOf(const PauseTry& before, const PauseTry& after)
{
    if (before.mark == PauseMark::NotTried || after.mark == PauseMark::NotTried) {
        return Change::NotComparable;
    }
    const Change byMark = changeBetween(worthOf(before.mark), worthOf(after.mark));
    return byMark == Change::Same && before.heldMs && after.heldMs ? changeBetween(*before.heldMs, *after.heldMs) : byMark;
}

Change stageChangeOf(const PatternStart& before, const PatternStart& after)
{
    if (before.state == StartState::NotScreened || after.state == StartState::NotScreened) {
        return Change::NotComparable;
    }
    const auto worth = [](const PatternStart& start) { return start.state == StartState::OnHold ? 0 : numberOf(start.stage); };
    return changeBetween(worth(before), worth(after));
}

Mark markIn(const PatternScreen& screen, const std::string& key)
{
    const auto found = std::find_if(screen.points.begin(), screen.points.end(), [&key](const screens::PointMark& point) { return point.key == key; });
    return found == screen.points.end() ? Mark::NotJudged : found->mark;
}

std::vector<PointChange> pointChangesOf(const PatternScreen& before, const PatternScreen& after)
{
    std::vector<PointChange> changes;
    const auto add = [&](const std::string& key) {
        const Mark first = markIn(before, key);
        const Mark second = markIn(after, key);
        changes.push_back({key, first, second, changeOf(first, second)});
    };
    for (const screens::PointMark& point : after.points) {
        add(point.key);
    }
    for (const screens::PointMark& point : before.points) {
        const bool isInBoth = std::any_of(after.points.begin(), after.points.end(), [&point](const screens::PointMark& other) { return other.key == point.key; });
        if (!isInBoth) {
            add(point.key);
        }
    }
    return changes;
}

/// Pain as a number; what was named without one counts as the policy's limit.
int painOf(const PatternScreen& screen, const Policy& policy)
{
    return screen.pain ? screen.pain->score.value_or(policy.painHold) : 0;
}

Change painChangeOf(const PatternScreen& before, const PatternScreen& after, const Policy& policy)
{
    return changeBetween(-painOf(before, policy), -painOf(after, policy));
}

PatternChange changeIn(const PatternScreen& before, const PatternScreen& after, const Policy& policy)
{
    PatternChange change;
    change.pattern = after.pattern;
    change.before = startOf(before, policy);
    change.after = startOf(after, policy);
    change.stage = stageChangeOf(change.before, change.after);
    change.points = pointChangesOf(before, after);
    for (const screens::PauseDepth depth : screens::kPauseDepths) {
        const PauseTry& first = before.pauseAt(depth);
        const PauseTry& second = after.pauseAt(depth);
        change.pauses[static_cast<std::size_t>(depth)] = {depth, first, second, changeOf(first, second)};
    }
    const bool isInBoth = screens::isStarted(before) && screens::isStarted(after);
    change.pain = isInBoth ? painChangeOf(before, after, policy) : Change::NotComparable;
    return change;
}

template <class IsOf>
std::vector<lifts::Pattern> patternsOf(std::span<const RescreenLift> lifts, IsOf&& isOf)
{
    std::vector<lifts::Pattern> patterns;
    for (const RescreenLift& lift : lifts) {
        if (isOf(lift)) {
            patterns.push_back(lift.pattern);
        }
    }
    return patterns;
}

}  // namespace

std::array<PatternChange, lifts::kPatterns.size()> comparisonOf(const MovementScreen& before, const MovementScreen& after, const Policy& policy)
{
    std::array<PatternChange, lifts::kPatterns.size()> changes;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        changes[static_cast<std::size_t>(pattern)] = changeIn(before.of(pattern), after.of(pattern), policy);
    }
    return changes;
}

std::optional<RescreenDue> rescreenDueOn(base::Date day, std::optional<base::Date> lastScreen, std::span<const RescreenLift> lifts)
{
    if (!lastScreen) {
        return RescreenDue{RescreenReason::NeverScreened, std::nullopt, {}};
    }
    if (auto patterns = patternsOf(lifts, [](const RescreenLift& lift) { return lift.isFlagged; }); !patterns.empty()) {
        return RescreenDue{RescreenReason::Layoff, std::nullopt, std::move(patterns)};
    }
    const auto isReleasedSince = [&](const RescreenLift& lift) { return lift.releasedOn && *lift.releasedOn > *lastScreen && *lift.releasedOn <= day; };
    if (auto patterns = patternsOf(lifts, isReleasedSince); !patterns.empty()) {
        std::optional<base::Date> first;
        for (const RescreenLift& lift : lifts) {
            if (isReleasedSince(lift) && (!first || *lift.releasedOn < *first)) {
                first = lift.releasedOn;
            }
        }
        return RescreenDue{RescreenReason::Hold, first, std::move(patterns)};
    }
    const base::Date dueOn = *lastScreen + kRescreenDays;
    return day >= dueOn ? std::optional(RescreenDue{RescreenReason::EightWeeks, dueOn, {}}) : std::nullopt;
}

std::optional<base::Date> lastReleaseOf(std::span<const Decision> decisions)
{
    std::optional<base::Date> last;
    for (const Decision& decision : decisions) {
        if (decision.rules.has(Rule::P4)) {
            last = decision.date;
        }
    }
    return last;
}

std::string_view keyOf(Change change)
{
    return base::keyIn(kChangeKeys, change);
}

std::string_view keyOf(RescreenReason reason)
{
    return base::keyIn(kRescreenKeys, reason);
}

}  // namespace chalk::progression
