#include "core/exchange/health_intake_json.h"
#include "core/exchange/profile_json.h"
#include "core/store/audit.h"
#include "core/store/client_forms.h"
#include "core/store/client_writer.h"
#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "core/store/session_writer.h"
#include "core/store/statement.h"
#include "core/store/studio_check.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <map>
#include <random>
#include <set>
#include <thread>

namespace chalk::store {

using Kind = StoreError::Kind;

namespace {

constexpr int kCoaches = 8;
constexpr int kWeeksOfSessions = 3;

/// How long they write, in seconds: a short while where nobody says.
int secondsOnTest()
{
    const int seconds = qEnvironmentVariableIntValue("CHALKRUNG_COACHES_SECONDS");
    return seconds > 0 ? seconds : 2;
}

/// Something that the studio said was done.
struct Acknowledged {
    enum class What { Recorded, Corrected, Undone, Moved, Marked };
    What what = What::Recorded;
    base::ActId act;
    base::CoachId coach;
    base::EventId seen;     ///< the version that a correction was made from
    base::ActId undone;
    base::Load load;        ///< of the set that was written
    int reps = 0;
    base::SessionId session;
    int startMinute = 0;
    std::string state;
};

/// A form that the studio said was written over: by which text its writer knew it before and after. No two writers write the same.
struct SavedForm {
    FormKind kind = FormKind::Profile;
    base::CoachId coach;
    std::string seen;
    std::string written;
};

base::ClientId whoseForms()
{
    return base::ClientId(2);
}

/// One coach at one connection, who does one thing after another and writes down what was acknowledged.
class BusyCoach {
public:
    BusyCoach(const QString& target, base::CoachId coach, unsigned seed) : m_target(target), m_coach(coach), m_random(seed) {}

    void workUntil(std::chrono::steady_clock::time_point end)
    {
        const auto opened = Database::open(m_target, OpenMode::MustExist);
        if (!opened) {
            failures.push_back(opened.error());
            return;
        }
        (*opened)->setAuthor(m_coach);
        while (std::chrono::steady_clock::now() < end) {
            doOneThing(**opened);
        }
    }

    std::vector<Acknowledged> done;
    std::vector<SavedForm> forms;
    std::vector<StoreError> told;      ///< that somebody else had been there before
    std::vector<StoreError> failures;  ///< what should not have been

private:
    [[nodiscard]] int pick(int low, int high) { return std::uniform_int_distribution(low, high)(m_random); }

    /// Writes down what became of it.
    void take(const Result<ActOutcome>& outcome, Acknowledged what)
    {
        if (outcome) {
            what.act = outcome->act;
            what.coach = m_coach;
            done.push_back(std::move(what));
            return;
        }
        tell(outcome.error());
    }

    void tell(const StoreError& error)
    {
        // A file is waited for as long as a person would.
        const bool isTold = error.kind == Kind::Conflict || error.kind == Kind::Refused || error.kind == Kind::Busy;
        (isTold ? told : failures).push_back(error);
    }

    template <class Outcome>
    void takeForm(const Outcome& outcome, const SavedForm& form)
    {
        if (outcome) {
            forms.push_back(form);
        } else {
            tell(outcome.error());
        }
    }

    void doOneThing(Database& database)
    {
        RecordWriter writer(database, test::someMoment);
        const int what = pick(0, 12);
        if (what < 3) {
            record(database, writer);
        } else if (what < 6) {
            correct(database, writer);
        } else if (what < 7) {
            undo(writer);
        } else if (what < 9) {
            move(database);
        } else if (what < 10) {
            mark(database, writer);
        } else if (what < 12) {
            saveProfile(database);
        } else {
            saveIntake(database);
        }
    }

    [[nodiscard]] std::string freshText() { return "coach " + std::to_string(m_coach.value()) + ", text " + std::to_string(++m_texts); }
    void lookAtIt() { std::this_thread::sleep_for(std::chrono::milliseconds(pick(0, 3))); }

    void saveProfile(Database& database)
    {
        auto profile = ClientForms(database).profile(whoseForms());
        if (!profile) {
            return tell(profile.error());
        }
        const QJsonObject seen = exchange::toJson(*profile);
        const SavedForm form{FormKind::Profile, m_coach, profile->trainingHistory, freshText()};
        profile->trainingHistory = form.written;
        lookAtIt();
        takeForm(ClientWriter(database).saveProfile(whoseForms(), *profile, test::smallStudioDay(), seen), form);
    }

