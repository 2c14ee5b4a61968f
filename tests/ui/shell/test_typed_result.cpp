#include "ui/shell/typed_result.h"

#include <gtest/gtest.h>

namespace chalk::ui::shell {

namespace {

QString said(const char* query)
{
    const auto result = typedResultOf(QString::fromUtf8(query));
    return result ? resultText(result->entry, base::MassUnit::Kilogram) : QStringLiteral("none");
}

QString line(const char* query)
{
    const auto result = typedResultOf(QString::fromUtf8(query));
    return result ? result->line : QStringLiteral("none");
}

}  // namespace

TEST(TypedResult, ReadsLoadRepsAndSets)
{
    EXPECT_EQ(line("ferro bench 60x8x5"), QStringLiteral("5x8 @60"));
    EXPECT_EQ(line("ferro bench 62,5×8×5 r1"), QStringLiteral("5x8 @62,5 r1"));
    EXPECT_EQ(said("ferro bench 60x8x5"), QStringLiteral("5 × 8 at 60 kg"));
    EXPECT_EQ(typedResultOf(QStringLiteral("ferro  bench 60x8x5"))->who, QStringLiteral("ferro bench"));
}

TEST(TypedResult, ReadsTheEntryLineOfTheFloor)
{
    EXPECT_EQ(said("ferro bench 8 8 7 @80 r2"), QStringLiteral("8, 8, 7 at 80 kg, 2 left"));
    EXPECT_EQ(said("ferro bench 8 @80 2:15 s p1"), QStringLiteral("8 at 80 kg, rest 2:15, shaky, pain 1 of 10"));
    EXPECT_EQ(said("marit squat met 5 t1 m1 b1"), QStringLiteral("5, met"));
    EXPECT_EQ(said("ferro bench @80"), QStringLiteral("80 kg"));
    EXPECT_EQ(line("ferro bench 8 8 7  felt easy"), QStringLiteral("8 8 7  felt easy"));
    EXPECT_EQ(typedResultOf(QStringLiteral("ferro bench 8 8 7  felt easy"))->entry.note, "felt easy");
}

TEST(TypedResult, IsNoneWithoutAResultOrWithoutAName)
{
    for (const char* query : {"", "ferro", "ferro bench", "60x8x5", "@80", "  8 8 7", "metcalf bench", "ferro metres"}) {
        EXPECT_FALSE(typedResultOf(QString::fromUtf8(query))) << query;
    }
}

TEST(TypedResult, NamesTheWordThatMakesNoSense)
{
    EXPECT_EQ(unknownWordOf(*typedResultOf(QStringLiteral("ferro bench 60x8y r2"))), QStringLiteral("60x8y"));
    EXPECT_EQ(unknownWordOf(*typedResultOf(QStringLiteral("ferro bench 5x8 heavy"))), QStringLiteral("heavy"));
    EXPECT_TRUE(unknownWordOf(*typedResultOf(QStringLiteral("ferro bench 5x8"))).isEmpty());
    EXPECT_EQ(unknownWordOf(*typedResultOf(QStringLiteral("ferro bench 99999999999x8x5"))), QStringLiteral("@99999999999"));
}

}  // namespace chalk::ui::shell
