#include "ui/check_in/choice_row.h"

#include "ui/common/look.h"
#include "ui/common/tags.h"
#include "ui/common/wrapped_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::check_in {

namespace {

// Pixels at a text size of 100 %.
constexpr double kPad = 9;
constexpr double kMark = 18;
constexpr double kTextLeft = 38;
constexpr double kCapRoom = 34;
constexpr double kChoiceTitleLine = 20;
constexpr double kChoiceTextLine = 18;
constexpr int kUsualWidth = 280;

double textRoom(double width, const common::Theme& theme)
{
    return std::max(40.0, width - theme.scaled(kTextLeft + kPad));
}

}  // namespace

ChoiceRow::ChoiceRow(const common::Look& look, QWidget* parent) : QAbstractButton(parent), m_look(look)
{
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&look, &common::Look::changed, this, [this] { updateGeometry(); });
}

void ChoiceRow::setView(const ChoiceRowView& view)
{
    m_view = view;
    setText(view.title);
    setAccessibleName(QStringLiteral("%1. %2").arg(view.title, detail()));
    updateGeometry();
    update();
}

QString ChoiceRow::detail() const
{
    if (m_view.suggested.isEmpty() || m_view.text.isEmpty()) {
        return m_view.suggested + m_view.text;
    }
    return QStringLiteral("%1 %2%3").arg(m_view.suggested, m_view.text.left(1).toUpper(), m_view.text.mid(1));
}

int ChoiceRow::heightForWidth(int width) const
{
    const common::Theme& theme = m_look.theme();
    const double title = common::wrappedTextHeight(m_view.title, theme.font(common::TextStyle::Strong), textRoom(width, theme) - theme.scaled(kCapRoom),
                                                   theme.scaled(kChoiceTitleLine));
    const double text = common::wrappedTextHeight(detail(), theme.font(common::TextStyle::Small), textRoom(width, theme), theme.scaled(kChoiceTextLine));
    return static_cast<int>(std::ceil(theme.scaled(2 * kPad) + title + text));
}

QSize ChoiceRow::sizeHint() const
{
    return {kUsualWidth, heightForWidth(std::max(width(), kUsualWidth))};
}

QSize ChoiceRow::minimumSizeHint() const
{
    return {120, qRound(m_look.theme().scaled(44))};
}

void ChoiceRow::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
    painter.setPen(isChecked() ? QPen(theme.mark, 2) : QPen(theme.line2, 1));
    painter.setBrush(isChecked() ? theme.wash : underMouse() ? theme.hover : theme.surface);
    painter.drawRoundedRect(box, 5, 5);
    if (hasFocus()) {
        painter.setPen(QPen(theme.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box.adjusted(2, 2, -2, -2), 4, 4);
    }
    const double mark = theme.scaled(kMark);
    const QRectF ring(theme.scaled(12), theme.scaled(kPad + 1), mark, mark);
    painter.setPen(QPen(isChecked() ? theme.ink : theme.ctl, 1.5));
    painter.setBrush(theme.surface);
    painter.drawEllipse(ring);
    if (isChecked()) {
        painter.setBrush(theme.ink);
        painter.drawEllipse(ring.adjusted(4, 4, -4, -4));
    }
    const common::KeyCapView cap{m_view.key};
    const double capWidth = common::keyCapWidth(cap, theme);
    common::paintKeyCap(painter, QRectF(width() - theme.scaled(kPad) - capWidth, theme.scaled(kPad), capWidth, theme.scaled(kChoiceTitleLine)), cap, theme);
    const double room = textRoom(width(), theme);
    double top = theme.scaled(kPad);
    const QFont strong = theme.font(common::TextStyle::Strong);
    painter.setPen(theme.ink);
    common::paintWrappedText(painter, {theme.scaled(kTextLeft), top}, m_view.title, strong, room - theme.scaled(kCapRoom), theme.scaled(kChoiceTitleLine));
    top += common::wrappedTextHeight(m_view.title, strong, room - theme.scaled(kCapRoom), theme.scaled(kChoiceTitleLine));
    painter.setPen(theme.ink2);
    common::paintWrappedText(painter, {theme.scaled(kTextLeft), top}, detail(), theme.font(common::TextStyle::Small), room, theme.scaled(kChoiceTextLine));
}

}  // namespace chalk::ui::check_in
