#include "core/direction/published_range.h"

#include "core/base/enum_keys.h"

namespace chalk::direction {

namespace {

constexpr std::string_view kPhases = "Haff and Triplett 2016, table 21.2";
constexpr std::string_view kLoads = "Haff and Triplett 2016, table 17.9";
constexpr std::string_view kSets = "Haff and Triplett 2016, table 17.11";
constexpr std::string_view kRests = "Haff and Triplett 2016, table 17.12";
constexpr std::string_view kLongRests = "Haff and Triplett 2016, table 17.12; Schoenfeld 2016";
constexpr std::string_view kShortRests = "Haff and Triplett 2016, table 17.12: 30 s or less; ACSM 2009: less than 90 s (from memory)";
constexpr std::string_view kLightDays = "Haff and Triplett 2016, chapter 17: heavy, light and medium days";
constexpr std::string_view kAssistance = "Haff and Triplett 2016, chapter 17: not heavier than 8RM";

constexpr std::array<std::string_view, 6> kAimKeys{"basic_strength", "strength", "light_day", "muscle", "assistance", "upkeep"};

constexpr std::array<PublishedRange, 6> kRanges{
    PublishedRange{{800, 950}, {2, 6}, {2, 6}, {120, 300}, kPhases, kPhases, kRests},
    PublishedRange{{850, 950}, {2, 6}, {2, 6}, {120, 300}, kLoads, kSets, kRests},
    PublishedRange{{640, 855}, {2, 6}, {2, 6}, {120, 300}, kLightDays, kPhases, kRests},
    PublishedRange{{670, 850}, {6, 12}, {3, 6}, {30, 180}, kLoads, kSets, kLongRests},
    PublishedRange{{500, 800}, {6, 15}, {2, 6}, {30, 180}, kAssistance, kSets, kLongRests},
    PublishedRange{{300, 670}, {12, 25}, {2, 3}, {0, 90}, kLoads, kSets, kShortRests}};

void judge(std::vector<Departure>& found, PlanFigure figure, int value, NumberRange range, std::string_view source)
{
    if (value < range.least || value > range.most) {
        found.push_back({figure, value, range, source});
    }
}

}  // namespace

PublishedRange publishedRange(Aim aim)
{
    return kRanges[static_cast<std::size_t>(aim)];
}

std::vector<Departure> departuresOf(const SetScheme& scheme, Aim aim)
{
    const PublishedRange range = publishedRange(aim);
    std::vector<Departure> found;
    judge(found, PlanFigure::Share, scheme.share.value(), range.share, range.shareSource);
    judge(found, PlanFigure::Reps, scheme.reps.value(), range.reps, range.shareSource);
    judge(found, PlanFigure::Sets, scheme.sets.value(), range.sets, range.setsSource);
    judge(found, PlanFigure::Rest, scheme.rest.value(), range.rest, range.restSource);
    return found;
}

std::string_view keyOf(Aim aim)
{
    return base::keyIn(kAimKeys, aim);
}

std::optional<Aim> aimOf(std::string_view key)
{
    return base::enumOf<Aim>(kAimKeys, key);
}

}  // namespace chalk::direction
