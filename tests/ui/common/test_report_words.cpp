#include "ui/common/report_words.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(ReportWords, EffortIsSaidInHalves)
{
    EXPECT_EQ(effortText(0), QStringLiteral("0"));
    EXPECT_EQ(effortText(75), QStringLiteral("7.5"));
    EXPECT_EQ(effortText(100), QStringLiteral("10"));
}

TEST(ReportWords, OnlyWhatWasAskedIsSaid)
{
    EXPECT_EQ(reportText({}), QString());
    EXPECT_EQ(reportText({4, {}, {}, {}, {}, {}}), QStringLiteral("sleep 4 of 5"));
    EXPECT_EQ(reportText({{}, {}, {}, {}, {}, "late\nleft early"}), QStringLiteral("late; left early"));
    EXPECT_EQ(reportText({4, 2, 1, 75, 55, "late"}),
              QStringLiteral("effort 7.5 of 10, 55 min, load 413, sleep 4 of 5, soreness 2 of 5, stress 1 of 5; late"));
    EXPECT_EQ(reportFiguresText({{}, {}, {}, 70, {}, "late"}), QStringLiteral("effort 7 of 10")) << "without minutes there is no load";
}

}  // namespace chalk::ui::common
