#include "ui/common/report_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QStringList>

namespace chalk::ui::common {

namespace {

QString reportWords(const char* text)
{
    return QCoreApplication::translate("Report", text);
}

void addScale(QStringList& parts, const char* words, const std::optional<int>& value)
{
    if (value) {
        parts.append(reportWords(words).arg(*value));
    }
}

}  // namespace

QString effortText(int tenths)
{
    return tenths % 10 == 0 ? QString::number(tenths / 10) : QStringLiteral("%1.%2").arg(tenths / 10).arg(tenths % 10);
}

QString reportFiguresText(const sessions::SessionReport& report)
{
    QStringList parts;
    if (report.effortTenths) {
        parts.append(reportWords("effort %1 of 10").arg(effortText(*report.effortTenths)));
    }
    if (report.minutes) {
        parts.append(reportWords("%1 min").arg(*report.minutes));
    }
    if (const auto load = sessions::sessionLoad(report)) {
        parts.append(reportWords("load %1").arg(*load));
    }
    addScale(parts, "sleep %1 of 5", report.sleep);
    addScale(parts, "soreness %1 of 5", report.soreness);
    addScale(parts, "stress %1 of 5", report.stress);
    return parts.join(QLatin1String(", "));
}

QString reportText(const sessions::SessionReport& report)
{
    QStringList parts{reportFiguresText(report), qstring(report.note).replace(QLatin1Char('\n'), QLatin1String("; "))};
    parts.removeAll(QString());
    return parts.join(QLatin1String("; "));
}

}  // namespace chalk::ui::common
