#include "ui/week/week_painter.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"
#include "ui/week/week_balloon.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::kDayMinutes;
using common::Theme;

constexpr int kPaintedHour = 60;
constexpr double kGap = 8;
constexpr double kTag = 18;
constexpr float kTodayWash = 0.55F;

QString clockOf(int minute)
{
    return common::qstring(sessions::clockText(minute % kDayMinutes));
}

bool isToday(const WeekScene& scene, int weekday)
{
    return scene.now && *scene.now / kDayMinutes == weekday;
}

void paintHatching(QPainter& painter, const QRectF& rect, const QColor& colour)
{
    painter.save();
    painter.setClipRect(rect);
    painter.setPen(QPen(colour, 1.6));
    for (double x = rect.left() - rect.height(); x < rect.right(); x += 8) {
        painter.drawLine(QPointF(x, rect.bottom()), QPointF(x + rect.height(), rect.top()));
    }
    painter.restore();
}

void paintWord(QPainter& painter, const QRectF& rect, const QString& word, const Theme& theme)
{
    const QFont font = theme.font(12, QFont::Normal);
    const QFontMetricsF metrics(font);
    const QSizeF wrapped = metrics.boundingRect(QRectF(0, 0, rect.width() - 6, rect.height()), Qt::AlignCenter | Qt::TextWordWrap, word).size();
    const bool isWrapped = wrapped.width() <= rect.width() - 6 && wrapped.height() <= rect.height();
    const QString text = isWrapped ? word : metrics.elidedText(word, Qt::ElideRight, rect.width() - 6);
    const double height = isWrapped ? wrapped.height() : metrics.height();
    if (rect.height() < height || text.size() < 3) {
        return;
    }
    const double width = (isWrapped ? wrapped.width() : metrics.horizontalAdvance(text)) + 6;
    const QRectF ground(rect.center().x() - width / 2, rect.center().y() - height / 2, width, height);
    painter.fillRect(ground, theme.surface);
    painter.setFont(font);
    painter.setPen(theme.ink3);
    painter.drawText(ground, Qt::AlignCenter | Qt::TextWordWrap, text);
}

void paintHours(QPainter& painter, const WeekPicture& picture)
{
    const WeekGeometry& geometry = picture.geometry;
    painter.setFont(picture.theme.font(12, QFont::Normal));
    for (int minute = picture.scene.from; minute <= picture.scene.to; minute += kPaintedHour) {
        const auto& folds = picture.scene.folds;
        const bool isFolded = std::any_of(folds.begin(), folds.end(), [minute](const FoldedHours& fold) { return fold.from < minute && minute < fold.to; });
        if (isFolded) {
            continue;
        }
        const double y = geometry.yOf(minute);
        painter.setPen(QPen(picture.theme.line, 1));
        painter.drawLine(QPointF(geometry.axisWidth(), y), QPointF(geometry.size().width(), y));
        if (minute < picture.scene.to) {
            painter.setPen(picture.theme.ink3);
            painter.drawText(QRectF(0, y - kGap, geometry.axisWidth() - kGap, 2 * kGap), Qt::AlignRight | Qt::AlignVCenter, clockOf(minute));
        }
    }
}

void paintDays(QPainter& painter, const WeekPicture& picture)
{
    const WeekGeometry& geometry = picture.geometry;
    for (int i = 0; i < static_cast<int>(picture.scene.days.size()); ++i) {
        const QRectF day = geometry.dayRect(i);
        const int weekday = picture.scene.days[static_cast<std::size_t>(i)];
        if (isToday(picture.scene, weekday)) {
            QColor wash = picture.theme.wash;
            wash.setAlphaF(kTodayWash);
            painter.fillRect(day.adjusted(1, 0, 0, 0), wash);
        }
        for (std::size_t coach = 1; coach < picture.scene.coaches.size(); ++coach) {
            const double x = geometry.laneRect(i, coach).left();
            painter.setPen(QPen(picture.theme.line, 1));
            painter.drawLine(QPointF(x, geometry.headHeight()), QPointF(x, day.bottom()));
        }
        for (int unit = 0; unit < picture.scene.racks; ++unit) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(picture.theme.sunken);
            painter.drawRoundedRect(geometry.rackRect(weekday, unit, picture.scene.from, picture.scene.to), 2, 2);
        }
        if (i > 0) {
            painter.setPen(QPen(picture.theme.line2, 1));
            painter.drawLine(day.topLeft(), day.bottomLeft());
        }
    }
}

