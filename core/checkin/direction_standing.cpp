#include "core/checkin/direction_standing.h"

namespace chalk::checkin {

bool isPlanRunning(const DirectionStanding& standing, base::Date day)
{
    return standing.planEnd && day <= *standing.planEnd;
}

std::optional<base::Date> planToReview(const DirectionStanding& standing, base::Date day)
{
    const bool isOver = standing.planEnd && *standing.planEnd < day;
    const bool isDecided = isOver && standing.lastChoice && *standing.lastChoice >= *standing.planEnd;
    return isOver && !isDecided ? standing.planEnd : std::nullopt;
}

bool isDirectionSettled(const DirectionStanding& standing, base::Date day)
{
    if (isPlanRunning(standing, day)) {
        return true;
    }
    return !planToReview(standing, day) && standing.lastChoice && day - *standing.lastChoice < kDirectionRestDays;
}

}  // namespace chalk::checkin
