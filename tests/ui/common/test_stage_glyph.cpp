#include "ui/common/stage_glyph.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(StageGlyph, EachShapeIsItsOwnAndStaysInItsSquare)
{
    const QRectF square(10, 20, 32, 32);
    std::vector<QPainterPath> shapes;
    for (const progression::Stage stage : progression::kStages) {
        const QPainterPath shape = stageGlyph(stage, square);
        EXPECT_FALSE(shape.isEmpty());
        EXPECT_TRUE(square.adjusted(-0.5, -0.5, 0.5, 0.5).contains(shape.boundingRect())) << progression::numberOf(stage);
        for (const QPainterPath& other : shapes) {
            EXPECT_NE(shape, other);
        }
        shapes.push_back(shape);
    }
}

TEST(StageGlyph, RingAndSliceAreHollowWhereTheyShouldBe)
{
    const QRectF square(0, 0, 16, 16);
    EXPECT_FALSE(stageGlyph(progression::Stage::Pattern, square).contains(QPointF(8, 8)));
    EXPECT_TRUE(stageGlyph(progression::Stage::BaseLoad, square).contains(QPointF(8, 8)));
    EXPECT_FALSE(stageGlyph(progression::Stage::Control, square).contains(QPointF(8, 8)));
    const QPainterPath slice = stageGlyph(progression::Stage::RestCut, square);
    EXPECT_TRUE(slice.contains(QPointF(4, 10)));
    EXPECT_FALSE(slice.contains(QPointF(9.5, 6.5)));  // between the disc and the slice that is cut out of it
}

}  // namespace chalk::ui::common
