#include "ui/common/tags.h"

#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/stage_glyph.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::common {

namespace {

constexpr double kPipSide = 9;
constexpr double kPipPitch = 12;
constexpr double kTagHeight = 24;
constexpr double kTagRadius = 4;
constexpr double kTagPadding = 8;
constexpr double kStageGlyphSide = 12;
constexpr double kFlagIconSide = 14;
constexpr double kTagGap = 6;
constexpr double kKeyCapHeight = 18;
constexpr double kKeyCapPadding = 5;

QString tagWords(const char* text)
{
    return QCoreApplication::translate("Tags", text);
}

QFont stageTagFont(const Theme& theme)
{
    return theme.font(12, QFont::DemiBold);
}

QFont flagTagFont(const Theme& theme)
{
    return theme.font(12, QFont::Medium);
}

QRectF tagBody(const QRectF& rect, double width, double height)
{
    return {rect.left(), rect.center().y() - height / 2, std::min(width, rect.width()), height};
}

void paintTagText(QPainter& painter, const QRectF& rect, const QString& text, const QFont& font, const QColor& ink)
{
    painter.setFont(font);
    painter.setPen(ink);
    const QString shown = QFontMetricsF(font).horizontalAdvance(text) <= rect.width() + 0.5
                              ? text
                              : QFontMetricsF(font).elidedText(text, Qt::ElideRight, rect.width());
    painter.drawText(rect, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, shown);
}

}  // namespace

double pipsWidth(int needed, const Theme& theme)
{
    return needed <= 0 ? 0 : theme.scaled(needed * kPipPitch - (kPipPitch - kPipSide));
}

void paintPips(QPainter& painter, const QRectF& rect, const PipsView& view, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(rect.left(), rect.center().y() - theme.scaled(kPipSide) / 2);
    painter.scale(theme.scaled(1), theme.scaled(1));
    painter.setPen(QPen(view.colour, 1.5));
    const int room = static_cast<int>((rect.width() / theme.scaled(1) + kPipPitch - kPipSide) / kPipPitch);
    for (int i = 0; i < std::min(view.needed, room); ++i) {
        painter.setBrush(i < view.done ? QBrush(view.colour) : QBrush(Qt::NoBrush));
        painter.drawRoundedRect(QRectF(i * kPipPitch + 0.75, 0.75, kPipSide - 1.5, kPipSide - 1.5), 2, 2);
    }
    painter.restore();
}

FlagTagView flagTagOf(FlagKind kind)
{
    switch (kind) {
    case FlagKind::Pain:
        return {QStringLiteral("pain"), tagWords(QT_TRANSLATE_NOOP("Tags", "Pain")), Signal::Pain};
    case FlagKind::Clearance:
        return {QStringLiteral("clearance"), tagWords(QT_TRANSLATE_NOOP("Tags", "Clearance")), Signal::Pain};
    case FlagKind::Plateau:
        return {QStringLiteral("plateau"), tagWords(QT_TRANSLATE_NOOP("Tags", "Plateau")), Signal::Warn};
    case FlagKind::Missed:
        return {QStringLiteral("phone"), tagWords(QT_TRANSLATE_NOOP("Tags", "Missed")), Signal::Warn};
    case FlagKind::Rescreen:
        return {QStringLiteral("rescreen"), tagWords(QT_TRANSLATE_NOOP("Tags", "Re-screen")), Signal::Info};
    case FlagKind::Ready:
        return {QStringLiteral("ready"), tagWords(QT_TRANSLATE_NOOP("Tags", "Ready")), Signal::Ok};
    case FlagKind::Away:
        return {QStringLiteral("closed"), tagWords(QT_TRANSLATE_NOOP("Tags", "Away")), Signal::Muted};
    case FlagKind::New:
        return {QStringLiteral("plus"), tagWords(QT_TRANSLATE_NOOP("Tags", "New")), Signal::Info};
    }
    return {};
}

double tagHeight(const Theme& theme)
{
    return theme.scaled(kTagHeight);
}

QString stageTagText(const StageTagView& view)
{
    QString text = QString::number(progression::numberOf(view.stage));
    if (view.hasName) {
        text += QLatin1Char(' ') + stageName(view.stage);
    }
    if (view.cycle > 1) {
        text += tagWords(QT_TRANSLATE_NOOP("Tags", " · cycle %1")).arg(view.cycle);
    }
    return text;
}

