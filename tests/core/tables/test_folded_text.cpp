#include "core/tables/folded_text.h"

#include <gtest/gtest.h>

namespace chalk::tables {
namespace {

TEST(FoldedText, LeavesAccentsCaseAndMarksOut)
{
    EXPECT_EQ(foldedText("Élodie O'Brien-Ström"), "elodie o brien strom");
    EXPECT_EQ(foldedText("  ŁUKASZ   Groß "), "lukasz gross");
    EXPECT_EQ(foldedText("E\xCC\x81va"), "eva");  // a combining acute
    EXPECT_EQ(foldedText("ΝΙΚΟΣ"), foldedText("νικοσ"));
    EXPECT_EQ(foldedText("ИВАН"), foldedText("иван"));
    EXPECT_EQ(foldedText("-- ,"), "");
    EXPECT_EQ(foldedText("\xC3"), "\xC3");  // half a character stays
}

TEST(FoldedText, SortsTheWordsOfAName)
{
    EXPECT_EQ(sortedWords("Ferro, Joaquin"), sortedWords("joaquín FERRO"));
    EXPECT_EQ(wordsOf("Ada  B. Cole"), (std::vector<std::string>{"ada", "b", "cole"}));
}

// Damerau 1964: one insertion, omission, substitution or transposition is one error.
TEST(FoldedText, CountsTypingErrors)
{
    EXPECT_EQ(editDistance("marit", "marit", 2), 0);
    EXPECT_EQ(editDistance("marit", "mariit", 2), 1);
    EXPECT_EQ(editDistance("marit", "mart", 2), 1);
    EXPECT_EQ(editDistance("marit", "marat", 2), 1);
    EXPECT_EQ(editDistance("marit", "mairt", 2), 1);
    EXPECT_EQ(editDistance("ca", "abc", 5), 3);  // no part is edited twice
    EXPECT_EQ(editDistance("marit", "osric", 2), 3);
    EXPECT_EQ(editDistance("", "abcdef", 2), 3);
}

}  // namespace
}  // namespace chalk::tables
