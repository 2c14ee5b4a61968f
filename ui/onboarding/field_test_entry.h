#pragma once

#include "core/screens/field_tests.h"

#include <QString>

#include <optional>

#include <tl/expected.hpp>

namespace chalk::ui::onboarding {

/// What is typed for one field test: a number, for some a second one, for some one of two ways.
struct FieldTestTyped {
    QString first;          ///< stands, reps, seconds, left cm, reach cm
    QString second;         ///< right cm; what the scale shows at the feet, cm
    bool isOther = false;   ///< the arms were used; on the knees

    bool operator==(const FieldTestTyped&) const = default;
};

/// Why what was typed is no result.
struct FieldTestFault {
    int field = 0;              ///< 0 or 1
    QString reason;             ///< for people
    bool isIncomplete = false;  ///< nothing is wrong, something is missing
};

/// The result; nothing where nothing was typed. `test` says which test, its values are not looked at.
[[nodiscard]] tl::expected<std::optional<screens::FieldTest>, FieldTestFault> fieldTestOf(const screens::FieldTest& test, const FieldTestTyped& typed);
/// What is typed to get that result.
[[nodiscard]] FieldTestTyped typedOf(const screens::FieldTest& test);

/// Whose results these are. The age is that of the day of the test.
struct FieldTestPerson {
    std::optional<int> age;  ///< nothing without a birth date
    clients::NormSex sex = clients::NormSex::NotGiven;
};

/// A result against its norm, in words.
struct FieldTestVerdict {
    QString headline;  ///< the class with its range, or why there is none
    QString detail;    ///< whom the norm is for, remarks, the source

    bool operator==(const FieldTestVerdict&) const = default;
};

[[nodiscard]] FieldTestVerdict verdictOf(const screens::FieldTest& test, const FieldTestPerson& person);
/// `11 / 12.5 cm`, `12`, `31.5 s`, `18 cm, zero at 23 cm`: the result itself.
[[nodiscard]] QString fieldTestResultText(const screens::FieldTest& test);
/// How the test is done, in a sentence or two.
[[nodiscard]] QString fieldTestHow(const screens::FieldTest& test);
/// Whether it is timed.
[[nodiscard]] bool isTimed(const screens::FieldTest& test);

}  // namespace chalk::ui::onboarding
