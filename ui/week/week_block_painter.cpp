#include "ui/common/icon_store.h"
#include "ui/week/week_painter.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using common::Theme;

constexpr double kRound = 5;
constexpr double kNameLeft = 10;
constexpr double kTop = 3;
constexpr double kNameRight = 2;
constexpr double kCloserLetters = -0.35;  ///< pixels: a name that just does not fit is set closer before it is cut
constexpr double kLockSide = 16;
constexpr double kLockOver = 5;   ///< how far the lock lies outside of its block
constexpr double kWarnSide = 14;
constexpr double kBarWidth = 4;

struct BlockColours {
    QColor fill;
    QColor edge;
    QColor ink;
    Qt::PenStyle style = Qt::SolidLine;
};

BlockColours coloursOf(const WeekBlock& block, const Theme& theme)
{
    if (block.isNext && block.state != BlockState::Conflict) {
        return {theme.chalk, theme.chalk, theme.chalkInk};
    }
    switch (block.state) {
    case BlockState::Conflict:
        return {theme.painBg, theme.pain, theme.ink};
    case BlockState::Proposed:
        return {theme.wash, theme.mark, theme.ink, Qt::DashLine};
    case BlockState::Done:
        return {theme.sunken, theme.sunken, theme.ink2};
    case BlockState::Full:
        return {theme.sunken, theme.line2, theme.ink};
    case BlockState::Free:
        break;
    }
    return {theme.raised, theme.line2, theme.ink};
}

/// One segment for each place, filled as far as they are taken.
void paintPlaces(QPainter& painter, const QRectF& rect, const WeekBlock& block, const QColor& ink)
{
    const QRectF bar(rect.left() + 3, rect.top() + kTop, kBarWidth, rect.height() - 2 * kTop);
    const double step = bar.height() / block.places;
    for (int i = 0; i < block.places; ++i) {
        const QRectF place(bar.left(), bar.top() + i * step, bar.width(), std::max(1.0, step - 2));
        QColor colour = ink;
        colour.setAlphaF(i < block.taken() ? 0.7F : 0.55F);
        painter.setPen(i < block.taken() ? QPen(Qt::NoPen) : QPen(colour, 1));
        painter.setBrush(i < block.taken() ? QBrush(colour) : QBrush(Qt::NoBrush));
        painter.drawRoundedRect(i < block.taken() ? place : place.adjusted(0.5, 0.5, -0.5, -0.5), 1.5, 1.5);
    }
}

/// Whether the lock has room below the names; else it lies beside the first.
bool isLockBelow(const QRectF& rect, int lines, double lineHeight)
{
    return rect.height() >= kTop + lines * lineHeight + kLockSide - kLockOver;
}

void paintNames(QPainter& painter, const WeekPicture& picture, const WeekBlock& block, const QRectF& rect, const QColor& ink)
{
    const double line = picture.geometry.lineHeight();
    const QStringList lines = blockLines(block, static_cast<int>((rect.height() - kTop) / line));
    const bool isBelow = isLockBelow(rect, static_cast<int>(lines.size()), line) && block.state != BlockState::Conflict;
    const int lockLine = isBelow ? -1 : 0;
    QFont font = picture.theme.font(12, QFont::Medium);
    const double icons = block.state == BlockState::Conflict ? kWarnSide : 0;
    for (int i = 0; i < lines.size(); ++i) {
        const bool isMember = i < static_cast<int>(block.members.size());
        font.setStrikeOut(isMember && !block.members[static_cast<std::size_t>(i)].takesPlace() && !lines[i].startsWith(QLatin1Char('+')));
        const bool isLast = kTop + (i + 1) * line > rect.height() - icons - kTop;
        const double right = (block.isLocked && i == lockLine ? kLockSide - kLockOver - 1 : 0) + (icons > 0 && isLast ? icons + 1 : 0);
        const QRectF at(rect.left() + kNameLeft, rect.top() + kTop + i * line, rect.width() - kNameLeft - kNameRight - right, line);
        const bool isWide = QFontMetricsF(font).horizontalAdvance(lines[i]) > at.width();
        font.setLetterSpacing(QFont::AbsoluteSpacing, isWide ? kCloserLetters : 0);
        painter.setFont(font);
        painter.setPen(isMember ? ink : picture.theme.ink2);
        painter.drawText(at, Qt::AlignLeft | Qt::AlignVCenter, QFontMetricsF(font).elidedText(lines[i], Qt::ElideRight, at.width()));
    }
}

void paintLock(QPainter& painter, const QRectF& rect, bool isBelow, const Theme& theme)
{
    const double top = isBelow ? rect.bottom() + kLockOver - kLockSide : rect.top() - kLockOver;
    const QRectF badge(rect.right() + kLockOver - kLockSide, top, kLockSide, kLockSide);
    painter.setPen(QPen(theme.line2, 1));
    painter.setBrush(theme.surface);
    painter.drawEllipse(badge.adjusted(0.5, 0.5, -0.5, -0.5));
    common::paintIcon(painter, badge.adjusted(3, 3, -3, -3), QStringLiteral("lock"), theme.ink2, theme);
}

QString kindWord(sessions::SessionKind kind)
{
    switch (kind) {
    case sessions::SessionKind::MovementScreen:
        return QCoreApplication::translate("WeekScene", "Screen");
    case sessions::SessionKind::Trial:
        return QCoreApplication::translate("WeekScene", "Trial");
    case sessions::SessionKind::Training:
        break;
    }
    return {};
}

}  // namespace

QStringList blockLines(const WeekBlock& block, int lines)
{
    QStringList all;
    for (const BlockMember& member : block.members) {
        all.append(member.firstName);
    }
    if (all.size() == 1 && lines > 1 && !kindWord(block.members.front().kind).isEmpty()) {
        all.append(kindWord(block.members.front().kind));
    }
    if (all.size() > lines && lines > 0) {
        const auto shown = std::max(lines - 1, 0);
        const auto rest = all.size() - shown;
        all = lines == 1 ? QStringList{QStringLiteral("%1 +%2").arg(all.front()).arg(all.size() - 1)} : all.mid(0, shown) + QStringList{QStringLiteral("+%1").arg(rest)};
    }
    return lines > 0 ? all : QStringList();
}

void paintWeekBlock(QPainter& painter, const WeekPicture& picture, const WeekBlock& block)
{
    const Theme& theme = picture.theme;
    const QRectF rect = picture.geometry.blockRect(block);
    const BlockColours colours = coloursOf(block, theme);
    const bool isStrong = block.state == BlockState::Conflict || block.state == BlockState::Proposed;
    painter.setPen(QPen(colours.edge, isStrong ? 1.5 : 1, colours.style));
    painter.setBrush(colours.fill);
    painter.drawRoundedRect(rect.adjusted(0.5, 0.5, -0.5, -0.5), kRound, kRound);
    paintPlaces(painter, rect, block, colours.ink);
    paintNames(painter, picture, block, rect, colours.ink);
    if (block.isLocked) {
        const double line = picture.geometry.lineHeight();
        const int lines = static_cast<int>(blockLines(block, static_cast<int>((rect.height() - kTop) / line)).size());
        paintLock(painter, rect, isLockBelow(rect, lines, line) && block.state != BlockState::Conflict, theme);
    }
    if (block.state == BlockState::Conflict) {
        const QRectF icon(rect.right() - kWarnSide - 3, rect.bottom() - kWarnSide - 3, kWarnSide, kWarnSide);
        common::paintIcon(painter, icon, QStringLiteral("warning"), theme.pain, theme);
    }
}

}  // namespace chalk::ui::week
