#pragma once

#include "core/base/id.h"
#include "core/tables/table_content.h"

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace chalk::tables {

/// Somebody whom the studio has.
struct KnownPerson {
    base::ClientId id;
    std::string name;
    std::optional<base::Date> birthDate;
    std::string phone;
    std::string mail;

    bool operator==(const KnownPerson&) const = default;
};

/// Why two records may be of one person, the strongest reason first.
enum class MatchGround : std::uint8_t {
    Mail,       ///< the same address
    Name,       ///< the same words, whatever their case, accents and order
    Phone,      ///< the same last nine digits
    NearName,   ///< a typing error or two apart
    BirthDate   ///< born on the same day
};

[[nodiscard]] std::string_view keyOf(MatchGround ground);

/// Two records that may be of one person.
struct PersonMatch {
    std::size_t first = 0;
    std::size_t second = 0;
    MatchGround ground = MatchGround::Name;
    bool isCertain = false;  ///< mail or name are the same, and nothing contradicts it

    bool operator==(const PersonMatch&) const = default;
};

/// For each of the listed that may be one of the known, the likeliest: `first` is the index of the listed, `second` of the known. In the order of the
/// listed.
[[nodiscard]] std::vector<PersonMatch> matchesWith(std::span<const ListedPerson> listed, std::span<const KnownPerson> known);

/// Pairs among the known, the strongest reason first; `first` is below `second`.
[[nodiscard]] std::vector<PersonMatch> matchesAmong(std::span<const KnownPerson> known);

}  // namespace chalk::tables