    void saveIntake(Database& database)
    {
        auto intake = ClientForms(database).healthIntake(whoseForms());
        if (!intake || !*intake) {
            return tell(intake ? StoreError{Kind::NotThere, QStringLiteral("the intake is gone"), {}} : intake.error());
        }
        const QJsonObject seen = exchange::toJson(**intake);
        const SavedForm form{FormKind::HealthIntake, m_coach, (*intake)->note, freshText()};
        (*intake)->note = form.written;
        lookAtIt();
        takeForm(ClientWriter(database).saveIntake(whoseForms(), **intake, {}, "on test", test::smallStudioDay(), seen), form);
    }

    [[nodiscard]] progression::Event workOn(base::Date day, Acknowledged& what)
    {
        const double kilos = 40 + 5 * pick(0, 4);
        what.load = test::kilos(kilos);
        what.reps = pick(6, 9);
        return {day, test::exposureOf({{kilos, what.reps, pick(1, 3)}})};
    }

    void record(Database& database, RecordWriter& writer)
    {
        Acknowledged what;
        const base::ClientId ada(1);
        const base::LiftId squat = test::liftOf(database, ada, lifts::Pattern::Squat);
        const auto event = workOn(test::smallStudioDay() - pick(0, 2), what);
        take(writer.record(ada, {}, {{squat, event}}), what);
    }

    void correct(Database& database, RecordWriter& writer)
    {
        Acknowledged what;
        what.what = Acknowledged::What::Corrected;
        const base::LiftId squat = test::liftOf(database, base::ClientId(1), lifts::Pattern::Squat);
        std::vector<LogEntry> entries;
        {
            const Snapshot snapshot(database);
            entries = EventLog(database).lastEntries(squat, 4);
        }
        if (entries.empty()) {
            return;
        }
        const LogEntry& seen = entries[static_cast<std::size_t>(pick(0, static_cast<int>(entries.size()) - 1))];
        what.seen = seen.id;
        const auto event = workOn(seen.event.date, what);
        lookAtIt();
        take(writer.correct(seen.id, event), what);
    }

    void undo(RecordWriter& writer)
    {
        if (done.empty()) {
            return;
        }
        Acknowledged what;
        what.what = Acknowledged::What::Undone;
        what.undone = done[static_cast<std::size_t>(pick(std::max(0, static_cast<int>(done.size()) - 5), static_cast<int>(done.size()) - 1))].act;
        take(writer.undo(what.undone), what);
    }

    [[nodiscard]] std::vector<sessions::Session> openSessions(Database& database)
    {
        std::vector<sessions::Session> open;
        const std::vector<NamedSession> all = SessionReader(database).of(base::ClientId(2)).value();
        for (const NamedSession& one : all) {
            open.push_back(one.session);
        }
        return open;
    }

    void move(Database& database)
    {
        const auto sessions = openSessions(database);
        const sessions::Session& session = sessions[static_cast<std::size_t>(pick(0, static_cast<int>(sessions.size()) - 1))];
        Acknowledged what;
        what.what = Acknowledged::What::Moved;
        what.session = session.id;
        what.startMinute = 60 * pick(6, 20);
        take(SessionWriter(database, test::someMoment).move(session.id, {m_coach, session.date, what.startMinute, 60, "Rack 1", 4, false}), what);
    }

    void mark(Database& database, RecordWriter& writer)
    {
        const auto sessions = openSessions(database);
        const sessions::Session& session = sessions[static_cast<std::size_t>(pick(0, static_cast<int>(sessions.size()) - 1))];
        const auto state = pick(0, 1) == 0 ? sessions::SessionState::Missed : sessions::SessionState::Planned;
        Acknowledged what;
        what.what = Acknowledged::What::Marked;
        what.session = session.id;
        what.state = std::string(sessions::keyOf(state));
        take(writer.setSessionState(session.id, state), what);
    }

    QString m_target;
    base::CoachId m_coach;
    std::mt19937 m_random;
    int m_texts = 0;
};

/// Eight coaches, two clients: they come in each other's way all the time. Afterwards the history has to be one that could have been.
class ManyCoachesTest : public ::testing::Test {
protected:
    ManyCoachesTest()
    {
        for (int i = 3; i <= kCoaches; ++i) {
            m_studio.rows(QStringLiteral("INSERT INTO coach (name) VALUES ('Coach %1')").arg(i));
        }
        SessionWriter writer(m_studio.database(), test::someMoment);
        for (int week = 1; week <= kWeeksOfSessions; ++week) {
            sessions::Session session;
            session.client = base::ClientId(2);
            session.coach = base::CoachId(1);
            session.date = test::smallStudioDay() + 7 * week;
            session.startMinute = 600;
            session.place = "Rack 1";
            if (!writer.book(session)) {
                throw std::runtime_error("no session was booked");
            }
        }
        beginForms();
        m_actsBefore = m_studio.rows(QStringLiteral("SELECT count(*) FROM act")).front().toLongLong();
    }

