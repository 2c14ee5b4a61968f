#include "ui/board/board_geometry.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::ui::board {

namespace {

using progression::Stage;

constexpr QSizeF kWide(893, 642);
constexpr QSizeF kSmall(814, 543);

/// A column with everything that can stand on it: `present` is its stage.
BoardColumn fullColumn(Stage present)
{
    BoardColumn column;
    column.lift = base::LiftId(1);
    column.stage = present;
    column.need = BoardNeed{};
    column.need->stage = present == Stage::RestCut ? Stage::LoadBuild : progression::kStages[static_cast<std::size_t>(numberOf(present))];
    for (BoardDate& date : column.dates) {
        date = {QStringLiteral("24 Nov"), true};
    }
    return column;
}

BoardColumns fullColumns(int count)
{
    BoardColumns columns;
    for (int i = 0; i < count; ++i) {
        columns.push_back(fullColumn(progression::kStages[static_cast<std::size_t>(i) % progression::kStages.size()]));
    }
    return columns;
}

std::vector<BoardBox> allBoxes(const BoardGeometry& geometry, const BoardColumns& columns)
{
    std::vector<BoardBox> boxes;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto more = geometry.boxesOf(static_cast<int>(i), columns[i]);
        boxes.insert(boxes.end(), more.begin(), more.end());
    }
    return boxes;
}

bool overlap(const QRectF& a, const QRectF& b)
{
    const QRectF both = a & b;
    return both.width() > 0.01 && both.height() > 0.01;
}

}  // namespace

class BoardGeometrySize : public ::testing::TestWithParam<std::tuple<int, QSizeF, double>> {
protected:
    const int m_count = std::get<0>(GetParam());
    const BoardGeometry m_geometry{std::get<1>(GetParam()), m_count, std::get<2>(GetParam()), 0};
    const BoardColumns m_columns = fullColumns(m_count);
};

TEST_P(BoardGeometrySize, NothingOverlaps)
{
    const auto boxes = allBoxes(m_geometry, m_columns);
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        for (std::size_t j = i + 1; j < boxes.size(); ++j) {
            EXPECT_FALSE(overlap(boxes[i].rect, boxes[j].rect))
                << "column " << boxes[i].column << " part " << static_cast<int>(boxes[i].part) << " and column " << boxes[j].column
                << " part " << static_cast<int>(boxes[j].part);
        }
    }
}

TEST_P(BoardGeometrySize, EverythingStaysInItsColumnAndOnTheBoard)
{
    const QRectF board(QPointF(), std::get<1>(GetParam()));
    for (const BoardBox& box : allBoxes(m_geometry, m_columns)) {
        EXPECT_TRUE(m_geometry.columnRect(box.column).contains(box.rect));
        EXPECT_GE(box.rect.top(), 0);
        EXPECT_LE(box.rect.bottom(), board.bottom());
        EXPECT_GE(box.rect.width(), 60 * std::get<2>(GetParam()));
    }
    EXPECT_LT(m_geometry.labelRect(Stage::Pattern).right(), m_geometry.columnsArea().left());
    EXPECT_GT(m_geometry.returnRect().left(), m_geometry.columnsArea().right());
    EXPECT_LE(m_geometry.returnRect().right(), board.right());
}

TEST_P(BoardGeometrySize, PointingIsTheInverseOfPainting)
{
    for (int column = 0; column < m_count; ++column) {
        const BoardGeometry shown(std::get<1>(GetParam()), m_count, std::get<2>(GetParam()), m_geometry.scrollToShow(column));
        for (const BoardBox& box : shown.boxesOf(column, m_columns[static_cast<std::size_t>(column)])) {
            const BoardBox hit = shown.boxAt(box.rect.center(), m_columns);
            EXPECT_EQ(hit.part, box.part);
            EXPECT_EQ(hit.column, box.column);
            EXPECT_EQ(hit.stage, box.stage);
        }
    }
}

TEST_P(BoardGeometrySize, AColumnCanBeScrolledIntoFullView)
{
    for (int column = 0; column < m_count; ++column) {
        const BoardGeometry shown(std::get<1>(GetParam()), m_count, std::get<2>(GetParam()), m_geometry.scrollToShow(column));
        EXPECT_TRUE(shown.columnsArea().adjusted(-0.1, 0, 0.1, 0).contains(shown.columnRect(column)));
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, BoardGeometrySize,
                         ::testing::Combine(::testing::Values(2, 3, 8, 10), ::testing::Values(kWide, kSmall), ::testing::Values(1.0, 1.2)));

TEST(BoardGeometry, EightLiftsNeedNoScrollingInEitherWindow)
{
    EXPECT_EQ(BoardGeometry(kWide, 8, 1, 0).scrollRange(), 0);
    EXPECT_EQ(BoardGeometry(kSmall, 8, 1, 0).scrollRange(), 0);
    EXPECT_GT(BoardGeometry(kWide, 10, 1, 0).scrollRange(), 0);
}

TEST(BoardGeometry, TheHigherStageLiesHigher)
{
    const BoardGeometry geometry(kWide, 8, 1, 0);
    for (std::size_t i = 1; i < progression::kStages.size(); ++i) {
        EXPECT_LT(geometry.rungTop(progression::kStages[i]), geometry.rungTop(progression::kStages[i - 1]));
    }
}

TEST(BoardGeometry, AnEmptyColumnOffersTheScreen)
{
    const BoardGeometry geometry(kWide, 8, 1, 0);
    BoardColumns columns = fullColumns(8);
    columns[3] = BoardColumn{};
    EXPECT_EQ(geometry.boxesOf(3, columns[3]).size(), 1U);
    columns[3].canScreen = true;
    const auto boxes = geometry.boxesOf(3, columns[3]);
    ASSERT_EQ(boxes.size(), 2U);
    EXPECT_EQ(boxes[1].part, BoardPart::Screen);
    EXPECT_EQ(geometry.boxAt(boxes[1].rect.center(), columns).part, BoardPart::Screen);
}

TEST(BoardGeometry, TheMarginsArePartOfNoColumn)
{
    const BoardGeometry geometry(kWide, 8, 1, 0);
    const BoardColumns columns = fullColumns(8);
    EXPECT_EQ(geometry.boxAt({20, 300}, columns).part, BoardPart::Nothing);
    EXPECT_EQ(geometry.boxAt({kWide.width() - 5, 300}, columns).part, BoardPart::Nothing);
}

RC_GTEST_PROP(BoardGeometryProperty, EveryPointOfTheColumnsBelongsToTheColumnThatIsPaintedThere, ())
{
    const int count = *rc::gen::inRange(2, 11);
    const QSizeF size(*rc::gen::inRange(600, 1400), *rc::gen::inRange(420, 900));
    const BoardGeometry geometry(size, count, 1, *rc::gen::inRange(0, 400));
    const QRectF area = geometry.columnsArea();
    const QPointF point(area.left() + area.width() * *rc::gen::inRange(1, 1000) / 1000.0, *rc::gen::inRange(1, 419));
    const BoardBox hit = geometry.boxAt(point, fullColumns(count));
    if (hit.part == BoardPart::Nothing) {
        RC_ASSERT(point.x() >= geometry.columnRect(count - 1).right());
    } else {
        RC_ASSERT(hit.rect.contains(point));
        RC_ASSERT(geometry.columnRect(hit.column).contains(point));
    }
}

}  // namespace chalk::ui::board
