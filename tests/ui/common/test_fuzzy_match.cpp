#include "ui/common/fuzzy_match.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

QString text(const char* utf8)
{
    return QString::fromUtf8(utf8);
}

std::optional<int> score(const char* query, const char* candidate, Typos typos = Typos::Refused)
{
    return matchScore(text(query), text(candidate), typos);
}

}  // namespace

TEST(FuzzyMatch, FoldsCaseAndAccents)
{
    EXPECT_EQ(foldedText(text("Brånemark Łucja Søren Straße Æsa")).toStdString(), "branemark lucja soren strasse aesa");
    EXPECT_TRUE(score("jose", "José Ñandú"));
    EXPECT_TRUE(score("nandu", "José Ñandú"));
    EXPECT_TRUE(score("ÉMILE", "emile"));
}

TEST(FuzzyMatch, EveryWordHasToFitInAnyOrder)
{
    EXPECT_TRUE(score("ferro joa", "Joaquin Ferro"));
    EXPECT_TRUE(score("adler", "Hanne Skov-Adler"));
    EXPECT_FALSE(score("ferro ann", "Joaquin Ferro"));
    EXPECT_FALSE(score("joquin", "Joaquin Ferro"));
    EXPECT_EQ(score("", "Joaquin Ferro"), 0);
    EXPECT_EQ(score("   ", "Joaquin Ferro"), 0);
    EXPECT_FALSE(score("a", ""));
}

TEST(FuzzyMatch, ABetterFitScoresHigher)
{
    EXPECT_GT(*score("ferro", "Joaquin Ferro"), *score("ferro", "Ana Ferrosa"));
    EXPECT_GT(*score("fer", "Ana Ferrosa"), *score("err", "Ana Ferrosa"));
    EXPECT_GT(*score("ana", "Ana Berg"), *score("ana", "Berg Ana"));
    EXPECT_GT(*score("err", "Ana Ferrosa"), *score("ferrosx", "Ana Ferrosa", Typos::Allowed));
}

TEST(FuzzyMatch, SpansAreWhereTheWordsFit)
{
    const auto spans = [](const char* query, const char* candidate) { return matchSpans(text(query), text(candidate), Typos::Allowed); };
    using Spans = std::vector<MatchSpan>;
    EXPECT_EQ(spans("ferro joa", "Joaquin Ferro"), (Spans{{0, 3}, {8, 5}}));
    EXPECT_EQ(spans("erro", "Joaquin Ferro"), (Spans{{9, 4}}));
    EXPECT_EQ(spans("joaqiun", "Joaquin Ferro"), (Spans{{0, 7}}));
    EXPECT_EQ(spans("strasse", "Alte Straße"), (Spans{{5, 6}}));
    EXPECT_EQ(spans("fer ferro", "Ana Ferro"), (Spans{{4, 5}}));
    EXPECT_EQ(spans("ferro xyz", "Ana Ferro"), (Spans{{4, 5}}));
    EXPECT_EQ(spans("", "Ana Ferro"), Spans());
}

TEST(FuzzyMatch, TyposMatchOnlyWhereAllowedAndOnlyInLongerWords)
{
    EXPECT_FALSE(score("joaqiun", "Joaquin Ferro"));
    EXPECT_TRUE(score("joaqiun", "Joaquin Ferro", Typos::Allowed));
    EXPECT_TRUE(score("feroo", "Joaquin Ferro", Typos::Allowed));
    EXPECT_FALSE(score("fex", "Joaquin Ferro", Typos::Allowed));
    EXPECT_FALSE(score("tarrant", "Joaquin Ferro", Typos::Allowed));
}

TEST(FuzzyMatch, KnowsWhatWasProbablyMeant)
{
    const QStringList names{text("Adaeze Quill"), text("Joaquin Ferro"), text("Hanne Skov-Adler")};
    EXPECT_EQ(probablyMeant(text("joquin"), names), 1);
    EXPECT_EQ(probablyMeant(text("skof"), names), 2);
    EXPECT_EQ(probablyMeant(text("adeze quil"), names), 0);
    EXPECT_FALSE(probablyMeant(text("zzzzzz"), names));
    EXPECT_FALSE(probablyMeant(text("jo"), names));
    EXPECT_FALSE(probablyMeant(text("joaquin"), {}));
}

TEST(FuzzyMatch, CountsLettersApart)
{
    const auto apart = [](const char* a, const char* b) { return lettersApart(text(a), text(b)); };
    EXPECT_EQ(apart("", ""), 0);
    EXPECT_EQ(apart("", "abc"), 3);
    EXPECT_EQ(apart("kitten", "sitting"), 3);  // the textbook pair
    EXPECT_EQ(apart("ab", "ba"), 1);           // neighbours swapped are one slip
    EXPECT_EQ(apart("abc", "abc"), 0);
    EXPECT_EQ(apart("ca", "abc"), 3);          // optimal string alignment: no letter is touched twice
}

}  // namespace chalk::ui::common
