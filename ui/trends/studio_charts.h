#pragma once

#include "ui/trends/chart_view.h"

#include "core/checkin/trends.h"

namespace chalk::ui::trends {

/// How much of the sessions that count was come to, by week. Answers a spot for each week.
HotSpots paintAttendance(QPainter& painter, const QRectF& area, const checkin::StudioTrends& trends, const common::Theme& theme);

/// A name with a number.
struct NamedNumber {
    base::ClientId client;
    QString name;
    QString number;
};

/// Whose load changed, the largest falls first, then the largest rises.
[[nodiscard]] std::vector<NamedNumber> loadChanges(const checkin::StudioTrends& trends);
/// Whose days of the last finished week were too much alike, the most so first.
[[nodiscard]] std::vector<NamedNumber> tooMuchAlike(const checkin::StudioTrends& trends);

/// As many rows as there is room for; the last one says how many more the table has. `none` stands where there are none.
HotSpots paintNumbers(QPainter& painter, const QRectF& area, const std::vector<NamedNumber>& rows, const QString& none, const common::Theme& theme);

}  // namespace chalk::ui::trends
