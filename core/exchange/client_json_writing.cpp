#include "core/exchange/client_form_json.h"
#include "core/exchange/client_json.h"
#include "core/exchange/client_plan_json.h"
#include "core/exchange/decision_json.h"
#include "core/exchange/equipment_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/lift_json.h"
#include "core/exchange/session_report_json.h"
#include "core/exchange/studio_week_json.h"

#include <QJsonArray>

#include <stdexcept>

namespace chalk::exchange {

namespace {

void putDay(QJsonObject& object, const char* field, const std::optional<base::Date>& day)
{
    if (day) {
        put(object, field, textOf(day->toString()));
    }
}

QString nameOfCoach(const StudioDocument& studio, base::CoachId id)
{
    for (const clients::Coach& coach : studio.coaches) {
        if (coach.id == id) {
            return textOf(coach.name);
        }
    }
    throw std::invalid_argument("a coach who is not of the studio");
}

WrittenObject written(const clients::Caution& caution)
{
    QJsonArray tags;
    for (const lifts::CautionTag tag : caution.tags) {
        tags.append(textOf(lifts::keyOf(tag)));
    }
    QJsonObject object;
    put(object, "body_part", textOf(caution.bodyPart));
    put(object, "text", textOf(caution.text));
    put(object, "short", textOf(caution.shortText));
    put(object, "tags", tags);
    putDay(object, "until", caution.until);
    return inLine(object);
}

QJsonObject written(const clients::Clearance& clearance)
{
    QJsonObject object;
    put(object, "state", textOf(clients::keyOf(clearance.state)));
    put(object, "reason", textOf(clearance.reason));
    putDay(object, "asked", clearance.askedOn);
    putDay(object, "granted", clearance.grantedOn);
    putDay(object, "valid_until", clearance.validUntil);
    put(object, "limits", textOf(clearance.limits));
    if (!clearance.grantedBy.empty()) {
        put(object, "granted_by", textOf(clearance.grantedBy));
    }
    putDay(object, "remind", clearance.remindOn);
    return object;
}

WrittenObject written(const sessions::Session& session, const DocumentClient& client, const StudioDocument& studio)
{
    QJsonObject object;
    put(object, "code", textOf(session.code));
    putDay(object, "date", session.date);
    put(object, "at", textOf(sessions::clockText(session.startMinute)));
    put(object, "minutes", session.minutes);
    put(object, "coach", nameOfCoach(studio, session.coach));
    put(object, "place", textOf(session.place));
    put(object, "places", session.placeCapacity);
    put(object, "kind", textOf(sessions::keyOf(session.kind)));
    put(object, "state", textOf(sessions::keyOf(session.state)));
    if (session.isLocked) {
        put(object, "locked", true);
    }
    if (const auto planned = client.plannedLifts.find(session.code); planned != client.plannedLifts.end()) {
        QJsonArray lifts;
        for (const lifts::Pattern pattern : planned->second) {
            lifts.append(textOf(lifts::keyOf(pattern)));
        }
        put(object, "lifts", lifts);
    }
    if (const auto reasons = client.leftOut.find(session.code); reasons != client.leftOut.end()) {
        QJsonObject leftOut;
        for (const auto& [pattern, why] : reasons->second) {
            leftOut.insert(textOf(lifts::keyOf(pattern)), textOf(why));
        }
        put(object, "left_out", leftOut);
    }
    if (const auto report = client.reports.find(session.code); report != client.reports.end() && !report->second.isEmpty()) {
        put(object, "report", toJson(report->second));
    }
    return inLine(object);
}

void writeProfile(LineWriter& writer, const clients::Client& who, const StudioDocument& studio)
{
    writer.field("name", textOf(who.name));
    if (who.birthDate) {
        writer.field("born", textOf(who.birthDate->toString()));
    }
    writer.field("goal", textOf(who.goal));
    writer.field("coach", nameOfCoach(studio, who.coach));
    writer.field("unit", who.unit == base::MassUnit::Pound ? QStringLiteral("lb") : QStringLiteral("kg"));
    if (who.bodyMass) {
        writer.field("body_mass", numberOf(*who.bodyMass));
    }
    writer.field("started", textOf(who.startedOn.toString()));
    writer.field("sessions_per_week", who.sessionsPerWeek);
    if (who.awayUntil) {
        writer.field("away_until", textOf(who.awayUntil->toString()));
    }
}

template <class Item, class Write>
void writeList(LineWriter& writer, const char* name, const std::vector<Item>& items, Write&& write)
{
    std::vector<WrittenObject> lines;
    for (const Item& item : items) {
        lines.push_back(write(item));
    }
    writer.list(name, lines);
}

}  // namespace

WrittenObject writtenClient(const DocumentClient& client, const StudioDocument& studio)
{
    LineWriter writer;
    writeProfile(writer, client.client, studio);
    if (client.planning != week::ClientPlanning()) {
        writer.field("planning", toJson(client.planning, coachNamesOf(studio.coaches)));
    }
    writer.field("clearance", written(client.clearance));
    writeList(writer, "cautions", client.cautions, [](const clients::Caution& caution) { return written(caution); });
    writeList(writer, "sessions", client.sessions, [&](const sessions::Session& session) { return written(session, client, studio); });
    writeList(writer, "lifts", client.lifts, [](const DocumentLift& lift) { return writtenLift(lift, 2); });
    if (!client.forms.empty()) {
        writeList(writer, "forms", client.forms, [](const DocumentForm& form) { return inLine(toJson(form)); });
    }
    if (!client.letters.empty()) {
        writeList(writer, "letters", client.letters, [](const DocumentLetter& letter) { return inLine(toJson(letter)); });
    }
    if (!client.decisions.empty()) {
        writeList(writer, "decisions", client.decisions, [](const DocumentDecision& decision) { return inLine(toJson(decision)); });
    }
    if (!client.quotas.empty()) {
        writer.field("quotas", toJson(client.quotas));
    }
    if (!client.plans.empty()) {
        writeList(writer, "plans", client.plans, [](const direction::ClientPlan& plan) { return inLine(toJson(plan)); });
    }
    if (!client.tests.empty()) {
        writeList(writer, "tested_maxima", client.tests, [](const DocumentTest& test) { return inLine(toJson(test)); });
    }
    return writer.finishedFile();
}

}  // namespace chalk::exchange
