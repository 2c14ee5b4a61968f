#include "core/tables/people_match.h"

#include <gtest/gtest.h>

namespace chalk::tables {
namespace {

ListedPerson listed(const std::string& name, const std::string& mail = {}, const std::string& phone = {}, std::optional<base::Date> born = {})
{
    ListedPerson person;
    person.name = name;
    person.mail = mail;
    person.phone = phone;
    person.birthDate = born;
    return person;
}

const base::Date kBorn = *base::Date::fromYmd(1991, 5, 14);
const base::Date kBornElse = *base::Date::fromYmd(1960, 1, 2);

std::optional<PersonMatch> matchOf(const ListedPerson& person, const KnownPerson& known)
{
    const std::vector<ListedPerson> one{person};
    const std::vector<KnownPerson> ours{known};
    const auto matches = matchesWith(one, ours);
    return matches.empty() ? std::nullopt : std::optional(matches.front());
}

TEST(PeopleMatch, FindsWhoIsCertainlyTheSame)
{
    const KnownPerson known{base::ClientId(7), "Joaquín Ferro", kBorn, "+44 1632 960417", "jo@example.org"};
    EXPECT_EQ(matchOf(listed("FERRO, Joaquin"), known), (PersonMatch{0, 0, MatchGround::Name, true}));
    EXPECT_EQ(matchOf(listed("Joaquin Fero", "JO@example.org"), known), (PersonMatch{0, 0, MatchGround::Mail, true}));
    // The same name, but born on another day: a namesake perhaps.
    EXPECT_EQ(matchOf(listed("Joaquin Ferro", {}, {}, kBornElse), known), (PersonMatch{0, 0, MatchGround::Name, false}));
    // A couple with one address.
    EXPECT_EQ(matchOf(listed("Maria Lund", "jo@example.org"), known), (PersonMatch{0, 0, MatchGround::Mail, false}));
}

TEST(PeopleMatch, FindsWhoMayBeTheSame)
{
    const KnownPerson known{base::ClientId(7), "Joaquín Ferro", kBorn, "+44 1632 960417", "jo@example.org"};
    EXPECT_EQ(matchOf(listed("Joaqiun Ferro"), known), (PersonMatch{0, 0, MatchGround::NearName, false}));
    EXPECT_EQ(matchOf(listed("Somebody Else", {}, "01632-960417"), known), (PersonMatch{0, 0, MatchGround::Phone, false}));
    EXPECT_EQ(matchOf(listed("Somebody Else", {}, {}, kBorn), known), (PersonMatch{0, 0, MatchGround::BirthDate, false}));
    EXPECT_EQ(matchOf(listed("Joaqiun Ferro", {}, {}, kBornElse), known), std::nullopt);
    EXPECT_EQ(matchOf(listed("Osric Bell"), known), std::nullopt);
    EXPECT_EQ(matchOf(listed("Bo"), {base::ClientId(1), "Ho", {}, {}, {}}), std::nullopt);
}

TEST(PeopleMatch, PrefersTheLikeliestAndListsPairs)
{
    const std::vector<KnownPerson> known{{base::ClientId(1), "Ada Cole", kBorn, {}, {}}, {base::ClientId(2), "Ada Coles", {}, {}, {}}, {base::ClientId(3), "Bo Lind", kBorn, {}, {}}};
    const std::vector<ListedPerson> persons{listed("Ada Coles"), listed("Nobody Here")};
    EXPECT_EQ(matchesWith(persons, known), (std::vector<PersonMatch>{{0, 1, MatchGround::Name, true}}));
    EXPECT_EQ(matchesAmong(known), (std::vector<PersonMatch>{{0, 1, MatchGround::NearName, false}, {0, 2, MatchGround::BirthDate, false}}));
}

}  // namespace
}  // namespace chalk::tables
