#include "app/commands/record_check.h"

#include "app/commands/lift_text.h"
#include "core/exchange/event_json.h"
#include "core/sessions/entry_line.h"
#include "core/store/history_reader.h"
#include "core/store/session_reader.h"
#include "ui/common/formats.h"

#include <algorithm>

namespace chalk::app {

namespace {

using progression::Event;
using progression::LiftMachine;
using store::ClientFile;
using store::ClientLift;
using ui::common::qstring;

template <class T>
using OrRefusal = tl::expected<T, RecordRefusal>;

tl::unexpected<RecordRefusal> refusal(const QString& place, const QString& reason)
{
    return tl::make_unexpected(RecordRefusal{place + QStringLiteral(": ") + reason, std::nullopt});
}

tl::unexpected<RecordRefusal> refusal(const store::StoreError& error)
{
    return tl::make_unexpected(RecordRefusal{error.message, error});
}

QString wordsFor(sessions::EntryDoubt doubt)
{
    switch (doubt) {
    case sessions::EntryDoubt::LoadFarOff:
        return QStringLiteral("the load is far from what was planned");
    case sessions::EntryDoubt::LoadInOtherUnit:
        return QStringLiteral("the load looks like kg for lb, or lb for kg");
    case sessions::EntryDoubt::ManyReps:
        return QStringLiteral("that is a great many reps");
    case sessions::EntryDoubt::LoadNotOnHand:
        return QStringLiteral("the equipment of this lift cannot give that load");
    }
    return {};
}

/// Checks a file's results, item by item.
class RecordCheck {
public:
    RecordCheck(store::Database& database, const ClientFile& client, const lifts::Catalogue& catalogue, const RecordInput& input, base::Date today)
        : m_database(database), m_client(client), m_catalogue(catalogue), m_input(input), m_today(today), m_day(input.date.value_or(today)),
          m_told(input.report.value_or(sessions::SessionReport())), m_toldPlace(input.reportPlace)
    {
    }

    [[nodiscard]] OrRefusal<CheckedRecords> check()
    {
        CheckedRecords checked;
        const auto session = sessionMeant();
        if (!session) {
            return tl::make_unexpected(session.error());
        }
        checked.session = *session;
        if (m_day > m_today) {
            return refusal(QStringLiteral("date"), QStringLiteral("%1 is still to come").arg(qstring(m_day.toString())));
        }
        for (const RecordItem& item : m_input.items) {
            if (const auto added = add(item, checked); !added) {
                return tl::make_unexpected(added.error());
            }
        }
        if (const auto added = addReport(checked); !added) {
            return tl::make_unexpected(added.error());
        }
        return checked;
    }

private:
    /// What the file says, put over what was said of the session before; words of a note are added.
    [[nodiscard]] OrRefusal<void> addReport(CheckedRecords& checked)
    {
        const sessions::SessionReport& told = m_told;
        if (told.isEmpty()) {
            return {};
        }
        if (checked.session.isNone()) {
            return refusal(m_toldPlace, QStringLiteral("there is no single session of %1 that day: name it by session").arg(qstring(m_client.client.name)));
        }
        store::SessionReader reader(m_database);
        const auto before = reader.report(checked.session);
        const auto isHealthKept = reader.isHealthKept(checked.session);
        if (!before || !isHealthKept) {
            return refusal(before ? isHealthKept.error() : before.error());
        }
        if (told.hasReadiness() && !*isHealthKept) {
            return refusal(m_toldPlace, QStringLiteral("without consent no sleep, soreness or stress of %1 is kept").arg(qstring(m_client.client.name)));
        }
        const sessions::SessionReport report = sessions::toldOver(*before, told);
        if (const auto fault = sessions::faultOf(report)) {
            return refusal(m_toldPlace, qstring(fault->field) + QLatin1Char(' ') + qstring(fault->reason));
        }
        checked.report = report == *before ? std::nullopt : std::optional(report);
        return {};
    }

