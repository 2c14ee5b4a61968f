#include "ui/board/headline.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::board {

namespace {

using common::Theme;

constexpr double kHeadlineHeight = 42;
constexpr double kLeastShare = 0.5;

/// One run of the line: what it says, how large, and the gap before it.
struct HeadlineRun {
    QString text;
    double px;
    QFont::Weight weight;
    double gap;
};

std::array<HeadlineRun, 3> runsOf(const HeadlineView& view)
{
    return {HeadlineRun{view.number, view.unit.isEmpty() ? 28.0 : 38.0, QFont::Bold, 0}, HeadlineRun{view.unit, 18, QFont::DemiBold, 4},
            HeadlineRun{view.sets, 30, QFont::Bold, 12}};
}

double widthOf(const std::array<HeadlineRun, 3>& runs, const Theme& theme, double share)
{
    double width = 0;
    for (const HeadlineRun& run : runs) {
        if (!run.text.isEmpty()) {
            width += theme.scaled(run.gap) + QFontMetricsF(theme.font(run.px * share, run.weight, true)).horizontalAdvance(run.text);
        }
    }
    return width;
}

}  // namespace

double headlineHeight(const Theme& theme)
{
    return theme.scaled(kHeadlineHeight);
}

void paintHeadline(QPainter& painter, const QRectF& rect, const HeadlineView& view, const Theme& theme)
{
    const QFont small = theme.font(13, QFont::Normal);
    const double whenWidth = view.when.isEmpty() ? 0 : QFontMetricsF(small).horizontalAdvance(view.when) + theme.scaled(8);
    const auto runs = runsOf(view);
    double share = 1;
    while (share > kLeastShare && widthOf(runs, theme, share) > rect.width() - whenWidth) {
        share -= 0.02;
    }
    const double baseline = rect.top() + rect.height() * 0.76;
    double x = rect.left();
    for (const HeadlineRun& run : runs) {
        if (run.text.isEmpty()) {
            continue;
        }
        const QFont font = theme.font(run.px * share, run.weight, true);
        x += theme.scaled(run.gap);
        painter.setFont(font);
        painter.setPen(view.isPain ? theme.pain : theme.ink);
        painter.drawText(QPointF(x, baseline), run.text);
        x += QFontMetricsF(font).horizontalAdvance(run.text);
    }
    painter.setFont(small);
    painter.setPen(theme.ink2);
    painter.drawText(QPointF(rect.right() - QFontMetricsF(small).horizontalAdvance(view.when), baseline), view.when);
}

}  // namespace chalk::ui::board
