#include "core/progression/event.h"

#include "core/base/enum_keys.h"

namespace chalk::progression {

namespace {

constexpr std::array<std::string_view, 3> kSteadinessKeys{"steady", "shaky", "lost"};
constexpr std::array<std::string_view, 3> kVerdictKeys{"met", "partly", "not_met"};
constexpr std::array<std::string_view, std::variant_size_v<EventBody>> kTypeKeys{"exposure", "rehearsal", "release",
                                                                              "set",      "swap",      "lighter",  "block"};

}  // namespace

std::string_view keyOf(Steadiness steadiness)
{
    return base::keyIn(kSteadinessKeys, steadiness);
}

std::string_view keyOf(Verdict verdict)
{
    return base::keyIn(kVerdictKeys, verdict);
}

std::string_view typeKeyOf(const EventBody& body)
{
    return kTypeKeys[body.index()];
}

std::optional<Steadiness> steadinessOf(std::string_view key)
{
    return base::enumOf<Steadiness>(kSteadinessKeys, key);
}

std::optional<Verdict> verdictOf(std::string_view key)
{
    return base::enumOf<Verdict>(kVerdictKeys, key);
}

}  // namespace chalk::progression
