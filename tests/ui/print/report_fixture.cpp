#include "tests/ui/print/report_fixture.h"

namespace chalk::test {

using checkin::ProgressReport;
using checkin::ReportLift;
using progression::Stage;

namespace {

const base::Date kReportFrom = *base::Date::parse("2026-08-31");

/// A lift that rises in even steps, once a week.
ReportLift risingLift(std::string name, int from, int step, Stage then, Stage now)
{
    ReportLift lift;
    lift.name = std::move(name);
    lift.equipment = lifts::EquipmentKind::Barbell;
    lift.stageThen = then;
    lift.stageNow = now;
    for (int week = 0; week < 12; ++week) {
        lift.work.push_back({kReportFrom + 7 * week, base::Load::fromCenti(from + week * step), 3, 5, base::Seconds(150)});
    }
    progression::Prescription next;
    next.kind = progression::PrescriptionKind::Work;
    next.load = lift.work.back().load;
    next.sets = base::Sets(3);
    lift.next = next;
    lift.nextAmount = 6;
    return lift;
}

}  // namespace

ProgressReport ferroReport()
{
    ProgressReport report;
    report.studioName = "Ketch Lane Studio";
    report.clientName = "Joaquin Ferro";
    report.coachName = "Ines";
    report.from = kReportFrom;
    report.to = *base::Date::parse("2026-11-22");
    for (int week = 0; week < 12; ++week) {
        report.weeks.push_back({kReportFrom + 7 * week, {true, week % 5 != 3}});
    }
    report.lifts = {risingLift("Back squat", 6250, 125, Stage::LoadBuild, Stage::RepBuild), risingLift("Trap-bar deadlift", 8500, 250, Stage::SetBuild, Stage::LoadBuild),
                    risingLift("Bench press", 5000, 100, Stage::LoadBuild, Stage::SetBuild)};
    report.lifts[1].cycleNow = 2;
    report.mostPain = 2;
    return report;
}

ProgressReport crowdedReport()
{
    ProgressReport report = ferroReport();
    report.clientName = "Wilhelmina-Alexandrine von Hohenschwangau-Featherstonehaugh";
    report.coachName = "Maximiliana Featherstonehaugh";
    report.lifts.clear();
    for (int i = 0; i < 12; ++i) {
        const std::string name = "Rear-foot-raised split squat with a very long name " + std::to_string(i);
        report.lifts.push_back(risingLift(name, 112750 + i * 100, 25, static_cast<Stage>(i % 7 + 1), static_cast<Stage>((i + 3) % 7 + 1)));
        report.lifts.back().unit = base::MassUnit::Pound;
        report.lifts.back().cycleNow = 12;
    }
    for (checkin::ReportWeek& week : report.weeks) {
        week.came = {true, false, true, true, false};
    }
    return report;
}

}  // namespace chalk::test
