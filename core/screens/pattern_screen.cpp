#include "core/screens/pattern_screen.h"

#include "core/base/enum_keys.h"

#include <algorithm>

#include <fmt/core.h>

namespace chalk::screens {

namespace {

constexpr std::array<std::string_view, 4> kMarkKeys{"not_judged", "met", "partly", "not_met"};
constexpr std::array<std::string_view, 4> kPauseMarkKeys{"not_tried", "held", "shaky", "not_held"};
constexpr std::array<std::string_view, 3> kDepthKeys{"top", "middle", "bottom"};
constexpr std::array<std::string_view, 3> kMovementKeys{"steady", "shaky", "lost"};

bool isEveryPointMet(const PatternScreen& screen)
{
    return std::all_of(screen.points.begin(), screen.points.end(), [](const PointMark& point) { return point.mark == Mark::Met; });
}

}  // namespace

bool isPainful(const PatternScreen& screen)
{
    return screen.pain && screen.pain->score.value_or(1) > 0;
}

bool isStarted(const PatternScreen& screen)
{
    return std::any_of(screen.points.begin(), screen.points.end(), [](const PointMark& point) { return point.mark != Mark::NotJudged; }) ||
           std::any_of(screen.pauses.begin(), screen.pauses.end(), [](const PauseTry& pause) { return pause.mark != PauseMark::NotTried; }) ||
           screen.steadiness || screen.reps || screen.pain;
}

OpenMarks openMarksOf(const PatternScreen& screen)
{
    OpenMarks open;
    open.isPainScoreOpen = screen.pain && !screen.pain->score;
    if (isPainful(screen)) {
        return open;
    }
    for (const PointMark& point : screen.points) {
        if (point.mark == Mark::NotJudged) {
            open.points.push_back(point.key);
        }
    }
    if (isEveryPointMet(screen)) {
        std::copy_if(kPauseDepths.begin(), kPauseDepths.end(), std::back_inserter(open.pauses),
                     [&screen](PauseDepth depth) { return screen.pauseAt(depth).mark == PauseMark::NotTried; });
    }
    return open;
}

std::vector<lifts::Pattern> openPatternsOf(const MovementScreen& screen)
{
    std::vector<lifts::Pattern> open;
    for (const PatternScreen& one : screen.patterns) {
        if (!openMarksOf(one).isNothing()) {
            open.push_back(one.pattern);
        }
    }
    return open;
}

MovementSteadiness steadinessOf(const PatternScreen& screen)
{
    const bool isAnyShaky = std::any_of(screen.pauses.begin(), screen.pauses.end(), [](const PauseTry& pause) { return pause.mark == PauseMark::Shaky; });
    return std::max(screen.steadiness.value_or(MovementSteadiness::Steady), isAnyShaky ? MovementSteadiness::Shaky : MovementSteadiness::Steady);
}

std::optional<ScreenFault> faultOf(const PatternScreen& screen)
{
    for (std::size_t i = 0; i < screen.points.size(); ++i) {
        const auto isSame = [&](const PointMark& other) { return other.key == screen.points[i].key; };
        if (screen.points[i].key.empty() || std::count_if(screen.points.begin(), screen.points.end(), isSame) > 1) {
            return ScreenFault{fmt::format("points[{}].key", i), "must be there once"};
        }
    }
    for (const PauseDepth depth : kPauseDepths) {
        const PauseTry& pause = screen.pauseAt(depth);
        const std::string field = fmt::format("pauses.{}", keyOf(depth));
        if (pause.heldMs && (*pause.heldMs < 0 || *pause.heldMs > kMostPauseMs)) {
            return ScreenFault{field, fmt::format("must be 0 to {} s", kMostPauseMs / 1000)};
        }
        if (pause.heldMs && pause.mark == PauseMark::NotTried) {
            return ScreenFault{field, "has a time but was not tried"};
        }
    }
    if (screen.reps && (screen.reps->value() < 0 || screen.reps->value() > kMostScreenReps)) {
        return ScreenFault{"reps", fmt::format("must be 0 to {}", kMostScreenReps)};
    }
    if (screen.pain && screen.pain->score && (*screen.pain->score < 0 || *screen.pain->score > 10)) {
        return ScreenFault{"pain.score", "must be 0 to 10"};
    }
    return std::nullopt;
}

std::string_view keyOf(Mark mark)
{
    return base::keyIn(kMarkKeys, mark);
}

std::string_view keyOf(PauseMark mark)
{
    return base::keyIn(kPauseMarkKeys, mark);
}

std::string_view keyOf(PauseDepth depth)
{
    return base::keyIn(kDepthKeys, depth);
}

std::string_view keyOf(MovementSteadiness steadiness)
{
    return base::keyIn(kMovementKeys, steadiness);
}

std::optional<Mark> markOf(std::string_view key)
{
    return base::enumOf<Mark>(kMarkKeys, key);
}

std::optional<PauseMark> pauseMarkOf(std::string_view key)
{
    return base::enumOf<PauseMark>(kPauseMarkKeys, key);
}

std::optional<MovementSteadiness> movementSteadinessOf(std::string_view key)
{
    return base::enumOf<MovementSteadiness>(kMovementKeys, key);
}

}  // namespace chalk::screens
