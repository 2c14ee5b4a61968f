#include "core/tables/table_layout.h"

#include "core/tables/folded_text.h"

#include <algorithm>

namespace chalk::tables {

namespace {

bool isMostly(int count, const ColumnFacts& facts)
{
    return facts.filled > 0 && count * 10 >= facts.filled * 8;
}

void give(TableLayout& layout, std::size_t column, Field field)
{
    if (!layout.has(field)) {
        layout.columns[column] = field;
    }
}

/// A name in two columns or in one: `Name` beside `First name` is the last name.
void settleNames(TableLayout& layout)
{
    const auto name = std::find(layout.columns.begin(), layout.columns.end(), Field::Name);
    if (name != layout.columns.end() && layout.has(Field::FirstName) && !layout.has(Field::LastName)) {
        *name = Field::LastName;
    }
}

void guessByCells(TableLayout& layout, std::size_t column, const ColumnFacts& facts)
{
    const bool isNamed = layout.has(Field::Name) || layout.has(Field::LastName) || layout.has(Field::FirstName);
    if (isMostly(facts.mails, facts)) {
        give(layout, column, Field::Mail);
    } else if (isMostly(facts.days(), facts)) {
        give(layout, column, layout.has(Field::Exercise) || layout.has(Field::Reps) ? Field::Day : Field::BirthDate);
    } else if (isMostly(facts.phones, facts)) {
        give(layout, column, Field::Phone);
    } else if (!isNamed && isMostly(facts.names, facts)) {
        give(layout, column, Field::Name);
    }
}

void guessDays(TableLayout& layout, const std::vector<ColumnFacts>& facts)
{
    ColumnFacts sum;
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const auto field = layout.columns[i];
        if (field == Field::Day || field == Field::BirthDate || field == Field::StartedOn) {
            sum.yearFirstDays += facts[i].yearFirstDays;
            sum.dayFirstDays += facts[i].dayFirstDays;
            sum.monthFirstDays += facts[i].monthFirstDays;
            sum.eitherDays += facts[i].eitherDays;
        }
    }
    const int others = sum.dayFirstDays + sum.monthFirstDays + sum.eitherDays;
    layout.days = others == 0 ? DateOrder::Ymd : sum.monthFirstDays > sum.dayFirstDays ? DateOrder::Mdy : DateOrder::Dmy;
    if (sum.days() == 0) {
        layout.dayGround = DateGround::NoDays;
    } else if (sum.dayFirstDays > 0 && sum.monthFirstDays > 0) {
        layout.dayGround = DateGround::Mixed;
    } else {
        layout.dayGround = others > 0 && sum.dayFirstDays + sum.monthFirstDays == 0 ? DateGround::Either : DateGround::Certain;
    }
}

void guessNumbers(TableLayout& layout, const std::vector<ColumnFacts>& facts, bool isCommaUsual, base::MassUnit usualUnit)
{
    int points = 0;
    int commas = 0;
    int kilograms = 0;
    int pounds = 0;
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const bool isRead = layout.columns[i].has_value();
        points += isRead ? facts[i].pointNumbers : 0;
        commas += isRead ? facts[i].commaNumbers : 0;
        kilograms += facts[i].kilograms + (layout.columnUnits[i] == base::MassUnit::Kilogram ? 1 : 0);
        pounds += facts[i].pounds + (layout.columnUnits[i] == base::MassUnit::Pound ? 1 : 0);
    }
    layout.decimals = commas > points || (isCommaUsual && commas == points) ? DecimalSign::Comma : DecimalSign::Point;
    layout.isUnitStated = kilograms + pounds > 0;
    layout.unit = !layout.isUnitStated ? usualUnit : pounds > kilograms ? base::MassUnit::Pound : base::MassUnit::Kilogram;
}

bool isMassField(std::optional<Field> field)
{
    return field == Field::Load || field == Field::BodyMass;
}

/// `Weight` where no column says what was done or when: the body's.
void settleWeights(TableLayout& layout)
{
    if (!layout.has(Field::Exercise) && !layout.has(Field::Day) && !layout.has(Field::BodyMass)) {
        std::replace(layout.columns.begin(), layout.columns.end(), std::optional(Field::Load), std::optional(Field::BodyMass));
    }
}

}  // namespace

std::vector<std::size_t> columnsLeftOut(const TableLayout& layout)
{
    std::vector<std::size_t> left;
    for (std::size_t i = 0; i < layout.columns.size(); ++i) {
        const auto field = layout.columns[i];
        if (!field || (isOfSession(*field) && !layout.hasSessions())) {
            left.push_back(i);
        }
    }
    return left;
}

bool TableLayout::has(Field field) const
{
    return std::find(columns.begin(), columns.end(), field) != columns.end();
}

TableLayout guessLayout(const std::vector<std::string>& headings, const std::vector<ColumnFacts>& facts, bool isCommaUsual, base::MassUnit usualUnit)
{
    TableLayout layout;
    layout.columns.resize(headings.size());
    layout.columnUnits.resize(headings.size());
    for (std::size_t i = 0; i < headings.size(); ++i) {
        if (const auto field = fieldOfHeading(headings[i])) {
            give(layout, i, *field);
        }
    }
    settleNames(layout);
    settleWeights(layout);
    for (std::size_t i = 0; i < headings.size(); ++i) {
        if (!layout.columns[i]) {
            guessByCells(layout, i, facts[i]);
        }
        if (isMassField(layout.columns[i])) {
            layout.columnUnits[i] = unitInHeading(headings[i]);
        }
        if (layout.columns[i] == Field::Rest) {
            const std::string heading = ' ' + foldedText(headings[i]) + ' ';
            layout.areMinutesOfRest = heading.find(" min ") != std::string::npos || heading.find(" minutes ") != std::string::npos;
        }
    }
    guessDays(layout, facts);
    guessNumbers(layout, facts, isCommaUsual, usualUnit);
    return layout;
}

std::optional<LayoutProblem> problemOf(const TableLayout& layout)
{
    for (int i = 0; i < kFields; ++i) {
        if (std::count(layout.columns.begin(), layout.columns.end(), static_cast<Field>(i)) > 1) {
            return LayoutProblem{LayoutFault::FieldTwice, static_cast<Field>(i)};
        }
    }
    if (!layout.has(Field::Name) && !layout.has(Field::FirstName) && !layout.has(Field::LastName)) {
        return LayoutProblem{LayoutFault::NoName};
    }
    if (layout.has(Field::Exercise) && !layout.has(Field::Day)) {
        return LayoutProblem{LayoutFault::ExerciseWithoutDay, Field::Day};
    }
    const bool hasSets = layout.has(Field::Load) || layout.has(Field::Reps);
    if (layout.has(Field::Day) && !layout.has(Field::Exercise) && hasSets) {
        return LayoutProblem{LayoutFault::DayWithoutExercise, Field::Exercise};
    }
    return layout.hasSessions() && !layout.has(Field::Reps) ? std::optional(LayoutProblem{LayoutFault::NoReps, Field::Reps}) : std::nullopt;
}

bool isWithoutHeadings(const std::vector<std::string>& first)
{
    ColumnFacts facts;
    for (const std::string& cell : first) {
        if (fieldOfHeading(cell)) {
            return false;
        }
        facts.add(cell);
    }
    return facts.numbers + facts.days() + facts.mails > 0;
}

std::string signatureOf(const std::vector<std::string>& headings)
{
    std::string signature;
    for (const std::string& heading : headings) {
        signature += foldedText(heading) + ';';
    }
    return signature;
}

}  // namespace chalk::tables
