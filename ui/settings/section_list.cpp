#include "ui/settings/section_list.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"

#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::settings {

namespace {

// Pixels at a text size of 100 %.
constexpr double kSectionHeight = 40;
constexpr double kSectionIcon = 17;
constexpr double kSectionIconLeft = 13;
constexpr double kSectionTextLeft = 40;
constexpr double kSectionRight = 12;
constexpr double kLeastSectionWidth = 176;

}  // namespace

SectionButton::SectionButton(const common::Look& look, const QString& name, const QString& icon, QWidget* parent)
    : QAbstractButton(parent), m_look(look), m_icon(icon)
{
    setText(name);
    setAccessibleName(name);
    setCheckable(true);
    setAutoExclusive(true);
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    connect(&look, &common::Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

QSize SectionButton::sizeHint() const
{
    const common::Theme& theme = m_look.theme();
    const double words = QFontMetricsF(theme.font(14, QFont::DemiBold)).horizontalAdvance(text());
    return {qRound(std::max(theme.scaled(kLeastSectionWidth), theme.scaled(kSectionTextLeft + kSectionRight) + words)), qRound(theme.scaled(kSectionHeight))};
}

void SectionButton::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down) {
        event->ignore();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

void SectionButton::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(1, 1, -1, -1);
    painter.setPen(hasFocus() ? QPen(theme.focus, 2) : isChecked() ? QPen(theme.line2, 1) : QPen(Qt::NoPen));
    painter.setBrush(isChecked() ? QBrush(theme.surface) : underMouse() ? QBrush(theme.raised) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(frame, 6, 6);
    const QColor ink = isChecked() ? theme.ink : theme.ink2;
    const double side = theme.scaled(kSectionIcon);
    common::paintIcon(painter, QRectF(theme.scaled(kSectionIconLeft), (height() - side) / 2, side, side), m_icon, ink, theme);
    painter.setFont(theme.font(14, isChecked() ? QFont::DemiBold : QFont::Medium));
    painter.setPen(ink);
    painter.drawText(QRectF(rect()).adjusted(theme.scaled(kSectionTextLeft), 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, text());
}

SectionList::SectionList(const common::Look& look, const std::vector<SectionEntry>& sections, QWidget* parent) : QWidget(parent)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    for (const SectionEntry& section : sections) {
        auto* button = new SectionButton(look, section.name, section.icon, this);
        const int index = static_cast<int>(m_buttons.size());
        connect(button, &QAbstractButton::clicked, this, [this, index] {
            setChosen(index);
            Q_EMIT sectionChosen(index);
        });
        column->addWidget(button);
        m_buttons.push_back(button);
    }
    column->addStretch(1);
}

void SectionList::setChosen(int index)
{
    m_chosen = index;
    m_buttons[static_cast<std::size_t>(index)]->setChecked(true);
}

void SectionList::takeFocus()
{
    m_buttons[static_cast<std::size_t>(m_chosen)]->setFocus(Qt::OtherFocusReason);
}

void SectionList::keyPressEvent(QKeyEvent* event)
{
    const int step = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    const int next = std::clamp(m_chosen + step, 0, static_cast<int>(m_buttons.size()) - 1);
    if (step == 0) {
        QWidget::keyPressEvent(event);
        return;
    }
    if (next != m_chosen) {
        setChosen(next);
        takeFocus();
        Q_EMIT sectionChosen(next);
    }
}

}  // namespace chalk::ui::settings
