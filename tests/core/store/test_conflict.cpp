#include "core/store/conflict.h"

#include "core/exchange/field_test_json.h"
#include "core/exchange/profile_json.h"
#include "core/store/client_forms.h"
#include "core/store/client_reader.h"
#include "core/store/client_writer.h"
#include "core/store/history_reader.h"
#include "core/store/pending_write.h"
#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "core/store/session_writer.h"
#include "core/store/studio_settings.h"
#include "core/store/week_changes.h"
#include "core/store/week_settings.h"
#include "tests/support/small_studio.h"

#include <QJsonArray>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::store {

using Kind = StoreError::Kind;

QJsonObject object(const char* field, const QJsonValue& value)
{
    return {{QLatin1String(field), value}};
}

TEST(BothOf, TakesWhatEachOfThemChanged)
{
    Conflict conflict{ConflictAbout::Profile};
    conflict.seen = {{QStringLiteral("phone"), QStringLiteral("1")}, {QStringLiteral("email"), QStringLiteral("a")}};
    conflict.yours = {{QStringLiteral("phone"), QStringLiteral("2")}, {QStringLiteral("email"), QStringLiteral("a")}};
    conflict.theirs = {{QStringLiteral("phone"), QStringLiteral("1")}, {QStringLiteral("email"), QStringLiteral("b")}};
    const QJsonObject both{{QStringLiteral("phone"), QStringLiteral("2")}, {QStringLiteral("email"), QStringLiteral("b")}};
    EXPECT_EQ(bothOf(conflict), both);
}

TEST(BothOf, KeepsAFieldAwayThatOneOfThemTookAway)
{
    Conflict conflict{ConflictAbout::Profile};
    conflict.seen = {{QStringLiteral("phone"), 1}, {QStringLiteral("email"), 1}};
    conflict.yours = object("phone", 1);
    conflict.theirs = {{QStringLiteral("phone"), 2}, {QStringLiteral("email"), 1}};
    EXPECT_EQ(bothOf(conflict), object("phone", 2));
}

TEST(BothOf, IsNothingWhereBothChangedTheSameFieldToSomethingElse)
{
    Conflict conflict{ConflictAbout::Profile};
    conflict.seen = object("phone", 1);
    conflict.yours = object("phone", 2);
    conflict.theirs = object("phone", 3);
    EXPECT_EQ(bothOf(conflict), std::nullopt);
    conflict.theirs = object("phone", 2);
    EXPECT_EQ(bothOf(conflict), object("phone", 2)) << "both changed it to the same";
}

TEST(BothOf, ANoteHasBothEnds)
{
    Conflict conflict{ConflictAbout::Report};
    conflict.seen = object("note", QStringLiteral("Squat: deep"));
    conflict.yours = object("note", QStringLiteral("Squat: deep\nHinge: slow"));
    conflict.theirs = object("note", QStringLiteral("Squat: deep\nPress: light"));
    EXPECT_EQ(bothOf(conflict), object("note", QStringLiteral("Squat: deep\nPress: light\nHinge: slow")));
    conflict.theirs = object("note", QStringLiteral("Press: light"));
    EXPECT_EQ(bothOf(conflict), std::nullopt) << "what stood there was changed";
}

TEST(BothOf, RowsOfTheSameKeyAreMergedOneByOne)
{
    const auto screen = [](const char* squat, const char* hinge) {
        const auto row = [](const char* pattern, const char* mark) {
            return QJsonObject{{QStringLiteral("pattern"), QLatin1String(pattern)}, {QStringLiteral("mark"), QLatin1String(mark)}};
        };
        return object("patterns", QJsonArray{row("squat", squat), row("hinge", hinge)});
    };
    Conflict conflict{ConflictAbout::MovementScreen, {}, {}, {}, {}, {}, screen("a", "a"), screen("b", "a"), screen("a", "c")};
    EXPECT_EQ(bothOf(conflict), screen("b", "c"));
}

