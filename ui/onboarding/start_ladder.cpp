#include "ui/onboarding/start_ladder.h"

#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/stage_glyph.h"

#include <QPainter>

namespace chalk::ui::onboarding {

namespace {

constexpr double kRung = 24;   ///< pixels at a text size of 100 %
constexpr double kRails = 28;

}  // namespace

StartLadder::StartLadder(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&look, &common::Look::changed, this, &QWidget::updateGeometry);
}

void StartLadder::setStage(std::optional<progression::Stage> stage)
{
    m_stage = stage;
    setAccessibleName(stage ? tr("Starts at %1 %2").arg(progression::numberOf(*stage)).arg(common::stageName(*stage)) : tr("Does not start yet"));
    update();
}

QSize StartLadder::sizeHint() const
{
    const common::Theme& theme = m_look.theme();
    return {qRound(theme.scaled(220)), qRound(theme.scaled(7 * kRung) + 4)};
}

void StartLadder::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    const double rung = theme.scaled(kRung);
    const double left = theme.scaled(kRails);
    const double right = width() - 3;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const progression::Stage stage : progression::kStages) {
        const int number = progression::numberOf(stage);
        const QRectF row(left, (7 - number) * rung, right - left, rung);
        const bool isHere = m_stage == stage;
        painter.setPen(QPen(theme.line, 2));
        painter.drawLine(QPointF(left, row.bottom() - 1), QPointF(right, row.bottom() - 1));
        if (isHere) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(theme.stage(stage));
            painter.drawRoundedRect(row.adjusted(4, 1, -4, -4), 5, 5);
        }
        const bool isPast = m_stage && stage < *m_stage;
        const QColor ink = isHere ? theme.onStage(stage) : isPast ? theme.ink2 : theme.ink3;
        const double side = theme.scaled(11);
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink);
        painter.drawPath(common::stageGlyph(stage, QRectF(row.left() + theme.scaled(12), row.center().y() - side / 2 - 1, side, side)));
        painter.setPen(ink);
        painter.setFont(theme.font(13, isHere ? QFont::Bold : QFont::Normal));
        painter.drawText(row.adjusted(theme.scaled(32), -2, 0, -1), Qt::AlignVCenter, QStringLiteral("%1 %2").arg(number).arg(common::stageName(stage)));
        if (isPast) {
            const double tick = theme.scaled(16);
            common::paintIcon(painter, QRectF(left - tick - 6, row.center().y() - tick / 2, tick, tick), QStringLiteral("check"), theme.ok, theme);
        }
    }
    painter.setPen(QPen(theme.line2, 2.5, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(left, 2), QPointF(left, 7 * rung));
    painter.drawLine(QPointF(right, 2), QPointF(right, 7 * rung));
}

}  // namespace chalk::ui::onboarding