    void beginForms()
    {
        ClientWriter writer(m_studio.database());
        clients::Profile profile = ClientForms(m_studio.database()).profile(whoseForms()).value();
        profile.trainingHistory = "as it began";
        profile.consentOn = test::smallStudioDay();
        clients::HealthIntake intake;
        intake.note = profile.trainingHistory;
        if (!writer.saveProfile(whoseForms(), profile, test::smallStudioDay()) || !writer.saveIntake(whoseForms(), intake, {}, "on test", test::smallStudioDay())) {
            throw std::runtime_error("no form was begun");
        }
        m_auditBefore = m_studio.rows(QStringLiteral("SELECT max(id) FROM audit")).front();
    }

    void work()
    {
        std::vector<std::unique_ptr<BusyCoach>> coaches;
        std::vector<std::thread> threads;
        const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(secondsOnTest());
        for (int i = 1; i <= kCoaches; ++i) {
            coaches.push_back(std::make_unique<BusyCoach>(m_studio.file(), base::CoachId(i), static_cast<unsigned>(i)));
        }
        for (const auto& coach : coaches) {
            threads.emplace_back([&coach, end] { coach->workUntil(end); });
        }
        for (std::thread& thread : threads) {
            thread.join();
        }
        for (const auto& coach : coaches) {
            m_done.insert(m_done.end(), coach->done.begin(), coach->done.end());
            m_forms.insert(m_forms.end(), coach->forms.begin(), coach->forms.end());
            m_told.insert(m_told.end(), coach->told.begin(), coach->told.end());
            for (const StoreError& failure : coach->failures) {
                ADD_FAILURE() << failure.message.toStdString();
            }
        }
        std::sort(m_done.begin(), m_done.end(), [](const Acknowledged& a, const Acknowledged& b) { return a.act < b.act; });
    }

    QStringList row(const QString& sql, base::ActId act) { return m_studio.rows(sql.arg(act.value())); }

    /// Every act that was acknowledged is there once, by who did it, and there is no other.
    void checkActs()
    {
        std::set<base::ActId> acts;
        for (const Acknowledged& one : m_done) {
            EXPECT_TRUE(acts.insert(one.act).second) << "two were told of act " << one.act.value();
            EXPECT_EQ(row(QStringLiteral("SELECT coach_id FROM act WHERE id = %1"), one.act), QStringList(QString::number(one.coach.value())));
        }
        EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT count(*) FROM act")).front().toLongLong(), m_actsBefore + static_cast<qint64>(m_done.size()));
    }

    /// What was recorded or corrected says what its writer said, and replaced the version that its writer saw.
    void checkEntries()
    {
        std::set<base::EventId> replaced;
        for (const Acknowledged& one : m_done) {
            if (one.what != Acknowledged::What::Recorded && one.what != Acknowledged::What::Corrected) {
                continue;
            }
            const QString seen = one.what == Acknowledged::What::Corrected ? QString::number(one.seen.value()) : QStringLiteral("-");
            EXPECT_EQ(row(QStringLiteral("SELECT e.replaces_id, s.load_centi, s.amount FROM event e JOIN event_set s ON s.event_id = e.id WHERE e.act_id = %1"), one.act),
                      QStringList(QStringLiteral("%1|%2|%3").arg(seen).arg(one.load.centi()).arg(one.reps)));
            EXPECT_TRUE(one.seen.isNone() || replaced.insert(one.seen).second) << "version " << one.seen.value() << " was replaced twice";
        }
    }

    void checkUndos()
    {
        std::set<base::ActId> undone;
        for (const Acknowledged& one : m_done) {
            if (one.what == Acknowledged::What::Undone) {
                EXPECT_TRUE(undone.insert(one.undone).second) << "act " << one.undone.value() << " was taken back twice";
                EXPECT_EQ(row(QStringLiteral("SELECT undoes_act_id FROM act WHERE id = %1"), one.act), QStringList(QString::number(one.undone.value())));
            }
        }
    }

