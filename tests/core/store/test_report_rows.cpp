#include "core/store/act_reader.h"
#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "core/store/statement.h"
#include "tests/support/kept_client.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

using sessions::SessionReport;

namespace {

exchange::StudioDocument studioWithConsent(bool hasConsent)
{
    exchange::StudioDocument document = test::smallStudio();
    if (hasConsent) {
        clients::Profile profile;
        profile.consentOn = document.today - 10;
        document.clients.front().forms = {{document.today - 10, true, profile}};
    }
    return document;
}

const SessionReport kTold{4, 2, 3, 75, 55, "slept late"};
const SessionReport kEffortAlone{{}, {}, {}, 75, 55, "slept late"};

}  // namespace

/// Reports of Ada's sessions. She consented ten days before the studio's day, or never.
class SessionReportsTest : public ::testing::TestWithParam<bool> {
protected:
    base::SessionId session(const char* code) { return SessionReader(m_studio.database()).withCode(code).value()->session.id; }
    SessionReport report(const char* code) { return SessionReader(m_studio.database()).report(session(code)).value(); }
    Result<ActOutcome> save(const char* code, const SessionReport& report) { return m_writer.saveReport(session(code), report); }
    /// The message of a refusal that left everything as it was.
    std::string refusalOf(const std::function<Result<ActOutcome>()>& write)
    {
        const auto counts = [this] {
            return m_studio.rows(QStringLiteral("SELECT (SELECT count(*) FROM act), (SELECT count(*) FROM report_change), (SELECT count(*) FROM session_report)"));
        };
        const QStringList before = counts();
        const auto outcome = write();
        EXPECT_EQ(counts(), before);
        return outcome ? "it was not refused" : outcome.error().message.toStdString();
    }

    test::StudioOnTest m_studio{studioWithConsent(GetParam())};
    RecordWriter m_writer{m_studio.database(), test::someMoment, base::CoachId(1)};
};

class ReportsWithConsent : public SessionReportsTest {};
class ReportsWithoutConsent : public SessionReportsTest {};
INSTANTIATE_TEST_SUITE_P(Store, ReportsWithConsent, ::testing::Values(true));
INSTANTIATE_TEST_SUITE_P(Store, ReportsWithoutConsent, ::testing::Values(false));

TEST_P(ReportsWithConsent, WhatIsSaidIsReadAgain)
{
    EXPECT_TRUE(report("S3").isEmpty());
    const auto outcome = save("S3", kTold);
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    EXPECT_EQ(outcome->client, test::clientNamed(m_studio.database(), "Ada Lund"));
    EXPECT_EQ(report("S3"), kTold);
    EXPECT_TRUE(report("S2").isEmpty());
    const auto reports = SessionReader(m_studio.database()).reportsOf(outcome->client).value();
    ASSERT_EQ(reports.size(), 1U);
    EXPECT_EQ(reports.at(session("S3")), kTold);
    EXPECT_TRUE(SessionReader(m_studio.database()).reportsOf(test::clientNamed(m_studio.database(), "Bo Arden")).value().empty());
}

TEST_P(ReportsWithConsent, EveryChangeIsAnActThatCanBeTakenBackAndDoneAgain)
{
    ASSERT_TRUE(save("S3", kTold));
    SessionReport later = kTold;
    later.note += "\nBack squat: belt on";
    const base::ActId act = save("S3", later).value().act;
    EXPECT_EQ(ActReader(m_studio.database()).undoable().value()->kind, ActKind::Report);
    const auto undone = m_writer.undo(act);
    ASSERT_TRUE(undone) << undone.error().message.toStdString();
    EXPECT_EQ(report("S3"), kTold);
    ASSERT_TRUE(m_writer.undo(undone->act));
    EXPECT_EQ(report("S3"), later);
    ASSERT_TRUE(save("S3", {})) << "everything can be taken out again";
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT count(*) FROM session_report")), QStringList(QStringLiteral("0")));
    EXPECT_EQ(refusalOf([&] { return m_writer.undo(act); }), "There is nothing to take back");
}

TEST_P(ReportsWithConsent, WhatWasChangedSinceIsNotTakenBack)
{
    const base::ActId act = save("S3", kTold).value().act;
    ASSERT_TRUE(save("S3", kEffortAlone));
    EXPECT_EQ(refusalOf([&] { return m_writer.undo(act); }), "What was said of the session was changed since: take that change back first");
    EXPECT_EQ(report("S3"), kEffortAlone);
}

TEST_P(ReportsWithConsent, WhatCannotBeIsRefused)
{
    EXPECT_EQ(refusalOf([&] { return save("S3", {6, {}, {}, {}, {}, {}}); }), "sleep must be 1 to 5");
    EXPECT_EQ(refusalOf([&] { return save("S3", {{}, {}, {}, 72, {}, {}}); }), "effort must be 0 to 10, in steps of 0.5");
    EXPECT_EQ(refusalOf([&] { return save("S3", {}); }), "There is nothing new to say of the session");
    EXPECT_EQ(refusalOf([&] { return m_writer.saveReport(base::SessionId(999), kTold); }), "There is no session 999");
}

