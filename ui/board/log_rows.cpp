#include "ui/board/log_row.h"

#include "ui/board/board_text.h"
#include "ui/board/board_words.h"
#include "ui/board/log_words.h"
#include "ui/common/formats.h"
#include "ui/common/report_words.h"

#include <QStringList>

#include <algorithm>

namespace chalk::ui::board {

namespace {

using progression::Prescription;
using progression::PrescriptionKind;
using sessions::SessionState;

/// A row and where it belongs: by day, then as entered.
struct PlacedRow {
    LogRow row;
    int place = 0;
};

QString sessionText(const sessions::Session& session)
{
    return QStringLiteral("%1 %2").arg(common::qstring(sessions::clockText(session.startMinute)), common::qstring(session.place));
}

QString sessionNote(const ClientCase& client, base::SessionId id)
{
    const auto found = std::find_if(client.sessions.begin(), client.sessions.end(), [id](const auto& s) { return s.id == id; });
    return id.isNone() || found == client.sessions.end() ? QString() : sessionText(*found);
}

QString noteText(const LogLine& line)
{
    if (!line.note.isEmpty()) {
        return line.note;
    }
    QStringList parts{line.left, line.steadiness};
    parts.removeAll(QString());
    return parts.join(QLatin1String(", "));
}

QString rulesText(const progression::RuleList& rules)
{
    QStringList names;
    for (const progression::Rule rule : rules) {
        names.append(common::qstring(nameOf(rule)));
    }
    return names.join(QLatin1Char(' '));
}

void describeNext(LogRow& row, const LiftCase& lift, const Prescription& next)
{
    switch (next.kind) {
    case PrescriptionKind::Hold:
        row.next = BoardText::tr("On hold");
        break;
    case PrescriptionKind::Rehearse:
        row.next = BoardText::tr("Rehearse");
        break;
    case PrescriptionKind::Work:
        row.next = loadTextOf(lift, next.load);
        row.nextNote = next.stage == progression::Stage::RestCut || next.block
                           ? BoardText::tr("%1, rest %2").arg(setsTextOf(lift, next), common::restText(next.rest))
                           : setsTextOf(lift, next);
        break;
    }
}

LogRow entryRow(const ClientCase& client, const LiftCase& lift, const LogEntry& entry, progression::Stage before)
{
    LogRow row;
    const LogLine line = logLineOf(entry, lift);
    row.date = entry.date;
    row.pattern = lift.pattern;
    row.stage = before;
    row.day = common::dayText(entry.date);
    row.dayNote = sessionNote(client, entry.session);
    row.lift = common::qstring(lift.exercise.name);
    row.stageText = QStringLiteral("%1 %2").arg(progression::numberOf(before)).arg(common::stageName(before));
    row.what = line.what;
    row.whatNote = noteText(line);
    row.rules = rulesText(entry.rules);
    row.decision = common::whyOf(entry.rules, entry.after, ruleFactsOf(lift, entry));
    describeNext(row, lift, entry.after);
    row.isCorrected = !entry.earlier.empty();
    return row;
}

LogRow replacedRow(const LogRow& present, const LiftCase& lift, const LogEntry& entry, const progression::Event& version)
{
    LogRow row;
    const LogLine line = logLineOf(version.body, version.date, entry.measure, lift);
    row.kind = LogRowKind::Replaced;
    row.date = present.date;
    row.pattern = present.pattern;
    row.stage = present.stage;
    row.day = version.date == entry.date ? QString() : common::dayText(version.date);
    row.lift = BoardText::tr("before the correction");
    row.what = line.what;
    row.whatNote = noteText(line);
    return row;
}

QString notHeldText(SessionState state)
{
    switch (state) {
    case SessionState::Missed:
        return BoardText::tr("Missed");
    case SessionState::CancelledInTime:
        return BoardText::tr("Cancelled in time");
    case SessionState::CancelledLate:
        return BoardText::tr("Cancelled late");
    case SessionState::Planned:
    case SessionState::Printed:
    case SessionState::Recorded:
    case SessionState::Withdrawn:
        break;
    }
    return {};
}

/// What was said once of a session: effort and minutes, and how the client came in and the note in the wide column.
LogRow saidRow(const sessions::Session& session, const sessions::SessionReport& report)
{
    LogRow row;
    row.kind = LogRowKind::Said;
    row.date = session.date;
    row.day = common::dayText(session.date);
    row.dayNote = sessionText(session);
    row.lift = BoardText::tr("How it felt");
    QStringList felt;
    if (report.effortTenths) {
        felt.append(BoardText::tr("Effort %1 of 10").arg(common::effortText(*report.effortTenths)));
    }
    if (report.minutes) {
        felt.append(BoardText::tr("%1 min").arg(*report.minutes));
    }
    row.what = felt.join(QLatin1String(", "));
    if (const auto load = sessions::sessionLoad(report)) {
        row.whatNote = BoardText::tr("load %1").arg(*load);
    }
    QString ready = common::reportFiguresText({report.sleep, report.soreness, report.stress, {}, {}, {}});
    if (!ready.isEmpty()) {
        ready = ready.left(1).toUpper() + ready.mid(1);
    }
    QStringList said{ready, common::qstring(report.note).replace(QLatin1Char('\n'), QLatin1String("; "))};
    said.removeAll(QString());
    row.decision = said.join(QLatin1String(". "));
    return row;
}

void addLift(std::vector<PlacedRow>& rows, const ClientCase& client, const LiftCase& lift, int& place)
{
    progression::Stage before = lift.machine.setup().startStage;
    for (const LogEntry& entry : lift.log) {
        const LogRow present = entryRow(client, lift, entry, before);
        before = entry.after.stage;
        rows.push_back({present, place++});
        for (auto version = entry.earlier.rbegin(); version != entry.earlier.rend(); ++version) {
            rows.push_back({replacedRow(present, lift, entry, *version), place++});
        }
    }
}

}  // namespace

std::vector<LogRow> logRowsOf(const ClientCase& client)
{
    std::vector<PlacedRow> placed;
    int place = 0;
    for (const sessions::Session& session : client.sessions) {
        if (const QString text = notHeldText(session.state); !text.isEmpty()) {
            LogRow row;
            row.kind = LogRowKind::NotHeld;
            row.date = session.date;
            row.day = common::dayText(session.date);
            row.dayNote = sessionText(session);
            row.what = text;
            placed.push_back({row, place++});
        }
        if (const auto report = client.reports.find(session.id); report != client.reports.end() && !report->second.isEmpty()) {
            placed.push_back({saidRow(session, report->second), place++});
        }
    }
    for (const LiftCase& lift : client.lifts) {
        addLift(placed, client, lift, place);
    }
    std::stable_sort(placed.begin(), placed.end(), [](const PlacedRow& a, const PlacedRow& b) {
        return a.row.date != b.row.date ? a.row.date > b.row.date : a.place < b.place;
    });
    std::vector<LogRow> rows;
    rows.reserve(placed.size());
    for (PlacedRow& one : placed) {
        rows.push_back(std::move(one.row));
    }
    return rows;
}

}  // namespace chalk::ui::board
