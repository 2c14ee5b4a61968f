#include "core/store/people_import.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/table_file.h"
#include "core/store/client_forms.h"
#include "core/store/client_reader.h"
#include "core/store/client_writer.h"
#include "core/store/people_reader.h"
#include "core/store/record_writer.h"
#include "core/store/roster_reader.h"
#include "core/store/sealing.h"
#include "core/store/studio_check.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

namespace chalk::store {
namespace {

using test::smallStudioDay;
using test::StudioOnTest;

const char* const kPeopleList = "Name,Born,Phone,Mail,Goal,Sessions per week\n"
                                "Cy Marsh,1990-02-03,01632 960001,cy@example.org,Lift the boat,3\n"
                                "Dee Oaks,,,,,\n";
const char* const kSessionList = "Client,Date,Exercise,Weight (kg),Reps,Sets,RIR,Rest,Note\n"
                                 "Cy Marsh,2026-03-02,Back squat,60,8,3,3,120,slept badly\n"
                                 "Cy Marsh,2026-03-02,Bench press,41.3,8,3,3,120,\n"
                                 "Cy Marsh,2026-03-05,Front squat,50,8,2,2,90,\n"
                                 "Cy Marsh,2026-03-05,Dead bug,,10,2,,,\n"
                                 "Cy Marsh,2026-03-09,Back squat,65,8,3,2,120,\n";

/// Reads lists and takes them into the small studio.
class ImportOnTest {
public:
    explicit ImportOnTest(std::initializer_list<const char*> files)
    {
        int index = 0;
        for (const char* text : files) {
            const auto file = exchange::inspectTable(text);
            EXPECT_TRUE(file);
            EXPECT_TRUE(exchange::readTable(*file, file->layout, content, index++, smallStudioDay()));
        }
        auto read = PeopleReader(studio.database()).proposal(content, catalogue, smallStudioDay());
        EXPECT_TRUE(read);
        proposal = *std::move(read);
        proposal.people.source = "people.csv";
    }

    Result<PeopleImported> run(const Progress& progress = {}) { return importPeople(studio.database(), proposal.people, test::someMoment(), randomSessionCode, progress); }
    Result<ActOutcome> undo(base::ActId act) { return RecordWriter(studio.database(), [] { return test::someMoment(); }).undo(act); }
    QStringList names()
    {
        QStringList names;
        const auto read = ClientReader(studio.database()).names();
        EXPECT_TRUE(read) << read.error().message.toStdString();
        for (const auto& [id, name] : read.value_or(std::vector<std::pair<base::ClientId, std::string>>())) {
            names.append(QString::fromStdString(name));
        }
        return names;
    }
    void expectSound()
    {
        const auto check = checkStudio(studio.database());
        ASSERT_TRUE(check) << check.error().message.toStdString();
        for (const CheckFault& fault : check->faults) {
            ADD_FAILURE() << fault.message.toStdString();
        }
    }

