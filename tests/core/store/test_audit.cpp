#include "core/store/audit.h"

#include "core/store/client_writer.h"
#include "core/store/studio_settings.h"
#include "core/store/week_settings.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <set>

namespace chalk::store {

class AuditTest : public ::testing::Test {
protected:
    AuditTest() { m_studio.database().setAuthor(base::CoachId(2)); }

    /// `who|client|what|before|after` of each row.
    QStringList rows() { return m_studio.rows(QStringLiteral("SELECT coach_id, client_id, what, before, after FROM audit ORDER BY id")); }
    clients::Client ada()
    {
        clients::Client client;
        client.id = m_ada;
        client.name = "Ada Lund";
        client.birthDate = base::Date::parse("1984-05-17");
        client.goal = "Carry the boat";
        client.coach = base::CoachId(1);
        client.startedOn = test::smallStudioDay() - 45;
        client.sessionsPerWeek = 2;
        return client;
    }

    test::StudioOnTest m_studio;
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    ClientWriter m_writer{m_studio.database()};
};

TEST(Audit, EveryWhatHasAKeyOfItsOwn)
{
    std::set<std::string_view> keys;
    for (int i = 0; i < kAuditWhats; ++i) {
        const auto what = static_cast<AuditWhat>(i);
        EXPECT_TRUE(keys.insert(keyOf(what)).second) << keyOf(what);
        EXPECT_EQ(auditWhatOf(keyOf(what)), what);
    }
    EXPECT_EQ(keyOf(AuditWhat::SignedIn), "signed_in");
    EXPECT_FALSE(auditWhatOf("nothing"));
}

TEST_F(AuditTest, NamesWhoChangedWhatWithBothValues)
{
    clients::Client changed = ada();
    changed.goal = "Carry two boats";
    ASSERT_TRUE(m_writer.change(changed, test::smallStudioDay()));
    ASSERT_EQ(rows().size(), 1);
    const QString row = rows().front();
    EXPECT_TRUE(row.contains(QLatin1String("client_details"))) << row.toStdString();
    EXPECT_TRUE(row.contains(QLatin1String("{\"goal\":\"Carry the boat\"}"))) << row.toStdString();
    EXPECT_TRUE(row.contains(QLatin1String("{\"goal\":\"Carry two boats\"}"))) << row.toStdString();
    EXPECT_TRUE(row.startsWith(QLatin1Char('2'))) << "the author of the connection";
    const QStringList moments = m_studio.rows(QStringLiteral("SELECT at_utc FROM audit"));
    EXPECT_TRUE(QDateTime::fromString(moments.front(), Qt::ISODate).isValid()) << moments.front().toStdString();
    EXPECT_EQ(moments.front().size(), test::someMoment().size()) << "as acts have it: " << moments.front().toStdString();
}

TEST_F(AuditTest, WhatDidNotChangeIsNotWritten)
{
    ASSERT_TRUE(m_writer.change(ada(), test::smallStudioDay()));
    EXPECT_TRUE(rows().isEmpty()) << rows().join(QLatin1Char('\n')).toStdString();
}

TEST_F(AuditTest, OfHealthOnlyTheFieldsAreNamed)
{
    clients::Profile profile;
    profile.consentOn = test::smallStudioDay();
    ASSERT_TRUE(m_writer.saveProfile(m_ada, profile, test::smallStudioDay()));
    clients::Caution caution;
    caution.bodyPart = "Left knee";
    caution.text = "Swollen after the fall";
    ASSERT_TRUE(m_writer.saveCaution(m_ada, caution, test::smallStudioDay()));
    const QString all = rows().join(QLatin1Char('\n'));
    EXPECT_TRUE(all.contains(QLatin1String("cautions"))) << all.toStdString();
    EXPECT_TRUE(all.contains(QLatin1String("\"fields\""))) << all.toStdString();
    EXPECT_FALSE(all.contains(QLatin1String("knee"))) << all.toStdString();
    EXPECT_FALSE(all.contains(QLatin1String("Swollen"))) << all.toStdString();
}

TEST_F(AuditTest, WhatIsRefusedLeavesNoRow)
{
    clients::Client nameless = ada();
    nameless.name.clear();
    ASSERT_FALSE(m_writer.change(nameless, test::smallStudioDay()));
    EXPECT_TRUE(rows().isEmpty());
}

TEST_F(AuditTest, TellsOfTheStudiosOwnSettings)
{
    ASSERT_TRUE(StudioSettings(m_studio.database()).setRestingLimits({111, 160, 100}));
    ASSERT_TRUE(WeekSettings(m_studio.database()).setQuota(m_ada, test::smallStudioDay() - 1, 3));
    const QString all = rows().join(QLatin1Char('\n'));
    EXPECT_TRUE(all.contains(QLatin1String("resting_limits"))) << all.toStdString();
    EXPECT_TRUE(all.contains(QLatin1String("111"))) << all.toStdString();
    EXPECT_TRUE(all.contains(QLatin1String("week_quota"))) << all.toStdString();
}

TEST_F(AuditTest, RowsAreNeitherChangedNorDeleted)
{
    ASSERT_TRUE(noteInAudit(m_studio.database(), AuditWhat::SignedIn, {}));
    for (const char* sql : {"UPDATE audit SET what = 'profile'", "DELETE FROM audit"}) {
        QSqlQuery query(m_studio.database().connection());
        EXPECT_FALSE(query.exec(QLatin1String(sql))) << sql;
    }
    EXPECT_EQ(rows().size(), 1);
}

TEST_F(AuditTest, ADiscardedClientLeavesOneLineWithoutAName)
{
    clients::Client brief;
    brief.name = "Brief Visitor";
    brief.coach = base::CoachId(1);
    brief.startedOn = test::smallStudioDay();
    const base::ClientId id = m_writer.add(brief, test::smallStudioDay()).value();
    brief.id = id;
    brief.goal = "Curious";
    ASSERT_TRUE(m_writer.change(brief, test::smallStudioDay()));
    ASSERT_TRUE(m_writer.discard(id));
    ASSERT_EQ(rows().size(), 1);
    EXPECT_TRUE(rows().front().contains(QLatin1String("client_discarded")));
    EXPECT_FALSE(rows().front().contains(QLatin1String("Curious")));
}

TEST_F(AuditTest, AStudioThatIsOnlyReadIsLeftAlone)
{
    const auto reading = Database::open(m_studio.file(), OpenMode::ReadOnly).value();
    EXPECT_TRUE(noteInAudit(*reading, AuditWhat::StudioExported, {}));
    EXPECT_TRUE(rows().isEmpty());
}

}  // namespace chalk::store
