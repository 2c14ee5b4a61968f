#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace chalk::tables {

/// What a column of somebody's table says: of a client, and of a set that was done.
enum class Field : std::uint8_t {
    Name,
    FirstName,
    LastName,
    BirthDate,
    Phone,
    Mail,
    Goal,
    Unit,
    BodyMass,
    SessionsPerWeek,
    Coach,
    StartedOn,
    ClientNote,
    Day,
    Exercise,
    Load,
    Reps,
    Sets,       ///< how many like this one
    SetNumber,  ///< which one of the day; no more than an order
    Rir,
    Rest,
    SessionNote,
    Minutes     ///< of the whole session
};

inline constexpr int kFields = static_cast<int>(Field::Minutes) + 1;

/// The key in files and on the command line: `name`, `birth_date`, `load` …
[[nodiscard]] std::string_view keyOf(Field field);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<Field> fieldOf(std::string_view key);
/// Whether it says something of a set or a session, not of the client.
[[nodiscard]] constexpr bool isOfSession(Field field) { return field >= Field::Day; }

/// What a heading says by its words, in English, German, French, Spanish, Italian, Dutch or Swedish; a unit in brackets is passed over. Nothing
/// where the words are others.
[[nodiscard]] std::optional<Field> fieldOfHeading(std::string_view heading);

}  // namespace chalk::tables
