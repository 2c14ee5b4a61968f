#include "ui/week/month_grid.h"

#include "ui/common/formats.h"
#include "ui/common/look.h"

#include <QKeyEvent>
#include <QLocale>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::kWeekDays;
using common::Theme;

constexpr double kCaptionHeight = 28;
constexpr double kCellPadding = 8;

}  // namespace

MonthGrid::MonthGrid(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Month"));
    connect(&look, &common::Look::changed, this, qOverload<>(&QWidget::update));
}

void MonthGrid::setMonth(const MonthWeeks& weeks, base::Date shown, base::Date today)
{
    m_weeks = weeks;
    m_chosen = shown;
    m_today = today;
    m_month = static_cast<unsigned>(shown.ymd().month());
    update();
}

bool MonthGrid::isInside(base::Date day) const
{
    return !m_weeks.weeks.empty() && m_weeks.weeks.front().monday <= day && day < m_weeks.weeks.back().monday + kWeekDays;
}

QRectF MonthGrid::cellRect(base::Date day) const
{
    if (!isInside(day)) {
        return {};
    }
    const double top = m_look.theme().scaled(kCaptionHeight);
    const double wide = width() / static_cast<double>(kWeekDays);
    const double high = (height() - top) / static_cast<double>(m_weeks.weeks.size());
    return {day.weekday() * wide, top + (day - m_weeks.weeks.front().monday) / kWeekDays * high, wide, high};
}

void MonthGrid::paintCell(QPainter& painter, base::Date date, const StripDay& day) const
{
    const Theme& theme = m_look.theme();
    const QRectF cell = cellRect(date);
    const bool isOfMonth = static_cast<unsigned>(date.ymd().month()) == m_month;
    painter.fillRect(cell.adjusted(1, 1, 0, 0), day.isClosed ? theme.sunken : theme.surface);
    painter.setPen(QPen(theme.line, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(cell);
    if (date == m_chosen) {
        painter.setPen(QPen(hasFocus() ? theme.focus : theme.mark, 2));
        painter.drawRect(cell.adjusted(2, 2, -2, -2));
    }
    const QRectF text = cell.adjusted(kCellPadding, kCellPadding, -kCellPadding, -kCellPadding);
    const QFont number = theme.font(14, date == m_today ? QFont::Bold : QFont::DemiBold);
    painter.setFont(number);
    painter.setPen(isOfMonth ? theme.ink : theme.ink3);
    painter.drawText(text, Qt::AlignTop | Qt::AlignLeft, QString::number(static_cast<unsigned>(date.ymd().day())));
    if (date == m_today) {
        painter.setFont(theme.font(12, QFont::DemiBold));
        painter.setPen(theme.mark);
        painter.drawText(text, Qt::AlignTop | Qt::AlignRight, tr("today"));
    }
    const QString word = day.isClosed ? tr("closed") : day.sessions == 0 ? QString() : day.sessions == 1 ? tr("1 session") : tr("%1 sessions").arg(day.sessions);
    const QString whole = day.isShort ? (word.isEmpty() ? tr("short") : tr("%1, short").arg(word)) : word;
    painter.setFont(theme.font(12, QFont::Normal));
    const QFontMetricsF metrics(painter.font());
    if (text.height() >= QFontMetricsF(number).height() + metrics.height()) {
        painter.setPen(isOfMonth ? theme.ink2 : theme.ink3);
        painter.drawText(text, Qt::AlignBottom | Qt::AlignLeft, metrics.elidedText(whole, Qt::ElideRight, text.width()));
    }
}

void MonthGrid::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    const Theme& theme = m_look.theme();
    painter.fillRect(rect(), theme.surface);
    painter.setFont(theme.font(common::TextStyle::Micro));
    painter.setPen(theme.ink2);
    const double wide = width() / static_cast<double>(kWeekDays);
    for (int day = 0; day < kWeekDays; ++day) {
        painter.drawText(QRectF(day * wide + kCellPadding, 0, wide - kCellPadding, theme.scaled(kCaptionHeight)), Qt::AlignLeft | Qt::AlignVCenter, QLocale::c().dayName(day + 1, QLocale::ShortFormat));
    }
    for (const StripWeek& week : m_weeks.weeks) {
        for (int day = 0; day < kWeekDays; ++day) {
            paintCell(painter, week.monday + day, week.days[static_cast<std::size_t>(day)]);
        }
    }
}

void MonthGrid::mousePressEvent(QMouseEvent* event)
{
    for (const StripWeek& week : m_weeks.weeks) {
        for (int day = 0; day < kWeekDays; ++day) {
            if (cellRect(week.monday + day).contains(event->position())) {
                Q_EMIT weekAsked(week.monday + day);
                return;
            }
        }
    }
}

void MonthGrid::keyPressEvent(QKeyEvent* event)
{
    int by = 0;
    switch (event->key()) {
    case Qt::Key_Left:
        by = -1;
        break;
    case Qt::Key_Right:
        by = 1;
        break;
    case Qt::Key_Up:
        by = -kWeekDays;
        break;
    case Qt::Key_Down:
        by = kWeekDays;
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT weekAsked(m_chosen);
        return;
    default:
        QWidget::keyPressEvent(event);
        return;
    }
    if (isInside(m_chosen + by)) {
        m_chosen = m_chosen + by;
        setAccessibleDescription(common::dayText(m_chosen));
        update();
    }
}

}  // namespace chalk::ui::week
