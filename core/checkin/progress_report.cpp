#include "core/checkin/progress_report.h"

#include "core/analysis/attendance.h"

#include <algorithm>

namespace chalk::checkin {

namespace {

using sessions::Session;

base::Date mondayBefore(base::Date day)
{
    return day - day.weekday();
}

std::vector<ReportWeek> weeksOf(const ReportRequest& request)
{
    std::vector<ReportWeek> weeks;
    for (base::Date monday = mondayBefore(request.from); monday <= request.to; monday = monday + 7) {
        weeks.push_back({monday, {}});
    }
    std::vector<Session> inOrder(request.sessions.begin(), request.sessions.end());
    std::stable_sort(inOrder.begin(), inOrder.end(), [](const Session& a, const Session& b) {
        return a.date != b.date ? a.date < b.date : a.startMinute < b.startMinute;
    });
    for (const Session& session : inOrder) {
        const auto came = analysis::wasComeTo(session.state);
        if (came && session.date >= request.from && session.date <= request.to) {
            weeks[static_cast<std::size_t>((session.date - weeks.front().monday) / 7)].came.push_back(*came);
        }
    }
    return weeks;
}

/// The entry that a lift stood at when the report begins.
const ReportEntry& entryThen(const std::vector<ReportEntry>& entries, base::Date from)
{
    const auto after = std::find_if(entries.begin(), entries.end(), [from](const ReportEntry& one) { return one.date >= from; });
    return after == entries.begin() ? *after : *(after - 1);
}

std::vector<WorkDone> workBetween(const std::vector<ReportEntry>& entries, base::Date from)
{
    std::vector<WorkDone> work;
    for (const ReportEntry& entry : entries) {
        if (!entry.work) {
            continue;
        }
        if (entry.date < from) {
            work.assign(1, *entry.work);
        } else if (!work.empty() && work.back().date == entry.date) {
            work.back() = *entry.work;
        } else {
            work.push_back(*entry.work);
        }
    }
    return work;
}

}  // namespace

std::optional<WorkDone> workDoneOf(base::Date date, const progression::Exposure& exposure)
{
    std::optional<WorkDone> done;
    for (const progression::SetRecord& set : exposure.sets) {
        if (set.isWarmup || set.amount == 0 || (done && set.load < done->load)) {
            continue;
        }
        if (!done || set.load > done->load) {
            done = WorkDone{date, set.load, 0, set.amount, std::nullopt};
        }
        ++done->sets;
        done->amount = std::min(done->amount, static_cast<int>(set.amount));
        if (set.restSeconds != progression::SetRecord::kNotRecorded) {
            done->rest = std::max(done->rest.value_or(base::Seconds()), base::Seconds(set.restSeconds));
        }
    }
    return done;
}

std::optional<int> ReportLift::riseMilli() const
{
    if (work.size() < 2 || work.front().load <= base::Load() || work.back().load <= base::Load()) {
        return std::nullopt;
    }
    const std::int64_t then = work.front().load.centi();
    return static_cast<int>((work.back().load.centi() - then) * 1000 / then);
}

int ProgressReport::came() const
{
    int count = 0;
    for (const ReportWeek& week : weeks) {
        count += static_cast<int>(std::count(week.came.begin(), week.came.end(), true));
    }
    return count;
}

int ProgressReport::counted() const
{
    int count = 0;
    for (const ReportWeek& week : weeks) {
        count += static_cast<int>(week.came.size());
    }
    return count;
}

std::vector<std::size_t> ProgressReport::byRise() const
{
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        if (lifts[i].riseMilli()) {
            order.push_back(i);
        }
    }
    std::stable_sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) { return *lifts[a].riseMilli() > *lifts[b].riseMilli(); });
    return order;
}

ProgressReport progressReportOf(const ReportRequest& request)
{
    ProgressReport report{request.studioName, request.clientName, request.coachName, request.from, request.to, weeksOf(request), {}, std::nullopt};
    for (const ReportHistory& lift : request.lifts) {
        std::vector<ReportEntry> entries;
        std::copy_if(lift.entries.begin(), lift.entries.end(), std::back_inserter(entries), [&request](const ReportEntry& one) { return one.date <= request.to; });
        if (entries.empty()) {
            continue;
        }
        const ReportEntry& then = entryThen(entries, request.from);
        const ReportEntry& now = entries.back();
        report.lifts.push_back({lift.name, lift.unit, lift.measure, lift.equipment, lift.pieces, then.stageAfter, now.stageAfter, then.cycleAfter, now.cycleAfter,
                                workBetween(entries, request.from), lift.next, lift.nextAmount});
        for (const ReportEntry& entry : entries) {
            if (entry.date >= request.from) {
                report.mostPain = std::max(report.mostPain.value_or(0), entry.pain);
            }
        }
    }
    return report;
}

}  // namespace chalk::checkin
