#pragma once

#include "core/simulation/simulated_lifter.h"
#include "core/studio/studio_document.h"

#include <map>
#include <vector>

namespace chalk::simulation {

/// A session that a lift may be trained in.
struct StorySession {
    base::Date date;
    std::string code;
};

/// One lift's story: the sessions, and what the coach does on a day before that day's work.
struct LiftStory {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    std::string equipmentKey;
    progression::LiftSetup setup;
    std::vector<StorySession> sessions;                          ///< by date
    std::map<base::Date, progression::EventBody> coachActs;
    std::map<base::Date, int> pains;                             ///< pain of that day's exposure
};

/// Where a story should end, as far as people let themselves be steered.
struct Ending {
    int stage = 4;
    int cycle = 1;
    bool isStalled = false;
};

/// Plays a story with one talent and one seed.
[[nodiscard]] studio::DocumentLift play(const LiftStory& story, const Talent& talent, std::uint64_t seed);

/// Plays a story with many talents and seeds, and keeps the one that ends nearest to `ending`.
[[nodiscard]] studio::DocumentLift playTowards(const LiftStory& story, const Ending& ending, const Talent& talent, std::uint64_t seed);

}  // namespace chalk::simulation
