#pragma once

#include "core/base/date.h"
#include "core/base/load.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace chalk::tables {

/// Where something stands: which file, counted from 0, and the line and column in characters, counted from 1.
struct Place {
    int file = 0;
    int line = 1;
    int column = 1;

    bool operator==(const Place&) const = default;
};

/// A cell that cannot be, and why. Its row is left out, or what the reason names; the others go on.
struct CellFault {
    Place place;
    std::string heading;  ///< of its column, or the property of a vCard; empty where it is about the row
    std::string reason;
    int column = 0;       ///< its number among the columns, from 1; 0 where it is about the row, or a vCard

    bool operator==(const CellFault&) const = default;
};

/// Somebody that the files name, with what they say of them. Texts are UTF-8; nothing, or empty, where they say nothing.
struct ListedPerson {
    std::string name;
    std::optional<base::Date> birthDate;
    std::string phone;
    std::string mail;
    std::string goal;
    std::string coach;
    std::string note;
    std::optional<base::MassUnit> unit;
    std::optional<base::Mass> bodyMass;
    std::optional<int> sessionsPerWeek;  ///< 1 to 7
    std::optional<base::Date> startedOn;
    Place place;                         ///< where they were named first

    bool operator==(const ListedPerson&) const = default;
};

/// Some sets of one row, all alike. Indices are those of TableContent. Flat and small: two years of a large studio are a million of them.
struct ListedSet {
    std::int32_t person = 0;
    std::int32_t exercise = 0;
    base::Date day;
    base::Load load;                  ///< in `unit`
    base::MassUnit unit = base::MassUnit::Kilogram;
    std::int16_t count = 1;           ///< 1 to 30
    std::int16_t amount = 0;          ///< repetitions, seconds or metres, 0 to 1000
    std::int16_t number = 0;          ///< of the set; 0 where the row says none
    std::int16_t rir = -1;            ///< 0 to 10; -1 where it says none
    std::int16_t restSeconds = -1;    ///< 0 to 3600; -1 where it says none
    std::int32_t line = 0;

    bool operator==(const ListedSet&) const = default;
};

/// What is said once of a person's session on a day.
struct ListedSession {
    std::string note;
    std::optional<int> minutes;  ///< 5 to 480

    bool operator==(const ListedSession&) const = default;
};

/// What all files say together.
struct TableContent {
    std::vector<ListedPerson> persons;
    std::vector<std::string> exercises;                              ///< the names as they stand, each once
    std::vector<ListedSet> sets;
    std::map<std::pair<std::int32_t, base::Date>, ListedSession> sessions;  ///< by person and day
    std::vector<CellFault> faults;
    int rows = 0;                                                    ///< that were read, with those with faults

    /// The person with that name and nothing that contradicts it, or a new one. What is known already stays, gaps are filled. The answer is the index.
    std::int32_t personFor(const ListedPerson& named);
    /// The index of an exercise's name; upper and lower case and accents are the same.
    std::int32_t exerciseFor(const std::string& name);

private:
    std::unordered_multimap<std::string, std::int32_t> m_byName;
    std::unordered_map<std::string, std::int32_t> m_byExercise;
};

/// Whether two records can be of one person by birth date and mail: what both say is the same.
[[nodiscard]] bool canBeOne(const ListedPerson& a, const ListedPerson& b);
/// Puts what only `other` says into the gaps of `person`.
void fillGaps(ListedPerson& person, const ListedPerson& other);

}  // namespace chalk::tables
