#pragma once

#include "ui/check_in/chart_scene.h"
#include "ui/common/theme.h"

class QChart;

namespace chalk::ui::check_in {

/// Takes everything out of a chart and puts the lines, the range or the bars of a scene into it, with axes that agree with chartFrame.
void fillChart(QChart& chart, const ChartScene& scene, const common::Theme& theme);

}  // namespace chalk::ui::check_in