TEST(BothOf, AnEntryIsAWhole)
{
    Conflict conflict{ConflictAbout::Entry};
    conflict.yours = object("pain", 1);
    conflict.theirs = object("felt", 1);
    EXPECT_EQ(bothOf(conflict), std::nullopt);
}

/// Two windows on one file.
class ConflictTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        m_second = Database::open(m_studio.file(), OpenMode::MustExist).value();
        m_ada = test::clientNamed(first(), "Ada Lund");
        m_squat = test::liftOf(first(), m_ada, lifts::Pattern::Squat);
        const auto sessions = SessionReader(first()).on(test::smallStudioDay()).value();
        const auto at = std::find_if(sessions.begin(), sessions.end(), [this](const NamedSession& one) { return one.session.client == m_ada; });
        ASSERT_NE(at, sessions.end());
        m_session = at->session;
        const auto coaches = m_studio.rows(QStringLiteral("SELECT name FROM coach ORDER BY id"));
        m_firstCoach = coaches.at(0);
        first().setAuthor(base::CoachId(1));
        second().setAuthor(base::CoachId(2));
    }

    Database& first() { return m_studio.database(); }
    Database& second() { return *m_second; }
    progression::Event squat(int reps)
    {
        return {test::smallStudioDay(), progression::Exposure{0, {{base::Load::fromCenti(5000), reps}}}};
    }
    /// Health data of Ada may be kept.
    void consent()
    {
        clients::Profile profile = ClientForms(first()).profile(m_ada).value();
        profile.consentOn = test::smallStudioDay() - 30;
        ASSERT_TRUE(ClientWriter(first()).saveProfile(m_ada, profile, test::smallStudioDay()));
    }
    /// How many rows of the log stand for work of today.
    qsizetype entries() { return m_studio.rows(QStringLiteral("SELECT id FROM event WHERE session_id = %1").arg(m_session.id.value())).size(); }

    test::StudioOnTest m_studio;
    std::unique_ptr<Database> m_second;
    base::ClientId m_ada;
    base::LiftId m_squat;
    sessions::Session m_session;
    QString m_firstCoach;
};

/// The conflict of a refused write; fails the test where it is none.
template <class T>
Conflict conflictOf(const Result<T>& result)
{
    if (result || result.error().kind != Kind::Conflict || !result.error().conflict) {
        ADD_FAILURE() << "no conflict: " << (result ? "written" : result.error().message.toStdString());
        return {};
    }
    return *result.error().conflict;
}

TEST_F(ConflictTest, TwoCoachesRecordTheSameLiftOfTheSameSession)
{
    RecordWriter one(first(), test::someMoment);
    RecordWriter other(second(), test::someMoment);
    ASSERT_TRUE(one.record(m_ada, m_session.id, {{m_squat, squat(8)}}, {}, {true, {}}));
    const qsizetype before = entries();
    const Conflict conflict = conflictOf(other.record(m_ada, m_session.id, {{m_squat, squat(5)}}, {}, {true, {}}));
    EXPECT_EQ(conflict.about, ConflictAbout::Entry);
    EXPECT_EQ(conflict.client, m_ada);
    EXPECT_EQ(conflict.lift, m_squat);
    EXPECT_EQ(conflict.pattern, lifts::Pattern::Squat);
    EXPECT_EQ(conflict.coach, m_firstCoach);
    EXPECT_EQ(conflict.atUtc, test::someMoment());
    EXPECT_EQ(conflict.theirs.value(QLatin1String("sets"))[0].toObject().value(QLatin1String("reps")).toInt(), 8);
    EXPECT_EQ(conflict.yours.value(QLatin1String("sets"))[0].toObject().value(QLatin1String("reps")).toInt(), 5);
    EXPECT_EQ(entries(), before) << "nothing was written";
    ASSERT_TRUE(other.correct(conflict.entry, squat(5))) << "the second one decides for the own version";
}

