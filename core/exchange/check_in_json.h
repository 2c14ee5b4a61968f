#pragma once

#include "core/checkin/check_in.h"
#include "core/checkin/forecast.h"

#include <QJsonObject>

namespace chalk::exchange {

/// A client of the queue: `id`, `name`, `finding` with `kind`, `lift` and `flat_weeks`, `exercise` (null where it is about no lift), `came` and `of`, and
/// `decided`, the decision of this week or null.
[[nodiscard]] QJsonObject toJson(const checkin::QueueEntry& entry);

/// A decision: `day`, `lift`, `about`, `choice`, `note`, `next_review`.
[[nodiscard]] QJsonObject toJson(const checkin::Decision& decision);

/// A client's page: who it is, `from` and `to` of the weeks looked at, the finding, `next_review`, `attendance` (`date`, `state`), `readiness` (`date`, `sleep`,
/// `soreness`, `stress`), `history`, and `lifts`. Of each lift where it stands, `next`, `estimates` (`date`, `lowest`, `median`, `highest`, in kilograms),
/// `volume` by week in kilograms × repetitions, `stages`, `pain`, `lighter_weeks`, `layoffs`, `flat` (days, or null), `reserve`, `weeks_per_step`, `verdict`,
/// as toJson of a JudgedCheck writes it, and `choices`: `kind`, `suggested`, `why`, `exercise`, `event`, `next` and `later`.
[[nodiscard]] QJsonObject toJson(const checkin::ClientEvidence& page, base::Date day);

/// A forecast: `paces` and, for each of `weeks`, the point of each pace: `slow`, `expected` and `fast`. Singles are estimates in kilograms; loads are
/// in the lift's unit.
[[nodiscard]] QJsonObject toJson(const checkin::Forecast& forecast);
/// Why there is none: `why` and `missing`.
[[nodiscard]] QJsonObject toJson(const checkin::ForecastLack& lack);

}  // namespace chalk::exchange
