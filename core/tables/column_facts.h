#pragma once

#include <string_view>

namespace chalk::tables {

/// What the cells of one column look like, counted over all of them.
struct ColumnFacts {
    int filled = 0;
    int mails = 0;
    int phones = 0;         ///< at least six digits and nothing but what stands in numbers of telephones
    int names = 0;          ///< two words or more, without digits
    int pointNumbers = 0;   ///< numbers with a decimal point alone: `82.5`
    int commaNumbers = 0;   ///< with a decimal comma alone: `82,5`
    int numbers = 0;        ///< in either way
    int yearFirstDays = 0;  ///< ISO 8601
    int dayFirstDays = 0;   ///< the day alone can stand first: `25/11/2026`
    int monthFirstDays = 0; ///< the month alone can stand first: `11/25/2026`
    int eitherDays = 0;     ///< day and month are both 12 at most: `03/04/2026`
    int kilograms = 0;      ///< with the unit in the cell
    int pounds = 0;

    void add(std::string_view cell);
    [[nodiscard]] int days() const { return yearFirstDays + dayFirstDays + monthFirstDays + eitherDays; }
    bool operator==(const ColumnFacts&) const = default;
};

}  // namespace chalk::tables