TEST_F(ConflictTest, TwoCoachesCorrectTheSameEntry)
{
    RecordWriter one(first(), test::someMoment);
    RecordWriter other(second(), test::someMoment);
    ASSERT_TRUE(one.record(m_ada, m_session.id, {{m_squat, squat(8)}}));
    const base::EventId entry(m_studio.rows(QStringLiteral("SELECT max(id) FROM event")).at(0).toLongLong());
    ASSERT_TRUE(one.correct(entry, squat(7)));
    Conflict conflict = conflictOf(other.correct(entry, squat(6)));
    EXPECT_EQ(conflict.theirs.value(QLatin1String("sets"))[0].toObject().value(QLatin1String("reps")).toInt(), 7);
    ASSERT_TRUE(one.takeBack(conflict.entry));
    conflict = conflictOf(other.correct(conflict.entry, squat(6)));
    EXPECT_TRUE(conflict.theirs.isEmpty()) << "it was taken back";
    EXPECT_TRUE(conflict.entry.isNone());
}

TEST_F(ConflictTest, AReportThatSomebodyElseWroteIsNotWrittenOver)
{
    const sessions::SessionReport nothing;
    sessions::SessionReport theirs;
    theirs.effortTenths = 70;
    sessions::SessionReport yours;
    yours.note = "Slow today";
    ASSERT_TRUE(RecordWriter(first(), test::someMoment).saveReport(m_session.id, theirs, nothing));
    const Conflict conflict = conflictOf(RecordWriter(second(), test::someMoment).saveReport(m_session.id, yours, nothing));
    EXPECT_EQ(conflict.about, ConflictAbout::Report);
    EXPECT_EQ(conflict.session, m_session.id);
    EXPECT_EQ(conflict.coach, m_firstCoach);
    ASSERT_TRUE(bothOf(conflict));
    EXPECT_EQ(bothOf(conflict)->keys(), (QStringList{QStringLiteral("effort"), QStringLiteral("note")}));
    ASSERT_TRUE(RecordWriter(second(), test::someMoment).saveReport(m_session.id, yours, theirs)) << "theirs was seen";
}

TEST_F(ConflictTest, ASessionThatWasSetOtherwise)
{
    using sessions::SessionState;
    ASSERT_TRUE(RecordWriter(first(), test::someMoment).setSessionState(m_session.id, SessionState::Missed, m_session.state));
    const Conflict conflict =
        conflictOf(RecordWriter(second(), test::someMoment).setSessionState(m_session.id, SessionState::CancelledLate, m_session.state));
    EXPECT_EQ(conflict.theirs, object("state", QStringLiteral("missed")));
    EXPECT_TRUE(RecordWriter(second(), test::someMoment).setSessionState(m_session.id, SessionState::Missed, m_session.state)) << "both say the same";
}

TEST_F(ConflictTest, ABookingThatTwoMoved)
{
    const week::BookingPlace seen = placeOf(m_session);
    week::BookingPlace theirs = seen;
    theirs.startMinute = 20 * 60;
    week::BookingPlace yours = seen;
    yours.startMinute = 6 * 60;
    ASSERT_TRUE(SessionWriter(first(), test::someMoment).move(m_session.id, theirs, seen));
    const Conflict conflict = conflictOf(SessionWriter(second(), test::someMoment).move(m_session.id, yours, seen));
    EXPECT_EQ(conflict.about, ConflictAbout::Booking);
    EXPECT_EQ(conflict.coach, m_firstCoach);
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT start_minute FROM session WHERE id = %1").arg(m_session.id.value())).at(0), QStringLiteral("1200"));
    EXPECT_TRUE(SessionWriter(second(), test::someMoment).move(m_session.id, yours, theirs));
}

