#include "ui/week/rack_use.h"

#include <algorithm>
#include <array>
#include <map>

namespace chalk::ui::week {

namespace {

using chalk::week::kDayMinutes;
using chalk::week::kWeekDays;
using chalk::week::StationNeed;

constexpr int kQuarterHour = 15;
constexpr int kWholeUnit = 100;
constexpr int kDayQuarters = kDayMinutes / kQuarterHour;

/// Per cent of one rack at a quarter of an hour.
struct RackLoad {
    int saved = 0;
    int all = 0;
    int there = 0;
};

using DayLoads = std::array<RackLoad, kDayQuarters>;

class RackCounter {
public:
    explicit RackCounter(const WeekInput& input) : m_input(input)
    {
        const auto& stations = input.week.problem.stations;
        const auto at = std::find_if(stations.begin(), stations.end(), [](const chalk::week::Station& one) { return one.id == lifts::keyOf(lifts::Station::Rack); });
        m_station = at == stations.end() ? std::nullopt : std::optional(static_cast<std::size_t>(at - stations.begin()));
        if (m_station) {
            readPast();
        }
    }

    [[nodiscard]] int units() const { return m_station ? m_input.week.problem.stations[*m_station].units : 0; }

    [[nodiscard]] DayLoads loadsOf(const WeekScene& scene, int day) const
    {
        DayLoads loads{};
        for (RackLoad& load : loads) {
            load.there = units() * kWholeUnit;
        }
        for (const chalk::week::StationClosure& closure : m_input.week.problem.stations[*m_station].closures) {
            for (int i = closure.span.from / kQuarterHour; closure.span.day == day && i * kQuarterHour < closure.span.to; ++i) {
                RackLoad& load = loads[static_cast<std::size_t>(i)];
                load.there = std::min(load.there, closure.units * kWholeUnit);
            }
        }
        for (const WeekBlock& block : scene.blocks) {
            for (const BlockMember& member : block.members) {
                if (block.day == day && member.takesPlace()) {
                    add(loads, block, member);
                }
            }
        }
        return loads;
    }

private:
    /// What sessions take that are over by now: the case leaves them aside, so a case is made in which they are to come.
    void readPast()
    {
        chalk::week::WeekFacts before = m_input.facts;
        before.nowMinute = std::min(before.nowMinute, 0);
        const chalk::week::WeekCase whole = caseOf(before);
        for (std::size_t i = 0; i < whole.origins.size(); ++i) {
            if (!whole.origins[i].booked.isNone()) {
                m_past[whole.origins[i].booked] = whole.problem.sessions[i].needs;
            }
        }
    }

    [[nodiscard]] std::vector<StationNeed> needsOf(const BlockMember& member) const
    {
        if (member.wish) {
            return m_input.week.problem.sessions[*member.wish].needs;
        }
        const auto past = m_past.find(member.booking);
        return past == m_past.end() ? std::vector<StationNeed>() : past->second;
    }

    void add(DayLoads& loads, const WeekBlock& block, const BlockMember& member) const
    {
        for (const StationNeed& need : needsOf(member)) {
            const int end = std::min(kDayMinutes, block.from + need.to);
            for (int i = (block.from + need.from) / kQuarterHour; need.station == *m_station && i * kQuarterHour < end; ++i) {
                RackLoad& load = loads[static_cast<std::size_t>(i)];
                load.all += need.share;
                load.saved += member.isProposed ? 0 : need.share;
            }
        }
    }

    const WeekInput& m_input;
    std::optional<std::size_t> m_station;
    std::map<base::SessionId, std::vector<StationNeed>> m_past;
};

std::optional<RackState> stateOf(const RackLoad& load, int unit)
{
    if (load.all <= unit * kWholeUnit) {
        return std::nullopt;
    }
    if (load.all > load.there) {
        return RackState::Short;
    }
    return load.saved > unit * kWholeUnit ? RackState::Used : RackState::Proposed;
}

void addUnit(WeekScene& scene, const DayLoads& loads, int day, int unit)
{
    for (int i = 0; i < kDayQuarters; ++i) {
        const auto state = stateOf(loads[static_cast<std::size_t>(i)], unit);
        if (!state) {
            continue;
        }
        const int first = i;
        while (i + 1 < kDayQuarters && stateOf(loads[static_cast<std::size_t>(i) + 1], unit) == state) {
            ++i;
        }
        scene.rackUse.push_back({day, unit, first * kQuarterHour, (i + 1) * kQuarterHour, *state});
    }
}

}  // namespace

void addRackUse(WeekScene& scene, const WeekInput& input)
{
    const RackCounter counter(input);
    scene.racks = counter.units();
    for (int day = 0; day < kWeekDays && scene.racks > 0; ++day) {
        const DayLoads loads = counter.loadsOf(scene, day);
        for (int unit = 0; unit < scene.racks; ++unit) {
            addUnit(scene, loads, day, unit);
        }
    }
}

}  // namespace chalk::ui::week
