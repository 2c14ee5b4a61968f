#include "core/store/client_row_json.h"

#include "core/store/client_reader.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

TEST(ClientRowJson, GivesAClientBack)
{
    test::StudioOnTest studio;
    const auto names = ClientReader(studio.database()).names();
    ASSERT_TRUE(names && !names->empty());
    for (const auto& [id, name] : *names) {
        const clients::Client client = ClientReader(studio.database()).read(id, test::smallStudioDay())->client;
        clients::Client blank;
        blank.id = id;
        EXPECT_EQ(clientIn(rowJson(client), blank), client) << name;
    }
}

TEST(ClientRowJson, WhatIsNotKnownIsNotThere)
{
    clients::Client client;
    client.name = "Cy";
    client.bodyMass = base::Load::fromCenti(7235);
    EXPECT_FALSE(rowJson(client).contains(QLatin1String("birth_date")));
    EXPECT_DOUBLE_EQ(rowJson(client).value(QLatin1String("body_mass")).toDouble(), 72.35);
    EXPECT_EQ(clientIn(rowJson(client), {}).bodyMass, client.bodyMass);
}

TEST(ClientRowJson, ACautionWithItsTags)
{
    clients::Caution caution;
    caution.bodyPart = "Knee";
    caution.until = base::Date::parse("2026-12-01");
    EXPECT_EQ(rowJson(caution).value(QLatin1String("until")).toString(), QStringLiteral("2026-12-01"));
    EXPECT_EQ(rowJson(caution).value(QLatin1String("body_part")).toString(), QStringLiteral("Knee"));
    caution.id = base::CautionId(3);
    caution.text = "No deep bend";
    caution.shortText = "Shallow";
    caution.tags = {lifts::CautionTag::Knee, lifts::CautionTag::Hip};
    clients::Caution blank;
    blank.id = caution.id;
    EXPECT_EQ(cautionIn(rowJson(caution), blank), caution);
    caution.until.reset();
    caution.tags.clear();
    EXPECT_EQ(cautionIn(rowJson(caution), blank), caution);
}

}  // namespace chalk::store
