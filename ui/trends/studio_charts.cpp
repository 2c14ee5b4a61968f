#include "ui/trends/studio_charts.h"

#include "ui/common/formats.h"
#include "ui/trends/chart_axis.h"
#include "ui/trends/trend_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::trends {

namespace {

using common::TextStyle;
using common::Theme;

constexpr double kShareBar = 0.5;
constexpr double kNumberRow = 30;

QString studioWords(const char* text)
{
    return QCoreApplication::translate("Trends", text);
}

}  // namespace

HotSpots paintAttendance(QPainter& painter, const QRectF& area, const checkin::StudioTrends& trends, const Theme& theme)
{
    const ChartFrame frame = frameIn(area, {0, 25, 5}, static_cast<int>(trends.weeks.size()), theme);
    paintGrid(painter, frame, theme);
    paintWeeks(painter, frame, trends.weeks, theme);
    HotSpots spots;
    for (std::size_t i = 0; i < trends.weeks.size(); ++i) {
        const checkin::TrendWeek& week = trends.weeks[i];
        const double middle = frame.middleOf(static_cast<int>(i));
        if (const auto share = week.attendance.share()) {
            const double top = frame.yOf(100 * *share);
            const double width = std::floor(kShareBar * frame.weekWidth());
            painter.fillRect(QRectF(std::round(middle - width / 2), top, width, frame.plot.bottom() - top), theme.attDot);
        }
        spots.push_back({QRectF(middle - frame.weekWidth() / 2, area.top(), frame.weekWidth(), area.height()),
                         studioWords("Week of %1: %2").arg(common::longDayText(week.monday), attendanceText(week.attendance))});
    }
    return spots;
}

std::vector<NamedNumber> loadChanges(const checkin::StudioTrends& trends)
{
    std::vector<const checkin::ClientTrend*> changed;
    for (const checkin::ClientTrend& client : trends.clients) {
        if (client.load.kind == checkin::LoadTrend::Kind::Change && client.load.percent != 0) {
            changed.push_back(&client);
        }
    }
    std::stable_sort(changed.begin(), changed.end(), [](const checkin::ClientTrend* a, const checkin::ClientTrend* b) {
        const auto rank = [](int percent) { return std::pair(percent >= 0, percent >= 0 ? -percent : percent); };
        return rank(a->load.percent) < rank(b->load.percent);
    });
    std::vector<NamedNumber> rows;
    for (const checkin::ClientTrend* client : changed) {
        rows.push_back({client->client, common::qstring(client->name), changeText(client->load)});
    }
    return rows;
}

std::vector<NamedNumber> tooMuchAlike(const checkin::StudioTrends& trends)
{
    std::vector<const checkin::ClientTrend*> alike;
    for (const checkin::ClientTrend& client : trends.clients) {
        if (client.isTooMuchAlike()) {
            alike.push_back(&client);
        }
    }
    std::stable_sort(alike.begin(), alike.end(), [](const checkin::ClientTrend* a, const checkin::ClientTrend* b) { return *a->monotony > *b->monotony; });
    std::vector<NamedNumber> rows;
    for (const checkin::ClientTrend* client : alike) {
        rows.push_back({client->client, common::qstring(client->name), QString::number(*client->monotony, 'f', 1)});
    }
    return rows;
}

HotSpots paintNumbers(QPainter& painter, const QRectF& area, const std::vector<NamedNumber>& rows, const QString& none, const Theme& theme)
{
    painter.setFont(theme.font(TextStyle::Small));
    if (rows.empty()) {
        painter.setPen(theme.ink2);
        painter.drawText(area, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, none);
        return {};
    }
    const double height = theme.scaled(kNumberRow);
    const auto room = std::max<std::size_t>(1, static_cast<std::size_t>(area.height() / height));
    const std::size_t shown = rows.size() > room ? room - 1 : rows.size();
    const QFontMetricsF metrics(painter.font());
    HotSpots spots;
    for (std::size_t i = 0; i < shown; ++i) {
        const QRectF row(area.left(), area.top() + static_cast<double>(i) * height, area.width(), height);
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(row.bottomLeft(), row.bottomRight());
        painter.setPen(theme.ink);
        const double number = metrics.horizontalAdvance(rows[i].number) + 12;
        painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, metrics.elidedText(rows[i].name, Qt::ElideRight, row.width() - number));
        painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, rows[i].number);
        spots.push_back({row, studioWords("%1: %2").arg(rows[i].name, rows[i].number)});
    }
    if (shown < rows.size()) {
        painter.setPen(theme.ink3);
        painter.drawText(QRectF(area.left(), area.top() + static_cast<double>(shown) * height, area.width(), height), Qt::AlignLeft | Qt::AlignVCenter,
                         studioWords("and %1 more in the table (T)").arg(rows.size() - shown));
    }
    return spots;
}

}  // namespace chalk::ui::trends
