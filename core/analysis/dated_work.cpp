#include "core/analysis/dated_work.h"

namespace chalk::analysis {

Work workTogether(std::span<const DatedWork> done)
{
    Work sum;
    for (const DatedWork& one : done) {
        sum += one.work;
    }
    return sum;
}

std::map<base::LiftId, Work> workByLift(std::span<const DatedWork> done)
{
    std::map<base::LiftId, Work> sums;
    for (const DatedWork& one : done) {
        sums[one.lift] += one.work;
    }
    return sums;
}

PatternWork workByPattern(std::span<const DatedWork> done)
{
    PatternWork sums{};
    for (const DatedWork& one : done) {
        sums[static_cast<std::size_t>(one.pattern)] += one.work;
    }
    return sums;
}

std::map<base::SessionId, Work> workBySession(std::span<const DatedWork> done)
{
    std::map<base::SessionId, Work> sums;
    for (const DatedWork& one : done) {
        sums[one.session] += one.work;
    }
    return sums;
}

std::map<base::IsoWeek, Work> workByWeek(std::span<const DatedWork> done)
{
    std::map<base::IsoWeek, Work> sums;
    for (const DatedWork& one : done) {
        sums[one.date.isoWeek()] += one.work;
    }
    return sums;
}

}  // namespace chalk::analysis
