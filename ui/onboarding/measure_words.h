#pragma once

#include "core/clients/body_measures.h"
#include "core/clients/client.h"
#include "core/clients/profile.h"
#include "core/clients/resting_reading.h"

#include <QString>

#include <optional>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::ui::onboarding {

/// One line of what was measured: `Body mass`, `82.4 kg`, `3 Nov`.
struct MeasureLine {
    QString name;
    QString value;
    QString note;             ///< a class, why there is none, or the day
    bool isWarning = false;   ///< above the studio's limit

    bool operator==(const MeasureLine&) const = default;
};

/// The newest of each kind and what follows from them: body mass index, waist, body fat, resting readings. `days` by date, the oldest first.
[[nodiscard]] std::vector<MeasureLine> measureLinesOf(const std::vector<clients::BodyMeasures>& days, const clients::Client& client,
                                                      const clients::Profile& profile, const clients::RestingLimits& limits);
/// `24 Nov 2026: 82.4 kg, waist 91 cm, 62/min, 128/82`.
[[nodiscard]] QString dayLineOf(const clients::BodyMeasures& day, base::MassUnit unit);

/// What was typed as a length in centimetres, with a point or a comma.
[[nodiscard]] std::optional<clients::Millimetres> centimetresOf(const QString& text);
[[nodiscard]] QString centimetresText(clients::Millimetres length);

/// A blood pressure as it is typed.
struct TypedPressure {
    int systolic = 0;   ///< mmHg
    int diastolic = 0;
};
/// Reads `128/82`, `128 over 82` or `128 82`; nothing for anything else. Whether the numbers can be is not looked at.
[[nodiscard]] std::optional<TypedPressure> pressureOf(const QString& text);

/// What may be typed into the fields of one day, or the name of the field that makes no sense.
struct MeasuresTyped {
    QString day, mass, height, waist, folds, heartRate, pressure;
};
struct MeasuresFault {
    QString field;   ///< `mass`, `pressure` …
    QString reason;  ///< for people
};
[[nodiscard]] tl::expected<clients::BodyMeasures, MeasuresFault> measuresOf(const MeasuresTyped& typed, base::MassUnit unit, base::Date today);

}  // namespace chalk::ui::onboarding