TEST_F(ConflictTest, FormsAndTheClientsOwnValues)
{
    const base::Date today = test::smallStudioDay();
    const clients::Profile seen = ClientForms(first()).profile(m_ada).value();
    clients::Profile theirs = seen;
    theirs.contact.phone = "1";
    clients::Profile yours = seen;
    yours.contact.email = "ada@example.org";
    ASSERT_TRUE(ClientWriter(first()).saveProfile(m_ada, theirs, today, exchange::toJson(seen)));
    const Conflict conflict = conflictOf(ClientWriter(second()).saveProfile(m_ada, yours, today, exchange::toJson(seen)));
    EXPECT_EQ(conflict.about, ConflictAbout::Profile);
    EXPECT_EQ(conflict.coach, m_firstCoach) << "as the audit has it";
    EXPECT_FALSE(conflict.atUtc.isEmpty());
    const auto both = bothOf(conflict);
    ASSERT_TRUE(both);
    ASSERT_TRUE(ClientWriter(second()).saveProfile(m_ada, exchange::readProfile(*both, {}).value(), today, conflict.theirs));
    EXPECT_EQ(ClientForms(first()).profile(m_ada)->contact.phone, "1");
    EXPECT_EQ(ClientForms(first()).profile(m_ada)->contact.email, "ada@example.org");

    const clients::Client client = ClientReader(first()).read(m_ada, today)->client;
    clients::Client renamed = client;
    renamed.name = "Ada Lund-Berg";
    clients::Client aimed = client;
    aimed.goal = "Climb";
    ASSERT_TRUE(ClientWriter(first()).change(renamed, today, client));
    EXPECT_EQ(conflictOf(ClientWriter(second()).change(aimed, today, client)).about, ConflictAbout::Client);
    EXPECT_EQ(ClientReader(first()).read(m_ada, today)->client.name, "Ada Lund-Berg");
}

TEST_F(ConflictTest, SettingsOfTheWeekAndOfHealth)
{
    const week::StudioWeek seen = WeekSettings(first()).studioWeek().value();
    week::StudioWeek theirs = seen;
    theirs.stations.clear();
    ASSERT_TRUE(WeekSettings(first()).setStudioWeek(theirs, seen));
    week::StudioWeek yours = seen;
    yours.open = {};
    EXPECT_EQ(conflictOf(WeekSettings(second()).setStudioWeek(yours, seen)).about, ConflictAbout::StudioWeek);

    const week::ClientPlanning wishes = WeekSettings(first()).planning(m_ada).value();
    week::ClientPlanning first1 = wishes;
    first1.priority = 3;
    week::ClientPlanning second1 = wishes;
    second1.priority = 5;
    ASSERT_TRUE(WeekSettings(first()).setPlanning(m_ada, first1, wishes));
    EXPECT_EQ(conflictOf(WeekSettings(second()).setPlanning(m_ada, second1, wishes)).about, ConflictAbout::Planning);

    const week::CoachWork work;
    week::CoachWork fewer = work;
    fewer.capacity = 2;
    week::CoachWork more = work;
    more.capacity = 6;
    ASSERT_TRUE(WeekSettings(first()).setCoachWork(base::CoachId(1), fewer, work));
    EXPECT_EQ(conflictOf(WeekSettings(second()).setCoachWork(base::CoachId(1), more, work)).about, ConflictAbout::CoachWork);

    const clients::RestingLimits limits = StudioSettings(first()).restingLimits().value();
    clients::RestingLimits lower = limits;
    lower.heartRate -= 1;
    clients::RestingLimits higher = limits;
    higher.heartRate += 1;
    ASSERT_TRUE(StudioSettings(first()).setRestingLimits(lower, limits));
    EXPECT_EQ(conflictOf(StudioSettings(second()).setRestingLimits(higher, limits)).about, ConflictAbout::RestingLimits);
    EXPECT_EQ(StudioSettings(first()).restingLimits().value(), lower);
}