    /// The session named; else the client's only one of that day; none where there is no such one.
    [[nodiscard]] OrRefusal<base::SessionId> sessionMeant()
    {
        store::SessionReader reader(m_database);
        if (!m_input.sessionCode.isEmpty()) {
            const auto named = reader.withCode(m_input.sessionCode.toStdString());
            if (!named) {
                return refusal(named.error());
            }
            if (!*named || (*named)->session.client != m_client.client.id) {
                return refusal(QStringLiteral("session"), QStringLiteral("%1 is no session of this client").arg(m_input.sessionCode));
            }
            m_day = m_input.date.value_or((*named)->session.date);
            return (*named)->session.id;
        }
        const auto all = reader.on(m_day);
        if (!all) {
            return refusal(all.error());
        }
        std::vector<base::SessionId> own;
        for (const store::NamedSession& one : *all) {
            if (one.session.client == m_client.client.id) {
                own.push_back(one.session.id);
            }
        }
        return own.size() == 1 ? own.front() : base::SessionId();
    }

    [[nodiscard]] OrRefusal<void> add(const RecordItem& item, CheckedRecords& checked)
    {
        const auto meant = liftMeant(item);
        if (!meant) {
            return tl::make_unexpected(meant.error());
        }
        const ClientLift* lift = *meant;
        auto machine = machineBefore(*lift, item, checked);
        if (!machine) {
            return tl::make_unexpected(machine.error());
        }
        const auto event = eventMeant(item, *machine);
        if (!event) {
            return tl::make_unexpected(event.error());
        }
        if (event->date > m_today) {
            return refusal(item.place, QStringLiteral("%1 is still to come").arg(qstring(event->date.toString())));
        }
        const bool isLoaded = std::holds_alternative<progression::Exposure>(event->body) || std::holds_alternative<progression::CoachSet>(event->body);
        if (isLoaded && clients::isBlocked(m_client.clearance, event->date)) {
            return refusal(item.place, QStringLiteral("%1 is waiting for clearance: nothing loaded is recorded until it is on file").arg(qstring(m_client.client.name)));
        }
        if (const auto fault = machine->faultOf(event->body)) {
            return refusal(item.place, qstring(fault->field) + QLatin1Char(' ') + qstring(fault->reason));
        }
        noteDoubts(item, *machine, *event, checked);
        noteRemark(item, *machine);
        checked.records.push_back({lift->lift.id, *event});
        return {};
    }

    /// The names of a lift that a person may write: pattern and exercise, as keys and in words.
    [[nodiscard]] QStringList namesOf(const ClientLift& lift) const
    {
        const LiftMachine& machine = lift.lift.machine;
        return {qstring(lifts::keyOf(lift.lift.pattern)), ui::common::patternName(lift.lift.pattern), qstring(machine.kit().exerciseKey),
                nameOfLift(machine, m_catalogue)};
    }

    /// The lift of that name; else the only one with a name that holds it.
    [[nodiscard]] OrRefusal<const ClientLift*> liftMeant(const RecordItem& item) const
    {
        std::vector<const ClientLift*> partly;
        for (const ClientLift& lift : m_client.lifts) {
            const QStringList names = namesOf(lift);
            if (names.contains(item.lift, Qt::CaseInsensitive)) {
                return &lift;
            }
            if (!names.filter(item.lift, Qt::CaseInsensitive).isEmpty()) {
                partly.push_back(&lift);
            }
        }
        const QString client = qstring(m_client.client.name);
        if (partly.size() > 1) {
            return refusal(item.place, QStringLiteral("%1 lifts of %2 are meant by %3").arg(partly.size()).arg(client, item.lift));
        }
        return partly.empty() ? refusal(item.place, QStringLiteral("%1 has no lift %2").arg(client, item.lift)) : OrRefusal<const ClientLift*>(partly.front());
    }

    [[nodiscard]] base::Date dayOf(const RecordItem& item) const
    {
        const auto* object = std::get_if<QJsonObject>(&item.result);
        const QString day = object == nullptr ? QString() : object->value(QLatin1String("date")).toString();
        return base::Date::parse(day.toStdString()).value_or(m_day);
    }