    /// What each change of a session found is what the one before it left; the last one left what is there now.
    void checkChain(const char* table, const char* before, const char* after, const char* now)
    {
        std::map<QString, QString> left;
        for (const QString& line : m_studio.rows(QStringLiteral("SELECT session_id, %1, %2 FROM %3 WHERE session_id IN (SELECT id FROM session WHERE client_id = 2) "
                                                                "ORDER BY act_id").arg(QLatin1String(before), QLatin1String(after), QLatin1String(table)))) {
            const QStringList parts = line.split(QLatin1Char('|'));
            if (const auto last = left.find(parts[0]); last != left.end()) {
                EXPECT_EQ(parts[1], last->second) << table << ": session " << parts[0].toStdString() << " was changed by somebody who had not seen the last change";
            }
            left[parts[0]] = parts[2];
        }
        for (const auto& [session, state] : left) {
            const QString present = m_studio.rows(QStringLiteral("SELECT %1 FROM session WHERE id = %2").arg(QLatin1String(now), session)).front();
            EXPECT_TRUE(state.contains(present)) << table << ": " << state.toStdString() << " is not " << present.toStdString();
        }
    }

    /// Whoever wrote a form over had seen what the one before wrote: from the first text to the one that is there now, one way leads through all.
    void checkForms(FormKind kind, const std::string& present)
    {
        std::map<std::string, const SavedForm*> bySeen;
        for (const SavedForm& one : m_forms) {
            if (one.kind == kind) {
                EXPECT_TRUE(bySeen.emplace(one.seen, &one).second) << keyOf(kind) << ": two wrote over '" << one.seen << "'";
            }
        }
        std::string text = "as it began";
        std::size_t steps = 0;
        for (auto next = bySeen.find(text); next != bySeen.end() && steps <= bySeen.size(); next = bySeen.find(text)) {
            text = next->second->written;
            ++steps;
        }
        EXPECT_EQ(steps, bySeen.size()) << keyOf(kind) << ": some were written over by nobody who had seen them";
        EXPECT_EQ(text, present) << keyOf(kind);
    }

    /// Each of them stands in the history once, under who did it.
    void checkAuditOfForms(FormKind kind, AuditWhat what)
    {
        std::map<QString, int> saved;
        for (const SavedForm& one : m_forms) {
            saved[QString::number(one.coach.value())] += one.kind == kind ? 1 : 0;
        }
        const std::string_view key = keyOf(what);
        for (const auto& [coach, count] : saved) {
            const QString sql = QStringLiteral("SELECT count(*) FROM audit WHERE what = '%1' AND coach_id = %2 AND id > %3");
            EXPECT_EQ(m_studio.rows(sql.arg(QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size())), coach, m_auditBefore)), QStringList(QString::number(count)))
                << key << " by coach " << coach.toStdString();
        }
    }

    test::StudioOnTest m_studio;
    qint64 m_actsBefore = 0;
    QString m_auditBefore;
    std::vector<Acknowledged> m_done;
    std::vector<SavedForm> m_forms;
    std::vector<StoreError> m_told;
};

TEST_F(ManyCoachesTest, LoseNothingOfEachOther)
{
    work();
    checkActs();
    checkEntries();
    checkUndos();
    checkChain("session_change", "state_before", "state_after", "state");
    checkChain("booking_change", "before", "after", R"('"coach":"' || coach_id || '"')");
    ClientForms forms(m_studio.database());
    checkForms(FormKind::Profile, forms.profile(whoseForms()).value().trainingHistory);
    checkForms(FormKind::HealthIntake, forms.healthIntake(whoseForms()).value().value().note);
    checkAuditOfForms(FormKind::Profile, AuditWhat::Profile);
    checkAuditOfForms(FormKind::HealthIntake, AuditWhat::HealthIntake);
    EXPECT_FALSE(m_forms.empty());
    EXPECT_GT(m_done.size() + m_forms.size(), static_cast<std::size_t>(4 * secondsOnTest())) << "they did work";
    EXPECT_FALSE(m_told.empty()) << "and came in each other's way";
    const auto check = checkStudio(m_studio.database());
    ASSERT_TRUE(check) << check.error().message.toStdString();
    for (const CheckFault& fault : check->faults) {
        ADD_FAILURE() << fault.message.toStdString();
    }
    if (m_studio.database().isOnServer()) {
        EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT count(*) FROM pg_locks WHERE locktype = 'advisory' AND database = (SELECT oid FROM pg_database WHERE datname = current_database())")),
                  QStringList(QStringLiteral("0")))
            << "nobody holds anything";
    }
    std::printf("%zu done, %zu forms, %zu told that somebody else was there before\n", m_done.size(), m_forms.size(), m_told.size());
}

}  // namespace

}  // namespace chalk::store
