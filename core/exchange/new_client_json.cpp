#include "core/exchange/new_client_json.h"

#include "core/exchange/caution_json.h"
#include "core/exchange/field_test_json.h"
#include "core/exchange/health_intake_json.h"
#include "core/exchange/movement_screen_json.h"
#include "core/exchange/profile_json.h"
#include "core/exchange/studio_fields.h"

#include <QJsonArray>

#include <algorithm>

namespace chalk::exchange {

namespace {

using studio::NewClient;

/// Reads one; the fault of the reader is that of the file.
class NewClientReading {
public:
    NewClientReading(ObjectReader& reader, std::span<const clients::Coach> coaches, base::Date today) : m_reader(reader), m_coaches(coaches), m_today(today) {}

    NewClient read()
    {
        m_reader.allowOnly({"name", "born", "goal", "coach", "unit", "started", "sessions_per_week", "profile", "intake", "measures", "movement_screen", "field_tests", "cautions"});
        readOwn();
        readProfileOf();
        if (m_reader.has("intake")) {
            m_new.intake = taken(m_reader, readHealthIntake(m_reader.required("intake"), m_reader.pathOf("intake")));
            checkNotLater(m_new.intake->agreedOn, "intake.agreed");
        }
        readMeasures();
        if (m_reader.has("movement_screen")) {
            m_new.screen = taken(m_reader, readMovementScreen(m_reader.required("movement_screen"), m_reader.pathOf("movement_screen")));
            checkNotLater(m_new.screen->date, "movement_screen.date");
        }
        readFieldTests();
        if (m_reader.has("cautions")) {
            eachOf(m_reader, "cautions", [this](ObjectReader& item) { m_new.cautions.push_back(cautionOf(item)); });
        }
        return std::move(m_new);
    }

private:
    void readOwn()
    {
        clients::Client& client = m_new.client;
        client.name = labelAt(m_reader, "name");
        client.birthDate = optionalDayAt(m_reader, "born");
        client.goal = m_reader.has("goal") ? proseAt(m_reader, "goal") : std::string();
        client.coach = coachHere();
        client.unit = m_reader.has("unit") ? unitAt(m_reader) : base::MassUnit::Kilogram;
        client.startedOn = optionalDayAt(m_reader, "started").value_or(m_today);
        client.sessionsPerWeek = m_reader.optionalWholeNumber("sessions_per_week", 1, 7).value_or(client.sessionsPerWeek);
        if (client.birthDate) {
            take(clients::faultOfBirth(*client.birthDate, m_today), "born");
        }
    }

    void readProfileOf()
    {
        if (m_reader.has("profile")) {
            m_new.profile = taken(m_reader, readProfile(m_reader.required("profile"), m_reader.pathOf("profile")));
            if (const auto fault = clients::faultOf(m_new.profile, m_today)) {
                m_reader.take({"profile." + fault->field, fault->reason});
            }
        }
    }

    void readMeasures()
    {
        const QJsonArray array = m_reader.has("measures") ? m_reader.array("measures") : QJsonArray();
        for (qsizetype i = 0; i < array.size() && m_reader.isSound(); ++i) {
            const std::string place = fmt::format("measures[{}]", i);
            const clients::BodyMeasures day = taken(m_reader, readBodyMeasures(array[i], place));
            if (const auto fault = clients::faultOf(day, m_today)) {
                m_reader.take({place + '.' + fault->field, fault->reason});
            }
            checkIsNew(m_new.measures, day.date, place + ".date");
            m_new.measures.push_back(day);
        }
    }

    void readFieldTests()
    {
        const QJsonArray array = m_reader.has("field_tests") ? m_reader.array("field_tests") : QJsonArray();
        for (qsizetype i = 0; i < array.size() && m_reader.isSound(); ++i) {
            const std::string place = fmt::format("field_tests[{}]", i);
            const screens::FieldTestDay day = taken(m_reader, readFieldTestDay(array[i], place));
            checkNotLater(day.date, place + ".date");
            checkIsNew(m_new.fieldTests, day.date, place + ".date");
            m_new.fieldTests.push_back(day);
        }
    }

    /// Refuses a day that one of those read before has.
    template <typename Day>
    void checkIsNew(const std::vector<Day>& before, base::Date date, const std::string& place)
    {
        if (std::any_of(before.begin(), before.end(), [date](const Day& one) { return one.date == date; })) {
            m_reader.take({place, "is there already"});
        }
    }

    base::CoachId coachHere()
    {
        if (!m_reader.has("coach")) {
            if (m_coaches.size() != 1) {
                m_reader.fail("coach", "is required: the studio has several coaches or none");
            }
            return m_coaches.empty() ? base::CoachId() : m_coaches.front().id;
        }
        const std::string name = labelAt(m_reader, "coach");
        const auto coach = std::find_if(m_coaches.begin(), m_coaches.end(), [&name](const clients::Coach& one) { return one.name == name; });
        if (coach == m_coaches.end()) {
            m_reader.fail("coach", "is not one of the studio's coaches");
            return {};
        }
        return coach->id;
    }

    void take(const std::optional<clients::ProfileFault>& fault, const char* field)
    {
        if (fault) {
            m_reader.fail(field, fault->reason);
        }
    }

    void checkNotLater(const std::optional<base::Date>& day, const std::string& place)
    {
        if (day && *day > m_today) {
            m_reader.take({place, "is still to come"});
        }
    }

    ObjectReader& m_reader;
    std::span<const clients::Coach> m_coaches;
    base::Date m_today;
    NewClient m_new;
};

}  // namespace

JsonResult<NewClient> readNewClient(const QJsonValue& value, std::span<const clients::Coach> coaches, base::Date today)
{
    ObjectReader reader(value, {});
    NewClient client = NewClientReading(reader, coaches, today).read();
    return resultOf(reader, std::move(client));
}

}  // namespace chalk::exchange
