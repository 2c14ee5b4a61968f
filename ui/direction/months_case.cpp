#include "ui/direction/months_case.h"

#include "core/store/check_in_reader.h"
#include "core/store/client_forms.h"
#include "core/store/report_reader.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::direction {

namespace {

struct MonthsText {
    Q_DECLARE_TR_FUNCTIONS(Months)
};

template <class Value>
using Answer = store::Result<Value>;

Answer<std::vector<StalledMonth>> stallsOf(store::Database& database, const lifts::Catalogue& catalogue, base::ClientId client, base::Date today)
{
    const auto page = store::CheckInReader(database, catalogue).page(client, today);
    if (!page) {
        return tl::make_unexpected(page.error());
    }
    std::vector<StalledMonth> stalls;
    for (const checkin::LiftEvidence& lift : page->lifts) {
        if (lift.flat) {
            stalls.push_back({lift.name, common::verdictWordsOf(lift.judgement, lift.evidence)});
        }
    }
    return stalls;
}

bool isOnBody(const checkin::ReportLift& lift)
{
    return lift.equipment == lifts::EquipmentKind::None || lift.equipment == lifts::EquipmentKind::AddedToBody;
}

QString amountWithUnit(int amount, lifts::Measure measure)
{
    switch (measure) {
    case lifts::Measure::Reps:
        return QString::number(amount);
    case lifts::Measure::Seconds:
        return MonthsText::tr("%1 s").arg(amount);
    case lifts::Measure::Metres:
        return MonthsText::tr("%1 m").arg(amount);
    }
    return {};
}

QString workText(const checkin::ReportLift& lift, const checkin::WorkDone& work)
{
    const QString done = QStringLiteral("%1, %2 × %3")
                             .arg(common::loadText(work.load, lift.unit, lift.pieces, isOnBody(lift)))
                             .arg(work.sets)
                             .arg(amountWithUnit(work.amount, lift.measure));
    return work.rest ? MonthsText::tr("%1, rest %2").arg(done, common::restText(*work.rest)) : done;
}

QString riseOf(const checkin::ReportLift& lift)
{
    const auto rise = lift.riseMilli();
    if (!rise) {
        return QStringLiteral("–");
    }
    const QString percent = QString::number(std::abs(qRound(*rise / 10.0)));
    return *rise >= 0 ? QStringLiteral("+%1 %").arg(percent) : QChar(0x2212) + QStringLiteral("%1 %").arg(percent);
}

bool isScreened(const screens::PatternScreen& screen)
{
    return std::ranges::any_of(screen.points, [](const screens::PointMark& point) { return point.mark != screens::Mark::NotJudged; });
}

QString screenText(const screens::PatternScreen& screen)
{
    if (!isScreened(screen)) {
        return MonthsText::tr("not screened");
    }
    const auto met = std::ranges::count(screen.points, screens::Mark::Met, &screens::PointMark::mark);
    const QString points = MonthsText::tr("%1 of %2 points met").arg(met).arg(screen.points.size());
    const bool hasPain = screen.pain && screen.pain->score && *screen.pain->score > 0;
    return hasPain ? MonthsText::tr("%1, pain %2").arg(points).arg(*screen.pain->score) : points;
}

}  // namespace

Answer<MonthsCase> readMonths(const store::Access& access, const lifts::Catalogue& catalogue, base::ClientId client, base::Date from, base::Date today)
{
    auto database = store::Database::open(access, store::OpenMode::ReadOnly);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    auto report = store::ReportReader(**database, catalogue).read(client, from, today);
    auto screens = store::ClientForms(**database).movementScreens(client);
    auto stalls = stallsOf(**database, catalogue, client, today);
    if (!report || !screens || !stalls) {
        return tl::make_unexpected(!report ? report.error() : !screens ? screens.error() : stalls.error());
    }
    std::erase_if(*screens, [](const screens::MovementScreen& screen) { return !screen.isFinished; });
    MonthsCase months{*std::move(report), std::nullopt, std::nullopt, *std::move(stalls)};
    if (!screens->empty()) {
        months.screenThen = screens->front();
    }
    if (screens->size() > 1) {
        months.screenNow = screens->back();
    }
    return months;
}

std::vector<QStringList> monthLiftRows(const checkin::ProgressReport& report)
{
    std::vector<QStringList> rows;
    for (const checkin::ReportLift& lift : report.lifts) {
        if (!lift.work.empty()) {
            rows.push_back({common::qstring(lift.name), workText(lift, lift.work.front()), workText(lift, lift.work.back()), riseOf(lift)});
        }
    }
    return rows;
}

std::vector<QStringList> monthScreenRows(const MonthsCase& months)
{
    std::vector<QStringList> rows;
    if (!months.screenThen) {
        return rows;
    }
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const screens::PatternScreen& then = months.screenThen->of(pattern);
        if (isScreened(then) || (months.screenNow && isScreened(months.screenNow->of(pattern)))) {
            rows.push_back({common::patternName(pattern), screenText(then),
                            months.screenNow ? screenText(months.screenNow->of(pattern)) : MonthsText::tr("not screened again")});
        }
    }
    return rows;
}

QString monthAttendanceText(const checkin::ProgressReport& report)
{
    QString text = report.counted() == 0 ? MonthsText::tr("No session is on file.")
                                         : MonthsText::tr("Came to %1 of %2 sessions.").arg(report.came()).arg(report.counted());
    if (report.mostPain && *report.mostPain > 0) {
        text += QLatin1Char(' ') + MonthsText::tr("The most pain that was named is %1 of 10.").arg(*report.mostPain);
    }
    return text;
}

}  // namespace chalk::ui::direction
