#include "ui/shell/find_parts.h"

#include <gtest/gtest.h>

namespace chalk::ui::shell {

TEST(FindParts, MarksWhatMatchesAndKeepsEveryLetter)
{
    const QString text = QString::fromUtf8("José Ñandú, bench press");
    const auto parts = markedParts(text, QStringLiteral("nan pres"));
    ASSERT_EQ(parts.size(), 5U);
    EXPECT_EQ(parts[1].text, QString::fromUtf8("Ñan"));
    EXPECT_EQ(parts[1].weight, FindWeight::Bold);
    EXPECT_EQ(parts[3].text, QStringLiteral("pres"));
    QString all;
    for (const FindPart& part : parts) {
        all += part.text;
    }
    EXPECT_EQ(all, text);
}

TEST(FindParts, WithoutAMatchItIsOnePart)
{
    const auto plain = markedParts(QStringLiteral("Joaquin Ferro"), QStringLiteral("xyz"));
    ASSERT_EQ(plain.size(), 1U);
    EXPECT_EQ(plain[0].weight, FindWeight::Plain);
    const auto detail = markedParts(QStringLiteral("Strong"), QStringLiteral("str"), FindWeight::Detail);
    ASSERT_EQ(detail.size(), 2U);
    EXPECT_EQ(detail[0].weight, FindWeight::DetailBold);
    EXPECT_EQ(detail[1].weight, FindWeight::Detail);
    EXPECT_TRUE(markedParts(QString(), QStringLiteral("a")).empty());
}

}  // namespace chalk::ui::shell
