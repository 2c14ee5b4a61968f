#pragma once

#include "core/direction/client_plan.h"
#include "core/simulation/simulated_lifter.h"
#include "core/studio/studio_document.h"

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace chalk::simulation {

/// A session that a lift may be trained in.
struct StorySession {
    base::Date date;
    int startMinute = 0;  ///< since midnight
    std::string code;
};

/// What happens in a session besides what the lift had due.
enum class Turn : std::uint8_t {
    LosesASet,      ///< the last working set is lost
    GoesLighter,    ///< a lighter week: about 15 per cent off, and a set fewer where there are more than two
    OnlyWarmsUp,    ///< the session ends before the work
    IsScreened,     ///< the movement is looked at again instead
    LoadsTooSoon,   ///< a light set in Pattern or Control
    TriesOnHold     ///< a light set though the lift is on hold
};

/// A plan of weeks, and which of its lifts the story is of.
struct PlanPart {
    direction::ClientPlan plan;  ///< its singles are not read
    std::size_t lift = 0;
};

/// One lift's story: the sessions, and what the coach does on a day before that day's work.
struct LiftStory {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    std::string equipmentKey;
    progression::LiftSetup setup;
    std::vector<StorySession> sessions;                       ///< by date
    std::map<base::Date, progression::EventBody> coachActs{};
    std::map<base::Date, std::string> holds{};                ///< by the day of a session: why the coach keeps the numbers as they are
    std::map<base::Date, int> pains{};                        ///< pain of that day's exposure
    std::map<base::Date, Turn> turns{};                       ///< by the day of a session; one that does not fit is passed over
    std::set<base::Date> slips{};                             ///< sessions that were typed in wrongly at first, and corrected
    std::set<base::Date> doubles{};                           ///< sessions that were typed in twice; the second entry was taken back
    std::vector<PlanPart> plans{};                            ///< by the day that they are begun on; one that the lift cannot follow then is passed over
};

/// Where a story should stand before a moment, as far as people let themselves be steered.
struct Ending {
    int stage = 4;
    int cycle = 1;
    bool isStalled = false;
};

/// Plays a story with one talent and one seed.
[[nodiscard]] studio::DocumentLift play(const LiftStory& story, const Talent& talent, std::uint64_t seed);

/// Plays a story with many talents and seeds, and keeps the one that stood nearest to `ending` before `minute` of `day`.
[[nodiscard]] studio::DocumentLift playTowards(const LiftStory& story, const Ending& ending, base::Date day, int minute, const Talent& talent,
                                               std::uint64_t seed);

}  // namespace chalk::simulation
