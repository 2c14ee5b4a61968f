#include "ui/print/runs.h"

#include <QFontMetricsF>

#include <algorithm>

namespace chalk::ui::print {

namespace {

constexpr double kFramePadding = 1.1;  ///< left and right of a framed number
constexpr double kFrameRadius = 1.3;
constexpr double kFrameStroke = 0.6;
constexpr double kFrameClearance = 0.2;

/// No piece goes below the least size, whatever the line's scale.
QFont fontOf(const Run& run, double scale)
{
    return printFont(std::max(run.points * scale, kLeastPoints), run.weight, run.isDisplay);
}

/// Frames keep their padding at every scale.
double advanceOf(const Run& run, double scale)
{
    return run.gap * scale + widthOf(run.text, fontOf(run, scale)) + (run.isFramed ? 2 * kFramePadding : 0);
}

double tallestCap(const Runs& runs, double scale)
{
    double tallest = 0;
    for (const Run& run : runs) {
        tallest = std::max(tallest, capHeightOf(fontOf(run, scale)));
    }
    return tallest;
}

/// Around capitals and digits evenly; letters that reach below the line get room.
void addFrame(Sheet& sheet, double x, double baseline, double width, double cap, double belowLine)
{
    const double above = 0.5 + 0.14 * cap;
    const double below = std::max(above, belowLine + kFrameStroke + kFrameClearance);
    sheet.boxes.push_back({{x, baseline - cap - above, width, cap + above + below}, kFrameStroke, kFrameRadius});
}

/// How far the ink of a text reaches below the line that it stands on, in millimetres.
double inkBelow(const QString& text, const QFont& font)
{
    return std::max(0.0, QFontMetricsF(font).tightBoundingRect(text).bottom() / kFontUnitsPerMm);
}

}  // namespace

double widthOf(const Runs& runs, double scale)
{
    double width = 0;
    for (const Run& run : runs) {
        width += advanceOf(run, scale);
    }
    return width;
}

double scaleToFit(const Runs& runs, double width)
{
    double scale = 1;
    while (widthOf(runs, scale) > width && scale > 0.1) {
        scale -= 0.01;
    }
    return scale;
}

const Runs& bestFit(const std::vector<Runs>& ways, double width, double leastScale)
{
    for (const double scale : {1.0, leastScale}) {
        const auto found = std::find_if(ways.begin(), ways.end(), [&](const Runs& runs) { return widthOf(runs, scale) <= width; });
        if (found != ways.end()) {
            return *found;
        }
    }
    return ways.back();
}

Runs elided(Runs runs, double width, double scale)
{
    while (runs.size() > 1 && widthOf({runs.begin(), runs.end() - 1}, scale) > width) {
        runs.pop_back();
    }
    if (runs.empty() || widthOf(runs, scale) <= width) {
        return runs;
    }
    Run& last = runs.back();
    const double left = width - widthOf({runs.begin(), runs.end() - 1}, scale) - last.gap * scale;
    last.text = QFontMetricsF(fontOf(last, scale)).elidedText(last.text, Qt::ElideRight, std::max(0.0, left) * kFontUnitsPerMm);
    return runs;
}

void placeBest(Sheet& sheet, const std::vector<Runs>& ways, const QRectF& cell)
{
    if (ways.empty() || ways.front().empty()) {
        return;
    }
    const double leastScale = kLeastPoints / ways.front().front().points;
    const Runs& line = bestFit(ways, cell.width(), leastScale);
    const double scale = std::max(scaleToFit(line, cell.width()), leastScale);
    place(sheet, elided(line, cell.width(), scale), cell, scale);
}

void place(Sheet& sheet, const Runs& runs, const QRectF& cell, double scale)
{
    const double cap = tallestCap(runs, scale);
    const double baseline = cell.center().y() + cap / 2;
    double x = cell.left();
    for (const Run& run : runs) {
        const QFont font = fontOf(run, scale);
        const double width = widthOf(run.text, font);
        const double padding = run.isFramed ? kFramePadding : 0;
        x += run.gap * scale;
        if (run.isFramed) {
            addFrame(sheet, x, baseline, width + 2 * padding, capHeightOf(font), inkBelow(run.text, font));
        }
        sheet.texts.push_back({run.text, font, {x + padding, cell.top(), width, cell.height()}, {x + padding, baseline}, false});
        x += width + 2 * padding;
    }
}

void placeCentred(Sheet& sheet, const Runs& runs, const QRectF& cell, double scale)
{
    place(sheet, runs, cell.adjusted((cell.width() - widthOf(runs, scale)) / 2, 0, 0, 0), scale);
}

}  // namespace chalk::ui::print
