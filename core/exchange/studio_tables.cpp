#include "core/exchange/studio_tables.h"

namespace chalk::exchange {

namespace {

constexpr CellKind kText = CellKind::Text;
constexpr CellKind kKept = CellKind::KeptText;
constexpr CellKind kNumber = CellKind::Number;
constexpr CellKind kTruth = CellKind::Truth;
constexpr CellKind kJson = CellKind::Json;

StudioTable setsTable(const char* name)
{
    return {name, "set", "sets", false, "the sets of an exposure, in the order in which they were done",
            {{"load", "load", kNumber, "as it is written on the lift, in the lift's own unit; added to the body where it is loaded, negative for assistance"},
             {"reps", "reps", kNumber, "repetitions"},
             {"seconds", "seconds", kNumber, "time, in seconds, where the lift is held"},
             {"metres", "metres", kNumber, "distance, in metres, where the lift is carried"},
             {"rir", "rir", kNumber, "repetitions in reserve, 0 to 10; empty where nobody asked"},
             {"rest_s", "rest_s", kNumber, "rest before the set, in seconds; empty where it was not timed"},
             {"steadiness", "steadiness", kText, "shaky or broken; empty where it was steady"},
             {"warmup", "warmup", kTruth, "true for a warm-up set"}}};
}

std::vector<TableColumn> eventColumns()
{
    return {{"date", "date", kText, "the day it counts for"},
            {"type", "type", kText, "exposure, rehearsal, release, set, swap, block or lighter"},
            {"pain", "pain", kNumber, "0 to 10; empty for none"},
            {"note", "note", kText, "the coach's own words"},
            {"reason", "reason", kText, "why the coach set it by hand"},
            {"stage", "stage", kText, "set: the stage from now on"},
            {"load", "load", kNumber, "set: the load from now on, in the lift's own unit"},
            {"reps", "reps", kNumber, "set: repetitions from now on; rehearsal: repetitions done"},
            {"set_count", "sets", kNumber, "set: sets from now on"},
            {"rest_s", "rest_s", kNumber, "set: rest from now on, in seconds"},
            {"steadiness", "steadiness", kText, "rehearsal: shaky or broken; empty where it was steady"},
            {"criteria", "criteria", kJson, "rehearsal: what was looked at, and the verdict"},
            {"pauses", "pauses", kJson, "rehearsal: pauses at the top, in the middle, at the bottom, in seconds"},
            {"equipment", "equipment", kJson, "swap: the loads that the new equipment gives"},
            {"start_load", "start_load", kNumber, "swap: the load to begin with, in the lift's own unit"},
            {"body_share", "body_share", kNumber, "swap: the share of the body mass that is lifted, 0 to 1"},
            {"measure", "measure", kText, "swap: reps, seconds or metres"},
            {"exercise", "exercise", kText, "swap: the key of the new exercise in the catalogue"},
            {"pieces", "pieces", kNumber, "swap: 2 where a pair is held"},
            {"single", "single", kNumber, "block: the single that percents are of, in the lift's own unit"},
            {"tested", "tested", kTruth, "block: true where the single was tested"},
            {"weeks", "weeks", kJson, "block: the work of each week, by its Monday"}};
}

StudioTable eventsTable()
{
    std::vector<TableColumn> columns = eventColumns();
    columns.push_back({"session", "session", kText, "the code of the session that it was done in"});
    columns.push_back({"taken_back", "taken_back", kTruth, "true where the whole entry counts no longer"});
    return {"events", "event", "events", true, "the log of a lift, in the order in which it was entered", std::move(columns),
            {setsTable("sets"),
             {"former_events", "former", "former", false, "versions of an entry that were corrected, the oldest first", eventColumns(), {setsTable("former_sets")}}}};
}

StudioTable liftsTable()
{
    return {"lifts", "lift", "lifts", true, "the lifts of a client, one of a pattern at most",
            {{"pattern", "pattern", kText, "squat, hinge and so on"},
             {"exercise", "exercise", kText, "the key of the exercise in the catalogue, at the start"},
             {"equipment", "equipment", kKept, "the key of the studio's equipment, at the start"},
             {"region", "region", kText, "upper or lower body: which step of loads is usual"},
             {"measure", "measure", kText, "reps, seconds or metres"},
             {"body_share", "body_share", kNumber, "the share of the body mass that is lifted, 0 to 1"},
             {"pieces", "pieces", kNumber, "2 where a pair is held"},
             {"body_mass", "body_mass", kNumber, "at the start, in the lift's own unit"},
             {"start_load", "start_load", kNumber, "in the lift's own unit"},
             {"stage", "stage", kText, "where it starts"},
             {"policy", "policy", kJson, "figures of the rules that differ from the usual ones"},
             {"started", "started", kText, "the first day"}},
            {eventsTable()}};
}

StudioTable sessionsTable()
{
    return {"sessions", "session", "sessions", true, "sessions of a client: booked, and what became of them",
            {{"code", "code", kText, "its own in the studio; what the card carries"},
             {"date", "date", kText, "the day"},
             {"at", "at", kText, "the time it begins, HH:MM"},
             {"minutes", "minutes", kNumber, "how long it is booked for, in minutes"},
             {"coach", "coach", kText, "by name, as in coaches.csv"},
             {"place", "place", kKept, "the rack or the part of the floor"},
             {"places", "places", kNumber, "how many clients the slot takes"},
             {"kind", "kind", kText, "training, movement_screen or trial"},
             {"state", "state", kText, "planned, printed, recorded, missed, cancelled_in_time or cancelled_late"},
             {"locked", "locked", kTruth, "true where planning the week never moves it"},
             {"lifts", "lifts", kJson, "patterns it was planned with, in their order"},
             {"left_out", "left_out", kJson, "planned patterns that were left out, and why"},
             {"sleep", "report.sleep", kNumber, "1 bad to 5 good"},
             {"soreness", "report.soreness", kNumber, "1 none to 5 much"},
             {"stress", "report.stress", kNumber, "1 none to 5 much"},
             {"effort", "report.effort", kNumber, "of the whole session, 0 to 10"},
             {"minutes_done", "report.minutes", kNumber, "how long it took, in minutes"},
             {"note", "report.note", kText, "what was said of it"}}};
}

std::vector<StudioTable> talkTables()
{
    return {{"forms", "form", "forms", false, "what was asked and looked at, in the order in which it was begun",
             {{"kind", "kind", kText, "profile, health_intake, body_measures, movement_screen, field_tests or starting_plan"},
              {"day", "day", kText, "when it was begun"},
              {"finished", "finished", kTruth, "false while it is filled in"},
              {"detail", "detail", kJson, "the answers, in the words of the open format"}}},
            {"letters", "letter", "letters", false, "answers of doctors",
             {{"written_by", "written_by", kText, "who wrote it"},
              {"day", "day", kText, "of the letter"},
              {"valid_until", "valid_until", kText, "its last day"},
              {"limits", "limits", kKept, "what it allows"},
              {"answers", "answers", kJson, "the findings that it answers"},
              {"file_name", "file_name", kText, "of the copy"},
              {"copy", "copy", kText, "the bytes of the paper as Base64"}}},
            {"decisions", "decision", "decisions", false, "what was decided at check-ins",
             {{"day", "day", kText, "the day"},
              {"about", "about", kText, "what called for it"},
              {"lift", "lift", kText, "the pattern, where it is about one"},
              {"choice", "choice", kText, "what was chosen"},
              {"note", "note", kKept, "the coach's own words"},
              {"next_review", "next_review", kText, "when it is looked at again"}}},
            {"tested_maxima", "test", "tested_maxima", false, "what tests of a maximum found",
             {{"lift", "lift", kText, "the pattern"},
              {"day", "day", kText, "the day"},
              {"load", "load", kNumber, "in the lift's own unit"},
              {"reps", "reps", kNumber, "repetitions, 1 to 5"},
              {"ending", "ending", kText, "how the test ended"},
              {"note", "note", kText, "the coach's own words"}}},
            {"plans", "plan", "plans", false, "plans for the months after the beginner months",
             {{"begun", "begun", kText, "its first day"}, {"ended", "ended", kText, "the day it was ended early"}, {"note", "note", kKept, "the coach's own words"}}}};
}

StudioTable clientTableMade()
{
    std::vector<StudioTable> parts{{"cautions", "caution", "cautions", true, "what to take care of",
                                    {{"body_part", "body_part", kText, "short"},
                                     {"text", "text", kKept, "what to avoid"},
                                     {"short", "short", kKept, "the same in one line"},
                                     {"tags", "tags", kJson, "what exercises are checked against"},
                                     {"until", "until", kText, "its last day; empty: until it is taken away"}}},
                                   sessionsTable(), liftsTable()};
    for (StudioTable& table : talkTables()) {
        parts.push_back(std::move(table));
    }
    return {"clients", "client", "", true, "the clients",
            {{"name", "name", kText, "the name"},
             {"born", "born", kText, "the day of birth"},
             {"goal", "goal", kKept, "in the client's own words"},
             {"coach", "coach", kText, "by name, as in coaches.csv"},
             {"unit", "unit", kText, "kg or lb"},
             {"body_mass", "body_mass", kNumber, "the latest one measured, in the client's unit"},
             {"started", "started", kText, "the first day here"},
             {"sessions_per_week", "sessions_per_week", kNumber, "1 to 7"},
             {"away_until", "away_until", kText, "the first day back"},
             {"clearance", "clearance.state", kText, "not_needed, recommended, stop_and_seek, granted or unanswered"},
             {"clearance_reason", "clearance.reason", kKept, "which answers asked for it"},
             {"clearance_limits", "clearance.limits", kKept, "what the doctor allows"},
             {"clearance_asked", "clearance.asked", kText, "the day the letter went out"},
             {"clearance_granted", "clearance.granted", kText, "the day of the answer"},
             {"clearance_granted_by", "clearance.granted_by", kText, "who wrote it"},
             {"clearance_valid_until", "clearance.valid_until", kText, "its last day"},
             {"clearance_remind", "clearance.remind", kText, "the day to ask again"},
             {"planning", "planning", kJson, "what the week has to know: priority, recovery, other coaches, standing slots"},
             {"quotas", "quotas", kJson, "by Monday: sessions wanted in that week, where that is not the usual number"}},
            std::move(parts)};
}

StudioTable studioTableMade()
{
    return {"studio", "studio", "", true, "the studio itself: one row",
            {{"format", "format", kNumber, "of the open format"},
             {"name", "name", kText, "of the studio"},
             {"today", "today", kText, "the last day that anything is known of"},
             {"resting_limits", "resting_limits", kJson, "pulse in beats a minute and blood pressure in mmHg above which a reading warns"},
             {"week", "week", kJson, "hours, stations and weights of the studio"},
             {"erased_clients", "erased_clients", kJson, "the days on which clients were erased; the first one is erased client 1"}},
            {{"coaches", "coach", "coaches", true, "who works here",
              {{"name", "name", kText, "of its own"}, {"work", "work", kJson, "hours, capacity, usual most minutes a day, where they are not the usual"},
               {"is_coaching", "is_coaching", kTruth, "false for who coaches nobody, as at the front desk; empty is true"}}},
             {"equipment", "item", "equipment", true, "what lifts are loaded with",
              {{"key", "key", kText, "of its own; lifts name it"},
               {"name", "name", kText, "for people"},
               {"kind", "kind", kText, "barbell, dumbbell and so on"},
               {"unit", "unit", kText, "kg or lb: the unit of the lifts that are done with it"},
               {"equipment", "equipment", kJson, "the loads that it gives"}}},
             {"templates", "template", "templates", false, "the studio's own weeks of training", {{"key", "key", kText, "of its own"}, {"name", "name", kText, "for people"}}},
             {"closures", "closure", "closures", false, "days on which something is not there",
              {{"first", "first", kText, "day"},
               {"last", "last", kText, "day"},
               {"from", "from", kText, "time, HH:MM"},
               {"to", "to", kText, "time, HH:MM"},
               {"coach", "coach", kText, "who is away"},
               {"station", "station", kText, "what is away"},
               {"units", "units", kNumber, "how many of the station"},
               {"why", "why", kKept, "in own words"}}},
             {"erased_sessions", "erased_session", "erased_sessions", false, "sessions of erased clients, kept for the accounts",
              {{"client", "client", kNumber, "the number of the erased client"},
               {"coach", "coach", kText, "by name"},
               {"date", "date", kText, "the day"},
               {"at", "at", kText, "the time it began, HH:MM"},
               {"minutes", "minutes", kNumber, "how long it was booked for, in minutes"},
               {"kind", "kind", kText, "training, movement_screen or trial"},
               {"state", "state", kText, "recorded, missed, cancelled_in_time or cancelled_late"}}}}};
}

QString kindWords(CellKind kind)
{
    switch (kind) {
    case CellKind::Text:
        return QStringLiteral("text");
    case CellKind::KeptText:
        return QStringLiteral("text, perhaps empty");
    case CellKind::Number:
        return QStringLiteral("number");
    case CellKind::Truth:
        return QStringLiteral("true or false");
    case CellKind::Json:
        return QStringLiteral("JSON");
    }
    return {};
}

void describe(const StudioTable& table, std::vector<const char*> numbers, QString& text)
{
    text += QStringLiteral("\n%1.csv: %2\n").arg(QLatin1String(table.name), QLatin1String(table.meaning));
    numbers.push_back(table.number);
    for (const char* number : numbers) {
        text += QStringLiteral("  %1  number, from 1: %2\n").arg(QLatin1String(number), -22).arg(number == table.number ? QStringLiteral("of this row") : QStringLiteral("of the row that it belongs to"));
    }
    for (const TableColumn& column : table.columns) {
        text += QStringLiteral("  %1  %2: %3\n").arg(QLatin1String(column.name), -22).arg(kindWords(column.kind), QLatin1String(column.meaning));
    }
    text += QStringLiteral("  %1  JSON: fields that have no column here\n").arg(QLatin1String(kMoreColumn), -22);
    for (const StudioTable& part : table.parts) {
        describe(part, table.list[0] == '\0' && qstrcmp(table.name, "studio") == 0 ? std::vector<const char*>() : numbers, text);
    }
}

}  // namespace

const StudioTable& studioTable()
{
    static const StudioTable table = studioTableMade();
    return table;
}

const StudioTable& clientTable()
{
    static const StudioTable table = clientTableMade();
    return table;
}

std::vector<QByteArray> columnNames(const StudioTable& table, const std::vector<const char*>& numbers)
{
    std::vector<QByteArray> names(numbers.begin(), numbers.end());
    names.emplace_back(table.number);
    for (const TableColumn& column : table.columns) {
        names.emplace_back(column.name);
    }
    names.emplace_back(kMoreColumn);
    return names;
}

QString tablesReadme()
{
    QString text = QStringLiteral(
        "A studio of Chalkrung as tables\n"
        "\n"
        "Each file is CSV by RFC 4180: UTF-8, commas, lines end with CRLF, the first line names the columns. Days are YYYY-MM-DD, times\n"
        "HH:MM, numbers have a decimal point. An empty field is a value that is not there. Rows belong together by their numbers: the rows of\n"
        "a client stand together in every file, in the order of clients.csv. chalkrung open-files reads the folder again without loss.\n"
        "What is worked out from the log (the state of lifts, weekly volumes) is not here: it is worked out again. Nor is the history of changes:\n"
        "chalkrung history writes it.\n");
    describe(studioTable(), {}, text);
    describe(clientTable(), {}, text);
    return text;
}

}  // namespace chalk::exchange
