#pragma once

#include "core/exchange/json_reading.h"
#include "core/progression/event.h"

#include <QJsonArray>

#include <vector>

namespace chalk::exchange {

/// Fields of an event that only a studio's own files have, besides those of a history.
struct EventFields {
    bool hasExercise = false;  ///< `exercise` and `pieces` of a swap
    bool hasSession = false;   ///< `session` of any event: the code of the session it was done in; the reader looks it up
};

/// Reads one event; sets are counted in `measure`. Fields are in range, the equipment of the lift is not looked at.
[[nodiscard]] JsonResult<progression::Event> readEvent(const QJsonValue& value, const std::string& path, lifts::Measure measure,
                                                       EventFields fields = {});

/// The places of a list of events in the order in which they are judged: by date, those of one day as given. Every date is checked.
[[nodiscard]] JsonResult<std::vector<std::size_t>> orderByDate(const QJsonArray& array, const std::string& path);

/// Reads a lift's events in the order given. A swap changes the measure for the events after it by date; `measure` is the first.
[[nodiscard]] JsonResult<std::vector<progression::Event>> readEvents(const QJsonArray& array, const std::string& path,
                                                                     lifts::Measure measure, EventFields fields = {});

/// One event, written; sets are counted in `measure`. What is as by default is left out.
[[nodiscard]] QJsonObject toJson(const progression::Event& event, lifts::Measure measure);

}  // namespace chalk::exchange
