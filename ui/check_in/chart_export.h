#pragma once

#include "ui/check_in/chart_scene.h"

#include <QByteArray>

namespace chalk::ui::check_in {

/// The values of a chart as CSV (RFC 4180: commas, CRLF, quotes where a field needs them), in UTF-8. A row per point: the series, the day as
/// YYYY-MM-DD, the value and its range; of stages a row per stretch: lift, first and last day, stage and cycle.
[[nodiscard]] QByteArray chartCsv(const ChartScene& scene);

}  // namespace chalk::ui::check_in
