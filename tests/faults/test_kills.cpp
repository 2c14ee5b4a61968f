#include "core/store/backup_shelf.h"
#include "core/store/studio_check.h"
#include "tests/faults/child_process.h"
#include "tests/faults/studio_content.h"
#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

#include <csignal>
#include <random>
#include <set>

#include <unistd.h>

namespace chalk::faults {

namespace {

#ifdef __SANITIZE_ADDRESS__
constexpr int kKillsWhileRecording = 30;
constexpr int kOtherKills = 10;
#else
constexpr int kKillsWhileRecording = 300;
constexpr int kOtherKills = 60;
#endif
constexpr int kKillsBetweenChecks = 25;
constexpr unsigned kSeedOfKills = 20261124;

/// As the small studio, with so many people like its first one that a copy takes a while.
exchange::StudioDocument crowdedStudio()
{
    exchange::StudioDocument document = test::smallStudio();
    const exchange::DocumentClient ada = document.clients.front();
    for (int i = 0; i < 60; ++i) {
        exchange::DocumentClient another = ada;
        another.client.id = base::ClientId(10 + i);
        another.client.name = "Person " + std::to_string(i);
        const std::string mark = "-" + std::to_string(i);
        for (sessions::Session& session : another.sessions) {
            session.client = another.client.id;
            session.code += mark;
        }
        for (exchange::DocumentLift& lift : another.lifts) {
            for (exchange::DocumentEvent& event : lift.events) {
                event.sessionCode = event.sessionCode ? std::optional(*event.sessionCode + mark) : std::nullopt;
            }
        }
        document.clients.push_back(another);
    }
    return document;
}

QString somewhereIn(const QString& folder, const char* name)
{
    return folder + QLatin1Char('/') + QLatin1String(name);
}

}  // namespace

/// What a record acknowledged: its act, how many entries it wrote, and its session.
struct Acknowledged {
    qint64 act = 0;
    int entries = 0;
    qint64 session = 0;
};

/// Runs children one after the other and kills each at a random moment: after none to `most` of its lines, and some more milliseconds.
class ChildKiller {
public:
    /// Runs a child and answers all lines that it wrote before it died.
    QStringList runAndKill(const QStringList& arguments, int most)
    {
        ChildProcess child(arguments);
        QStringList lines;
        const int heard = below(most + 1);
        for (int i = 0; i < heard; ++i) {
            if (const auto line = child.readLine()) {
                lines.append(*line);
            }
        }
        ::usleep(static_cast<useconds_t>(below(heard == 0 ? kStartMicroseconds : kWorkMicroseconds)));
        child.kill();
        while (const auto line = child.readLine()) {
            lines.append(*line);
        }
        EXPECT_EQ(child.wait(), -SIGKILL) << "it ended by itself: " << lines.join(QLatin1Char('\n')).toStdString();
        return lines;
    }

private:
    static constexpr int kStartMicroseconds = 60'000;
    static constexpr int kWorkMicroseconds = 12'000;

    int below(int n) { return static_cast<int>(m_random() % static_cast<unsigned>(n)); }

    std::mt19937 m_random{kSeedOfKills};
};

class KillTest : public ::testing::Test {
protected:
    static void expectSound(store::Database& database)
    {
        const auto check = store::checkStudio(database);
        ASSERT_TRUE(check) << check.error().message.toStdString();
        for (const store::CheckFault& fault : check->faults) {
            ADD_FAILURE() << fault.message.toStdString();
        }
    }
    /// Every backup that has its name is sound.
    static void expectSoundShelf(const QString& studio)
    {
        const auto late = [] { return store::BackupShelf::Moment{{*base::Date::parse("2099-01-01"), 0}, 0}; };
        for (const store::KeptBackup& backup : store::BackupShelf(store::BackupShelf::folderFor(studio), late).list()) {
            const auto verified = store::verifyBackup(backup.file);
            EXPECT_TRUE(verified) << verified.error().message.toStdString();
        }
    }

    ChildKiller m_killer;
};

class RecordingKillTest : public KillTest {
protected:
    void take(const QStringList& lines)
    {
        for (const QString& line : lines) {
            const QStringList words = line.split(QLatin1Char(' '));
            ASSERT_EQ(words.value(0).toStdString(), "recorded") << line.toStdString();
            m_acknowledged.push_back({words.value(1).toLongLong(), words.value(2).toInt(), words.value(3).toLongLong()});
        }
    }
    /// Everything that was acknowledged is there, nothing is there by half, and the studio is sound.
    void expectAllThere()
    {
        m_studio.open();
        std::set<QString> there;
        const QStringList acts = m_studio.rows(QStringLiteral("SELECT act.id, count(event.id), max(event.session_id), max(session.state) FROM act "
                                                              "JOIN event ON event.act_id = act.id JOIN session ON session.id = event.session_id "
                                                              "WHERE act.kind = 'record' GROUP BY act.id"));
        for (const QString& act : acts) {
            EXPECT_EQ(act.section(QLatin1Char('|'), 1, 1), QStringLiteral("2")) << "half a record: " << act.toStdString();
            there.insert(act);
        }
        int lost = 0;
        for (const Acknowledged& one : m_acknowledged) {
            lost += there.count(QStringLiteral("%1|%2|%3|recorded").arg(one.act).arg(one.entries).arg(one.session)) == 0 ? 1 : 0;
        }
        EXPECT_EQ(lost, 0) << "of " << m_acknowledged.size();
        m_records = acts.size();
        expectSound(m_studio.database());
        m_studio.close();
    }

