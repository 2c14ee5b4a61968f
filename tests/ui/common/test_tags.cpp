#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/tags.h"

#include <QImage>
#include <QPainter>
#include <QSet>

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

/// How many pixels of exactly `colour` a painter left on `ground`.
template <class Paint>
int pixelsOf(const QColor& colour, const QColor& ground, QSize size, Paint paint)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(ground);
    QPainter painter(&image);
    paint(painter, QRectF(QPointF(), size));
    painter.end();
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            count += image.pixelColor(x, y) == colour ? 1 : 0;
        }
    }
    return count;
}

}  // namespace

TEST(Tags, EveryFlagHasAnIconAWordAndASignal)
{
    QSet<QString> words;
    QSet<QString> icons;
    for (int i = 0; i <= static_cast<int>(FlagKind::New); ++i) {
        const FlagTagView view = flagTagOf(static_cast<FlagKind>(i));
        EXPECT_TRUE(IconStore::has(view.icon)) << view.icon.toStdString();
        words.insert(view.text);
        icons.insert(view.icon);
    }
    EXPECT_EQ(words.size(), 8);
    EXPECT_EQ(icons.size(), 8);
    EXPECT_EQ(flagTagOf(FlagKind::Pain).signal, Signal::Pain);
    EXPECT_EQ(flagTagOf(FlagKind::Plateau).signal, Signal::Warn);
}

TEST(Tags, AStageTagSaysNumberNameAndCycle)
{
    EXPECT_EQ(stageTagText({progression::Stage::RepBuild, 2}).toStdString(), "5 Rep build · cycle 2");
    EXPECT_EQ(stageTagText({progression::Stage::Pattern, 1}).toStdString(), "1 Pattern");
    EXPECT_EQ(stageTagText({progression::Stage::RestCut, 1, false}).toStdString(), "7");
}

TEST(Tags, AreAsWideAsTheirWords)
{
    const Theme theme = Look().theme();
    EXPECT_GT(stageTagWidth({progression::Stage::RepBuild, 2}, theme), stageTagWidth({progression::Stage::RepBuild, 1}, theme));
    const int wide = qRound(stageTagWidth({progression::Stage::SetBuild, 3}, theme)) + 40;
    // The fill ends where the width says: nothing of it beyond, and its last column within.
    QImage image(wide, 24, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintStageTag(painter, QRectF(0, 0, wide, 24), {progression::Stage::SetBuild, 3}, theme);
    painter.end();
    const int end = static_cast<int>(stageTagWidth({progression::Stage::SetBuild, 3}, theme));
    EXPECT_EQ(image.pixelColor(end - 2, 12), theme.stage(progression::Stage::SetBuild));
    EXPECT_EQ(image.pixelColor(end + 2, 12), QColor(Qt::white));
}

TEST(Tags, PipsFillAsFarAsItIsDone)
{
    const Theme theme = Look().theme();
    const auto inkOf = [&theme](int done, int needed) {
        return pixelsOf(theme.ok, theme.surface, QSize(100, 24), [&](QPainter& painter, const QRectF& rect) {
            paintPips(painter, rect, {done, needed, theme.ok}, theme);
        });
    };
    EXPECT_EQ(inkOf(0, 0), 0);
    EXPECT_GT(inkOf(1, 3), inkOf(0, 3));
    EXPECT_GT(inkOf(3, 3), inkOf(2, 3));
    EXPECT_EQ(inkOf(3, 3), inkOf(5, 3));
    EXPECT_DOUBLE_EQ(pipsWidth(3, theme), 33);
    EXPECT_DOUBLE_EQ(pipsWidth(0, theme), 0);
}

TEST(Tags, KeysBecomeCaps)
{
    EXPECT_EQ(keyCapTexts(QStringLiteral("Ctrl+K")), QStringList{QStringLiteral("Ctrl K")});
    EXPECT_EQ(keyCapTexts(QStringLiteral("Ctrl++")), QStringList{QStringLiteral("Ctrl +")});
    EXPECT_EQ(keyCapTexts(QStringLiteral("+")), QStringList{QStringLiteral("+")});
    EXPECT_EQ(keyCapTexts(QStringLiteral("1 2")), (QStringList{QStringLiteral("1"), QStringLiteral("2")}));
    EXPECT_TRUE(keyCapTexts(QString()).isEmpty());
}

}  // namespace chalk::ui::common
