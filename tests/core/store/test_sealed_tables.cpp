#include "core/store/sealed_tables.h"

#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <set>
#include <stdexcept>

namespace chalk::store {

namespace {

/// Columns of text that say nothing of health and nothing freely of a person, or that are worked out from the log; each has been thought of.
const std::set<QString>& plainColumns()
{
    static const std::set<QString> columns = [] {
        std::set<QString> names;
        for (const char* name :
             {"studio.name", "studio.settings", "coach.name", "coach.work", "studio_equipment.key", "studio_equipment.name", "studio_equipment.kind",
              "studio_equipment.unit", "studio_equipment.equipment", "client.name", "client.unit", "client.planning", "clearance.state", "lift.pattern",
              "lift.equipment_key", "lift.unit", "lift.region", "lift.kit", "lift.start_stage", "lift.policy", "session.place", "session.kind", "session.state",
              "session.code", "act.at_utc", "act.kind", "act.token", "import_source.source", "owner_change.thing", "event.type", "session_change.state_before", "session_change.state_after", "lift_state.exercise_key",
              "lift_state.stage", "lift_state.rules", "lift_state.kit", "form.kind", "plan_template.name", "plan_template.detail",
              "closure.station", "closure.why", "booking_change.before", "booking_change.after", "decision.about", "decision.choice", "tested_maximum.ending",
              "sealed_version.place", "audit.at_utc", "audit.what", "erased_session.kind", "erased_session.state"}) {
            names.insert(QLatin1String(name));
        }
        return names;
    }();
    return columns;
}

}  // namespace

/// A column that somebody adds has to be sealed, or named above.
TEST(FileOnlySealedTables, EveryColumnOfTextIsSealedOrKnownToBePlain)
{
    test::StudioOnTest studio;
    std::set<QString> sealed;
    for (const SealedTable& table : sealedTables()) {
        for (const QString& column : table.texts) {
            sealed.insert(table.name + QLatin1Char('.') + column);
        }
    }
    for (const QString& column : studio.rows(QStringLiteral("SELECT m.name || '.' || c.name FROM sqlite_master m JOIN pragma_table_info(m.name) c "
                                                            "WHERE m.type = 'table' AND c.type = 'TEXT'"))) {
        EXPECT_EQ(int{sealed.count(column) == 1} + int{plainColumns().count(column) == 1}, 1) << column.toStdString();
        sealed.erase(column);
    }
    EXPECT_TRUE(sealed.empty()) << "a sealed column that is not there: " << sealed.begin()->toStdString();
}

TEST(SealedTables, AreFoundByTheirName)
{
    EXPECT_EQ(sealedTable(QStringLiteral("letter")).bytes, QStringLiteral("file"));
    EXPECT_THROW(static_cast<void>(sealedTable(QStringLiteral("session"))), std::logic_error);
}

}  // namespace chalk::store
