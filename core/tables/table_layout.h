#pragma once

#include "core/tables/cell_reading.h"
#include "core/tables/column_facts.h"
#include "core/tables/table_field.h"

#include <optional>
#include <string>
#include <vector>

namespace chalk::tables {

/// How the days of a table were told: all of them written in a way that fits one order only, or by habit.
enum class DateGround : std::uint8_t {
    NoDays,     ///< there are none
    Certain,    ///< one order alone fits
    Either,     ///< every day and month is 12 at most: the order is a guess
    Mixed       ///< some days fit one order alone and some the other: those of the other are faults
};

/// What is known of a table before it is read: detected, shown, and confirmed or changed by a person.
struct TableLayout {
    std::vector<std::optional<Field>> columns;  ///< by column; nothing for one that is passed over
    DecimalSign decimals = DecimalSign::Point;
    DateOrder days = DateOrder::Ymd;
    DateGround dayGround = DateGround::NoDays;
    base::MassUnit unit = base::MassUnit::Kilogram;  ///< of loads and body masses whose cell and heading name none
    bool isUnitStated = false;                       ///< some heading or cell names it; else it is the usual one
    std::vector<std::optional<base::MassUnit>> columnUnits;  ///< named by a column's heading
    bool areMinutesOfRest = false;                   ///< a bare number of a rest counts minutes, by its heading; else seconds

    [[nodiscard]] bool has(Field field) const;
    /// Whether its rows say what was done on a day.
    [[nodiscard]] bool hasSessions() const { return has(Field::Day) && has(Field::Exercise); }
    bool operator==(const TableLayout&) const = default;
};

/// A layout by headings first and by what the cells look like where a heading says nothing. `facts` has one for each heading. Each field is given
/// to one column at most, the first that fits. A weight in a table without sessions is that of the body. `isCommaUsual`: where no cell says which sign parts decimals, and the columns are parted by something
/// else, it is the comma.
[[nodiscard]] TableLayout guessLayout(const std::vector<std::string>& headings, const std::vector<ColumnFacts>& facts, bool isCommaUsual, base::MassUnit usualUnit);

/// Why a layout cannot be read.
enum class LayoutFault : std::uint8_t {
    NoName,            ///< no column says who it is
    FieldTwice,        ///< two columns say the same; `field`
    DayWithoutExercise,///< sets need both, and an amount
    ExerciseWithoutDay,
    NoReps
};

struct LayoutProblem {
    LayoutFault fault = LayoutFault::NoName;
    std::optional<Field> field = {};

    bool operator==(const LayoutProblem&) const = default;
};

/// Nothing where it can be read.
[[nodiscard]] std::optional<LayoutProblem> problemOf(const TableLayout& layout);

/// The columns of which nothing is taken in, by index: those that are passed over, and what would say something of a set where the table has no sessions.
[[nodiscard]] std::vector<std::size_t> columnsLeftOut(const TableLayout& layout);

/// Whether a first record is data and not headings: it names no field, and one of its cells is a number, a day or a mail address.
[[nodiscard]] bool isWithoutHeadings(const std::vector<std::string>& first);

/// The same for tables with the same headings in the same order, whatever their case: what a mapping is remembered by.
[[nodiscard]] std::string signatureOf(const std::vector<std::string>& headings);

}  // namespace chalk::tables
