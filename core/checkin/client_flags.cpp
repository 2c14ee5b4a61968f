#include "core/checkin/client_flags.h"

#include "core/base/enum_keys.h"

#include <algorithm>

namespace chalk::checkin {

namespace {

constexpr std::array<std::string_view, kClientFlags.size()> kClientFlagKeys{"clearance", "pain",  "plateau", "missed",
                                                                            "rescreen",  "ready", "away",    "new"};

struct FlagOfReason {
    ClientFlag operator()(const ClearanceDue&) const { return ClientFlag::Clearance; }
    ClientFlag operator()(const LiftOnHold&) const { return ClientFlag::Pain; }
    ClientFlag operator()(const LiftStalled&) const { return ClientFlag::Plateau; }
    ClientFlag operator()(const SessionsMissed&) const { return ClientFlag::Missed; }
    ClientFlag operator()(const NotSeen&) const { return ClientFlag::Missed; }
    ClientFlag operator()(const ScreenDue&) const { return ClientFlag::Rescreen; }
    ClientFlag operator()(const DirectionDue&) const { return ClientFlag::Ready; }
};

}  // namespace

ClientFlag flagOf(const AttentionReason& reason)
{
    return std::visit(FlagOfReason{}, reason);
}

std::vector<ClientFlag> flagsFor(const ClientFacts& facts, const std::vector<AttentionReason>& reasons, base::Date day,
                                 const AttentionThresholds& thresholds)
{
    std::vector<ClientFlag> flags;
    for (const AttentionReason& reason : reasons) {
        flags.push_back(flagOf(reason));
    }
    if (facts.awayUntil && day < *facts.awayUntil) {
        flags.push_back(ClientFlag::Away);
    }
    if (day - facts.startedOn <= thresholds.newDays && !clients::isBlocked(facts.clearance, day)) {
        flags.push_back(ClientFlag::New);
    }
    std::sort(flags.begin(), flags.end());
    return flags;
}

bool isFlagged(const std::vector<ClientFlag>& flags)
{
    return std::any_of(flags.begin(), flags.end(), [](ClientFlag flag) { return flag != ClientFlag::Away; });
}

std::string_view keyOf(ClientFlag flag)
{
    return base::keyIn(kClientFlagKeys, flag);
}

}  // namespace chalk::checkin
