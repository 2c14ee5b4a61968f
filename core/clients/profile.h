#pragma once

#include "core/base/date.h"
#include "core/clients/availability.h"
#include "core/lifts/exercise.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::clients {

/// For norms that are printed by sex, and for nothing else.
enum class NormSex : std::uint8_t { NotGiven, Female, Male };

/// A person to call.
struct Contact {
    std::string name;
    std::string phone;
    std::string email;

    bool operator==(const Contact&) const = default;
};

/// What a client's file holds besides Client. All of it may be empty. Texts are UTF-8.
struct Profile {
    std::string pronouns;
    NormSex sex = NormSex::NotGiven;
    Contact contact;                       ///< its name is unused: the client's own stands in Client
    Contact emergency;
    std::string trainingHistory;
    int sessionMinutes = 60;               ///< 15 to 240
    bool isInGroup = false;                ///< small group, not one-to-one
    WeekHours free;                        ///< when the client can come
    WeekHours preferred;                   ///< and would rather
    std::vector<lifts::EquipmentKind> homeKit;
    std::optional<base::Date> consentOn;   ///< to keep health data; without it none is kept
    std::string guardian;                  ///< of a minor
    std::optional<base::Date> guardianConsentOn;

    bool operator==(const Profile&) const = default;
};

/// Whether a guardian's consent is needed: under 18. Common practice; local law decides.
[[nodiscard]] bool isMinorOn(base::Date birth, base::Date day);

/// Whether health data may be kept: consented to, and for a minor by a guardian too. `birth` may be unknown: then the client's consent is enough.
[[nodiscard]] bool canKeepHealth(const Profile& profile, std::optional<base::Date> birth, base::Date day);

/// A field that cannot be, by its name in files, and why.
struct ProfileFault {
    std::string field;
    std::string reason;

    bool operator==(const ProfileFault&) const = default;
};

/// Checks a birth date: not after `today`, at most 120 years before.
[[nodiscard]] std::optional<ProfileFault> faultOfBirth(base::Date birth, base::Date today);
[[nodiscard]] std::optional<ProfileFault> faultOf(const Profile& profile, base::Date today);

[[nodiscard]] std::string_view keyOf(NormSex sex);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<NormSex> normSexOf(std::string_view key);

}  // namespace chalk::clients
