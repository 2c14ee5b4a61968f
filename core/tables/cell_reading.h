#pragma once

#include "core/base/date.h"
#include "core/base/load.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace chalk::tables {

/// Which sign parts the decimals; the other one, a blank or an apostrophe may part thousands.
enum class DecimalSign : std::uint8_t { Point, Comma };

/// The order of the parts of a day. Ymd is ISO 8601, and is read whatever the order is.
enum class DateOrder : std::uint8_t { Ymd, Dmy, Mdy };

[[nodiscard]] std::string_view keyOf(DecimalSign sign);
[[nodiscard]] std::string_view keyOf(DateOrder order);
/// Nothing where the key is unknown: `point`, `comma`; `ymd`, `dmy`, `mdy`.
[[nodiscard]] std::optional<DecimalSign> decimalSignOf(std::string_view key);
[[nodiscard]] std::optional<DateOrder> dateOrderOf(std::string_view key);

/// `kg`, `lb`, `lbs`, `kilogram`, `pounds` … in any case; nothing for other words.
[[nodiscard]] std::optional<base::MassUnit> unitOfWord(std::string_view word);
/// The unit that a heading names: `Weight (kg)`, `load lb`.
[[nodiscard]] std::optional<base::MassUnit> unitInHeading(std::string_view heading);

/// A number in hundredths: `80`, `82,5`, `1.234,50`, `-12.5`. Parts of a hundredth are rounded, a half away from zero. Thousands are read only in
/// groups of three. Nothing for anything else and beyond ±1,000,000.
[[nodiscard]] std::optional<std::int32_t> readHundredths(std::string_view cell, DecimalSign sign);
/// A whole number; `8.0` is one. Nothing for anything else.
[[nodiscard]] std::optional<int> readWhole(std::string_view cell, DecimalSign sign);

/// A mass with a unit of its own, if it names one.
struct CellMass {
    base::Load load;
    std::optional<base::MassUnit> unit;

    bool operator==(const CellMass&) const = default;
};

/// `80`, `80 kg`, `176,4lb`. Nothing for anything else.
[[nodiscard]] std::optional<CellMass> readMass(std::string_view cell, DecimalSign sign);

/// The three numbers of a day and where its year stands; nothing for a text that is no day in any order.
struct DayParts {
    int first = 0;
    int second = 0;
    int third = 0;
    bool isYearFirst = false;
};
/// Parts by points, slashes, hyphens or blanks; a time of day behind it is passed over. Years have two or four digits.
[[nodiscard]] std::optional<DayParts> dayParts(std::string_view cell);
/// The day; nothing where there is none such. Of years with two digits, those up to `today`'s are of this century.
[[nodiscard]] std::optional<base::Date> readDay(std::string_view cell, DateOrder order, base::Date today);

/// A rest or a length in seconds: `90`, `1:30`, `90 s`, `2 min`; a bare number is multiplied by `secondsPerUnit`. Nothing for anything else.
[[nodiscard]] std::optional<int> readSeconds(std::string_view cell, int secondsPerUnit, DecimalSign sign);

/// The text without blanks at its ends.
[[nodiscard]] std::string_view trimmed(std::string_view text);

}  // namespace chalk::tables