    /// The lift as it stood before this item: its log up to that day, and what stands in the file before.
    [[nodiscard]] OrRefusal<LiftMachine> machineBefore(const ClientLift& lift, const RecordItem& item, const CheckedRecords& checked)
    {
        const auto history = store::HistoryReader(m_database).read(lift.lift.id);
        if (!history) {
            return refusal(history.error());
        }
        auto machine = LiftMachine::create(lift.lift.machine.setup());
        if (!machine) {
            return refusal(item.place, qstring(machine.error().field) + QLatin1Char(' ') + qstring(machine.error().reason));
        }
        std::vector<Event> before;
        for (const store::HistoryEntry& entry : *history) {
            before.push_back(entry.event);
        }
        for (const store::NewRecord& record : checked.records) {
            if (record.lift == lift.lift.id) {
                before.push_back(record.event);
            }
        }
        std::stable_sort(before.begin(), before.end(), [](const Event& a, const Event& b) { return a.date < b.date; });
        for (const Event& event : before) {
            if (event.date <= dayOf(item) && !machine->faultOf(event.body)) {
                machine->apply(event.date, event.body);
            }
        }
        return *std::move(machine);
    }

    [[nodiscard]] OrRefusal<Event> eventMeant(const RecordItem& item, const LiftMachine& machine) const
    {
        if (const auto* object = std::get_if<QJsonObject>(&item.result)) {
            QJsonObject whole = *object;
            if (!whole.contains(QLatin1String("date"))) {
                whole.insert(QStringLiteral("date"), qstring(m_day.toString()));
            }
            const auto event = exchange::readEvent(whole, item.place.toStdString(), machine.kit().measure, {true, false});
            return event ? OrRefusal<Event>(*event) : refusal(qstring(event.error().field), qstring(event.error().reason));
        }
        const std::string text = std::get<QString>(item.result).toStdString();
        const auto line = sessions::parseEntryLine(text);
        for (const sessions::EntryToken& token : line.tokens) {
            if (token.part == sessions::EntryPart::Unknown) {
                return refusal(item.place, QStringLiteral("%1 is not understood").arg(qstring(text.substr(token.begin, token.length))));
            }
        }
        const auto due = machine.prescriptionOn(m_day);
        const auto body = sessions::eventOf(line, {due, machine.kit().measure, machine.setup().policy});
        if (!body) {
            return refusal(item.place, line.isSkipped ? QStringLiteral("a skipped lift is left out of the file")
                                                      : QStringLiteral("the lift is on hold: release it first"));
        }
        // Numbers of a line are in the ranges of a file's.
        const auto event = exchange::readEvent(exchange::toJson(Event{m_day, *body}, machine.kit().measure), {}, machine.kit().measure);
        return event ? OrRefusal<Event>(*event) : refusal(item.place, qstring(event.error().field) + QLatin1Char(' ') + qstring(event.error().reason));
    }

    /// Words after two spaces go to the session's note.
    void noteRemark(const RecordItem& item, const LiftMachine& machine)
    {
        const auto* line = std::get_if<QString>(&item.result);
        const std::string remark = line == nullptr ? std::string() : sessions::parseEntryLine(line->toStdString()).note;
        if (!remark.empty()) {
            sessions::addToNote(m_told, nameOfLift(machine, m_catalogue).toStdString() + ": " + remark);
            m_toldPlace = m_toldPlace.isEmpty() ? item.place : m_toldPlace;
        }
    }

    void noteDoubts(const RecordItem& item, const LiftMachine& machine, const Event& event, CheckedRecords& checked) const
    {
        const auto due = machine.prescriptionOn(event.date);
        const auto* exposure = std::get_if<progression::Exposure>(&event.body);
        if (exposure == nullptr || due.kind != progression::PrescriptionKind::Work) {
            return;
        }
        for (const auto doubt : sessions::doubtsAbout(*exposure, {due, machine.kit().measure, machine.setup().policy}, machine.loads())) {
            checked.doubts.append(item.place + QStringLiteral(": ") + wordsFor(doubt));
        }
    }

    store::Database& m_database;
    const ClientFile& m_client;
    const lifts::Catalogue& m_catalogue;
    const RecordInput& m_input;
    base::Date m_today;
    base::Date m_day;
    sessions::SessionReport m_told;  ///< once of the session, by lines of its own and behind the results
    QString m_toldPlace;
};

}  // namespace

tl::expected<CheckedRecords, RecordRefusal> checkRecords(store::Database& database, const ClientFile& client, const lifts::Catalogue& catalogue,
                                                         const RecordInput& input, base::Date today)
{
    return RecordCheck(database, client, catalogue, input, today).check();
}

}  // namespace chalk::app
