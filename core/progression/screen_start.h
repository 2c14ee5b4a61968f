#pragma once

#include "core/progression/event.h"
#include "core/progression/policy.h"
#include "core/progression/rule.h"
#include "core/progression/stage.h"
#include "core/screens/pattern_screen.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::progression {

/// What a screen says about where a lift starts.
enum class StartState : std::uint8_t {
    NotScreened,  ///< nothing is marked
    OnHold,       ///< pain: no starting stage
    Starts        ///< at `stage`
};

/// What loaded work in a pattern rests on besides its own stage. Common practice in the trade, no published rule.
enum class StartNeed : std::uint8_t {
    PushUpControl,  ///< a loaded horizontal press: the push-up is screened to Control or better
    OverheadReach   ///< loaded work overhead: the point `overhead_reach` of the vertical push is met
};

/// The key of the point that overhead work rests on; a point of the vertical push.
inline constexpr std::string_view kOverheadReachPoint = "overhead_reach";

/// Where one lift starts by the rules, and why.
struct PatternStart {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    StartState state = StartState::NotScreened;
    Stage stage = Stage::Pattern;                         ///< Pattern, Control or BaseLoad; Pattern where it does not start
    bool isProvisional = false;                           ///< something is still open; unmarked points count as not met
    RuleList rules;                                       ///< that decided: U-1, U-2, K-1, K-2, P-1
    int met = 0;                                          ///< points
    int partly = 0;
    int notMet = 0;
    std::vector<screens::PointMark> pointsInTheWay;       ///< Partly or NotMet, in the order of the screen
    std::vector<screens::PauseDepth> pausesInTheWay;      ///< tried and too short or not held; nothing while points are in the way
    bool areRepsInTheWay = false;                         ///< fewer than asked for
    bool isSteadinessInTheWay = false;
    bool isPainAtHoldLimit = false;                       ///< P-1: only a release or a new screen without pain ends the hold
    std::vector<StartNeed> unmetNeeds;                    ///< what loaded work in this pattern still lacks
};

/// The screen as the rules see it. A pause that was held or shaky and not timed counts as the policy's pause, one that was not
/// held or not tried as missing; a shaky one makes the trial shaky. An unmarked point counts as not met. Pain without a number counts as
/// `painHold`. Reps that were not noted count as those asked for.
[[nodiscard]] Rehearsal rehearsalOf(const screens::PatternScreen& screen, const Policy& policy);

/// Judges the screen by the rules of a lift that begins in Pattern. Any pain means no starting stage. The policy is sound.
[[nodiscard]] PatternStart startOf(const screens::PatternScreen& screen, const Policy& policy);

/// The same for all eight, in order.
[[nodiscard]] std::array<PatternStart, lifts::kPatterns.size()> startsOf(const screens::MovementScreen& screen, const Policy& policy);

/// Another starting stage that the coach wants.
struct StartChoice {
    Stage stage = Stage::Pattern;
    std::string reason;
};

/// Why a choice cannot be.
enum class ChoiceFault : std::uint8_t {
    OnHold,         ///< pain at the hold limit; with pain under it only Pattern can be chosen
    NoStartStage,   ///< not Pattern, Control or BaseLoad
    ReasonMissing   ///< another stage than the screen's needs a reason
};

/// A starting stage as it is kept.
struct ChosenStart {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    Stage stage = Stage::Pattern;
    Stage byRules = Stage::Pattern;      ///< what the screen said; Pattern for one that was not screened
    std::string reason;                  ///< empty where the coach kept the screen's stage
    bool isAboveScreen = false;
    std::vector<StartNeed> against;      ///< needs of loaded work that the choice goes against

    bool operator==(const ChosenStart&) const = default;
};

/// The coach's choice against what the screen says. A pattern that was not screened can be given a stage with a reason.
[[nodiscard]] tl::expected<ChosenStart, ChoiceFault> chosenStartOf(const PatternStart& start, const StartChoice& choice);

[[nodiscard]] std::string_view keyOf(StartState state);
[[nodiscard]] std::string_view keyOf(StartNeed need);

}  // namespace chalk::progression
