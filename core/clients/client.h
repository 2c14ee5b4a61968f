#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/base/load.h"
#include "core/lifts/exercise.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace chalk::clients {

struct Coach {
    base::CoachId id;
    std::string name;  ///< `Ines`

    bool operator==(const Coach&) const = default;
};

/// A person who is coached. Texts are UTF-8.
struct Client {
    base::ClientId id;
    std::string name;
    std::optional<base::Date> birthDate;
    std::string goal;                    ///< in the client's own words
    base::CoachId coach;
    base::MassUnit unit = base::MassUnit::Kilogram;
    std::optional<base::Load> bodyMass;  ///< in `unit`, the latest one measured
    base::Date startedOn;
    int sessionsPerWeek = 2;             ///< 1 to 7
    std::optional<base::Date> awayUntil; ///< first day back

    bool operator==(const Client&) const = default;
};

/// Something to take care of: shown wherever the client is, and it rules exercises out.
struct Caution {
    base::CautionId id;
    std::string bodyPart;                       ///< short, for labels: `Lower back`
    std::string text;                           ///< what to avoid, for people
    std::string shortText;                      ///< the same for a card, one line
    std::vector<lifts::CautionTag> tags;        ///< what exercises are checked against
    std::optional<base::Date> until;            ///< last day; nothing: until taken away

    bool operator==(const Caution&) const = default;
};

/// Whether a client may train with load. `NotNeeded` and `Granted` may; the others may not. `Unanswered`: the health intake is not finished.
enum class ClearanceState : std::uint8_t { NotNeeded, Recommended, StopAndSeek, Granted, Unanswered };

/// What the health intake led to and what came back from it.
struct Clearance {
    ClearanceState state = ClearanceState::NotNeeded;
    std::string reason;                      ///< which answers asked for it
    std::optional<base::Date> askedOn;       ///< when the letter went out
    std::optional<base::Date> grantedOn;
    std::optional<base::Date> validUntil;    ///< last day
    std::string limits;
    std::string grantedBy{};                 ///< who wrote the letter
    std::optional<base::Date> remindOn{};    ///< when to ask again for an answer that is awaited

    bool operator==(const Clearance&) const = default;
};

/// Whether loaded work is blocked on `day`: asked for and not granted, or granted and past its date.
[[nodiscard]] bool isBlocked(const Clearance& clearance, base::Date day);

[[nodiscard]] std::string_view keyOf(ClearanceState state);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<ClearanceState> clearanceStateOf(std::string_view key);

/// `JF` for Joaquin Ferro: the first letters of the first and the last word, upper case.
[[nodiscard]] std::string initialsOf(const std::string& name);
/// `J. F.` for Joaquin Ferro: the same letters, each with a point.
[[nodiscard]] std::string dottedInitialsOf(const std::string& name);

}  // namespace chalk::clients