TEST_P(ReportsWithConsent, ConsentCountsFromItsDay)
{
    SessionReader reader(m_studio.database());
    EXPECT_TRUE(reader.isHealthKept(session("S2")).value());
    EXPECT_FALSE(reader.isHealthKept(session("S1")).value()) << "eleven days before";
    EXPECT_FALSE(reader.isHealthKept(base::SessionId(999)).value());
    EXPECT_TRUE(save("S2", kTold));
    EXPECT_FALSE(save("S1", kTold));
}

TEST_P(ReportsWithConsent, TheirChangesAreAppendOnly)
{
    ASSERT_TRUE(save("S3", kTold));
    for (const char* sql : {"UPDATE report_change SET after = 'x'", "DELETE FROM report_change"}) {
        const Transaction transaction(m_studio.database());
        EXPECT_FALSE(Statement(m_studio.database(), QLatin1String(sql)).run()) << sql;
        EXPECT_TRUE(m_studio.database().failure()->message.contains(QLatin1String("append-only"))) << sql;
    }
}

TEST_P(ReportsWithoutConsent, NoSleepSorenessOrStressIsKept)
{
    const std::string refusal = "Without consent no sleep, soreness or stress is kept";
    EXPECT_EQ(refusalOf([&] { return save("S3", kTold); }), refusal);
    EXPECT_EQ(refusalOf([&] { return save("S3", {1, {}, {}, {}, {}, {}}); }), refusal);
    EXPECT_EQ(refusalOf([&] { return save("S3", {{}, 1, {}, {}, {}, {}}); }), refusal);
    EXPECT_EQ(refusalOf([&] { return save("S3", {{}, {}, 1, {}, {}, {}}); }), refusal);
    ASSERT_TRUE(save("S3", kEffortAlone)) << "the rest is no health data";
    EXPECT_EQ(report("S3"), kEffortAlone);
}

TEST_P(ReportsWithoutConsent, WhatWasKeptBeforeDoesNotBarANote)
{
    // As after a consent that was taken back: what stands stays, or is taken out; nothing new comes in.
    m_studio.rows(QStringLiteral("INSERT INTO session_report (session_id, sleep) SELECT id, 3 FROM session WHERE code = 'S3'"));
    ASSERT_TRUE(save("S3", {3, {}, {}, {}, {}, "left early"}));
    EXPECT_FALSE(save("S3", {2, {}, {}, {}, {}, "left early"}));
    EXPECT_TRUE(save("S3", {{}, {}, {}, {}, {}, "left early"}));
}

TEST_P(ReportsWithConsent, ARecordAndItsReportAreOneAct)
{
    const base::ClientId ada = test::clientNamed(m_studio.database(), "Ada Lund");
    const base::LiftId squat = test::liftOf(m_studio.database(), ada, lifts::Pattern::Squat);
    const progression::Event event{test::smallStudioDay(), test::exposureOf({{45, 8, 2}, {45, 8, 2}})};
    const auto recorded = m_writer.record(ada, session("S3"), {{squat, event}}, kTold);
    ASSERT_TRUE(recorded) << recorded.error().message.toStdString();
    EXPECT_EQ(report("S3"), kTold);
    const base::EventId entry = SessionReader(m_studio.database()).entriesIn(session("S3")).value().front().id;
    const auto corrected = m_writer.correct(entry, {test::smallStudioDay(), test::exposureOf({{45, 8, 1}, {45, 8, 1}})}, kEffortAlone);
    ASSERT_TRUE(corrected) << corrected.error().message.toStdString();
    EXPECT_EQ(report("S3"), kEffortAlone);
    ASSERT_TRUE(m_writer.undo(corrected->act));
    EXPECT_EQ(report("S3"), kTold);
    ASSERT_TRUE(m_writer.undo(recorded->act));
    EXPECT_TRUE(report("S3").isEmpty());
    EXPECT_TRUE(SessionReader(m_studio.database()).entriesIn(session("S3")).value().empty());
    EXPECT_EQ(refusalOf([&] { return m_writer.record(ada, session("S3"), {{squat, event}}, SessionReport{9, {}, {}, {}, {}, {}}); }), "sleep must be 1 to 5");
    EXPECT_EQ(refusalOf([&] { return m_writer.record(ada, {}, {{squat, event}}, kTold); }), "There is no session 0");
    ASSERT_TRUE(m_writer.record(ada, session("S3"), {}, kTold)) << "a report may come alone";
    EXPECT_EQ(ActReader(m_studio.database()).undoable().value()->kind, ActKind::Report);
}

}  // namespace chalk::store
