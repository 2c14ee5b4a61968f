#include "ui/trends/trend_sheets.h"

#include "tests/ui/trends/made_up_trends.h"

#include <gtest/gtest.h>

namespace chalk::ui::trends {

namespace {

void expectWhole(const std::vector<TrendSheet>& sheets)
{
    for (const TrendSheet& sheet : sheets) {
        EXPECT_FALSE(sheet.title.isEmpty());
        for (const QStringList& row : sheet.rows) {
            EXPECT_EQ(row.size(), sheet.heads.size()) << sheet.title.toStdString();
        }
    }
}

}  // namespace

TEST(TrendSheets, AClientsNumbers)
{
    const auto sheets = sheetsOf(madeUpClient());
    expectWhole(sheets);
    ASSERT_EQ(sheets.size(), 3U);
    EXPECT_EQ(sheets[0].rows[1], (QStringList{QStringLiteral("9 Nov"), QStringLiteral("3\u202F030"), QStringLiteral("0"), QStringLiteral("0"), QStringLiteral("1\u202F500"),
                                              QStringLiteral("0"), QStringLiteral("0"), QStringLiteral("0"), QStringLiteral("0"), QStringLiteral("4\u202F530"),
                                              QStringLiteral("2 of 3"), QStringLiteral("1\u202F400"), QStringLiteral("1.80"), QStringLiteral("2\u202F520")}));
    EXPECT_EQ(sheets[0].rows[3].mid(9), (QStringList{QStringLiteral("0"), {}, {}, {}, {}}));
    EXPECT_TRUE(sheets[1].title.contains(QStringLiteral("not a tested maximum")));
    EXPECT_EQ(sheets[1].rows[0], (QStringList{QStringLiteral("2 Nov"), QStringLiteral("95 (92–99)"), QStringLiteral("58 (55–62)")}));
    EXPECT_EQ(sheets[2].rows[1], (QStringList{QStringLiteral("Back squat"), QStringLiteral("11 Nov"), QStringLiteral("3 × 8"), QStringLiteral("2:15")}));
}

TEST(TrendSheets, WhatHasNoRowsIsLeftOut)
{
    const auto sheets = sheetsOf(madeUpBeginner());
    ASSERT_EQ(sheets.size(), 1U);
    EXPECT_EQ(sheets[0].rows.size(), 4U) << "the weeks are always there";
}

TEST(TrendSheets, EverybodysNumbers)
{
    const auto sheets = sheetsOf(madeUpStudio());
    expectWhole(sheets);
    ASSERT_EQ(sheets.size(), 2U);
    EXPECT_FALSE(sheets[0].heads.contains(QStringLiteral("Monotony"))) << "of everybody together there is none";
    EXPECT_EQ(sheets[1].rows[2], (QStringList{QStringLiteral("Tove Lind"), QStringLiteral("9\u202F000"), QStringLiteral("\u221212 %"), QStringLiteral("50 % (2 of 4)"), QStringLiteral("1.40")}));
}

TEST(TrendSheets, AsText)
{
    const TrendSheet sheet{QStringLiteral("Numbers"), {QStringLiteral("Week"), QStringLiteral("Total")}, {{QStringLiteral("2 Nov"), QStringLiteral("4")}, {QStringLiteral("9 Nov"), {}}}, 1};
    EXPECT_EQ(textOf(sheet), QStringLiteral("Numbers\nWeek   Total\n2 Nov      4\n9 Nov\n"));
    EXPECT_EQ(tabbedTextOf(sheet), QStringLiteral("Numbers\nWeek\tTotal\n2 Nov\t4\n9 Nov\t\n"));
}

}  // namespace chalk::ui::trends
