#include "core/tables/table_layout.h"

#include <gtest/gtest.h>

namespace chalk::tables {
namespace {

using Rows = std::vector<std::vector<std::string>>;

TableLayout layoutOf(const std::vector<std::string>& headings, const Rows& rows, bool isCommaUsual = false)
{
    std::vector<ColumnFacts> facts(headings.size());
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            facts[i].add(row[i]);
        }
    }
    return guessLayout(headings, facts, isCommaUsual, base::MassUnit::Kilogram);
}

TEST(TableLayout, TakesHeadingsInAnyOrder)
{
    const auto layout = layoutOf({"Reps", "Weight (lb)", "Exercise", "Date", "Client", "Colour"}, {{"8", "100", "Back squat", "2025-04-03", "Ada Cole", "red"}});
    EXPECT_EQ(layout.columns, (std::vector<std::optional<Field>>{Field::Reps, Field::Load, Field::Exercise, Field::Day, Field::Name, std::nullopt}));
    EXPECT_EQ(layout.columnUnits[1], base::MassUnit::Pound);
    EXPECT_EQ(layout.unit, base::MassUnit::Pound);
    EXPECT_TRUE(layout.isUnitStated);
    EXPECT_TRUE(layout.hasSessions());
    EXPECT_EQ(problemOf(layout), std::nullopt);
}

TEST(TableLayout, AWeightWithoutSessionsIsThatOfTheBody)
{
    for (const char* heading : {"Gewicht (kg)", "Weight (kg)", "Poids (kg)"}) {
        const auto layout = layoutOf({"Name", heading}, {{"Ada Cole", "68"}});
        EXPECT_EQ(layout.columns[1], Field::BodyMass) << heading;
        EXPECT_EQ(layout.columnUnits[1], base::MassUnit::Kilogram) << heading;
        EXPECT_TRUE(columnsLeftOut(layout).empty()) << heading;
    }
    const auto both = layoutOf({"Name", "Body mass", "Weight (kg)", "Colour"}, {{"Ada Cole", "68", "60", "red"}});
    EXPECT_EQ(both.columns[2], Field::Load);
    EXPECT_EQ(columnsLeftOut(both), (std::vector<std::size_t>{2, 3})) << "a load without a session goes nowhere";
    const auto sessions = layoutOf({"Name", "Date", "Exercise", "Reps", "Weight (kg)"}, {{"Ada Cole", "2025-04-03", "Back squat", "8", "60"}});
    EXPECT_EQ(sessions.columns[4], Field::Load);
    EXPECT_TRUE(columnsLeftOut(sessions).empty());
}

TEST(TableLayout, LooksAtTheCellsWhereHeadingsSayNothing)
{
    const auto layout = layoutOf({"a", "b", "c", "d"}, {{"Ada Cole", "ada@example.org", "5.6.1991", "+44 1632 960417"}, {"Bo Lind", "bo@example.org", "17.6.1988", "01632 960418"}});
    EXPECT_EQ(layout.columns, (std::vector<std::optional<Field>>{Field::Name, Field::Mail, Field::BirthDate, Field::Phone}));
    EXPECT_EQ(layout.days, DateOrder::Dmy);
    EXPECT_EQ(layout.dayGround, DateGround::Certain);
}

TEST(TableLayout, SaysWhenTheOrderOfDaysIsAGuess)
{
    EXPECT_EQ(layoutOf({"Name", "Date of birth"}, {{"Ada", "03/04/1991"}, {"Bo", "12/11/1988"}}).dayGround, DateGround::Either);
    const auto mixed = layoutOf({"Name", "Date of birth"}, {{"Ada", "25/04/1991"}, {"Bo", "12/30/1988"}, {"Cy", "12/29/1988"}});
    EXPECT_EQ(mixed.dayGround, DateGround::Mixed);
    EXPECT_EQ(mixed.days, DateOrder::Mdy);
    EXPECT_EQ(layoutOf({"Name", "Date of birth"}, {{"Ada", "1991-04-03"}}).dayGround, DateGround::Certain);
    EXPECT_EQ(layoutOf({"Name"}, {{"Ada"}}).dayGround, DateGround::NoDays);
}

TEST(TableLayout, TellsTheDecimalSign)
{
    EXPECT_EQ(layoutOf({"Name", "Body mass"}, {{"Ada", "68,5"}}).decimals, DecimalSign::Comma);
    EXPECT_EQ(layoutOf({"Name", "Body mass"}, {{"Ada", "68.5"}}, true).decimals, DecimalSign::Point);
    EXPECT_EQ(layoutOf({"Name", "Body mass"}, {{"Ada", "68"}}, true).decimals, DecimalSign::Comma);
    EXPECT_EQ(layoutOf({"Name", "Body mass"}, {{"Ada", "68"}}).decimals, DecimalSign::Point);
    EXPECT_FALSE(layoutOf({"Name", "Body mass"}, {{"Ada", "68"}}).isUnitStated);
    EXPECT_EQ(layoutOf({"Name", "Body mass"}, {{"Ada", "150 lb"}}).unit, base::MassUnit::Pound);
}

TEST(TableLayout, SaysWhyItCannotBeRead)
{
    TableLayout layout;
    layout.columns = {Field::Phone};
    EXPECT_EQ(problemOf(layout)->fault, LayoutFault::NoName);
    layout.columns = {Field::Name, Field::Mail, Field::Mail};
    EXPECT_EQ(problemOf(layout), (LayoutProblem{LayoutFault::FieldTwice, Field::Mail}));
    layout.columns = {Field::Name, Field::Exercise, Field::Reps};
    EXPECT_EQ(problemOf(layout)->fault, LayoutFault::ExerciseWithoutDay);
    layout.columns = {Field::Name, Field::Day, Field::Reps};
    EXPECT_EQ(problemOf(layout)->fault, LayoutFault::DayWithoutExercise);
    layout.columns = {Field::Name, Field::Day, Field::Exercise};
    EXPECT_EQ(problemOf(layout)->fault, LayoutFault::NoReps);
}

TEST(TableLayout, KnowsARowOfDataFromHeadings)
{
    EXPECT_TRUE(isWithoutHeadings({"Ada Cole", "ada@example.org"}));
    EXPECT_TRUE(isWithoutHeadings({"Ada Cole", "2025-04-03"}));
    EXPECT_FALSE(isWithoutHeadings({"Name", "Mail"}));
    EXPECT_FALSE(isWithoutHeadings({"Anything", "Else"}));
    EXPECT_EQ(signatureOf({"Name", "E-Mail"}), signatureOf({"name", "e mail"}));
    EXPECT_NE(signatureOf({"Name", "E-Mail"}), signatureOf({"E-Mail", "Name"}));
}

}  // namespace
}  // namespace chalk::tables
