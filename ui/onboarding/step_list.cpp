#include "ui/onboarding/step_list.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/wrapped_text.h"
#include "ui/onboarding/step_words.h"

#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

// Pixels at a text size of 100 %.
constexpr double kListWidth = 196;
constexpr double kNarrowListWidth = 160;
constexpr double kTightListWidth = 44;  ///< the rings alone
constexpr double kRing = 28;
constexpr double kRingLeft = 6;
constexpr double kTextLeft = 46;
constexpr double kTop = 10;
constexpr double kNameLine = 20;
constexpr double kNoteHeight = 16;

}  // namespace

StepButton::StepButton(const common::Look& look, StepKind step, int number, QWidget* parent)
    : QAbstractButton(parent), m_look(look), m_step(step), m_number(number)
{
    setText(stepName(step));
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void StepButton::setState(StepState state, bool isPresent)
{
    m_state = state;
    m_isPresent = isPresent;
    setAccessibleName(QStringLiteral("%1, %2").arg(text(), stateWords(state)));
    setAccessibleDescription(stepNote(m_step, state));
    updateGeometry();
    update();
}

bool StepButton::isWaiting() const
{
    return m_state == StepState::WaitsForClearance || m_state == StepState::WaitsForConsent;
}

bool StepButton::hasRoomForWords(double width) const
{
    return width >= m_look.theme().scaled(2 * kTextLeft);
}

QSize StepButton::sizeHint() const
{
    const common::Theme& theme = m_look.theme();
    const double width = parentWidget() == nullptr ? theme.scaled(kListWidth) : parentWidget()->width();
    if (!hasRoomForWords(width)) {
        return {qRound(width), qRound(theme.scaled(2 * kTop + kRing))};
    }
    const double note = common::wrappedTextHeight(stepNote(m_step, m_state), theme.font(common::TextStyle::Micro),
                                                  width - theme.scaled(kTextLeft + 4), theme.scaled(kNoteHeight));
    return {qRound(width), qRound(theme.scaled(2 * kTop + kNameLine) + note)};
}

void StepButton::paintRing(QPainter& painter, const QRectF& ring) const
{
    const common::Theme& theme = m_look.theme();
    const bool isDone = m_state == StepState::Done;
    const QColor edge = m_isPresent ? theme.pri : isDone ? theme.ok : isWaiting() ? theme.line2 : theme.ctl;
    const QColor ink = m_isPresent ? theme.priInk : isDone ? theme.ok : isWaiting() ? theme.ink3 : theme.ink2;
    painter.setPen(QPen(edge, 1.5));
    painter.setBrush(m_isPresent ? theme.pri : isDone ? theme.okBg : theme.surface);
    painter.drawEllipse(ring.adjusted(0.75, 0.75, -0.75, -0.75));
    const double inset = theme.scaled(7);
    if (isDone && !m_isPresent) {
        common::paintIcon(painter, ring.adjusted(inset, inset, -inset, -inset), QStringLiteral("check"), ink, theme);
    } else if (isWaiting() && !m_isPresent) {
        common::paintIcon(painter, ring.adjusted(inset, inset, -inset, -inset), QStringLiteral("lock"), ink, theme);
    } else {
        painter.setPen(ink);
        painter.setFont(theme.font(13, QFont::DemiBold));
        painter.drawText(ring, Qt::AlignCenter, QString::number(m_number));
    }
}

void StepButton::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF all = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(Qt::NoPen);
    if (m_isPresent || underMouse()) {
        painter.setBrush(m_isPresent ? theme.wash : theme.hover);
        painter.drawRoundedRect(all, 8, 8);
    }
    paintRing(painter, QRectF(theme.scaled(kRingLeft), theme.scaled(kTop + 3), theme.scaled(kRing), theme.scaled(kRing)));
    if (hasFocus()) {
        painter.setPen(QPen(theme.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(all.adjusted(1, 1, -1, -1), 7, 7);
    }
    if (!hasRoomForWords(width())) {
        return;
    }
    const double left = theme.scaled(kTextLeft);
    const double room = width() - left - theme.scaled(4);
    painter.setPen(isWaiting() && !m_isPresent ? theme.ink2 : theme.ink);
    painter.setFont(theme.font(common::TextStyle::Strong));
    painter.drawText(QRectF(left, theme.scaled(kTop), room, theme.scaled(kNameLine)), Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(text(), Qt::ElideRight, qRound(room)));
    painter.setPen(m_isPresent ? theme.ink2 : theme.ink3);
    common::paintWrappedText(painter, {left, theme.scaled(kTop + kNameLine)}, stepNote(m_step, m_state), theme.font(common::TextStyle::Micro), room,
                             theme.scaled(kNoteHeight));
}

StepList::StepList(const common::Look& look, const std::vector<StepKind>& steps, QWidget* parent) : QWidget(parent), m_look(look)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 4, 0, 0);
    column->setSpacing(2);
    for (std::size_t i = 0; i < steps.size(); ++i) {
        auto* button = new StepButton(look, steps[i], static_cast<int>(i) + 1, this);
        connect(button, &QAbstractButton::clicked, this, [this, button] { Q_EMIT stepChosen(button->step()); });
        column->addWidget(button);
        m_buttons.push_back(button);
    }
    column->addStretch(1);
    setAccessibleName(tr("Steps"));
    connect(&look, &common::Look::changed, this, &StepList::dress);
    dress();
}

void StepList::setCase(const OnboardingCase& onboarding, StepKind present)
{
    for (StepButton* button : m_buttons) {
        button->setState(stateOf(button->step(), onboarding), button->step() == present);
    }
}

void StepList::setRoom(ListRoom room)
{
    if (room != m_room) {
        m_room = room;
        dress();
    }
}

void StepList::dress()
{
    setFixedWidth(qRound(m_look.theme().scaled(m_room == ListRoom::Wide ? kListWidth : m_room == ListRoom::Narrow ? kNarrowListWidth : kTightListWidth)));
    for (StepButton* button : m_buttons) {
        button->updateGeometry();
    }
}

void StepList::keyPressEvent(QKeyEvent* event)
{
    const auto at = std::find_if(m_buttons.begin(), m_buttons.end(), [](const StepButton* button) { return button->hasFocus(); });
    if (at != m_buttons.end() && event->key() == Qt::Key_Down && at + 1 != m_buttons.end()) {
        (*(at + 1))->setFocus(Qt::TabFocusReason);
    } else if (at != m_buttons.end() && event->key() == Qt::Key_Up && at != m_buttons.begin()) {
        (*(at - 1))->setFocus(Qt::BacktabFocusReason);
    } else {
        QWidget::keyPressEvent(event);
    }
}

}  // namespace chalk::ui::onboarding