void paintRacks(QPainter& painter, const WeekPicture& picture)
{
    painter.setPen(Qt::NoPen);
    for (const RackStretch& stretch : picture.scene.rackUse) {
        const Theme& theme = picture.theme;
        painter.setBrush(stretch.state == RackState::Short ? theme.pain : stretch.state == RackState::Proposed ? theme.mark : theme.attDot);
        if (picture.geometry.indexOf(stretch.day) >= 0) {
            painter.drawRoundedRect(picture.geometry.rackRect(stretch.day, stretch.unit, stretch.from, stretch.to), 2, 2);
        }
    }
}

void paintFolds(QPainter& painter, const WeekPicture& picture)
{
    for (const FoldedHours& fold : picture.scene.folds) {
        const double top = picture.geometry.yOf(fold.from);
        const QRectF band(picture.geometry.axisWidth(), top, picture.geometry.size().width() - picture.geometry.axisWidth(), picture.geometry.yOf(fold.to) - top);
        painter.fillRect(band, picture.theme.surface);
        paintHatching(painter, band, picture.theme.line);
        paintWord(painter, band.adjusted(0, -1, 0, 1), QCoreApplication::translate("WeekScene", "%1 – %2 closed").arg(clockOf(fold.from), clockOf(fold.to)), picture.theme);
    }
}

void paintHatched(QPainter& painter, const WeekPicture& picture)
{
    for (const HatchedSpan& span : picture.scene.hatched) {
        const auto& folds = picture.scene.folds;
        const bool isFold = std::any_of(folds.begin(), folds.end(), [&span](const FoldedHours& fold) { return fold.from <= span.from && span.to <= fold.to; });
        if (!isFold) {
            const QRectF rect = picture.geometry.hatchedRect(span);
            paintHatching(painter, rect, picture.theme.line);
            paintWord(painter, rect, span.word, picture.theme);
        }
    }
}

void paintNow(QPainter& painter, const WeekPicture& picture)
{
    if (!picture.scene.now) {
        return;
    }
    const int minute = *picture.scene.now % kDayMinutes;
    const int index = picture.geometry.indexOf(*picture.scene.now / kDayMinutes);
    if (index < 0 || minute < picture.scene.from || minute > picture.scene.to) {
        return;
    }
    const QRectF day = picture.geometry.dayRect(index);
    const double y = picture.geometry.yOf(minute);
    painter.setPen(QPen(picture.theme.mark, 2));
    painter.drawLine(QPointF(day.left(), y), QPointF(day.right() - 2, y));
    painter.setPen(Qt::NoPen);
    painter.setBrush(picture.theme.mark);
    painter.drawEllipse(QPointF(day.left(), y), 4.5, 4.5);
}

void paintGhost(QPainter& painter, const WeekPicture& picture)
{
    const MoveGhost& ghost = *picture.ghost;
    QColor grey = picture.theme.ink3;
    grey.setAlphaF(0.16F);
    for (const chalk::week::Slot& slot : ghost.closed) {
        if (picture.geometry.indexOf(slot.start / kDayMinutes) >= 0) {
            painter.fillRect(picture.geometry.slotRect(slot, 15).adjusted(-2, -1, 1, 1), grey);
        }
    }
    const QRectF rect = picture.geometry.slotRect(ghost.slot, ghost.minutes);
    painter.setPen(QPen(ghost.isLegal ? picture.theme.mark : picture.theme.ink3, 2, Qt::DashLine));
    painter.setBrush(ghost.isLegal ? picture.theme.wash2 : picture.theme.sunken);
    painter.drawRoundedRect(rect.adjusted(1, 1, -1, -1), 5, 5);
    painter.setPen(ghost.isLegal ? picture.theme.ink : picture.theme.ink2);
    painter.setFont(picture.theme.font(12, QFont::Medium));
    const QString time = clockOf(ghost.slot.start % kDayMinutes);
    const QFontMetricsF metrics(painter.font());
    const QRectF text = rect.adjusted(5, 3, -4, -2);
    painter.drawText(text, Qt::AlignLeft | Qt::AlignTop, time);
    if (text.height() >= 2 * metrics.height()) {
        painter.drawText(text.adjusted(0, metrics.height(), 0, 0), Qt::AlignLeft | Qt::AlignTop, metrics.elidedText(ghost.names, Qt::ElideRight, text.width()));
    }
}

