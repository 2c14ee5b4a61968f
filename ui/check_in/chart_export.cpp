#include "ui/check_in/chart_export.h"

#include "ui/common/formats.h"

#include <QSaveFile>
#include <QStringList>

namespace chalk::ui::check_in {

namespace {

QString fieldOf(const QString& text)
{
    const bool isPlain = !text.contains(QLatin1Char(',')) && !text.contains(QLatin1Char('"')) && !text.contains(QLatin1Char('\n')) &&
                         !text.contains(QLatin1Char('\r'));
    return isPlain ? text : QLatin1Char('"') + QString(text).replace(QLatin1Char('"'), QLatin1String("\"\"")) + QLatin1Char('"');
}

QString lineOf(const QStringList& fields)
{
    QStringList quoted;
    for (const QString& field : fields) {
        quoted << fieldOf(field);
    }
    return quoted.join(QLatin1Char(',')) + QStringLiteral("\r\n");
}

QString numberOf(const std::optional<double>& value)
{
    return value ? QString::number(*value, 'g', 10) : QString();
}

QString dayOf(base::Date date)
{
    return common::qstring(date.toString());
}

QString stageLines(const ChartScene& scene)
{
    QString csv = lineOf({QStringLiteral("lift"), QStringLiteral("from"), QStringLiteral("to"), QStringLiteral("stage"), QStringLiteral("cycle")});
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
        return stageLines(scene).toUtf8();
    }
    QString csv = lineOf({QStringLiteral("series"), QStringLiteral("date"), QStringLiteral("value"), QStringLiteral("low"), QStringLiteral("high"),
                          QStringLiteral("unit")});
    for (const ChartSeries& series : scene.series) {
        for (const ChartPoint& point : series.points) {
            csv += lineOf({series.name, dayOf(point.date), numberOf(point.value), numberOf(point.low), numberOf(point.high), scene.unit});
        }
    }
    return csv.toUtf8();
}

QString writeWhole(const QString& path, const QByteArray& bytes)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
        return file.errorString();
    }
    return {};
}

}  // namespace chalk::ui::check_in