    StudioOnTest studio;
    lifts::Catalogue catalogue = exchange::builtInCatalogue();
    tables::TableContent content;
    PeopleProposal proposal;
};

TEST(PeopleImport, TakesPeopleAndTheirPastIn)
{
    ImportOnTest import({kPeopleList, kSessionList});
    const auto recorded = PeopleReader(import.studio.database()).recordedDays();
    const PeopleImported expected = previewOf(import.proposal.people, *recorded);
    const auto done = import.run();
    ASSERT_TRUE(done) << done.error().message.toStdString();
    EXPECT_EQ(done->newClients, 2);
    EXPECT_EQ(done->sessions, 3);
    EXPECT_EQ(done->exposures, 5);
    EXPECT_EQ(done->lifts, 3);
    EXPECT_EQ(expected.sessions, done->sessions);
    EXPECT_EQ(expected.exposures, done->exposures);
    EXPECT_EQ(expected.newClients, done->newClients);
    const auto cy = test::clientNamed(import.studio.database(), "Cy Marsh");
    const auto file = ClientReader(import.studio.database()).read(cy, smallStudioDay());
    ASSERT_TRUE(file);
    EXPECT_EQ(file->client.startedOn, base::Date::parse("2026-03-02"));
    EXPECT_EQ(file->client.sessionsPerWeek, 3);
    EXPECT_TRUE(clients::isBlocked(file->clearance, smallStudioDay()));
    EXPECT_EQ(ClientForms(import.studio.database()).profile(cy)->contact.email, "cy@example.org");
    ASSERT_EQ(file->lifts.size(), 3U);
    EXPECT_EQ(file->lifts[0].lift.machine.kit().exerciseKey, "back_squat");  // front squat in between
    EXPECT_TRUE(progression::isLoaded(file->lifts[0].lift.machine.state().stage));
    EXPECT_EQ(file->lifts[2].lift.machine.state().stage, progression::Stage::Pattern);  // nothing is loaded in it
    EXPECT_EQ(import.studio.rows(QStringLiteral("SELECT s.load_centi, s.amount, s.rir, s.rest_s FROM event_set s JOIN event e ON e.id = s.event_id JOIN lift l ON l.id = e.lift_id "
                                                "WHERE l.pattern = 'horizontal_push' AND l.client_id = %1").arg(cy.value())).front(), QStringLiteral("4130|8|3|120"));
    EXPECT_EQ(import.studio.rows(QStringLiteral("SELECT note FROM session_report WHERE note = 'slept badly'")).size(), 1);
    import.expectSound();
}

TEST(PeopleImport, KeepsABodyMassWithConsentOnly)
{
    ImportOnTest import({"Name,Born,Body mass (kg)\nCy Marsh,1990-02-03,71.5\nAda Lund,1984-05-17,64.2\n"});
    const auto ada = test::clientNamed(import.studio.database(), "Ada Lund");
    const QString mass = QStringLiteral("SELECT body_mass_centi FROM client WHERE name = '%1'");
    import.studio.rows(QStringLiteral("UPDATE client SET body_mass_centi = NULL WHERE id = %1").arg(ada.value()));
    const auto expected = previewOf(import.proposal.people, {});
    const auto without = import.run();
    ASSERT_TRUE(without) << without.error().message.toStdString();
    EXPECT_EQ(without->massesLeftOut, 2);
    EXPECT_EQ(expected.massesLeftOut, 2);
    EXPECT_EQ(import.studio.rows(mass.arg(QStringLiteral("Cy Marsh"))), QStringList(QStringLiteral("-")));
    EXPECT_EQ(import.studio.rows(mass.arg(QStringLiteral("Ada Lund"))), QStringList(QStringLiteral("-")));

    ASSERT_TRUE(import.undo(without->act));
    clients::Profile profile;
    profile.consentOn = smallStudioDay();
    ASSERT_TRUE(ClientWriter(import.studio.database()).saveProfile(ada, profile, smallStudioDay()));
    import.proposal = *PeopleReader(import.studio.database()).proposal(import.content, import.catalogue, smallStudioDay());
    EXPECT_EQ(previewOf(import.proposal.people, {}).massesLeftOut, 1);
    const auto with = import.run();
    ASSERT_TRUE(with) << with.error().message.toStdString();
    EXPECT_EQ(with->massesLeftOut, 1);
    EXPECT_EQ(import.studio.rows(mass.arg(QStringLiteral("Ada Lund"))), QStringList(QStringLiteral("6420")));
}

TEST(PeopleImport, IsTakenBackWholeAndDoneAgain)
{
    ImportOnTest import({kPeopleList, kSessionList});
    const QStringList caches = import.studio.cacheRows();
    const auto done = import.run();
    ASSERT_TRUE(done);
    const QStringList after = import.studio.cacheRows();
    const auto undone = import.undo(done->act);
    ASSERT_TRUE(undone) << undone.error().message.toStdString();
    EXPECT_EQ(import.names(), (QStringList{QStringLiteral("Ada Lund"), QStringLiteral("Bo Arden")}));
    EXPECT_EQ(RosterReader(import.studio.database()).read(smallStudioDay())->size(), 2U);
    EXPECT_EQ(import.studio.rows(QStringLiteral("SELECT count(*) FROM session WHERE state = 'recorded'")), QStringList(QStringLiteral("2")));
    EXPECT_EQ(import.studio.rows(QStringLiteral("SELECT count(*) FROM client_week WHERE client_id > 2")), QStringList(QStringLiteral("0")));
    import.expectSound();
    const auto redone = import.undo(undone->act);
    ASSERT_TRUE(redone) << redone.error().message.toStdString();
    EXPECT_EQ(import.names().size(), 4);
    EXPECT_EQ(import.studio.cacheRows(), after);
    EXPECT_NE(after, caches);
    EXPECT_EQ(ClientForms(import.studio.database()).profile(test::clientNamed(import.studio.database(), "Cy Marsh"))->contact.phone, "01632 960001");
    import.expectSound();
}

TEST(PeopleImport, BeingTakenBackTellsHowFarItIsAndCanBeStopped)
{
    ImportOnTest import({kPeopleList, kSessionList});
    const auto done = import.run();
    ASSERT_TRUE(done);
    const QStringList caches = import.studio.cacheRows();
    RecordWriter writer(import.studio.database(), [] { return test::someMoment(); });
    EXPECT_EQ(writer.entriesOf(done->act), 7);  // five lifts done, and two swaps of the exercise
    for (int most = 0; most < 4; ++most) {
        int told = 0;
        const auto stopped = writer.undo(done->act, [&told, most](int, int) { return told++ < most; });
        ASSERT_FALSE(stopped) << most;
        EXPECT_EQ(stopped.error().kind, StoreError::Kind::Cancelled);
        EXPECT_EQ(import.names().size(), 4);
        EXPECT_EQ(import.studio.cacheRows(), caches);
    }
    std::vector<int> shares;
    ASSERT_TRUE(writer.undo(done->act, [&shares](int share, int of) {
        EXPECT_LE(share, of);
        shares.push_back(share * 1000 / of);
        return true;
    }));
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_GE(shares.size(), 5U);  // two lifts of three, three sessions
    EXPECT_EQ(import.names().size(), 2);
}

TEST(PeopleImport, AddsToWhoIsThereAndGivesEverythingBack)
{
    ImportOnTest import({"Client,Phone,Mail,Birth date,Date,Exercise,Load,Reps\n"
                         "LUND Ada,01632 960009,,,2026-11-05,Back squat,42.5,8\n"
                         "Ada Lund,,,,2026-11-06,Front squat,30,8\n"
                         "Ada Lund,,,,2026-11-06,Pull-up,0,5\n"
                         "Ada Lund,,,,2026-11-17,Back squat,99,8\n"});
    const auto ada = test::clientNamed(import.studio.database(), "Ada Lund");
    ASSERT_EQ(import.proposal.people.persons.size(), 1U);
    EXPECT_EQ(import.proposal.people.persons[0].client, ada);
    const QString statesOfLifts = QStringLiteral("SELECT lift_id, stage, misses, state FROM lift_state WHERE lift_id <= 3 ORDER BY lift_id");
    const QStringList states = import.studio.rows(statesOfLifts);
    const auto squat = test::liftOf(import.studio.database(), ada, lifts::Pattern::Squat);
    const auto done = import.run();
    ASSERT_TRUE(done) << done.error().message.toStdString();
    EXPECT_EQ(done->knownClients, 1);
    EXPECT_EQ(done->sessionsThere, 1);  // on 17 November something is recorded already
    EXPECT_EQ(done->sessions, 2);
    EXPECT_EQ(done->lifts, 1);
    import.expectSound();
    const auto file = ClientReader(import.studio.database()).read(ada, smallStudioDay());
    for (const ClientLift& lift : file->lifts) {
        EXPECT_TRUE(lift.lift.id != squat || lift.lift.machine.kit().exerciseKey == "back_squat");  // it goes on as it was
    }
    EXPECT_EQ(ClientForms(import.studio.database()).profile(ada)->contact.phone, "01632 960009");
    const auto undone = import.undo(done->act);
    ASSERT_TRUE(undone) << undone.error().message.toStdString();
    EXPECT_EQ(ClientReader(import.studio.database()).read(ada, smallStudioDay())->lifts.size(), 3U);
    EXPECT_EQ(import.studio.rows(statesOfLifts), states);
    import.expectSound();
    ASSERT_TRUE(import.undo(undone->act));
    EXPECT_EQ(ClientReader(import.studio.database()).read(ada, smallStudioDay())->lifts.size(), 4U);
    import.expectSound();
}

TEST(PeopleImport, StaysOnceSomethingBuildsOnIt)
{
    ImportOnTest import({kPeopleList, kSessionList});
    const auto done = import.run();
    ASSERT_TRUE(done);
    const auto cy = test::clientNamed(import.studio.database(), "Cy Marsh");
    const auto squat = test::liftOf(import.studio.database(), cy, lifts::Pattern::Squat);
    RecordWriter writer(import.studio.database(), [] { return test::someMoment(); });
    const auto later = writer.record(cy, {}, {{squat, {smallStudioDay(), progression::Exposure{0, {{base::Load::fromCenti(6500), 8, 2}}}}}});
    ASSERT_TRUE(later) << later.error().message.toStdString();
    const auto refused = import.undo(done->act);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().message, QStringLiteral("Cy Marsh has gone on since the import: it stays"));
    EXPECT_EQ(import.names().size(), 4);
    ASSERT_TRUE(writer.undo(later->act));
    EXPECT_TRUE(import.undo(done->act));
}

TEST(PeopleImport, LeavesOutWhatNobodyDecided)
{
    ImportOnTest import({"Client,Date,Exercise,Load,Reps\nAda Lunds,2026-03-02,Back squat,60,8\nEve Hart,2026-03-02,Cycling,0,8\nEve Hart,2026-03-03,Back squat,60,8\n"});
    EXPECT_EQ(import.proposal.people.persons[0].choice, PersonChoice::Skip);  // a name much like Ada's
    EXPECT_EQ(import.proposal.people.exercises[1], nullptr);
    const auto done = import.run();
    ASSERT_TRUE(done) << done.error().message.toStdString();
    EXPECT_EQ(done->skippedPersons, 1);
    EXPECT_EQ(done->newClients, 1);
    EXPECT_EQ(done->sessions, 1);
    EXPECT_EQ(done->setsLeftOut, 1);
}

TEST(PeopleImport, RefusesWhatCannotBeAndWritesNothing)
{
    ImportOnTest import({kPeopleList});
    const QStringList before = import.studio.rows(QStringLiteral("SELECT count(*) FROM act"));
    import.proposal.people.persons = {{PersonChoice::AddTo, base::ClientId(1)}, {PersonChoice::AddTo, base::ClientId(1)}};
    EXPECT_EQ(import.run().error().kind, StoreError::Kind::Refused);
    import.proposal.people.persons = {{PersonChoice::AddTo, base::ClientId(99)}, {PersonChoice::Skip, {}}};
    EXPECT_EQ(import.run().error().message, QStringLiteral("There is no client 99"));
    import.proposal.people.persons = {{PersonChoice::Skip, {}}, {PersonChoice::Skip, {}}};
    EXPECT_EQ(import.run().error().message, QStringLiteral("There is nobody to take in"));
    import.proposal.people.persons = {};
    EXPECT_EQ(import.run([](int done, int) { return done < 1; }).error().kind, StoreError::Kind::Cancelled);
    import.proposal.people.coach = base::CoachId(77);
    EXPECT_EQ(import.run().error().message, QStringLiteral("There is no coach 77"));
    EXPECT_EQ(import.names().size(), 2);
    EXPECT_EQ(import.studio.rows(QStringLiteral("SELECT count(*) FROM act")), before);
}

TEST(PeopleImport, FindsTheSameListThereAlready)
{
    ImportOnTest import({kPeopleList, kSessionList});
    ASSERT_TRUE(import.run());
    const auto again = PeopleReader(import.studio.database()).proposal(import.content, import.catalogue, smallStudioDay());
    ASSERT_TRUE(again);
    const auto done = importPeople(import.studio.database(), again->people, test::someMoment());
    ASSERT_TRUE(done) << done.error().message.toStdString();
    EXPECT_EQ(done->newClients, 0);
    EXPECT_EQ(done->sessions, 0);
    EXPECT_EQ(done->sessionsThere, 3);
}

TEST(FileOnlyPeopleImport, SealsWhatItKeepsOfPeople)
{
    ImportOnTest import({kPeopleList, kSessionList});
    const seal::Passphrase passphrase(QStringLiteral("nine boats and a harbour"));
    Sealing sealing(import.studio.database(), seal::KeyCost::least());
    ASSERT_TRUE(sealing.set(passphrase));
    const auto done = import.run();
    ASSERT_TRUE(done) << done.error().message.toStdString();
    const QStringList notes = import.studio.rows(QStringLiteral("SELECT before, after FROM client_change"));
    EXPECT_EQ(notes.size(), 2);
    EXPECT_FALSE(notes.join(QLatin1Char(' ')).contains(QStringLiteral("example.org")));
    const auto undone = import.undo(done->act);
    ASSERT_TRUE(undone) << undone.error().message.toStdString();
    ASSERT_TRUE(import.undo(undone->act));
    const auto removed = sealing.remove(passphrase);
    ASSERT_TRUE(removed) << removed.error().message.toStdString();
    EXPECT_EQ(ClientForms(import.studio.database()).profile(test::clientNamed(import.studio.database(), "Cy Marsh"))->contact.email, "cy@example.org");
    import.expectSound();
}

}  // namespace
}  // namespace chalk::store