TEST_F(ConflictTest, AWeeksOwnNumberOfSessions)
{
    const base::Date monday = test::smallStudioDay() - test::smallStudioDay().weekday();
    const QJsonObject usual = WeekSettings::quotaSeen(monday, {});
    ASSERT_TRUE(WeekSettings(first()).setQuota(m_ada, monday, 1, usual));
    const Conflict conflict = conflictOf(WeekSettings(second()).setQuota(m_ada, monday, 3, usual));
    EXPECT_EQ(conflict.about, ConflictAbout::Planning);
    EXPECT_EQ(conflict.theirs, WeekSettings::quotaSeen(monday, 1));
    EXPECT_EQ(conflict.coach, m_firstCoach);
    EXPECT_EQ(bothOf(conflict), std::nullopt) << "a week has one number";
    EXPECT_EQ(WeekSettings(first()).quotas(monday)->at(m_ada), 1);
    EXPECT_TRUE(WeekSettings(second()).setQuota(m_ada, monday, 1, usual)) << "both say the same";
    EXPECT_TRUE(WeekSettings(second()).setQuota(m_ada, monday, {}, conflict.theirs));
    EXPECT_EQ(conflictOf(WeekSettings(first()).setQuota(m_ada, monday, 2, conflict.theirs)).theirs, usual) << "taken back in the meantime";
}

TEST_F(ConflictTest, ACautionThatIsEndedAfterSomebodyElseChangedIt)
{
    const base::Date today = test::smallStudioDay();
    consent();
    clients::Caution seen;
    seen.bodyPart = "Hip";
    seen.text = "No deep bend";
    seen.id = ClientWriter(first()).saveCaution(m_ada, seen, today).value();
    clients::Caution theirs = seen;
    theirs.text = "No jumps";
    ASSERT_TRUE(ClientWriter(first()).saveCaution(m_ada, theirs, today, seen));
    const Conflict conflict = conflictOf(ClientWriter(second()).endCaution(seen.id, today, seen));
    EXPECT_EQ(conflict.about, ConflictAbout::Caution);
    EXPECT_EQ(conflict.client, m_ada);
    EXPECT_EQ(conflict.coach, m_firstCoach);
    EXPECT_TRUE(bothOf(conflict));
    EXPECT_TRUE(ClientWriter(second()).endCaution(seen.id, today, theirs));
    EXPECT_TRUE(ClientWriter(first()).endCaution(seen.id, today, theirs)) << "both end it on the same day";
}

TEST_F(ConflictTest, MeasuresOfOneDayByTwoCoaches)
{
    const base::Date today = test::smallStudioDay();
    consent();
    clients::BodyMeasures theirs;
    theirs.date = today - 3;
    theirs.heartRate = 61;
    clients::BodyMeasures later = theirs;
    later.date = today;
    ASSERT_TRUE(ClientWriter(first()).saveMeasures(m_ada, theirs, today, QJsonObject()));
    ASSERT_TRUE(ClientWriter(first()).saveMeasures(m_ada, later, today, QJsonObject())) << "another day is no conflict";
    clients::BodyMeasures yours;
    yours.date = theirs.date;
    yours.waist = clients::Millimetres(820);
    const Conflict conflict = conflictOf(ClientWriter(second()).saveMeasures(m_ada, yours, today, QJsonObject()));
    EXPECT_EQ(conflict.about, ConflictAbout::BodyMeasures);
    EXPECT_EQ(conflict.theirs.value(QLatin1String("heart_rate")).toInt(), 61) << "of that day, not of the latest one";
    EXPECT_EQ(ClientForms(first()).measures(m_ada)->size(), 2U);
    const auto both = bothOf(conflict);
    ASSERT_TRUE(both);
    ASSERT_TRUE(ClientWriter(second()).saveMeasures(m_ada, exchange::readBodyMeasures(*both, {}).value(), today, conflict.theirs));
    const clients::BodyMeasures kept = ClientForms(first()).measures(m_ada)->front();
    EXPECT_EQ(kept.heartRate, 61);
    EXPECT_EQ(kept.waist, yours.waist);
}

