#include "core/direction/rep_zones.h"

#include <algorithm>

namespace chalk::direction {

namespace {

using base::Milli;

constexpr std::array<RepZone, 4> kZones{RepZone{Milli(550), Milli(650), 3, 6, 18, 24, 30}, RepZone{Milli(700), Milli(790), 3, 6, 12, 18, 24},
                                        RepZone{Milli(800), Milli(890), 2, 4, 10, 15, 20}, RepZone{Milli(900), Milli(1000), 1, 2, 4, 7, 10}};

}  // namespace

std::span<const RepZone> repZones()
{
    return kZones;
}

std::optional<RepZone> zoneOf(base::Milli share)
{
    const Milli whole(share.value() / 10 * 10);
    const auto* found = std::find_if(kZones.begin(), kZones.end(), [whole](const RepZone& z) { return whole >= z.from && whole <= z.to; });
    return found == kZones.end() ? std::nullopt : std::optional(*found);
}

std::vector<ZoneTotal> zoneTotals(std::span<const ZoneWork> session)
{
    std::vector<ZoneTotal> totals;
    for (const ZoneWork& work : session) {
        const auto zone = zoneOf(work.share);
        auto total = std::find_if(totals.begin(), totals.end(), [&](const ZoneTotal& t) { return t.zone == zone; });
        if (total == totals.end()) {
            totals.push_back({zone, 0, false, zone.has_value()});
            total = totals.end() - 1;
        }
        total->reps += work.sets.value() * work.reps.value();
        total->areSetsInside = total->areSetsInside && work.reps.value() >= zone->setLeast && work.reps.value() <= zone->setMost;
    }
    for (ZoneTotal& total : totals) {
        total.isTotalInside = total.zone && total.reps >= total.zone->totalLeast && total.reps <= total.zone->totalMost;
    }
    std::sort(totals.begin(), totals.end(), [](const ZoneTotal& a, const ZoneTotal& b) {
        return (a.zone ? a.zone->from.value() : 0) < (b.zone ? b.zone->from.value() : 0);
    });
    return totals;
}

}  // namespace chalk::direction
