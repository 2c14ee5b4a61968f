#pragma once

#include "core/store/trends_reader.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace chalk::ui::trends {

/// Numbers of the charts as a table.
struct TrendSheet {
    QString title;
    QStringList heads;
    std::vector<QStringList> rows;  ///< as many cells as heads; empty where there is no number
    int textColumns = 1;            ///< from the left; the others are numbers
};

/// The weeks, the estimated best singles of each week by lift, and the targets; without those that have no rows.
[[nodiscard]] std::vector<TrendSheet> sheetsOf(const store::ClientTrends& trends);
/// The weeks, and the clients.
[[nodiscard]] std::vector<TrendSheet> sheetsOf(const checkin::StudioTrends& trends);

/// As lines of text, columns side by side.
[[nodiscard]] QString textOf(const TrendSheet& sheet);
/// With tabs between the cells, as tables are copied.
[[nodiscard]] QString tabbedTextOf(const TrendSheet& sheet);

}  // namespace chalk::ui::trends