    test::StudioOnTest m_studio;
    std::vector<Acknowledged> m_acknowledged;
    qsizetype m_records = 0;
};

TEST_F(RecordingKillTest, NothingThatWasAcknowledgedIsLost)
{
    m_studio.close();
    for (int kill = 1; kill <= kKillsWhileRecording && !HasFailure(); ++kill) {
        take(m_killer.runAndKill({QStringLiteral("record"), m_studio.file()}, 5));
        if (kill % kKillsBetweenChecks == 0) {
            expectAllThere();
        }
    }
    expectAllThere();
    RecordProperty("acknowledged", static_cast<int>(m_acknowledged.size()));
    EXPECT_GT(m_acknowledged.size(), static_cast<std::size_t>(kKillsWhileRecording)) << "the children hardly worked";
    EXPECT_LE(m_records, static_cast<qsizetype>(m_acknowledged.size()) + kKillsWhileRecording) << "one at most is not acknowledged yet when a child dies";
}

TEST_F(KillTest, ABackupThatHasItsNameIsSound)
{
    test::StudioOnTest studio(crowdedStudio());
    const StudioContent before = contentOf(studio.database());
    studio.close();
    const QString folder = store::BackupShelf::folderFor(studio.file());
    int made = 0;
    for (int kill = 1; kill <= kOtherKills && !HasFailure(); ++kill) {
        for (const QString& line : m_killer.runAndKill({QStringLiteral("backup"), studio.file()}, 3)) {
            ASSERT_TRUE(line.startsWith(QLatin1String("made "))) << line.toStdString();
            ++made;
        }
        expectSoundShelf(studio.file());
    }
    EXPECT_GT(made, kOtherKills / 2);
    EXPECT_EQ(contentOfFile(studio.file()), before);
    // What the dead left unfinished goes with the first backup an hour later.
    for (const QFileInfo& part : QDir(folder).entryInfoList({QStringLiteral("*.part*")}, QDir::Files)) {
        QFile file(part.filePath());
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        ASSERT_TRUE(file.setFileTime(part.lastModified().addSecs(-7200), QFileDevice::FileModificationTime));
    }
    studio.open();
    const auto late = [] { return store::BackupShelf::Moment{{*base::Date::parse("2099-01-01"), 0}, 0}; };
    ASSERT_TRUE(store::BackupShelf(folder, late).add(studio.database()));
    EXPECT_EQ(QDir(folder).entryList({QStringLiteral("*.part*")}, QDir::Files), QStringList());
}

TEST_F(KillTest, AStudioIsOneOrTheOtherWhileABackupTakesItsPlace)
{
    test::StudioOnTest studio(crowdedStudio());
    const QString a = somewhereIn(studio.folder(), "a.chalkrung");
    const QString b = somewhereIn(studio.folder(), "b.chalkrung");
    ASSERT_TRUE(store::copyStudio(studio.database(), a));
    studio.rows(QStringLiteral("UPDATE client SET name = name || '!'"));
    ASSERT_TRUE(store::copyStudio(studio.database(), b));
    studio.close();
    const StudioContent contentA = contentOfFile(a);
    const StudioContent contentB = contentOfFile(b);
    ASSERT_NE(contentA, contentB);
    StudioContent last = contentB;
    for (int kill = 1; kill <= kOtherKills && !HasFailure(); ++kill) {
        const QStringList lines = m_killer.runAndKill({QStringLiteral("restore"), studio.file(), a, b}, 3);
        for (const QString& line : lines) {
            ASSERT_TRUE(line.startsWith(QLatin1String("restored "))) << line.toStdString();
            last = line.endsWith(a) ? contentA : contentB;
        }
        const StudioContent now = contentOfFile(studio.file());
        // A child begins with A: the one that was not acknowledged yet may be there.
        const StudioContent& next = lines.isEmpty() || last == contentB ? contentA : contentB;
        EXPECT_TRUE(now == last || now == next) << "it is neither what was acknowledged nor what came next";
        last = now;
        if (kill % kKillsBetweenChecks == 0) {
            expectSoundShelf(studio.file());
        }
    }
    studio.open();
    expectSound(studio.database());
    expectSoundShelf(studio.file());
}

}  // namespace chalk::faults
