#include "ui/common/lift_strip.h"
#include "ui/common/look.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

using progression::Stage;

QImage painted(const LiftStripView& view, const Theme& theme)
{
    QImage image(liftStripSize(theme).toSize(), QImage::Format_RGB32);
    image.fill(theme.surface);
    QPainter painter(&image);
    paintLiftStrip(painter, QRectF(QPointF(), QSizeF(image.size())), view, theme);
    return image;
}

/// The height, from the top, of the middle row of a colour in one column's stretch; -1 where it is not there.
int rowOfColour(const QImage& image, const QColor& colour)
{
    int first = -1;
    int last = -1;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (image.pixelColor(x, y) == colour) {
                first = first < 0 ? y : first;
                last = y;
            }
        }
    }
    return first < 0 ? -1 : (first + last) / 2;
}

}  // namespace

TEST(LiftStrip, AHigherStageStandsHigherInItsOwnColour)
{
    const Theme theme = Look().theme();
    int below = 1000;
    for (const Stage stage : progression::kStages) {
        LiftStripView view;
        view.lifts[0].stage = stage;
        const int row = rowOfColour(painted(view, theme), theme.stage(stage));
        ASSERT_GE(row, 0) << progression::numberOf(stage);
        EXPECT_LT(row, below) << progression::numberOf(stage);
        below = row;
    }
}

TEST(LiftStrip, AMarkIsDrawnInItsColour)
{
    const Theme theme = Look().theme();
    LiftStripView view;
    view.lifts[4].stage = Stage::Control;
    EXPECT_EQ(rowOfColour(painted(view, theme), theme.pain), -1);
    view.lifts[4].mark = LiftMark::Pain;
    EXPECT_GE(rowOfColour(painted(view, theme), theme.pain), 0);
    view.lifts[4].mark = LiftMark::Plateau;
    EXPECT_EQ(rowOfColour(painted(view, theme), theme.pain), -1);
}

TEST(LiftStrip, EveryLadderCanBePointedAt)
{
    for (const int percent : {100, 140}) {
        Look look;
        look.setTextPercent(percent);
        const Theme& theme = look.theme();
        const QRectF rect(40, 0, liftStripSize(theme).width(), 52);
        std::vector<lifts::Pattern> met;
        for (double x = rect.left(); x < rect.right(); x += 0.5) {
            const auto hit = liftStripHit(rect, x, theme);
            if (hit && (met.empty() || met.back() != *hit)) {
                met.push_back(*hit);
            }
        }
        EXPECT_EQ(met, std::vector<lifts::Pattern>(lifts::kPatterns.begin(), lifts::kPatterns.end()));
        EXPECT_FALSE(liftStripHit(rect, rect.left() - 2, theme));
        EXPECT_FALSE(liftStripHit(rect, rect.right() + 2, theme));
    }
}

TEST(LiftStrip, SaysEachLadderInWords)
{
    LiftStripView view;
    view.lifts[0] = {Stage::RepBuild, 2, LiftMark::Plateau};
    view.lifts[1] = {Stage::Pattern, 1, LiftMark::Pain};
    const QStringList phrases = liftStripText(view).split(QStringLiteral("; "));
    ASSERT_EQ(phrases.size(), 8);
    EXPECT_EQ(phrases.at(0).toStdString(), "Squat: 5 Rep build, cycle 2, plateau");
    EXPECT_EQ(phrases.at(1).toStdString(), "Hinge: 1 Pattern, pain");
    EXPECT_EQ(phrases.at(7).toStdString(), "Carry and brace: not screened yet");
}

}  // namespace chalk::ui::common
