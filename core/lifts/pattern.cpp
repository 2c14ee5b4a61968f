#include "core/lifts/pattern.h"

#include "core/base/enum_keys.h"

namespace chalk::lifts {

namespace {

constexpr std::array<std::string_view, 8> kPatternKeys{"squat",         "hinge",         "horizontal_push", "horizontal_pull",
                                                       "vertical_push", "vertical_pull", "single_leg",      "carry_brace"};
constexpr std::array<std::string_view, 2> kRegionKeys{"upper", "lower"};
constexpr std::array<std::string_view, 3> kMeasureKeys{"reps", "seconds", "metres"};

}  // namespace

std::string_view keyOf(Pattern pattern)
{
    return base::keyIn(kPatternKeys, pattern);
}

std::string_view keyOf(Region region)
{
    return base::keyIn(kRegionKeys, region);
}

std::string_view keyOf(Measure measure)
{
    return base::keyIn(kMeasureKeys, measure);
}

std::optional<Pattern> patternOf(std::string_view key)
{
    return base::enumOf<Pattern>(kPatternKeys, key);
}

std::optional<Region> regionOf(std::string_view key)
{
    return base::enumOf<Region>(kRegionKeys, key);
}

std::optional<Measure> measureOf(std::string_view key)
{
    return base::enumOf<Measure>(kMeasureKeys, key);
}

}  // namespace chalk::lifts
