#include "core/exchange/client_json.h"

#include "core/exchange/caution_json.h"
#include "core/exchange/client_form_json.h"
#include "core/exchange/client_plan_json.h"
#include "core/exchange/decision_json.h"
#include "core/exchange/lift_json.h"
#include "core/exchange/session_report_json.h"
#include "core/exchange/studio_fields.h"
#include "core/exchange/studio_week_json.h"

#include <QJsonArray>

#include <algorithm>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

/// Reads one client; the fault of the reader is that of the file.
class ClientReading {
public:
    ClientReading(ObjectReader& reader, const StudioDocument& studio, const lifts::Catalogue& catalogue, std::set<std::string>& codes)
        : m_reader(reader), m_studio(studio), m_catalogue(catalogue), m_codes(codes)
    {
    }

    DocumentClient read()
    {
        m_reader.allowOnly({"name", "born", "goal", "coach", "unit", "body_mass", "started", "sessions_per_week", "away_until", "clearance", "cautions",
                            "sessions", "lifts", "forms", "letters", "planning", "decisions", "quotas", "plans",
                            "tested_maxima"});
        readProfile();
        if (m_reader.has("planning")) {
            m_client.planning = taken(m_reader, readClientPlanning(m_reader.required("planning"), m_reader.pathOf("planning"), coachNamesOf(m_studio.coaches)));
        }
        readClearance();
        eachOf(m_reader, "cautions", [this](ObjectReader& item) { m_client.cautions.push_back(cautionOf(item)); });
        eachOf(m_reader, "sessions", [this](ObjectReader& item) { readSession(item); });
        readLifts();
        checkPlannedLifts();
        readForms();
        readLetters();
        readCheckIn(m_reader, m_client, m_studio.today);
        readDirection(m_reader, m_client, m_studio.today);
        return std::move(m_client);
    }

private:
    void readProfile()
    {
        clients::Client& client = m_client.client;
        client.name = labelAt(m_reader, "name");
        client.birthDate = optionalDayAt(m_reader, "born");
        client.goal = proseAt(m_reader, "goal");
        client.coach = coachAt(m_reader);
        client.unit = unitAt(m_reader);
        client.bodyMass = optionalMassAt(m_reader, "body_mass");
        client.startedOn = dayAt(m_reader, "started");
        client.sessionsPerWeek = m_reader.wholeNumber("sessions_per_week", 1, 7);
        client.awayUntil = optionalDayAt(m_reader, "away_until");
        if (client.birthDate && *client.birthDate >= std::min(client.startedOn, m_studio.today)) {
            m_reader.fail("born", "must lie before the first day here");
        }
    }

    void readClearance()
    {
        clients::Clearance& clearance = m_client.clearance;
        ObjectReader item(m_reader.required("clearance"), m_reader.pathOf("clearance"));
        item.allowOnly({"state", "reason", "asked", "granted", "valid_until", "limits", "granted_by", "remind"});
        clearance.state = wordAt(item, "state", clients::clearanceStateOf, "not_needed, recommended, stop_and_seek, granted or unanswered");
        clearance.reason = proseAt(item, "reason");
        clearance.askedOn = optionalDayAt(item, "asked");
        clearance.grantedOn = optionalDayAt(item, "granted");
        clearance.validUntil = optionalDayAt(item, "valid_until");
        clearance.limits = proseAt(item, "limits");
        clearance.grantedBy = item.has("granted_by") ? labelAt(item, "granted_by") : std::string();
        clearance.remindOn = optionalDayAt(item, "remind");
        checkPast(item, "asked", clearance.askedOn);
        checkPast(item, "granted", clearance.grantedOn);
        if (clearance.askedOn && clearance.grantedOn && *clearance.grantedOn < *clearance.askedOn) {
            item.fail("granted", "must not lie before `asked`");
        }
        if (clearance.grantedOn && clearance.validUntil && *clearance.validUntil < *clearance.grantedOn) {
            item.fail("valid_until", "must not lie before `granted`");
        }
        if (item.fault()) {
            m_reader.take(*item.fault());
        }
    }

    void checkPast(ObjectReader& reader, const char* field, std::optional<base::Date> day) const
    {
        if (day && *day > m_studio.today) {
            reader.fail(field, "lies after the studio's day");
        }
    }

    void readSession(ObjectReader& reader)
    {
        reader.allowOnly({"code", "date", "at", "minutes", "coach", "place", "places", "kind", "state", "lifts", "left_out", "report", "locked"});
        sessions::Session session;
        session.code = labelAt(reader, "code");
        if (reader.isSound() && !m_codes.insert(session.code).second) {
            reader.fail("code", "is that of another session already");
        }
        session.date = dayAt(reader, "date");
        session.startMinute = wordAt(reader, "at", sessions::parseClock, "a time, HH:MM");
        session.minutes = reader.wholeNumber("minutes", 5, 480);
        session.coach = coachAt(reader);
        session.place = proseAt(reader, "place");
        session.placeCapacity = reader.wholeNumber("places", 1, 100);
        session.kind = wordAt(reader, "kind", sessions::sessionKindOf, "training, movement_screen or trial");
        session.state = wordAt(reader, "state", sessions::sessionStateOf, "planned, printed, recorded, missed, cancelled_in_time or cancelled_late");
        session.isLocked = reader.flag("locked", false);
        const bool isOver = session.state == sessions::SessionState::Recorded || session.state == sessions::SessionState::Missed;
        if (isOver && session.date > m_studio.today) {
            reader.fail("state", "cannot be: the session lies after the studio's day");
        }
        if (reader.has("lifts")) {
            readPlannedLifts(reader, session.code);
        }
        if (reader.has("left_out")) {
            readLeftOut(reader, session.code);
        }
        if (reader.has("report")) {
            readReport(reader, session);
        }
        m_client.sessions.push_back(std::move(session));
    }

