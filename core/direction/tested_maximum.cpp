#include "core/direction/tested_maximum.h"

#include "core/base/enum_keys.h"

namespace chalk::direction {

namespace {

constexpr std::array<std::string_view, 5> kTestEndKeys{"found", "pain", "too_many", "equipment_ends", "stopped"};

}  // namespace

std::string_view keyOf(TestEnd end)
{
    return base::keyIn(kTestEndKeys, end);
}

std::optional<TestEnd> testEndOf(std::string_view key)
{
    return base::enumOf<TestEnd>(kTestEndKeys, key);
}

}  // namespace chalk::direction
