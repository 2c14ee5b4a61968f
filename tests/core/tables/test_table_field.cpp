#include "core/tables/table_field.h"

#include <gtest/gtest.h>

namespace chalk::tables {
namespace {

TEST(TableField, KnowsHeadingsInPlainWords)
{
    EXPECT_EQ(fieldOfHeading("Client name"), Field::Name);
    EXPECT_EQ(fieldOfHeading("Vorname"), Field::FirstName);
    EXPECT_EQ(fieldOfHeading("Date of birth"), Field::BirthDate);
    EXPECT_EQ(fieldOfHeading("Prénom"), Field::FirstName);
    EXPECT_EQ(fieldOfHeading("Übung"), Field::Exercise);
    EXPECT_EQ(fieldOfHeading("Weight (kg)"), Field::Load);
    EXPECT_EQ(fieldOfHeading("Body weight [lb]"), Field::BodyMass);
    EXPECT_EQ(fieldOfHeading("E-Mail"), Field::Mail);
    EXPECT_EQ(fieldOfHeading("Wdh."), Field::Reps);
    EXPECT_EQ(fieldOfHeading("sessions_per_week"), Field::SessionsPerWeek);
    EXPECT_EQ(fieldOfHeading("Shoe size"), std::nullopt);
    EXPECT_EQ(fieldOfHeading(""), std::nullopt);
}

TEST(TableField, NamesEveryFieldByAKeyOfItsOwn)
{
    for (int i = 0; i < kFields; ++i) {
        EXPECT_EQ(fieldOf(keyOf(static_cast<Field>(i))), static_cast<Field>(i));
    }
    EXPECT_EQ(fieldOf("shoes"), std::nullopt);
}

}  // namespace
}  // namespace chalk::tables