    void readReport(ObjectReader& reader, const sessions::Session& session)
    {
        sessions::SessionReport report = taken(reader, readSessionReport(reader.required("report"), reader.pathOf("report")));
        if (report.isEmpty()) {
            reader.fail("report", "must say something, or be left out");
        }
        if (session.date > m_studio.today) {
            reader.fail("report", "cannot be: the session lies after the studio's day");
        }
        m_client.reports[session.code] = std::move(report);
    }

    void readPlannedLifts(ObjectReader& reader, const std::string& code)
    {
        std::vector<lifts::Pattern>& planned = m_client.plannedLifts[code];
        const QJsonArray keys = reader.array("lifts");
        for (qsizetype i = 0; i < keys.size(); ++i) {
            const auto pattern = lifts::patternOf(keys[i].toString().toStdString());
            const std::string place = fmt::format("{}[{}]", reader.pathOf("lifts"), i);
            if (!pattern) {
                reader.take({place, "is no pattern"});
            } else if (std::find(planned.begin(), planned.end(), *pattern) != planned.end()) {
                reader.take({place, "is named twice"});
            } else {
                planned.push_back(*pattern);
            }
        }
        if (planned.empty()) {
            reader.fail("lifts", "must name a pattern, or be left out");
        }
    }

    /// Reasons by pattern; each of them is planned for the session.
    void readLeftOut(ObjectReader& outer, const std::string& code)
    {
        const std::vector<lifts::Pattern> planned = m_client.plannedLifts[code];
        const QJsonObject reasons = outer.required("left_out").toObject();
        for (auto reason = reasons.begin(); reason != reasons.end(); ++reason) {
            const auto pattern = lifts::patternOf(reason.key().toStdString());
            const std::string place = fmt::format("{}.{}", outer.pathOf("left_out"), reason.key().toStdString());
            if (!pattern || std::find(planned.begin(), planned.end(), *pattern) == planned.end()) {
                outer.take({place, "is not planned for this session"});
            } else if (!reason.value().isString()) {
                outer.take({place, "must be a text"});
            } else {
                m_client.leftOut[code][*pattern] = reason.value().toString().toStdString();
            }
        }
        if (reasons.isEmpty()) {
            outer.fail("left_out", "must name a pattern, or be left out");
        }
    }

    /// Every planned lift has to be one that the client has.
    void checkPlannedLifts()
    {
        for (std::size_t i = 0; i < m_client.sessions.size() && m_reader.isSound(); ++i) {
            const auto planned = m_client.plannedLifts.find(m_client.sessions[i].code);
            for (std::size_t j = 0; planned != m_client.plannedLifts.end() && j < planned->second.size(); ++j) {
                const lifts::Pattern pattern = planned->second[j];
                const bool isThere = std::any_of(m_client.lifts.begin(), m_client.lifts.end(), [pattern](const DocumentLift& lift) { return lift.pattern == pattern; });
                if (!isThere) {
                    m_reader.take({fmt::format("sessions[{}].lifts[{}]", i, j), "is no lift of this client"});
                }
            }
        }
    }

    void readForms()
    {
        const QJsonArray array = m_reader.has("forms") ? m_reader.array("forms") : QJsonArray();
        std::set<std::string_view> open;
        for (qsizetype i = 0; i < array.size() && m_reader.isSound(); ++i) {
            const std::string place = fmt::format("forms[{}]", i);
            m_client.forms.push_back(taken(m_reader, readForm(array[i], place, m_studio.today)));
            const DocumentForm& form = m_client.forms.back();
            if (m_reader.isSound() && !form.isFinished && !open.insert(studio::kindOf(form.content)).second) {
                m_reader.take({place + ".finished", "must be true: another form of this kind is open already"});
            }
        }
    }

    void readLetters()
    {
        const QJsonArray array = m_reader.has("letters") ? m_reader.array("letters") : QJsonArray();
        for (qsizetype i = 0; i < array.size() && m_reader.isSound(); ++i) {
            m_client.letters.push_back(taken(m_reader, readLetter(array[i], fmt::format("letters[{}]", i), m_studio.today)));
        }
    }

    void readLifts()
    {
        const LiftSurroundings surroundings{m_studio, m_catalogue, m_client.sessions};
        const QJsonArray array = m_reader.array("lifts");
        std::set<lifts::Pattern> patterns;
        for (qsizetype i = 0; i < array.size() && m_reader.isSound(); ++i) {
            const std::string place = fmt::format("{}[{}]", m_reader.pathOf("lifts"), i);
            m_client.lifts.push_back(taken(m_reader, readLift(array[i], place, surroundings)));
            if (!patterns.insert(m_client.lifts.back().pattern).second) {
                m_reader.take({place + ".pattern", "is that of another lift already"});
            }
        }
    }

    base::CoachId coachAt(ObjectReader& reader) const
    {
        const std::string name = labelAt(reader, "coach");
        for (const clients::Coach& coach : m_studio.coaches) {
            if (coach.name == name) {
                return coach.id;
            }
        }
        reader.fail("coach", "is not one of the studio's coaches");
        return {};
    }

    ObjectReader& m_reader;
    const StudioDocument& m_studio;
    const lifts::Catalogue& m_catalogue;
    std::set<std::string>& m_codes;
    DocumentClient m_client;
};

}  // namespace

JsonResult<DocumentClient> readClient(const QJsonValue& value, const StudioDocument& studio, const lifts::Catalogue& catalogue, std::set<std::string>& codes)
{
    ObjectReader reader(value, {});
    DocumentClient client = ClientReading(reader, studio, catalogue, codes).read();
    return resultOf(reader, std::move(client));
}

}  // namespace chalk::exchange
