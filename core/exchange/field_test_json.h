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

/// Reads the results of one day: `{"date": "2026-11-24", "tests": [{"test": "plank", "seconds": 62.5}]}`, strictly. A test that is there
/// twice is a fault. Age and sex are not kept with a result: they are the client's.
[[nodiscard]] JsonResult<screens::FieldTestDay> readFieldTestDay(const QJsonValue& value, const std::string& path);
/// Read back it is equal.
[[nodiscard]] QJsonObject toJson(const screens::FieldTestDay& day);

/// What the norm says: test, class, value, range, usual, ages, unit, source and remarks. Values are in repetitions, seconds or centimetres.
[[nodiscard]] QJsonObject toJson(const screens::FieldTest& test, const screens::NormResult& result);

/// How many of the small units of a result make one that is shown: 1 for repetitions, 1000 for seconds, 10 for centimetres.
[[nodiscard]] int unitsShownOf(const screens::FieldTest& test);

}  // namespace chalk::exchange
