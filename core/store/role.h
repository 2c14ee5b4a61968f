#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::store {

/// What somebody who signs in at a studio's server is there for. A file has an owner only. The server holds to it as well: what a role
/// may not see or write it is not given, whatever program asks.
enum class Role : std::uint8_t {
    Owner,     ///< everything
    Coach,     ///< all but logins, erasure and what holds for the whole studio
    FrontDesk  ///< names, bookings and hours: nothing of anybody's health and training
};

/// What a role may.
enum class Right : std::uint8_t {
    SeeHealth,       ///< and all that is recorded of training
    WriteHealth,
    Record,          ///< results of sessions, and what is decided of lifts
    Book,            ///< sessions: when, where, with whom, and whether they took place
    ChangeStudio,    ///< settings, coaches, equipment
    EraseClient,
    SeeLogins
};

[[nodiscard]] bool may(Role role, Right right);

/// `owner`, `coach`, `front-desk`.
[[nodiscard]] std::string_view keyOf(Role role);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<Role> roleOf(std::string_view key);

}  // namespace chalk::store
