#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/clients/availability.h"
#include "core/planning/group_session.h"
#include "core/week/week_problem.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace chalk::week {

inline constexpr int kMostCapacity = 12;  ///< sessions of one coach at once
inline constexpr int kMostPriority = 9;

/// What the studio sets for every week.
struct StudioWeek {
    clients::WeekHours open = usualOpeningHours();
    planning::FloorStations stations = planning::usualStations();
    Weights weights;

    /// Monday to Friday from 6:00 to 21:00, Saturday from 8:00 to 14:00: what is taken where a studio has set nothing.
    [[nodiscard]] static clients::WeekHours usualOpeningHours();
    bool operator==(const StudioWeek&) const = default;
};

/// When a coach works, every week. Breaks are holes in the hours.
struct CoachWork {
    std::optional<clients::WeekHours> hours;  ///< nothing: whenever the studio is open
    int capacity = 4;                         ///< sessions at once, 1 to kMostCapacity
    int softMaxMinutes = 480;                 ///< busy minutes a day that had better not be passed, 60 to 960

    bool operator==(const CoachWork&) const = default;
};

/// A time of every week that a client has for good.
struct StandingSlot {
    int weekday = 0;      ///< 0 Monday to 6 Sunday
    int startMinute = 0;  ///< of the day
    base::CoachId coach;

    bool operator==(const StandingSlot&) const = default;
};

/// What another coach than the client's own would cost in a plan.
struct CoachWish {
    base::CoachId coach;
    int cost = 15;  ///< 0 to 100

    bool operator==(const CoachWish&) const = default;
};

/// What the week has to know of a client besides the profile.
struct ClientPlanning {
    int priority = 1;                     ///< 1 to kMostPriority: who is placed rather than another
    std::optional<int> maxGroup;          ///< the most that train together with the client, 1 to kMostCapacity; nothing: one-to-one, or 4 in a group
    Recovery recovery;
    std::vector<CoachWish> otherCoaches;  ///< that the client accepts besides the own one
    std::vector<StandingSlot> standing;   ///< by day and time, at most seven

    bool operator==(const ClientPlanning&) const = default;
};

/// Days on which the studio, a coach or a station is not there, or not as usual.
struct Closure {
    base::Date first;
    base::Date last;
    int fromMinute = 0;  ///< of each of the days
    int toMinute = kDayMinutes;
    base::CoachId coach;                       ///< who is away; none: it is about the studio or a station
    std::optional<lifts::Station> station{};   ///< of which fewer are there
    int units = 0;                             ///< of the station that are left, 0 to 20
    std::string why;                           ///< `Harbour lights`; may be empty

    bool operator==(const Closure&) const = default;
};

/// A field that cannot be, by its name in files, and why.
struct WeekFault {
    std::string field;
    std::string reason;
};

[[nodiscard]] std::optional<WeekFault> faultOf(const Weights& weights);
[[nodiscard]] std::optional<WeekFault> faultOf(const StudioWeek& week);
[[nodiscard]] std::optional<WeekFault> faultOf(const CoachWork& work);
[[nodiscard]] std::optional<WeekFault> faultOf(const ClientPlanning& planning);
[[nodiscard]] std::optional<WeekFault> faultOf(const Closure& closure);

/// Where a booking lies: what of it can be moved.
struct BookingPlace {
    base::CoachId coach;
    base::Date date;
    int startMinute = 0;
    int minutes = 60;
    std::string place;
    int placeCapacity = 1;
    bool isLocked = false;

    bool operator==(const BookingPlace&) const = default;
};

}  // namespace chalk::week
