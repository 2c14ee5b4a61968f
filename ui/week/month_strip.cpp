#include "ui/week/month_strip.h"

#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using common::Theme;

// Pixels at a text size of 100 %.
constexpr double kStripHeight = 46;
constexpr double kBarsTop = 6;
constexpr double kBarsHeight = 20;
constexpr double kNoteLine = 18;
constexpr double kNoteIcon = 14;
constexpr double kMostNotes = 2;
constexpr double kNotesShare = 0.34;  ///< of the width, at most
constexpr double kStripGap = 16;

void hatch(QPainter& painter, const QRectF& rect, const QColor& colour)
{
    painter.save();
    painter.setClipRect(rect);
    painter.setPen(QPen(colour, 2));
    for (double x = rect.left() - rect.height(); x < rect.right(); x += 5) {
        painter.drawLine(QPointF(x, rect.bottom()), QPointF(x + rect.height(), rect.top()));
    }
    painter.restore();
}

}  // namespace

MonthStrip::MonthStrip(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Nine weeks"));
    connect(&look, &common::Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void MonthStrip::setWeeks(const MonthWeeks& weeks, base::Date shown, base::Date today)
{
    m_weeks = weeks;
    m_shown = shown;
    m_today = today;
    setAccessibleDescription(tr("Week from %1").arg(common::dayText(shown)));
    update();
}

QSize MonthStrip::sizeHint() const
{
    return {qRound(m_look.theme().scaled(900)), qRound(m_look.theme().scaled(kStripHeight))};
}

QSize MonthStrip::minimumSizeHint() const
{
    return {qRound(m_look.theme().scaled(420)), qRound(m_look.theme().scaled(kStripHeight))};
}

double MonthStrip::notesWidth() const
{
    const Theme& theme = m_look.theme();
    const QFontMetricsF metrics(theme.font(12, QFont::Normal));
    double widest = 0;
    for (std::size_t i = 0; i < std::min<std::size_t>(static_cast<std::size_t>(kMostNotes), m_weeks.notes.size()); ++i) {
        widest = std::max(widest, metrics.horizontalAdvance(m_weeks.notes[i].text) + theme.scaled(kNoteIcon) + 8);
    }
    return std::min(widest, width() * kNotesShare);
}

QRectF MonthStrip::weekRect(std::size_t index) const
{
    const double notes = notesWidth();
    const double room = width() - (notes > 0 ? notes + kStripGap : 0);
    const double each = room / static_cast<double>(std::max<std::size_t>(1, m_weeks.weeks.size()));
    return {static_cast<double>(index) * each, 0, each - 2, static_cast<double>(height())};
}

void MonthStrip::paintWeek(QPainter& painter, std::size_t index) const
{
    const Theme& theme = m_look.theme();
    const StripWeek& week = m_weeks.weeks[index];
    const QRectF rect = weekRect(index);
    const bool isShown = week.monday == m_shown;
    if (isShown) {
        painter.setPen(QPen(theme.mark, 1));
        painter.setBrush(theme.wash);
        painter.drawRoundedRect(rect.adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
    }
    const auto days = std::count_if(week.days.begin(), week.days.end(), [](const StripDay& day) { return day.isShown; });
    const double pitch = (rect.width() - 12) / static_cast<double>(std::max<std::ptrdiff_t>(1, days));
    const double high = theme.scaled(kBarsHeight);
    const double foot = theme.scaled(kBarsTop) + high;
    double x = rect.left() + 5;
    for (std::size_t i = 0; i < week.days.size(); ++i) {
        const StripDay& day = week.days[i];
        if (!day.isShown) {
            continue;
        }
        const double tall = std::max(1.5, high * day.sessions / m_weeks.mostSessions());
        const bool isToday = week.monday + static_cast<int>(i) == m_today;
        if (day.isClosed) {
            hatch(painter, QRectF(x, foot - high, pitch - 2, high), theme.line2);
        }
        painter.setPen(Qt::NoPen);
        painter.setBrush(isToday ? theme.mark : theme.rungPast);
        if (!day.isClosed || day.sessions > 0) {
            painter.drawRoundedRect(QRectF(x, foot - tall, pitch - 2, tall), 1.5, 1.5);
        }
        if (day.isShort) {
            common::paintIcon(painter, QRectF(x - 1, theme.scaled(2), theme.scaled(12), theme.scaled(12)), QStringLiteral("closed"), theme.info, theme);
        }
        x += pitch;
    }
    painter.setFont(theme.font(12, isShown ? QFont::DemiBold : QFont::Normal));
    painter.setPen(isShown ? theme.ink : theme.ink3);
    const bool isWide = QFontMetricsF(painter.font()).horizontalAdvance(week.label) <= rect.width() - 5;
    const QString label = isWide ? week.label : week.label.section(QLatin1Char(' '), 0, 0);
    painter.drawText(QRectF(rect.left() + 5, foot, rect.width() - 5, height() - foot), Qt::AlignLeft | Qt::AlignVCenter, label);
}

void MonthStrip::paintNotes(QPainter& painter) const
{
    const Theme& theme = m_look.theme();
    const double left = width() - notesWidth();
    const double icon = theme.scaled(kNoteIcon);
    painter.setFont(theme.font(12, QFont::Normal));
    const QFontMetricsF metrics(painter.font());
    const double line = theme.scaled(kNoteLine);
    for (std::size_t i = 0; i < std::min<std::size_t>(static_cast<std::size_t>(kMostNotes), m_weeks.notes.size()); ++i) {
        const StripNote& note = m_weeks.notes[i];
        const double top = 5 + static_cast<double>(i) * line;
        const QRectF sign(left, top + (line - icon) / 2, icon, icon);
        if (note.isWhole) {
            hatch(painter, sign.adjusted(0, 1, 0, -1), theme.line2);
        } else {
            common::paintIcon(painter, sign, QStringLiteral("closed"), theme.info, theme);
        }
        const QRectF text(left + icon + 6, top, width() - left - icon - 6, line);
        painter.setPen(theme.ink2);
        painter.drawText(text, Qt::AlignLeft | Qt::AlignVCenter, metrics.elidedText(note.text, Qt::ElideRight, text.width()));
    }
}

void MonthStrip::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < m_weeks.weeks.size(); ++i) {
        paintWeek(painter, i);
    }
    paintNotes(painter);
    if (hasFocus()) {
        for (std::size_t i = 0; i < m_weeks.weeks.size(); ++i) {
            if (m_weeks.weeks[i].monday == m_shown) {
                painter.setPen(QPen(m_look.theme().focus, 2));
                painter.setBrush(Qt::NoBrush);
                painter.drawRoundedRect(weekRect(i).adjusted(1, 1, -1, -1), 5, 5);
            }
        }
    }
}

void MonthStrip::mousePressEvent(QMouseEvent* event)
{
    for (std::size_t i = 0; i < m_weeks.weeks.size(); ++i) {
        if (weekRect(i).contains(event->position())) {
            Q_EMIT weekAsked(m_weeks.weeks[i].monday);
            return;
        }
    }
}

void MonthStrip::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right) {
        Q_EMIT weekAsked(m_shown + (event->key() == Qt::Key_Left ? -chalk::week::kWeekDays : chalk::week::kWeekDays));
        return;
    }
    QWidget::keyPressEvent(event);
}

bool MonthStrip::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        QStringList lines;
        for (const StripNote& note : m_weeks.notes) {
            lines.append(note.text);
        }
        QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), lines.join(QLatin1Char('\n')), this);
        return true;
    }
    return QWidget::event(event);
}

}  // namespace chalk::ui::week
