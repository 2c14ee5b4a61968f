#include "core/sessions/session_lifts.h"

#include <algorithm>

namespace chalk::sessions {

std::vector<base::LiftId> chooseLifts(std::vector<LiftCandidate> candidates, std::size_t most)
{
    const auto byPattern = [](const LiftCandidate& a, const LiftCandidate& b) { return std::pair(a.pattern, a.lift) < std::pair(b.pattern, b.lift); };
    std::sort(candidates.begin(), candidates.end(), byPattern);
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const LiftCandidate& a, const LiftCandidate& b) { return a.lastTrained < b.lastTrained; });
    candidates.resize(std::min(candidates.size(), most));
    std::sort(candidates.begin(), candidates.end(), byPattern);
    std::vector<base::LiftId> lifts;
    for (const LiftCandidate& candidate : candidates) {
        lifts.push_back(candidate.lift);
    }
    return lifts;
}

}  // namespace chalk::sessions
