#include "ui/common/stage_glyph.h"

namespace chalk::ui::common {

namespace {

using progression::Stage;

/// Turns the units of the drawing (16 to a side) into the square given.
struct GlyphGrid {
    QRectF square;

    [[nodiscard]] double length(double units) const { return square.width() * units / 16; }
    [[nodiscard]] QPointF at(double x, double y) const { return square.topLeft() + QPointF(length(x), length(y)); }
    [[nodiscard]] QRectF box(double x, double y, double width, double height) const
    {
        return {at(x, y), QSizeF(length(width), length(height))};
    }
};

void addBar(QPainterPath& path, const GlyphGrid& grid, const QRectF& units, double radius)
{
    path.addRoundedRect(grid.box(units.x(), units.y(), units.width(), units.height()), grid.length(radius), grid.length(radius));
}

QPainterPath ringGlyph(const GlyphGrid& grid)
{
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    path.addEllipse(grid.at(8, 8), grid.length(6.4), grid.length(6.4));
    path.addEllipse(grid.at(8, 8), grid.length(3.8), grid.length(3.8));
    return path;
}

QPainterPath wedgeGlyph(const GlyphGrid& grid)
{
    QPainterPath path(grid.at(1.4, 14));
    path.lineTo(grid.at(14.6, 14));
    path.lineTo(grid.at(14.6, 1.6));
    path.closeSubpath();
    return path;
}

QPainterPath slicedDiscGlyph(const GlyphGrid& grid)
{
    QPainterPath path(grid.at(8, 8));
    path.arcTo(grid.box(1.6, 1.6, 12.8, 12.8), 90, 270);
    path.closeSubpath();
    const QRectF outer = grid.box(3, 0.9, 12.2, 12.2);
    const double thickness = grid.length(1.6);
    path.arcMoveTo(outer, 80);
    path.arcTo(outer, 80, -70);
    path.arcTo(outer.adjusted(thickness, thickness, -thickness, -thickness), 10, 70);
    path.closeSubpath();
    return path;
}

}  // namespace

QPainterPath stageGlyph(Stage stage, const QRectF& square)
{
    const GlyphGrid grid{square};
    QPainterPath path;
    switch (stage) {
    case Stage::Pattern:
        return ringGlyph(grid);
    case Stage::Control:
        addBar(path, grid, {3, 2, 3.8, 12}, 1);
        addBar(path, grid, {9.2, 2, 3.8, 12}, 1);
        return path;
    case Stage::BaseLoad:
        addBar(path, grid, {2.2, 2.2, 11.6, 11.6}, 1.6);
        return path;
    case Stage::LoadBuild:
        return wedgeGlyph(grid);
    case Stage::RepBuild:
        for (const double x : {2.9, 8.0, 13.1}) {
            path.addEllipse(grid.at(x, 8), grid.length(2.3), grid.length(2.3));
        }
        return path;
    case Stage::SetBuild:
        for (const double y : {1.9, 6.5, 11.1}) {
            addBar(path, grid, {1.8, y, 12.4, 3}, 1);
        }
        return path;
    case Stage::RestCut:
        return slicedDiscGlyph(grid);
    }
    return path;
}

}  // namespace chalk::ui::common
