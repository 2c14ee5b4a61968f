#include "ui/trends/trend_sheets.h"

#include "core/checkin/trend_figures.h"
#include "ui/common/formats.h"
#include "ui/trends/trend_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::trends {

namespace {

using common::qstring;

constexpr int kGapOfColumns = 2;

QString sheetText(const char* text)
{
    return QCoreApplication::translate("Trends", text);
}

QString numberOrNone(const std::optional<double>& number, int digits)
{
    return number ? QString::number(*number, 'f', digits) : QString();
}

TrendSheet weeksSheet(const std::vector<checkin::TrendWeek>& weeks, base::MassUnit unit, bool hasMonotony)
{
    TrendSheet sheet;
    sheet.title = sheetText("Load-volume, %1 × reps").arg(common::unitText(unit));
    sheet.heads = {sheetText("Week of")};
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        sheet.heads.append(shortPatternName(pattern));
    }
    sheet.heads << sheetText("Total") << sheetText("Came") << sheetText("Session load");
    if (hasMonotony) {
        sheet.heads << sheetText("Monotony") << sheetText("Strain");
    }
    for (const checkin::TrendWeek& week : weeks) {
        QStringList row{common::shortDayText(week.monday)};
        for (const analysis::Work& work : week.work) {
            row.append(wholeText(checkin::massIn(work.volume, unit)));
        }
        row << wholeText(checkin::massIn(week.together().volume, unit));
        row << (week.attendance.counted() == 0 ? QString() : sheetText("%1 of %2").arg(week.attendance.came).arg(week.attendance.counted()));
        row << (week.load.rated == 0 ? QString() : wholeText(week.load.load));
        if (hasMonotony) {
            row << numberOrNone(week.load.monotony, 2) << (week.load.strain ? wholeText(*week.load.strain) : QString());
        }
        sheet.rows.push_back(row);
    }
    return sheet;
}

/// The estimate of a week.
QString singleIn(const checkin::LiftTrend& lift, base::Date monday)
{
    for (const checkin::EstimatePoint& point : lift.singles) {
        if (checkin::mondayOf(point.date) == monday) {
            return QStringLiteral("%1 (%2%3%4)")
                .arg(wholeText(checkin::massIn(point.median, lift.unit)), wholeText(checkin::massIn(point.lowest, lift.unit)), QChar(0x2013),
                     wholeText(checkin::massIn(point.highest, lift.unit)));
        }
    }
    return {};
}

TrendSheet singlesSheet(const checkin::Trends& trends)
{
    TrendSheet sheet;
    sheet.title = sheetText("Estimated best single, with its range: an estimate, not a tested maximum");
    sheet.heads = {sheetText("Week of")};
    std::vector<const checkin::LiftTrend*> lifts;
    for (const checkin::LiftTrend& lift : trends.lifts) {
        if (!lift.singles.empty()) {
            lifts.push_back(&lift);
            sheet.heads.append(QStringLiteral("%1, %2").arg(qstring(lift.name), common::unitText(lift.unit)));
        }
    }
    for (const checkin::TrendWeek& week : trends.weeks) {
        QStringList row{common::shortDayText(week.monday)};
        for (const checkin::LiftTrend* lift : lifts) {
            row.append(singleIn(*lift, week.monday));
        }
        sheet.rows.push_back(row);
    }
    if (lifts.empty()) {
        sheet.rows.clear();
    }
    return sheet;
}

TrendSheet targetsSheet(const checkin::Trends& trends)
{
    TrendSheet sheet;
    sheet.title = sheetText("Reps and rest");
    sheet.heads = {sheetText("Lift"), sheetText("From"), sheetText("Sets × reps"), sheetText("Rest")};
    sheet.textColumns = 2;
    for (const checkin::LiftTrend& lift : trends.lifts) {
        for (const checkin::TargetStep& step : lift.targets) {
            sheet.rows.push_back({qstring(lift.name), common::shortDayText(step.from), targetText(step), common::restText(step.rest)});
        }
    }
    return sheet;
}

TrendSheet clientsSheet(const checkin::StudioTrends& trends)
{
    TrendSheet sheet;
    sheet.title = sheetText("Clients");
    sheet.heads = {sheetText("Client"), sheetText("Load-volume, kg × reps"), sheetText("Change"), sheetText("Came"), sheetText("Monotony last week")};
    for (const checkin::ClientTrend& client : trends.clients) {
        sheet.rows.push_back({qstring(client.name), wholeText(client.volume.kilograms()), changeText(client.load), attendanceText(client.attendance),
                              numberOrNone(client.monotony, 2)});
    }
    return sheet;
}

std::vector<TrendSheet> withRows(std::vector<TrendSheet> sheets)
{
    std::erase_if(sheets, [](const TrendSheet& sheet) { return sheet.rows.empty(); });
    return sheets;
}

}  // namespace

std::vector<TrendSheet> sheetsOf(const store::ClientTrends& trends)
{
    return withRows({weeksSheet(trends.trends.weeks, trends.unit, true), singlesSheet(trends.trends), targetsSheet(trends.trends)});
}

std::vector<TrendSheet> sheetsOf(const checkin::StudioTrends& trends)
{
    return withRows({weeksSheet(trends.weeks, base::MassUnit::Kilogram, false), clientsSheet(trends)});
}

QString textOf(const TrendSheet& sheet)
{
    std::vector<qsizetype> widths;
    for (qsizetype i = 0; i < sheet.heads.size(); ++i) {
        qsizetype width = sheet.heads[i].size();
        for (const QStringList& row : sheet.rows) {
            width = std::max(width, row[i].size());
        }
        widths.push_back(width);
    }
    const auto line = [&](const QStringList& cells) -> QString {
        QString text;
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const auto width = static_cast<int>(widths[static_cast<std::size_t>(i)]);
            text += (i == 0 ? QString() : QString(kGapOfColumns, QLatin1Char(' '))) +
                    (i < sheet.textColumns ? cells[i].leftJustified(width) : cells[i].rightJustified(width));
        }
        while (text.endsWith(QLatin1Char(' '))) {
            text.chop(1);
        }
        return text + QStringLiteral("\n");
    };
    QString text = sheet.title + QStringLiteral("\n") + line(sheet.heads);
    for (const QStringList& row : sheet.rows) {
        text += line(row);
    }
    return text;
}

QString tabbedTextOf(const TrendSheet& sheet)
{
    QStringList lines{sheet.title, sheet.heads.join(QLatin1Char('\t'))};
    for (const QStringList& row : sheet.rows) {
        lines.append(row.join(QLatin1Char('\t')));
    }
    return lines.join(QLatin1Char('\n')) + QStringLiteral("\n");
}

}  // namespace chalk::ui::trends
