#include "ui/common/day_entry.h"

#include <QLocale>
#include <QRegularExpression>

namespace chalk::ui::common {

namespace {

/// 1 to 12 for the name of a month or its first letters, at least three; 0 for anything else.
int monthOfName(const QString& name)
{
    const QLocale english = QLocale::c();
    for (int month = 1; month <= 12; ++month) {
        if (name.size() >= 3 && (english.monthName(month).startsWith(name, Qt::CaseInsensitive) || QLocale().monthName(month).startsWith(name, Qt::CaseInsensitive))) {
            return month;
        }
    }
    return 0;
}

}  // namespace

std::optional<base::Date> dayOfEntry(const QString& text)
{
    static const QRegularExpression yearFirst(QStringLiteral("^(\\d{4})-(\\d{1,2})-(\\d{1,2})$"));
    static const QRegularExpression dayFirst(QStringLiteral("^(\\d{1,2})[./\\- ]\\s*(\\d{1,2})[./\\- ]\\s*(\\d{4})$"));
    static const QRegularExpression named(QStringLiteral("^(\\d{1,2})\\.?\\s+(\\p{L}+)\\.?\\s+(\\d{4})$"));
    const QString line = text.simplified();
    if (const auto match = yearFirst.match(line); match.hasMatch()) {
        return base::Date::fromYmd(match.captured(1).toInt(), match.captured(2).toInt(), match.captured(3).toInt());
    }
    if (const auto match = dayFirst.match(line); match.hasMatch()) {
        return base::Date::fromYmd(match.captured(3).toInt(), match.captured(2).toInt(), match.captured(1).toInt());
    }
    if (const auto match = named.match(line); match.hasMatch()) {
        const int month = monthOfName(match.captured(2));
        return month == 0 ? std::nullopt : base::Date::fromYmd(match.captured(3).toInt(), month, match.captured(1).toInt());
    }
    return std::nullopt;
}

QString entryOfDay(base::Date day)
{
    const auto ymd = day.ymd();
    return QStringLiteral("%1 %2 %3")
        .arg(static_cast<unsigned>(ymd.day()))
        .arg(QLocale::c().monthName(static_cast<int>(static_cast<unsigned>(ymd.month())), QLocale::ShortFormat))
        .arg(static_cast<int>(ymd.year()));
}

}  // namespace chalk::ui::common