TEST_F(ConflictTest, FieldTestsOfOneDayByTwoCoaches)
{
    const base::Date today = test::smallStudioDay();
    consent();
    const screens::FieldTestDay theirs{today, {screens::Plank{62'500}}};
    const screens::FieldTestDay yours{today, {screens::ChairStand{base::Reps(14), false}}};
    ASSERT_TRUE(ClientWriter(first()).saveFieldTests(m_ada, theirs, today, QJsonObject()));
    const Conflict conflict = conflictOf(ClientWriter(second()).saveFieldTests(m_ada, yours, today, QJsonObject()));
    EXPECT_EQ(conflict.about, ConflictAbout::FieldTests);
    const auto both = bothOf(conflict);
    ASSERT_TRUE(both) << "each of them tested something else";
    EXPECT_EQ(exchange::readFieldTestDay(*both, {})->tests.size(), 2U);
    const screens::FieldTestDay longer{today, {screens::Plank{70'000}}};
    EXPECT_EQ(bothOf(conflictOf(ClientWriter(second()).saveFieldTests(m_ada, longer, today, QJsonObject()))), std::nullopt) << "the same test twice";
    EXPECT_EQ(ClientForms(first()).fieldTests(m_ada).value(), std::vector<screens::FieldTestDay>{theirs});
}

TEST_F(ConflictTest, AChoiceThatWasMadeOnAnotherStateOfTheLift)
{
    const auto ids = [this] {
        std::vector<base::EventId> all;
        const auto history = HistoryReader(second()).read(m_squat).value();
        for (const HistoryEntry& entry : history) {
            all.push_back(entry.id);
        }
        return all;
    };
    SeenSession seen;
    seen.entriesOfLift = ids();
    RecordWriter one(first(), test::someMoment);
    RecordWriter other(second(), test::someMoment);
    progression::CoachSet set;
    set.stage = progression::Stage::LoadBuild;
    set.load = base::Load::fromCenti(5000);
    set.reason = "Slow bar";
    ASSERT_TRUE(one.record(m_ada, m_session.id, {{m_squat, squat(8)}}));
    const auto rows = [this] { return m_studio.rows(QStringLiteral("SELECT id FROM event WHERE lift_id = %1").arg(m_squat.value())).size(); };
    const qsizetype before = rows();
    const std::vector<NewRecord> choice{{m_squat, {test::smallStudioDay(), set}}};
    const Conflict conflict = conflictOf(other.record(m_ada, {}, choice, {}, seen));
    EXPECT_EQ(conflict.about, ConflictAbout::Choice);
    EXPECT_EQ(conflict.pattern, lifts::Pattern::Squat);
    EXPECT_EQ(conflict.coach, m_firstCoach);
    EXPECT_EQ(conflict.theirs.value(QLatin1String("type")), QStringLiteral("exposure"));
    EXPECT_EQ(conflict.yours.value(QLatin1String("reason")), QStringLiteral("Slow bar"));
    EXPECT_EQ(rows(), before) << "nothing was written";
    seen.entriesOfLift = ids();
    const auto written = other.record(m_ada, {}, choice, {}, seen);
    ASSERT_TRUE(written) << "that state was seen: " << written.error().message.toStdString();
    seen.entriesOfLift = ids();
    ASSERT_TRUE(other.undo(written->act));
    EXPECT_TRUE(conflictOf(one.record(m_ada, {}, choice, {}, seen)).theirs.isEmpty()) << "somebody took the choice back";
}

TEST_F(ConflictTest, LiftsOfASessionThatTwoPlanned)
{
    const base::LiftId hinge = test::liftOf(first(), m_ada, lifts::Pattern::Hinge);
    const std::vector<sessions::SessionLift> seen = SessionReader(second()).lifts(m_session.id).value();
    const std::vector<sessions::SessionLift> theirs{{hinge, {}}, {m_squat, "equipment"}};
    const std::vector<sessions::SessionLift> yours{{m_squat, {}}};
    ASSERT_TRUE(SessionWriter(first(), test::someMoment).setLifts(m_session.id, theirs, seen));
    const Conflict conflict = conflictOf(SessionWriter(second(), test::someMoment).setLifts(m_session.id, yours, seen));
    EXPECT_EQ(conflict.about, ConflictAbout::SessionLifts);
    EXPECT_EQ(conflict.client, m_ada);
    EXPECT_EQ(conflict.theirs.value(QLatin1String("lifts")).toArray(), (QJsonArray{QStringLiteral("hinge"), QStringLiteral("squat")}));
    EXPECT_EQ(conflict.theirs.value(QLatin1String("left_out")).toObject(), object("squat", QStringLiteral("equipment")));
    EXPECT_EQ(SessionReader(first()).lifts(m_session.id).value(), theirs);
    ASSERT_TRUE(SessionWriter(second(), test::someMoment).setLifts(m_session.id, yours, theirs));
    EXPECT_EQ(SessionReader(first()).lifts(m_session.id).value(), yours);
}

TEST_F(ConflictTest, ABookingThatIsTakenAwayWhileSomebodyElseMovesIt)
{
    const SeenBooking seen{placeOf(m_session), m_session.state};
    week::BookingPlace theirs = seen.place;
    theirs.startMinute = 20 * 60;
    ASSERT_TRUE(SessionWriter(first(), test::someMoment).move(m_session.id, theirs, seen.place));
    BookingChanges changes;
    changes.withdrawn = {m_session.id};
    changes.seenWithdrawn[m_session.id] = seen;
    const Conflict conflict = conflictOf(SessionWriter(second(), test::someMoment).apply(changes));
    EXPECT_EQ(conflict.about, ConflictAbout::Booking);
    EXPECT_EQ(conflict.session, m_session.id);
    EXPECT_EQ(conflict.coach, m_firstCoach);
    EXPECT_EQ(conflict.yours.value(QLatin1String("state")), QStringLiteral("withdrawn"));
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT state FROM session WHERE id = %1").arg(m_session.id.value())).at(0), QStringLiteral("planned"));
    const auto over = std::get<BookingChanges>(overConflict(changes, conflict, {}));
    ASSERT_TRUE(SessionWriter(second(), test::someMoment).apply(over)) << "theirs was seen";
    const auto again = SessionWriter(first(), test::someMoment).withdraw(m_session.id, SeenBooking{theirs, m_session.state});
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, Kind::Refused) << "it is gone already, as was wanted";
}

TEST_F(ConflictTest, ABookingThatIsTakenAwayAfterItsCardWasPrintedOrItWasCalledOff)
{
    using sessions::SessionState;
    const SeenBooking seen{placeOf(m_session), SessionState::Planned};
    ASSERT_TRUE(RecordWriter(first(), test::someMoment).setSessionState(m_session.id, SessionState::CancelledLate));
    const Conflict conflict = conflictOf(SessionWriter(second(), test::someMoment).withdraw(m_session.id, seen));
    EXPECT_EQ(conflict.theirs.value(QLatin1String("state")), QStringLiteral("cancelled_late"));
    EXPECT_EQ(conflict.coach, m_firstCoach);
    ASSERT_TRUE(RecordWriter(first(), test::someMoment).setSessionState(m_session.id, SessionState::Printed));
    EXPECT_TRUE(SessionWriter(second(), test::someMoment).withdraw(m_session.id, seen)) << "a card on paper changes nothing of the booking";
}

TEST_F(ConflictTest, NothingIsComparedThatNobodySaysTheySaw)
{
    ASSERT_TRUE(RecordWriter(first(), test::someMoment).setSessionState(m_session.id, sessions::SessionState::Missed));
    EXPECT_TRUE(RecordWriter(second(), test::someMoment).setSessionState(m_session.id, sessions::SessionState::CancelledLate));
}

}  // namespace chalk::store