void paintFocus(QPainter& painter, const WeekPicture& picture)
{
    if (picture.selected < 0 || !picture.hasFocus || picture.ghost != nullptr) {
        return;
    }
    const QRectF rect = picture.geometry.blockRect(picture.scene.blocks[static_cast<std::size_t>(picture.selected)]);
    painter.setPen(QPen(picture.theme.focus, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(rect.adjusted(-1, -1, 1, 1), 6, 6);
}

void paintHeadGround(QPainter& painter, const WeekPicture& picture, int index)
{
    const QRectF day = picture.geometry.dayRect(index);
    if (isToday(picture.scene, picture.scene.days[static_cast<std::size_t>(index)])) {
        QColor wash = picture.theme.wash;
        wash.setAlphaF(kTodayWash);
        painter.fillRect(QRectF(day.left() + 1, 0, day.width() - 1, picture.geometry.headHeight()), wash);
    }
    if (index > 0) {
        painter.setPen(QPen(picture.theme.line2, 1));
        painter.drawLine(QPointF(day.left(), 6), QPointF(day.left(), picture.geometry.headHeight()));
    }
}

void paintTodayTag(QPainter& painter, const QRectF& day, double nameEnd, const Theme& theme)
{
    const QString word = QCoreApplication::translate("WeekScene", "today");
    painter.setFont(theme.font(12, QFont::DemiBold));
    const double width = QFontMetricsF(painter.font()).horizontalAdvance(word) + 10;
    const QRectF tag(day.right() - width - 6, 5, width, theme.scaled(kTag));
    if (tag.left() < nameEnd) {
        return;  // the day is washed all the same
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.chalk);
    painter.drawRoundedRect(tag, 4, 4);
    painter.setPen(theme.chalkInk);
    painter.drawText(tag, Qt::AlignCenter, word);
}

}  // namespace

void paintWeek(QPainter& painter, const WeekPicture& picture)
{
    painter.setRenderHint(QPainter::Antialiasing);
    paintDays(painter, picture);
    paintHours(painter, picture);
    paintHatched(painter, picture);
    paintRacks(painter, picture);
    paintFolds(painter, picture);
    for (const WeekBlock& block : picture.scene.blocks) {
        if (picture.geometry.indexOf(block.day) >= 0) {
            paintWeekBlock(painter, picture, block);
        }
    }
    paintNow(painter, picture);
    paintBalloon(painter, picture);
    paintFocus(painter, picture);
    if (picture.ghost != nullptr) {
        paintGhost(painter, picture);
    }
}

void paintWeekHead(QPainter& painter, const WeekPicture& picture)
{
    const Theme& theme = picture.theme;
    const double half = picture.geometry.headHeight() / 2;
    painter.fillRect(QRectF(0, 0, picture.geometry.size().width(), picture.geometry.headHeight()), theme.surface);
    for (int i = 0; i < static_cast<int>(picture.scene.days.size()); ++i) {
        const QRectF day = picture.geometry.dayRect(i);
        const int weekday = picture.scene.days[static_cast<std::size_t>(i)];
        paintHeadGround(painter, picture, i);
        const QString name = QLocale::c().dayName(weekday + 1, QLocale::ShortFormat) + QLatin1Char(' ') +
                             QString::number(static_cast<unsigned>((picture.scene.monday + weekday).ymd().day()));
        painter.setFont(theme.font(14, QFont::DemiBold));
        painter.setPen(theme.ink);
        painter.drawText(QRectF(day.left() + kGap, 2, day.width() - kGap, half), Qt::AlignLeft | Qt::AlignVCenter, name);
        if (isToday(picture.scene, weekday)) {
            paintTodayTag(painter, day, day.left() + 2 * kGap + QFontMetricsF(painter.font()).horizontalAdvance(name), theme);
        }
        painter.setFont(theme.font(12, QFont::Normal));
        painter.setPen(theme.ink3);
        const QFontMetricsF metrics(painter.font());
        for (std::size_t coach = 0; coach < picture.scene.coaches.size(); ++coach) {
            const QRectF lane = picture.geometry.laneRect(i, coach);
            const QRectF caption(lane.left() + kGap, half, lane.width() - kGap - 2, half);
            painter.drawText(caption, Qt::AlignLeft | Qt::AlignVCenter, metrics.elidedText(picture.scene.coaches[coach], Qt::ElideRight, caption.width()));
        }
    }
}

}  // namespace chalk::ui::week