double stageTagWidth(const StageTagView& view, const Theme& theme)
{
    return theme.scaled(2 * kTagPadding + kStageGlyphSide + kTagGap) +
           QFontMetricsF(stageTagFont(theme)).horizontalAdvance(stageTagText(view));
}

double flagTagWidth(const FlagTagView& view, const Theme& theme)
{
    return theme.scaled(2 * kTagPadding + kFlagIconSide + kTagGap - 2) +
           QFontMetricsF(flagTagFont(theme)).horizontalAdvance(view.text);
}

void paintStageTag(QPainter& painter, const QRectF& rect, const StageTagView& view, const Theme& theme)
{
    const QRectF body = tagBody(rect, stageTagWidth(view, theme), tagHeight(theme));
    const double side = theme.scaled(kStageGlyphSide);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.stage(view.stage));
    painter.drawRoundedRect(body, kTagRadius, kTagRadius);
    const QRectF glyph(body.left() + theme.scaled(kTagPadding), body.center().y() - side / 2, side, side);
    painter.fillPath(stageGlyph(view.stage, glyph), theme.onStage(view.stage));
    paintTagText(painter, body.adjusted(glyph.right() - body.left() + theme.scaled(kTagGap), 0, -theme.scaled(kTagPadding), 0),
                 stageTagText(view), stageTagFont(theme), theme.onStage(view.stage));
    painter.restore();
}

void paintFlagTag(QPainter& painter, const QRectF& rect, const FlagTagView& view, const Theme& theme)
{
    const SignalColours colours = theme.signal(view.signal);
    const QRectF body = tagBody(rect, flagTagWidth(view, theme), tagHeight(theme));
    const double side = theme.scaled(kFlagIconSide);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.fill);
    painter.drawRoundedRect(body, kTagRadius, kTagRadius);
    const QRectF icon(body.left() + theme.scaled(kTagPadding - 1), body.center().y() - side / 2, side, side);
    paintIcon(painter, icon, view.icon, colours.ink, theme);
    paintTagText(painter, body.adjusted(icon.right() - body.left() + theme.scaled(kTagGap - 2), 0, -theme.scaled(kTagPadding - 1), 0),
                 view.text, flagTagFont(theme), colours.ink);
    painter.restore();
}

QStringList keyCapTexts(const QString& keys)
{
    QStringList caps = keys.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (QString& cap : caps) {
        for (qsizetype i = 1; i + 1 < cap.size(); ++i) {  // a plus at the end is the key itself: `Ctrl++`
            if (cap.at(i) == QLatin1Char('+')) {
                cap[i] = QLatin1Char(' ');
            }
        }
    }
    return caps;
}

double keyCapWidth(const KeyCapView& view, const Theme& theme)
{
    return theme.scaled(2 * kKeyCapPadding + 2) + QFontMetricsF(flagTagFont(theme)).horizontalAdvance(view.text);
}

double keyCapHeight(const Theme& theme)
{
    return theme.scaled(kKeyCapHeight);
}

void paintKeyCap(QPainter& painter, const QRectF& rect, const KeyCapView& view, const Theme& theme)
{
    const QRectF body = tagBody(rect, keyCapWidth(view, theme), keyCapHeight(theme)).adjusted(0.5, 0.5, -0.5, -0.5);
    QColor ground = theme.surface;
    QColor edge = theme.line2;
    QColor ink = theme.ink3;
    if (view.ground == KeyCapGround::Rail) {
        ground = theme.rail2;
        edge = theme.railLine;
        ink = theme.railInk;
    } else if (view.ground == KeyCapGround::Primary) {
        ground = QColor(Qt::transparent);
        edge = theme.priInk;
        ink = theme.priInk;
        edge.setAlphaF(0.55F);
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(edge, 1));
    painter.setBrush(ground);
    painter.drawRoundedRect(body, kTagRadius, kTagRadius);
    painter.setFont(flagTagFont(theme));
    painter.setPen(ink);
    painter.drawText(body, Qt::AlignCenter, view.text);
    painter.restore();
}

}  // namespace chalk::ui::common
