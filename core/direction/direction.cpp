#include "core/direction/direction.h"

#include "core/base/enum_keys.h"

namespace chalk::direction {

namespace {

constexpr std::array<std::string_view, 3> kDirectionKeys{"strength", "physique", "movement"};
constexpr std::array<Demands, 3> kDemands{Demands{4, 1, 1, 2, 3}, Demands{2, 3, 3, 2, 4}, Demands{1, 2, 4, 1, 2}};

}  // namespace

std::string_view keyOf(Direction direction)
{
    return base::keyIn(kDirectionKeys, direction);
}

std::optional<Direction> directionOf(std::string_view key)
{
    return base::enumOf<Direction>(kDirectionKeys, key);
}

Demands demandsOf(Direction direction)
{
    return kDemands[static_cast<std::size_t>(direction)];
}

}  // namespace chalk::direction
