#include "ui/week/week_balloon.h"

#include "ui/common/wrapped_text.h"

#include <QPainter>

#include <algorithm>

namespace chalk::ui::week {

namespace {

// Pixels at a text size of 100 %.
constexpr double kBalloonPadding = 8;
constexpr double kBalloonLine = 15;
constexpr double kBalloonGap = 2;

/// Of the text in it.
double balloonWidth(const QRectF& day)
{
    return day.width() - 14 - 2 * kBalloonPadding;
}

QFont balloonFont(const WeekPicture& picture)
{
    return picture.theme.font(12, QFont::Normal);
}

}  // namespace

std::optional<QRectF> balloonRect(const WeekPicture& picture)
{
    const auto& blocks = picture.scene.blocks;
    const auto at = std::find_if(blocks.begin(), blocks.end(), [](const WeekBlock& block) { return !block.faults.empty(); });
    if (at == blocks.end() || picture.conflict.why.isEmpty() || picture.geometry.indexOf(at->day) < 0) {
        return std::nullopt;
    }
    const QRectF day = picture.geometry.dayRect(picture.geometry.indexOf(at->day));
    const double line = picture.theme.scaled(kBalloonLine);
    const double width = balloonWidth(day);
    const double offer = common::wrappedTextHeight(picture.conflict.offer, balloonFont(picture), width, line);
    const double height = common::wrappedTextHeight(picture.conflict.why, balloonFont(picture), width, line) + (offer > 0 ? offer + kBalloonGap : 0) + 10;
    const QRectF balloon(day.left() + 6, picture.geometry.yOf(at->to) + 4, width + 2 * kBalloonPadding, height);
    const bool isTaken = std::any_of(blocks.begin(), blocks.end(), [&](const WeekBlock& block) { return block.day == at->day && picture.geometry.blockRect(block).intersects(balloon); });
    return isTaken || balloon.bottom() > picture.geometry.size().height() ? std::nullopt : std::optional(balloon);
}

void paintBalloon(QPainter& painter, const WeekPicture& picture)
{
    const auto balloon = balloonRect(picture);
    if (!balloon) {
        return;
    }
    painter.setPen(QPen(picture.theme.painLine, 1));
    painter.setBrush(picture.theme.painBg);
    painter.drawRoundedRect(*balloon, 5, 5);
    const QFont font = balloonFont(picture);
    const double line = picture.theme.scaled(kBalloonLine);
    const double width = balloon->width() - 2 * kBalloonPadding;
    const QPointF top = balloon->topLeft() + QPointF(kBalloonPadding, 5);
    painter.setPen(picture.theme.pain);
    common::paintWrappedText(painter, top, picture.conflict.why, font, width, line);
    painter.setPen(picture.theme.link);
    const double why = common::wrappedTextHeight(picture.conflict.why, font, width, line);
    common::paintWrappedText(painter, top + QPointF(0, why + kBalloonGap), picture.conflict.offer, font, width, line);
}

}  // namespace chalk::ui::week
