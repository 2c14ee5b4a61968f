#include "ui/common/look.h"
#include "ui/common/prose.h"

#include <QFontMetricsF>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(Prose, FitsALineOrElidesItsWords)
{
    const QFont font = Look().theme().font(13, QFont::Normal);
    const QString html = QStringLiteral("Squat held at <b>77.5 kg</b> for Joaquin");
    EXPECT_EQ(fittedHtml(html, font, 1000), html);
    const QString fitted = fittedHtml(html, font, 120);
    EXPECT_FALSE(fitted.contains(QLatin1Char('<')));
    EXPECT_TRUE(fitted.startsWith(QStringLiteral("Squat")));
    EXPECT_TRUE(fitted.endsWith(QChar(0x2026)));
    EXPECT_LE(QFontMetricsF(font).horizontalAdvance(fitted), 120);
}

TEST(Prose, WhatPeopleWroteStaysText)
{
    EXPECT_EQ(plainText(QStringLiteral("a <b>b</b> &amp; c")), QStringLiteral("a b & c"));
    EXPECT_EQ(plainText(linkHtml(QStringLiteral("x"), QStringLiteral("<Ana> & \"Bo\""))), QStringLiteral("<Ana> & \"Bo\""));
    const QString elided = fittedHtml(QStringLiteral("&lt;i&gt; Ana and a long tail"), Look().theme().font(TextStyle::Body), 60);
    EXPECT_TRUE(elided.startsWith(QStringLiteral("&lt;i&gt;"))) << elided.toStdString();
}

}  // namespace chalk::ui::common
