#pragma once

#include "core/screens/field_tests.h"

#include <QString>

namespace chalk::ui::common {

// What the norms of field tests say, in words: on the screen and on the command line.

/// `30-second chair stand`.
[[nodiscard]] QString testName(const screens::FieldTest& test);
/// `12`, `31.5 s`, `2 cm`.
[[nodiscard]] QString testValueText(const screens::FieldTest& test, int value);
/// `11 to 16`, `up to 10`, `17 or more`, with the unit; empty for an open range.
[[nodiscard]] QString normRangeText(const screens::FieldTest& test, const screens::NormRange& range);
/// `65 to 69 years`, `80 years and over`, `all ages`.
[[nodiscard]] QString normAgesText(const screens::NormRange& ages);
/// One sentence: the class, or why there is none.
[[nodiscard]] QString normSentence(const screens::FieldTest& test, const screens::NormResult& result);
/// One sentence.
[[nodiscard]] QString remarkSentence(screens::NormRemark remark);

}  // namespace chalk::ui::common
