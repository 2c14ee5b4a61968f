#pragma once

#include "core/exchange/json_reading.h"
#include "core/exchange/studio_document.h"
#include "core/week/studio_week.h"

#include <QJsonObject>

#include <map>
#include <vector>

namespace chalk::exchange {

// What the week is planned from, in the open format. Coaches stand by name in files and by id in the studio's own rows: `CoachNames` says how.

/// Coaches by what stands for them in the text. Where it is empty, ids stand for themselves.
struct CoachNames {
    std::map<std::string, base::CoachId> ids;

    [[nodiscard]] std::string textOf(base::CoachId id) const;
    [[nodiscard]] std::optional<base::CoachId> idOf(const std::string& text) const;
};

/// Those of a document, by name.
[[nodiscard]] CoachNames coachNamesOf(const std::vector<clients::Coach>& coaches);

/// `hours`, `stations`, `weights`: each as by default where it is missing.
[[nodiscard]] JsonResult<week::StudioWeek> readStudioWeek(const QJsonValue& value, const std::string& path);
[[nodiscard]] QJsonObject toJson(const week::StudioWeek& week);

/// `hours`, `capacity`, `soft_max_minutes`.
[[nodiscard]] JsonResult<week::CoachWork> readCoachWork(const QJsonValue& value, const std::string& path);
[[nodiscard]] QJsonObject toJson(const week::CoachWork& work);

/// `priority`, `max_group`, `rest_day` or `recovery_hours`, `other_coaches`, `standing`.
[[nodiscard]] JsonResult<week::ClientPlanning> readClientPlanning(const QJsonValue& value, const std::string& path, const CoachNames& coaches);
[[nodiscard]] QJsonObject toJson(const week::ClientPlanning& planning, const CoachNames& coaches);

/// `first`, `last`, `from`, `to`, `coach` or `station` with `units`, `why`.
[[nodiscard]] JsonResult<week::Closure> readClosure(const QJsonValue& value, const std::string& path, const CoachNames& coaches);
[[nodiscard]] QJsonObject toJson(const week::Closure& closure, const CoachNames& coaches);

/// `coach`, `date`, `at`, `minutes`, `place`, `places`, `locked`.
[[nodiscard]] JsonResult<week::BookingPlace> readBookingPlace(const QJsonValue& value, const std::string& path, const CoachNames& coaches);
[[nodiscard]] QJsonObject toJson(const week::BookingPlace& place, const CoachNames& coaches);

}  // namespace chalk::exchange
