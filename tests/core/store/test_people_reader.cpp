#include "core/store/people_reader.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/client_writer.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {
namespace {

TEST(PeopleReader, TellsWhoIsThereAndWhenTheyTrained)
{
    test::StudioOnTest studio;
    const auto ada = test::clientNamed(studio.database(), "Ada Lund");
    clients::Profile profile;
    profile.contact.phone = "01632 960417";
    profile.contact.email = "ada@example.org";
    ASSERT_TRUE(ClientWriter(studio.database()).saveProfile(ada, profile, test::smallStudioDay()));
    const auto known = PeopleReader(studio.database()).known();
    ASSERT_TRUE(known);
    ASSERT_EQ(known->size(), 2U);
    EXPECT_EQ((*known)[0], (tables::KnownPerson{ada, "Ada Lund", base::Date::parse("1984-05-17"), "01632 960417", "ada@example.org"}));
    const auto days = PeopleReader(studio.database()).recordedDays();
    ASSERT_TRUE(days);
    EXPECT_EQ(days->at(ada), (std::set<base::Date>{test::smallStudioDay() - 21, test::smallStudioDay() - 7}));
    EXPECT_EQ(PeopleReader(studio.database()).usualUnit(), base::MassUnit::Kilogram);
}

TEST(PeopleReader, TellsWhoConsentedToHealthDataByADay)
{
    test::StudioOnTest studio;
    const auto ada = test::clientNamed(studio.database(), "Ada Lund");
    clients::Profile profile;
    profile.consentOn = test::smallStudioDay();
    ASSERT_TRUE(ClientWriter(studio.database()).saveProfile(ada, profile, test::smallStudioDay()));
    PeopleReader reader(studio.database());
    const auto known = reader.known();
    ASSERT_TRUE(known);
    EXPECT_EQ(reader.consented(*known, test::smallStudioDay()), (std::set<base::ClientId>{ada}));
    EXPECT_EQ(reader.consented(*known, test::smallStudioDay() - 1), std::set<base::ClientId>());
}

TEST(PeopleReader, ProposesByWhatIsCertain)
{
    test::StudioOnTest studio;
    tables::TableContent content;
    for (const char* name : {"ada lund", "Ada Lundt", "Cy Marsh"}) {
        tables::ListedPerson person;
        person.name = name;
        person.coach = "Nobody";
        content.personFor(person);
    }
    content.exerciseFor("Back squat");
    content.exerciseFor("Rowing on a lake");
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const auto proposal = PeopleReader(studio.database()).proposal(content, catalogue, test::smallStudioDay());
    ASSERT_TRUE(proposal);
    ASSERT_EQ(proposal->people.persons.size(), 3U);
    EXPECT_EQ(proposal->people.persons[0].choice, PersonChoice::AddTo);
    EXPECT_EQ(proposal->people.persons[1].choice, PersonChoice::Skip);
    EXPECT_EQ(proposal->people.persons[2].choice, PersonChoice::New);
    EXPECT_EQ(proposal->people.exercises[0], catalogue.find("back_squat"));
    EXPECT_EQ(proposal->people.exercises[1], nullptr);
    EXPECT_EQ(proposal->unknownCoaches, (std::vector<std::string>{"Nobody"}));
}

}  // namespace
}  // namespace chalk::store
