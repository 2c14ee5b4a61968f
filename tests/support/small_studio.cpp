#include "tests/support/small_studio.h"

#include "core/store/client_reader.h"
#include "core/store/lift_cache.h"
#include "core/store/studio_import.h"
#include "tests/support/lift_on_test.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>

#include <stdexcept>

namespace chalk::test {

namespace {

exchange::DocumentLift squatOfAda()
{
    exchange::DocumentLift lift;
    lift.pattern = lifts::Pattern::Squat;
    lift.exerciseKey = "back_squat";
    lift.equipmentKey = "bar";
    lift.setup = lowerLift();
    lift.startedOn = smallStudioDay() - 40;
    lift.events = {{{smallStudioDay() - 40, goodRehearsal()}, {}},
                   {{smallStudioDay() - 35, exposureOf({{30, 8, 5}, {30, 8, 5}})}, {}},
                   {{smallStudioDay() - 28, exposureOf({{35, 8, 3}, {35, 8, 3}})}, {}},
                   {{smallStudioDay() - 21, exposureOf({{40, 8, 2}, {40, 8, 2}})}, "S1"},
                   {{smallStudioDay() - 7, exposureOf({{45, 8, 1}, {45, 7, 2}})}, "S2"}};
    return lift;
}

exchange::DocumentLift pressOfAda()
{
    exchange::DocumentLift lift;
    lift.pattern = lifts::Pattern::HorizontalPush;
    lift.exerciseKey = "dumbbell_bench_press";
    lift.equipmentKey = "dumbbells";
    lift.setup = lowerLift(fixedKit({6, 8, 10, 12}));
    lift.setup.kit.pieces = 2;
    lift.setup.region = lifts::Region::Upper;
    lift.startedOn = smallStudioDay() - 30;
    lift.events = {{{smallStudioDay() - 30, goodRehearsal()}, {}}};
    return lift;
}

exchange::DocumentLift hingeOfAda()
{
    exchange::DocumentLift lift;
    lift.pattern = lifts::Pattern::Hinge;
    lift.exerciseKey = "trap_bar_deadlift";
    lift.equipmentKey = "bar";
    lift.setup = lowerLift();
    lift.setup.startStage = progression::Stage::BaseLoad;
    lift.startedOn = smallStudioDay() - 30;
    lift.events = {{{smallStudioDay() - 14, exposureOf({{60, 8, 4}, {60, 8, 4}}, 5)}, "S1"}};
    return lift;
}

sessions::Session sessionOfAda(int daysAgo, sessions::SessionState state, const char* code)
{
    return {{}, base::ClientId(1), base::CoachId(1), smallStudioDay() - daysAgo, 540, 60, "Rack 1", 4, sessions::SessionKind::Training, state, code};
}

exchange::DocumentClient ada()
{
    exchange::DocumentClient client;
    client.client = {base::ClientId(1), "Ada Lund", base::Date::parse("1984-05-17"), "Carry the boat", base::CoachId(1), base::MassUnit::Kilogram,
                     kilos(71.5), smallStudioDay() - 45, 2, {}};
    client.cautions = {{{}, "Lower back", "No loaded rounding.", "No loaded rounding", {lifts::CautionTag::LowerBack}, smallStudioDay() + 60},
                       {{}, "Wrist", "Over since last week.", "Over", {lifts::CautionTag::Wrist}, smallStudioDay() - 7}};
    client.lifts = {pressOfAda(), squatOfAda(), hingeOfAda()};
    client.sessions = {sessionOfAda(21, sessions::SessionState::Recorded, "S1"), sessionOfAda(14, sessions::SessionState::Missed, "S0"),
                       sessionOfAda(7, sessions::SessionState::Recorded, "S2"), sessionOfAda(0, sessions::SessionState::Planned, "S3")};
    return client;
}

exchange::DocumentClient bo()
{
    exchange::DocumentClient client;
    client.client = {base::ClientId(2), "Bo Arden", {}, "Stairs", base::CoachId(2), base::MassUnit::Pound, {}, smallStudioDay() - 6, 1, {}};
    client.clearance = {clients::ClearanceState::Recommended, "two answers", smallStudioDay() - 6, {}, {}, {}};
    return client;
}

}  // namespace

base::Date smallStudioDay()
{
    return *base::Date::parse("2026-11-24");
}

exchange::StudioDocument smallStudio()
{
    exchange::StudioDocument document;
    document.name = "Small Studio";
    document.coaches = {{base::CoachId(1), "Ines"}, {base::CoachId(2), "Tobias"}};
    document.equipment = {{"bar", "Bar and plates", lifts::EquipmentKind::Barbell, base::MassUnit::Kilogram, barbellKit().equipment},
                          {"dumbbells", "Dumbbells", lifts::EquipmentKind::DumbbellPair, base::MassUnit::Kilogram, fixedKit({6, 8, 10, 12}).equipment}};
    document.clients = {ada(), bo()};
    document.today = smallStudioDay();
    return document;
}

StudioOnTest::StudioOnTest(const exchange::StudioDocument& document)
    : m_server(serverOnTest().isEmpty() ? nullptr : std::make_unique<DatabaseOnServer>(DatabaseOnServer::Holding::EmptyStudio))
{
    auto database = store::Database::open(file(), store::OpenMode::CreateIfMissing);
    if (!database) {
        throw std::runtime_error(database.error().message.toStdString());
    }
    m_database = *std::move(database);
    if (const auto imported = store::importStudio(*m_database, document, someMoment()); !imported) {
        throw std::runtime_error(imported.error().message.toStdString());
    }
}

void StudioOnTest::open()
{
    auto database = store::Database::open(file(), store::OpenMode::MustExist);
    if (!database) {
        throw std::runtime_error(database.error().message.toStdString());
    }
    m_database = *std::move(database);
}

QStringList StudioOnTest::rows(const QString& sql)
{
    QStringList rows;
    QSqlQuery query(m_database->connection());
    if (!query.exec(sql)) {
        throw std::runtime_error(query.lastError().text().toStdString());
    }
    while (query.next()) {
        QStringList row;
        for (int i = 0; i < query.record().count(); ++i) {
            row.append(query.isNull(i) ? QStringLiteral("-") : query.value(i).toString());
        }
        rows.append(row.join(QLatin1Char('|')));
    }
    return rows;
}

void StudioOnTest::letReferencesDangle()
{
    rows(QLatin1String(m_server ? "SET session_replication_role = replica" : "PRAGMA foreign_keys = OFF"));
}

QStringList StudioOnTest::cacheRows()
{
    return rows(QStringLiteral("SELECT * FROM lift_state ORDER BY lift_id")) + rows(QStringLiteral("SELECT * FROM stage_reached ORDER BY 1, 2, 3")) +
           rows(QStringLiteral("SELECT * FROM client_week ORDER BY 1, 2")) + rows(QStringLiteral("SELECT lift_id, %1 FROM lift_log ORDER BY lift_id").arg(QLatin1String(m_server ? "encode(log, 'hex')" : "hex(log)")));
}

void StudioOnTest::rebuildCaches()
{
    store::Transaction transaction(*m_database);
    store::EventLog log(*m_database);
    store::LiftCache(*m_database, log).rebuildAll();
    if (const auto committed = transaction.commit(); !committed) {
        throw std::runtime_error(committed.error().message.toStdString());
    }
}

base::ClientId clientNamed(store::Database& database, const std::string& name)
{
    const auto names = store::ClientReader(database).names().value();
    for (const auto& [id, other] : names) {
        if (other == name) {
            return id;
        }
    }
    throw std::runtime_error("nobody is called " + name);
}

base::LiftId liftOf(store::Database& database, base::ClientId client, lifts::Pattern pattern)
{
    const auto clientFile = store::ClientReader(database).read(client, smallStudioDay()).value();
    for (const auto& [lift, reached] : clientFile.lifts) {
        if (lift.pattern == pattern) {
            return lift.id;
        }
    }
    throw std::runtime_error("there is no such lift");
}

QString someMoment()
{
    return QStringLiteral("2026-11-24T08:42:00Z");
}

}  // namespace chalk::test
