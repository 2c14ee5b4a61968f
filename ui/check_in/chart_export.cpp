#include "ui/check_in/chart_export.h"

#include "core/exchange/bookings_csv.h"
#include "ui/common/formats.h"

#include <QByteArrayList>
#include <QStringList>

namespace chalk::ui::check_in {

namespace {

QByteArray lineOf(const QStringList& fields)
{
    QByteArrayList quoted;
    for (const QString& field : fields) {
        quoted << exchange::csvField(field);
    }
    return quoted.join(',') + "\r\n";
}

QString numberOf(const std::optional<double>& value)
{
    return value ? QString::number(*value, 'g', 10) : QString();
}

QString dayOf(base::Date date)
{
    return common::qstring(date.toString());
}

QByteArray stageLines(const ChartScene& scene)
{
    QByteArray csv = lineOf({QStringLiteral("lift"), QStringLiteral("from"), QStringLiteral("to"), QStringLiteral("stage"), QStringLiteral("cycle")});
    for (const ChartRow& row : scene.rows) {
        for (const checkin::StageStretch& stretch : row.stages) {
            csv += lineOf({row.name, dayOf(stretch.days.from), dayOf(stretch.days.to), QString::number(progression::numberOf(stretch.stage)),
                           QString::number(stretch.cycle)});
        }
    }
    return csv;
}

}  // namespace

QByteArray chartCsv(const ChartScene& scene)
{
    if (scene.style == ChartStyle::Stages) {
        return stageLines(scene);
    }
    QByteArray csv = lineOf({QStringLiteral("series"), QStringLiteral("date"), QStringLiteral("value"), QStringLiteral("low"), QStringLiteral("high"),
                          QStringLiteral("unit")});
    for (const ChartSeries& series : scene.series) {
        for (const ChartPoint& point : series.points) {
            csv += lineOf({series.name, dayOf(point.date), numberOf(point.value), numberOf(point.low), numberOf(point.high), scene.unit});
        }
    }
    return csv;
}

}  // namespace chalk::ui::check_in
