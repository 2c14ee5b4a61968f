#include "core/clients/profile.h"

#include "core/base/enum_keys.h"

namespace chalk::clients {

namespace {

constexpr std::array<std::string_view, 3> kSexKeys{"not_given", "female", "male"};
constexpr int kAdultAge = 18;
constexpr int kOldestAge = 120;

}  // namespace

bool isMinorOn(base::Date birth, base::Date day)
{
    return base::ageOn(birth, day) < kAdultAge;
}

bool canKeepHealth(const Profile& profile, std::optional<base::Date> birth, base::Date day)
{
    if (!profile.consentOn || *profile.consentOn > day) {
        return false;
    }
    const bool isGuardianNeeded = birth && isMinorOn(*birth, day);
    return !isGuardianNeeded || (profile.guardianConsentOn && *profile.guardianConsentOn <= day);
}

std::optional<ProfileFault> faultOfBirth(base::Date birth, base::Date today)
{
    if (birth > today) {
        return ProfileFault{"born", "is still to come"};
    }
    return base::ageOn(birth, today) > kOldestAge ? std::optional(ProfileFault{"born", "is more than 120 years ago"}) : std::nullopt;
}

std::optional<ProfileFault> faultOf(const Profile& profile, base::Date today)
{
    if (profile.sessionMinutes < 15 || profile.sessionMinutes > 240) {
        return ProfileFault{"session_minutes", "must be 15 to 240"};
    }
    if (profile.consentOn && *profile.consentOn > today) {
        return ProfileFault{"consent", "is still to come"};
    }
    if (profile.guardianConsentOn && *profile.guardianConsentOn > today) {
        return ProfileFault{"guardian_consent", "is still to come"};
    }
    if (profile.guardianConsentOn && profile.guardian.empty()) {
        return ProfileFault{"guardian", "is required beside the guardian's consent"};
    }
    return std::nullopt;
}

std::string_view keyOf(NormSex sex)
{
    return base::keyIn(kSexKeys, sex);
}

std::optional<NormSex> normSexOf(std::string_view key)
{
    return base::enumOf<NormSex>(kSexKeys, key);
}

}  // namespace chalk::clients
