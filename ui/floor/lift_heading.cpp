#include "ui/floor/lift_heading.h"

#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/stage_glyph.h"
#include "ui/common/wrapped_text.h"

#include <QFontMetricsF>
#include <QPainter>

namespace chalk::ui::floor {

namespace {

using common::Theme;

constexpr double kHeadingLine = 24;
constexpr double kHeadingGap = 8;
constexpr double kCautionIcon = 14;
constexpr double kCautionSide = 8;
constexpr double kCautionText = 16;

/// The stage, or the week of a plan that leads in its place.
QString headingStage(const LiftHeading::View& view)
{
    return !view.plan.isEmpty() ? view.plan : QStringLiteral("%1 %2").arg(QString::number(progression::numberOf(view.stage)), common::stageName(view.stage));
}

QString headingCycle(const LiftHeading::View& view)
{
    return view.cycle > 1 && view.plan.isEmpty() ? LiftHeading::tr("cycle %1").arg(view.cycle) : QString();
}

double textWidth(const QString& text, const QFont& font)
{
    return QFontMetricsF(font).horizontalAdvance(text);
}

}  // namespace

LiftHeading::LiftHeading(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&look, &common::Look::changed, this, &QWidget::updateGeometry);
}

void LiftHeading::setView(const View& view)
{
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(QStringList{view.name, headingStage(view), headingCycle(view), view.cautions.join(QStringLiteral(". "))}.join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

double LiftHeading::titleWidth() const
{
    const Theme& theme = m_look.theme();
    return textWidth(m_view.name, theme.font(14, QFont::DemiBold)) + textWidth(headingStage(m_view), theme.font(14, QFont::DemiBold)) +
           textWidth(headingCycle(m_view), theme.font(14, QFont::Normal)) + theme.scaled(12 + 4 * kHeadingGap);
}

std::vector<QRectF> LiftHeading::cautionBoxes(double width) const
{
    const Theme& theme = m_look.theme();
    const QFont font = theme.font(12, QFont::Medium);
    const double around = theme.scaled(2 * kCautionSide + kCautionIcon + 6);
    double right = width;
    double y = 0;
    double height = theme.scaled(kHeadingLine);
    double least = titleWidth();
    std::vector<QRectF> boxes;
    for (const QString& text : m_view.cautions) {
        const double wanted = std::min(textWidth(text, font) + around + 1, width);
        if (right - wanted < least) {
            y += height + theme.scaled(4);
            right = width;
            least = 0;
        }
        const double lines = common::wrappedTextHeight(text, font, wanted - around, theme.scaled(kCautionText));
        height = std::max(theme.scaled(kHeadingLine), lines + theme.scaled(8));
        boxes.emplace_back(right - wanted, y, wanted, height);
        right -= wanted + theme.scaled(6);
    }
    return boxes;
}

int LiftHeading::heightForWidth(int width) const
{
    const auto boxes = cautionBoxes(width);
    return qCeil(std::max(m_look.theme().scaled(kHeadingLine), boxes.empty() ? 0 : boxes.back().bottom()));
}

QSize LiftHeading::sizeHint() const
{
    return {qRound(m_look.theme().scaled(320)), heightForWidth(width())};
}

QSize LiftHeading::minimumSizeHint() const
{
    return {qRound(m_look.theme().scaled(160)), qRound(m_look.theme().scaled(kHeadingLine))};
}

void LiftHeading::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double line = theme.scaled(kHeadingLine);
    double x = 0;
    const auto draw = [&](const QString& text, const QFont& font, const QColor& ink) {
        painter.setFont(font);
        painter.setPen(ink);
        painter.drawText(QRectF(x, 0, width() - x, line), Qt::AlignVCenter, text);
        x += textWidth(text, font) + theme.scaled(kHeadingGap);
    };
    draw(m_view.name, theme.font(14, QFont::DemiBold), theme.ink);
    const double glyph = theme.scaled(12);
    painter.fillPath(common::stageGlyph(m_view.stage, QRectF(x, (line - glyph) / 2, glyph, glyph)), theme.stage(m_view.stage));
    x += glyph + theme.scaled(kHeadingGap - 2);
    draw(headingStage(m_view), theme.font(14, QFont::DemiBold), m_view.plan.isEmpty() ? theme.stage(m_view.stage) : theme.ink);
    draw(headingCycle(m_view), theme.font(14, QFont::Normal), theme.ink2);
    const auto boxes = cautionBoxes(width());
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.warnBg);
        painter.drawRoundedRect(boxes[i], 4, 4);
        const double icon = theme.scaled(kCautionIcon);
        const double left = boxes[i].left() + theme.scaled(kCautionSide);
        common::paintIcon(painter, QRectF(left, boxes[i].top() + (line - icon) / 2, icon, icon), QStringLiteral("warning"), theme.warn, theme);
        painter.setPen(theme.warn);
        const double textLeft = left + icon + theme.scaled(6);
        common::paintWrappedText(painter, {textLeft, boxes[i].top() + theme.scaled(4)}, m_view.cautions[static_cast<qsizetype>(i)], theme.font(12, QFont::Medium),
                                 boxes[i].right() - theme.scaled(kCautionSide) + 1 - textLeft, theme.scaled(kCautionText));
    }
}

}  // namespace chalk::ui::floor
