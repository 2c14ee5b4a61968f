#include "core/tables/table_content.h"

#include <gtest/gtest.h>

namespace chalk::tables {
namespace {

TEST(TableContent, PutsRowsOfOnePersonTogether)
{
    TableContent content;
    ListedPerson first;
    first.name = "Ferro, Joaquín";
    first.mail = "jo@example.org";
    ListedPerson second;
    second.name = "joaquin ferro";
    second.phone = "01632 960417";
    EXPECT_EQ(content.personFor(first), 0);
    EXPECT_EQ(content.personFor(second), 0);
    EXPECT_EQ(content.persons[0].phone, "01632 960417");
    EXPECT_EQ(content.persons[0].mail, "jo@example.org");
    ListedPerson namesake = second;
    namesake.mail = "other@example.org";
    EXPECT_EQ(content.personFor(namesake), 1);
}

TEST(TableContent, KeepsAnExerciseOnce)
{
    TableContent content;
    EXPECT_EQ(content.exerciseFor("Back squat"), 0);
    EXPECT_EQ(content.exerciseFor("BACK-SQUAT"), 0);
    EXPECT_EQ(content.exerciseFor("Deadlift"), 1);
    EXPECT_EQ(content.exercises, (std::vector<std::string>{"Back squat", "Deadlift"}));
}

}  // namespace
}  // namespace chalk::tables
