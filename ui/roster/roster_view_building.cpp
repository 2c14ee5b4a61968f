#include "ui/roster/roster_view_building.h"

#include "core/checkin/load_trend.h"
#include "ui/common/formats.h"
#include "ui/roster/attention_words.h"
#include "ui/roster/row_words.h"

#include <algorithm>

namespace chalk::ui::roster {

namespace {

using checkin::LiftFacts;

/// Which of two lifts of one pattern the strip shows: the one on hold, else the one worked last.
bool isShownBefore(const LiftFacts& a, const LiftFacts& b)
{
    return a.isOnHold != b.isOnHold ? a.isOnHold : a.lastWork > b.lastWork;
}

common::LiftMark markOf(const LiftFacts& lift)
{
    return lift.isOnHold                                     ? common::LiftMark::Pain
           : lift.flags.has(progression::Flag::Stalled) ? common::LiftMark::Plateau
                                                        : common::LiftMark::None;
}

common::LiftStripView stripOf(const KnownClient& known)
{
    common::LiftStripView strip;
    std::array<const LiftFacts*, lifts::kPatterns.size()> shown{};
    for (std::size_t i = 0; i < known.facts.lifts.size(); ++i) {
        const LiftFacts& lift = known.facts.lifts[i];
        const auto place = static_cast<std::size_t>(lift.pattern);
        if (shown[place] == nullptr || isShownBefore(lift, *shown[place])) {
            shown[place] = &lift;
            strip.lifts[place] = {lift.stage, known.entry.lifts[i].cycle, markOf(lift)};
        }
    }
    return strip;
}

common::Attendance attendanceOf(sessions::SessionState state)
{
    switch (state) {
    case sessions::SessionState::Recorded:
        return common::Attendance::Came;
    case sessions::SessionState::CancelledInTime:
        return common::Attendance::CancelledInTime;
    case sessions::SessionState::Missed:
    case sessions::SessionState::CancelledLate:
        return common::Attendance::Missed;
    case sessions::SessionState::Planned:
    case sessions::SessionState::Printed:
    case sessions::SessionState::Withdrawn:
        break;
    }
    return common::Attendance::None;
}

/// Twelve places, the latest at the right; none at all before the first session.
common::AttendanceView attendanceOf(const std::vector<sessions::SessionState>& states)
{
    common::AttendanceView view;
    if (!states.empty()) {
        view.sessions.assign(store::kRosterSessions, common::Attendance::None);
        const auto shown = std::min(states.size(), view.sessions.size());
        std::transform(states.end() - static_cast<std::ptrdiff_t>(shown), states.end(), view.sessions.end() - static_cast<std::ptrdiff_t>(shown),
                       [](sessions::SessionState state) { return attendanceOf(state); });
    }
    return view;
}

std::optional<base::Date> firstLoadOf(const checkin::ClientFacts& facts)
{
    std::optional<base::Date> first;
    for (const LiftFacts& lift : facts.lifts) {
        if (lift.firstWork && (!first || *lift.firstWork < *first)) {
            first = lift.firstWork;
        }
    }
    return first;
}

/// The finished weeks: the present one would look like a fall until its last day.
common::SparklineView loadOf(const KnownClient& known, base::Date today)
{
    const std::span<const double> weeks(known.entry.weekVolumes.data(), known.entry.weekVolumes.size() - 1);
    const base::Date firstMonday = today - today.weekday() - 7 * static_cast<int>(weeks.size());
    const auto firstLoad = firstLoadOf(known.facts);
    const checkin::LoadTrend trend = checkin::loadTrendOf(weeks, firstLoad && *firstLoad >= firstMonday);
    common::SparklineView view;
    view.change = trendText(trend);
    view.isFall = trend.isFall;
    if (trend.kind == checkin::LoadTrend::Kind::None) {
        return view;
    }
    for (std::size_t i = 0; i < weeks.size(); ++i) {
        const bool hasBegun = firstLoad && firstMonday + 7 * static_cast<int>(i) + 6 >= *firstLoad;
        view.values.push_back(hasBegun ? std::optional(weeks[i]) : std::nullopt);
    }
    return view;
}

checkin::Phase phaseOf(const checkin::ClientFacts& facts)
{
    std::vector<progression::Stage> stages;
    for (const LiftFacts& lift : facts.lifts) {
        stages.push_back(lift.stage);
    }
    return checkin::phaseOf(stages);
}

checkin::RosterPosition positionOf(const KnownClient& known, base::Date today, bool isFlagged)
{
    checkin::RosterPosition position;
    if (known.entry.next) {
        position.next = {known.entry.next->date, known.entry.next->startMinute};
        position.isToday = known.entry.next->date == today;
    }
    position.isFlagged = isFlagged;
    position.lastCame = known.entry.lastSession;
    return position;
}

void addPeek(RosterRow& row, const KnownClient& known, const lifts::Catalogue& catalogue)
{
    row.coachName = common::qstring(known.entry.coachName);
    row.lastCame = lastCameText(known.entry.lastSession);
    for (const clients::Caution& caution : known.entry.cautions) {
        row.cautions.append(caution.bodyPart.empty() ? common::qstring(caution.text)
                                                     : common::qstring(caution.bodyPart) + QStringLiteral(": ") + common::qstring(caution.text));
    }
    for (std::size_t i = 0; i < known.facts.lifts.size(); ++i) {
        const LiftFacts& lift = known.facts.lifts[i];
        row.lifts.push_back({lift.pattern, exerciseName(lift.exerciseKey, lift.pattern, catalogue), lift.stage, known.entry.lifts[i].cycle, liftNote(lift)});
    }
}

QStringList searchWordsOf(const RosterRow& row, const clients::Client& client)
{
    QStringList texts{row.name, common::qstring(client.goal)};
    for (const PeekLift& lift : row.lifts) {
        texts << lift.name << common::patternName(lift.pattern);
    }
    for (const checkin::ClientFlag flag : row.flags) {
        texts << tagOf(flag).text;
    }
    QStringList words = folded(texts.join(QLatin1Char(' '))).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    words.removeDuplicates();
    return words;
}

bool isMorePressing(const AttentionItem& a, const AttentionItem& b)
{
    if (a.flag != b.flag) {
        return a.flag < b.flag;
    }
    const auto order = checkin::compare(checkin::RosterOrder::NextSession, a.position, b.position);
    return order != 0 ? order < 0 : a.name.localeAwareCompare(b.name) < 0;
}

}  // namespace

RosterRow rowOf(const KnownClient& known, base::Date today, const lifts::Catalogue& catalogue)
{
    const auto reasons = checkin::attentionFor(known.facts, today);
    RosterRow row;
    row.client = known.entry.client.id;
    row.coach = known.entry.client.coach;
    row.name = common::qstring(known.entry.client.name);
    row.detail = detailText(known.entry.client, today);
    row.when = whenText(known.entry.next, today);
    row.where = whereText(known.entry, today);
    row.strip = stripOf(known);
    row.attendance = attendanceOf(known.entry.lastSessions);
    row.load = loadOf(known, today);
    row.flags = checkin::flagsFor(known.facts, reasons, today);
    row.phase = phaseOf(known.facts);
    row.position = positionOf(known, today, checkin::isFlagged(row.flags));
    addPeek(row, known, catalogue);
    row.searchWords = searchWordsOf(row, known.entry.client);
    return row;
}

RosterView viewOf(std::span<const KnownClient> clients, base::Date today, const lifts::Catalogue& catalogue)
{
    RosterView view;
    for (const KnownClient& known : clients) {
        const RosterRow& row = view.rows.emplace_back(rowOf(known, today, catalogue));
        for (const checkin::AttentionReason& reason : checkin::attentionFor(known.facts, today)) {
            const AttentionAction action = attentionAction(reason);
            view.attention.push_back({row.client, row.name, checkin::flagOf(reason), attentionSentence(reason, {today, catalogue, row.position.next}),
                                      action.text, action.tab, checkin::liftOf(reason), row.position});
        }
        const auto isSame = [&row](const clients::Coach& coach) { return coach.id == row.coach; };
        if (std::none_of(view.coaches.begin(), view.coaches.end(), isSame)) {
            view.coaches.push_back({row.coach, known.entry.coachName});
        }
    }
    std::sort(view.coaches.begin(), view.coaches.end(), [](const clients::Coach& a, const clients::Coach& b) { return a.name < b.name; });
    std::stable_sort(view.attention.begin(), view.attention.end(), isMorePressing);
    return view;
}

}  // namespace chalk::ui::roster
