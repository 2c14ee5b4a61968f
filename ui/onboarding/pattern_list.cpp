#include "ui/onboarding/pattern_list.h"

#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/stage_glyph.h"
#include "ui/common/wrapped_text.h"
#include "ui/onboarding/start_words.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

// Pixels at a text size of 100 %.
constexpr double kPatternsWidth = 188;
constexpr double kNarrowPatternsWidth = 152;
constexpr double kPatternHeight = 52;
constexpr double kMoveIcon = 30;
constexpr double kResult = 34;

QString moveIcon(lifts::Pattern pattern)
{
    return QStringLiteral("move-") + common::qstring(lifts::keyOf(pattern)).replace(QLatin1Char('_'), QLatin1Char('-'));
}

}  // namespace

PatternButton::PatternButton(const common::Look& look, lifts::Pattern pattern, QWidget* parent) : QAbstractButton(parent), m_look(look), m_pattern(pattern)
{
    setText(common::patternName(pattern));
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_start.pattern = pattern;
}

void PatternButton::setStart(const progression::PatternStart& start, bool isPresent)
{
    m_start = start;
    m_isPresent = isPresent;
    setAccessibleName(startHeadline(start));
    update();
}

QSize PatternButton::sizeHint() const
{
    const common::Theme& theme = m_look.theme();
    return {qRound(theme.scaled(kNarrowPatternsWidth)), qRound(theme.scaled(kPatternHeight))};
}

void PatternButton::paintResult(QPainter& painter, double right) const
{
    const common::Theme& theme = m_look.theme();
    const double side = theme.scaled(11);
    const QRectF place(right - theme.scaled(kResult), 0, theme.scaled(kResult), height());
    if (m_start.state == progression::StartState::OnHold) {
        const double icon = theme.scaled(18);
        common::paintIcon(painter, QRectF(place.right() - icon - theme.scaled(6), place.center().y() - icon / 2, icon, icon), QStringLiteral("pain"), theme.pain, theme);
        return;
    }
    if (m_start.state == progression::StartState::NotScreened || m_start.isProvisional) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_start.state == progression::StartState::NotScreened ? theme.line2 : theme.ink2, 1.5));
        const double ring = theme.scaled(8);
        painter.drawEllipse(QRectF(place.right() - theme.scaled(10) - ring, place.center().y() - ring / 2, ring, ring));
        return;
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.stage(m_start.stage));
    painter.drawPath(common::stageGlyph(m_start.stage, QRectF(place.left(), place.center().y() - side / 2, side, side)));
    painter.setPen(theme.stage(m_start.stage));
    painter.setFont(theme.font(14, QFont::DemiBold));
    painter.drawText(QRectF(place.left() + side + 4, 0, place.width() - side - 4, height()), Qt::AlignVCenter, QString::number(progression::numberOf(m_start.stage)));
}

void PatternButton::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_isPresent) {
        painter.fillRect(rect(), theme.wash);
        painter.fillRect(QRectF(0, 0, 3, height()), theme.mark);
    } else if (underMouse()) {
        painter.fillRect(rect(), theme.hover);
    }
    const double icon = theme.scaled(kMoveIcon);
    const double left = theme.scaled(10);
    const bool isStarted = m_start.state != progression::StartState::NotScreened || m_isPresent;
    common::paintIcon(painter, QRectF(left, (height() - icon) / 2, icon, icon), moveIcon(m_pattern), isStarted ? theme.ink : theme.ink2, theme);
    const double textLeft = left + icon + theme.scaled(8);
    const double room = width() - textLeft - theme.scaled(kResult);
    const QFont font = theme.font(13, m_isPresent ? QFont::DemiBold : QFont::Normal);
    const double line = theme.scaled(17);
    painter.setPen(isStarted ? theme.ink : theme.ink2);
    const double high = common::wrappedTextHeight(text(), font, room, line);
    common::paintWrappedText(painter, {textLeft, (height() - high) / 2}, text(), font, room, line);
    paintResult(painter, width());
    if (hasFocus()) {
        painter.setPen(QPen(theme.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -2), 4, 4);
    }
}

PatternList::PatternList(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look), m_count(new QLabel(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 1, 6);
    column->setSpacing(0);
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        auto* button = new PatternButton(look, pattern, this);
        connect(button, &QAbstractButton::clicked, this, [this, pattern] { Q_EMIT patternChosen(pattern); });
        column->addWidget(button);
        m_buttons.push_back(button);
    }
    m_count->setProperty("role", QStringLiteral("muted"));
    m_count->setContentsMargins(12, 10, 12, 0);
    m_count->setWordWrap(true);
    column->addWidget(m_count);
    column->addStretch(1);
    connect(&look, &common::Look::changed, this, &PatternList::dress);
    dress();
}

void PatternList::setStarts(const std::array<progression::PatternStart, lifts::kPatterns.size()>& starts, lifts::Pattern present)
{
    for (PatternButton* button : m_buttons) {
        button->setStart(starts[static_cast<std::size_t>(button->pattern())], button->pattern() == present);
    }
    const auto done = std::count_if(starts.begin(), starts.end(), [](const progression::PatternStart& start) {
        return start.state != progression::StartState::NotScreened && !start.isProvisional;
    });
    m_count->setText(tr("%1 of %2 screened").arg(done).arg(starts.size()));
}

void PatternList::setNarrow(bool isNarrow)
{
    m_isNarrow = isNarrow;
    dress();
}

void PatternList::dress()
{
    setFixedWidth(qRound(m_look.theme().scaled(m_isNarrow ? kNarrowPatternsWidth : kPatternsWidth)));
    for (PatternButton* button : m_buttons) {
        button->updateGeometry();
    }
}

void PatternList::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.fillRect(QRect(width() - 1, 0, 1, height()), m_look.theme().line);
}

}  // namespace chalk::ui::onboarding
