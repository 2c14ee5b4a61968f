#pragma once

#include <compare>
#include <cstdint>

namespace chalk::base {

/// The number of a record of one kind; 0 is no record. Ids of different kinds neither mix nor compare.
template <class Tag>
class Id {
public:
    constexpr Id() = default;
    constexpr explicit Id(std::int64_t value) : m_value(value) {}

    [[nodiscard]] constexpr std::int64_t value() const { return m_value; }
    [[nodiscard]] constexpr bool isNone() const { return m_value == 0; }

    constexpr auto operator<=>(const Id&) const = default;

private:
    std::int64_t m_value = 0;
};

using ClientId = Id<struct ClientIdTag>;
using CoachId = Id<struct CoachIdTag>;
using LiftId = Id<struct LiftIdTag>;
using EventId = Id<struct EventIdTag>;
using SessionId = Id<struct SessionIdTag>;
using PlanId = Id<struct PlanIdTag>;
using CautionId = Id<struct CautionIdTag>;
/// One thing that a person did, as one transaction: what undo takes back.
using ActId = Id<struct ActIdTag>;

}  // namespace chalk::base
