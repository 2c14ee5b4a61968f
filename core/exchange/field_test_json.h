#pragma once

#include "core/exchange/json_reading.h"
#include "core/screens/field_tests.h"

namespace chalk::exchange {

/// One result of a field test and whose it is.
struct FieldTestResult {
    screens::FieldTest test;
    screens::NormPerson person;
};

/// Reads `{"test": "chair_stand", "age": 67, "sex": "female", "stands": 12}`, strictly. The fields of the result are those of the test:
/// `stands` and `arms_used`; `reps` and `form`; `seconds` (two tests); `left_cm` and `right_cm`; `reach_cm` and `zero_cm`.
[[nodiscard]] JsonResult<FieldTestResult> readFieldTest(const QJsonValue& value);

/// What the norm says: test, class, value, range, usual, ages, unit, source and remarks. Values are in repetitions, seconds or centimetres.
[[nodiscard]] QJsonObject toJson(const screens::FieldTest& test, const screens::NormResult& result);

/// How many of the small units of a result make one that is shown: 1 for repetitions, 1000 for seconds, 10 for centimetres.
[[nodiscard]] int unitsShownOf(const screens::FieldTest& test);

}  // namespace chalk::exchange
