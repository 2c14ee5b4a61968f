#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/store/client_writer.h"

#include "core/store/client_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::store {

namespace {

using clients::ClearanceState;
using clients::HealthIntake;
using clients::HealthMark;
using clients::HealthQuestion;

const base::Date kToday = test::smallStudioDay();

HealthIntake calmIntake()
{
    HealthIntake intake;
    for (clients::HealthAnswer& answer : intake.answers) {
        answer.isYes = false;
    }
    intake.isRegularExerciser = false;
    return intake;
}

HealthIntake intakeWith(HealthQuestion question, HealthMark mark)
{
    HealthIntake intake = calmIntake();
    intake.answerTo(question) = {true, {mark}, {}};
    return intake;
}

/// A studio with a new client, Cleo Marsh, who consented.
class Newcomer {
public:
    Newcomer()
    {
        clients::Client client;
        client.name = "Cleo Marsh";
        client.birthDate = base::Date::fromYmd(1990, 4, 2);
        client.coach = base::CoachId(1);
        client.startedOn = kToday;
        m_id = m_writer.add(client, kToday).value();
        clients::Profile profile;
        profile.consentOn = kToday;
        EXPECT_TRUE(m_writer.saveProfile(m_id, profile, kToday));
    }

    [[nodiscard]] base::ClientId id() const { return m_id; }
    ClientWriter& writer() { return m_writer; }
    test::StudioOnTest& studio() { return m_studio; }
    ClientFile file() { return ClientReader(m_studio.database()).read(m_id, kToday).value(); }
    clients::Clearance clearance() { return file().clearance; }
    bool isBlocked() { return clients::isBlocked(clearance(), kToday); }
    Result<clients::HealthOutcome> answer(const HealthIntake& intake) { return m_writer.saveIntake(m_id, intake, {}, "why", kToday); }
    Result<void> letter(std::optional<base::Date> until = {})
    {
        return m_writer.recordLetter(m_id, {"Dr Hale", kToday, until, "No breath-holding", {}, "letter.pdf", "%PDF"}, kToday);
    }

private:
    test::StudioOnTest m_studio;
    ClientWriter m_writer{m_studio.database()};
    base::ClientId m_id;
};

QString messageOf(const Result<void>& result)
{
    return result ? QString() : result.error().message;
}

NewLift squatFromThePattern()
{
    NewLift lift;
    lift.setup = test::lowerLift();
    lift.startedOn = kToday;
    return lift;
}

}  // namespace

TEST(ClientWriter, ANewClientWaitsForTheIntake)
{
    Newcomer cleo;
    EXPECT_EQ(cleo.file().client.name, "Cleo Marsh");
    EXPECT_EQ(cleo.clearance().state, ClearanceState::Unanswered);
    EXPECT_TRUE(cleo.isBlocked());
}

TEST(ClientWriter, RefusesAClientThatCannotBe)
{
    test::StudioOnTest studio;
    ClientWriter writer(studio.database());
    clients::Client client;
    client.coach = base::CoachId(1);
    client.name = "  ";
    EXPECT_EQ(writer.add(client, kToday).error().message, QStringLiteral("name is required"));
    client.name = "Cleo Marsh";
    client.birthDate = kToday + 1;
    EXPECT_EQ(writer.add(client, kToday).error().message, QStringLiteral("born is still to come"));
    client.birthDate = kToday - 1;
    client.coach = base::CoachId(99);
    EXPECT_EQ(writer.add(client, kToday).error().kind, StoreError::Kind::Refused);
    EXPECT_EQ(studio.rows(QStringLiteral("SELECT count(*) FROM client")), QStringList{QStringLiteral("2")});
}

TEST(ClientWriter, ChangesAClient)
{
    Newcomer cleo;
    clients::Client client = cleo.file().client;
    client.goal = "Carry her kayak";
    client.sessionsPerWeek = 3;
    ASSERT_TRUE(cleo.writer().change(client, kToday));
    EXPECT_EQ(cleo.file().client, client);
    client.sessionsPerWeek = 0;
    EXPECT_EQ(messageOf(cleo.writer().change(client, kToday)), QStringLiteral("sessions_per_week must be 1 to 7"));
}

TEST(ClientWriter, NoHealthIsKeptWithoutConsent)
{
    test::StudioOnTest studio;
    ClientWriter writer(studio.database());
    const base::ClientId bo = test::clientNamed(studio.database(), "Bo Arden");
    const QString expected = QStringLiteral("Without consent no health data is kept");
    EXPECT_EQ(writer.saveIntake(bo, calmIntake(), {}, {}, kToday).error().message, expected);
    clients::BodyMeasures measures;
    measures.date = kToday;
    EXPECT_EQ(messageOf(writer.saveMeasures(bo, measures, kToday)), expected);
    EXPECT_EQ(messageOf(writer.saveForm(bo, FormKind::MovementScreen, {}, kToday)), expected);
    EXPECT_TRUE(studio.rows(QStringLiteral("SELECT 1 FROM form")).isEmpty());
}

TEST(ClientWriter, ACalmIntakeOpensTheWay)
{
    Newcomer cleo;
    ASSERT_TRUE(cleo.answer(calmIntake()));
    EXPECT_EQ(cleo.clearance().state, ClearanceState::NotNeeded);
    EXPECT_FALSE(cleo.isBlocked());
}

TEST(ClientWriter, HalfAnIntakeIsKeptAndBlocks)
{
    Newcomer cleo;
    HealthIntake half;
    half.answerTo(HealthQuestion::ChestPain).isYes = false;
    ASSERT_TRUE(cleo.answer(half));
    EXPECT_TRUE(cleo.isBlocked());
    EXPECT_EQ(ClientForms(cleo.studio().database()).healthIntake(cleo.id()).value(), half);
    cleo.studio().close();
    cleo.studio().open();
    EXPECT_EQ(ClientForms(cleo.studio().database()).healthIntake(cleo.id()).value(), half);
}

TEST(ClientWriter, ALetterOpensTheWayUntilItsLastDay)
{
    Newcomer cleo;
    ASSERT_TRUE(cleo.answer(intakeWith(HealthQuestion::DiabetesKidneyLung, HealthMark::Diabetes)));
    EXPECT_EQ(cleo.clearance().state, ClearanceState::Recommended);
    EXPECT_EQ(cleo.clearance().reason, "why");
    ASSERT_TRUE(cleo.writer().askForLetter(cleo.id(), kToday - 3));
    EXPECT_EQ(cleo.clearance().askedOn, kToday - 3);
    ASSERT_TRUE(cleo.writer().remindOfLetter(cleo.id(), kToday + 7));
    EXPECT_EQ(cleo.clearance().remindOn, kToday + 7);
    ASSERT_TRUE(cleo.letter(kToday + 10));
    const clients::Clearance clearance = cleo.clearance();
    EXPECT_FALSE(clearance.remindOn) << "the letter is there";
    EXPECT_EQ(clearance.grantedBy, "Dr Hale");
    EXPECT_EQ(clearance.limits, "No breath-holding");
    EXPECT_FALSE(clients::isBlocked(clearance, kToday + 10));
    EXPECT_TRUE(clients::isBlocked(clearance, kToday + 11));
    const auto kept = ClientForms(cleo.studio().database()).latestLetter(cleo.id()).value();
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->file, QByteArray("%PDF"));
    EXPECT_EQ(kept->answers, std::vector{HealthMark::Diabetes});
}

TEST(ClientWriter, ALetterStandsForWhatItAnsweredAndNoMore)
{
    Newcomer cleo;
    HealthIntake intake = intakeWith(HealthQuestion::DiabetesKidneyLung, HealthMark::Diabetes);
    ASSERT_TRUE(cleo.answer(intake));
    ASSERT_TRUE(cleo.letter());
    intake.note = "Prefers mornings";
    ASSERT_TRUE(cleo.answer(intake));
    EXPECT_FALSE(cleo.isBlocked());
    intake.answerTo(HealthQuestion::Breathless) = {true, {HealthMark::Palpitations}, {}};
    ASSERT_TRUE(cleo.answer(intake));
    EXPECT_EQ(cleo.clearance().state, ClearanceState::Recommended);
    ASSERT_TRUE(cleo.letter());
    ASSERT_TRUE(cleo.answer(intake));
    EXPECT_FALSE(cleo.isBlocked());
}

TEST(ClientWriter, RefusesALetterThatCannotBe)
{
    Newcomer cleo;
    EXPECT_EQ(messageOf(cleo.letter(kToday - 1)), QStringLiteral("valid_until is before the letter's day"));
    EXPECT_EQ(messageOf(cleo.writer().recordLetter(cleo.id(), {"", kToday, {}, {}, {}, {}, {}}, kToday)), QStringLiteral("written_by is required"));
    EXPECT_EQ(messageOf(cleo.writer().recordLetter(cleo.id(), {"Dr Hale", kToday + 1, {}, {}, {}, {}, {}}, kToday)), QStringLiteral("day is still to come"));
    EXPECT_TRUE(ClientForms(cleo.studio().database()).letters(cleo.id()).value().empty());
    EXPECT_TRUE(cleo.isBlocked());
}

TEST(ClientWriter, TheLatestMassIsTheClients)
{
    Newcomer cleo;
    clients::BodyMeasures measures;
    measures.date = kToday - 7;
    measures.mass = base::Mass::of(base::Load::fromCenti(7010), base::MassUnit::Kilogram);
    ASSERT_TRUE(cleo.writer().saveMeasures(cleo.id(), measures, kToday));
    measures.date = kToday;
    measures.mass = base::Mass::of(base::Load::fromCenti(6950), base::MassUnit::Kilogram);
    ASSERT_TRUE(cleo.writer().saveMeasures(cleo.id(), measures, kToday));
    measures.heartRate = 61;
    ASSERT_TRUE(cleo.writer().saveMeasures(cleo.id(), measures, kToday));
    EXPECT_EQ(cleo.file().client.bodyMass, base::Load::fromCenti(6950));
    const auto kept = ClientForms(cleo.studio().database()).measures(cleo.id()).value();
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(kept.back(), measures);
}

TEST(ClientWriter, AnOlderDayIsMeasuredAgainAndLeavesTheLatestMassAlone)
{
    Newcomer cleo;
    clients::BodyMeasures monday;
    monday.date = kToday - 7;
    monday.mass = base::Mass::of(base::Load::fromCenti(7010), base::MassUnit::Kilogram);
    clients::BodyMeasures today;
    today.date = kToday;
    today.mass = base::Mass::of(base::Load::fromCenti(6950), base::MassUnit::Kilogram);
    ASSERT_TRUE(cleo.writer().saveMeasures(cleo.id(), monday, kToday));
    ASSERT_TRUE(cleo.writer().saveMeasures(cleo.id(), today, kToday));
    monday.mass = base::Mass::of(base::Load::fromCenti(7100), base::MassUnit::Kilogram);
    ASSERT_TRUE(cleo.writer().saveMeasures(cleo.id(), monday, kToday));
    EXPECT_EQ(cleo.file().client.bodyMass, base::Load::fromCenti(6950));
    EXPECT_EQ(ClientForms(cleo.studio().database()).measures(cleo.id()).value(), (std::vector{monday, today}));
}

TEST(ClientWriter, FieldTestsOfADayAreWrittenOverAndThoseOfAnEarlierDayStay)
{
    Newcomer cleo;
    const auto secondsHeld = [&cleo] {
        std::vector<int> held;
        const auto days = ClientForms(cleo.studio().database()).fieldTests(cleo.id()).value();
        for (const screens::FieldTestDay& day : days) {
            held.push_back(std::get<screens::Plank>(day.tests.at(0)).heldMs);
        }
        return held;
    };
    ASSERT_TRUE(cleo.writer().saveFieldTests(cleo.id(), {kToday - 56, {screens::Plank{50'000}}}, kToday));
    ASSERT_TRUE(cleo.writer().saveFieldTests(cleo.id(), {kToday, {screens::Plank{60'000}}}, kToday));
    ASSERT_TRUE(cleo.writer().saveFieldTests(cleo.id(), {kToday, {screens::Plank{62'500}}}, kToday));
    EXPECT_EQ(secondsHeld(), (std::vector{50'000, 62'500}));
    EXPECT_EQ(messageOf(cleo.writer().saveFieldTests(cleo.id(), {kToday + 1, {}}, kToday)), QStringLiteral("date is after today"));
    EXPECT_EQ(secondsHeld(), (std::vector{50'000, 62'500}));
}

TEST(ClientWriter, AFinishedFormStaysAndTheNextIsItsOwn)
{
    Newcomer cleo;
    const QJsonObject first{{QStringLiteral("n"), 1}};
    const QJsonObject second{{QStringLiteral("n"), 2}};
    ASSERT_TRUE(cleo.writer().saveForm(cleo.id(), FormKind::MovementScreen, first, kToday));
    ASSERT_TRUE(cleo.writer().finishForm(cleo.id(), FormKind::MovementScreen));
    ASSERT_TRUE(cleo.writer().saveForm(cleo.id(), FormKind::MovementScreen, second, kToday));
    const auto forms = ClientForms(cleo.studio().database()).all(cleo.id(), FormKind::MovementScreen).value();
    EXPECT_EQ(forms, (std::vector<Form>{{kToday, true, first}, {kToday, false, second}}));
}

TEST(ClientWriter, CautionsAreAddedChangedAndEnded)
{
    Newcomer cleo;
    clients::Caution caution;
    caution.bodyPart = "Right knee";
    caution.tags = {lifts::CautionTag::Knee};
    caution.id = cleo.writer().saveCaution(cleo.id(), caution, kToday).value();
    caution.text = "No kneeling";
    ASSERT_TRUE(cleo.writer().saveCaution(cleo.id(), caution, kToday));
    EXPECT_EQ(cleo.file().cautions, std::vector{caution});
    ASSERT_TRUE(cleo.writer().endCaution(caution.id, kToday));
    EXPECT_TRUE(cleo.file().cautions.empty());
    EXPECT_FALSE(cleo.writer().saveCaution(cleo.id(), {}, kToday));
}

TEST(ClientWriter, NoCautionIsKeptWithoutConsent)
{
    Newcomer cleo;
    ASSERT_TRUE(cleo.writer().saveProfile(cleo.id(), {}, kToday));
    clients::Caution caution;
    caution.bodyPart = "Right knee";
    const auto refused = cleo.writer().saveCaution(cleo.id(), caution, kToday);
    ASSERT_FALSE(refused);
    EXPECT_TRUE(refused.error().message.contains(QStringLiteral("consent"))) << refused.error().message.toStdString();
    EXPECT_TRUE(cleo.file().cautions.empty());
}

TEST(ClientWriter, WhoWasOnlyBegunIsDiscardedWithEverything)
{
    Newcomer cleo;
    ASSERT_TRUE(cleo.answer(intakeWith(HealthQuestion::JointBoneBack, HealthMark::Knee)));
    ASSERT_TRUE(cleo.letter());
    clients::Caution caution;
    caution.bodyPart = "Right knee";
    ASSERT_TRUE(cleo.writer().saveCaution(cleo.id(), caution, kToday));
    ASSERT_TRUE(cleo.writer().discard(cleo.id()));
    EXPECT_FALSE(ClientReader(cleo.studio().database()).read(cleo.id(), kToday));
    for (const char* table : {"caution", "clearance", "form", "letter"}) {
        const QString count = QStringLiteral("SELECT count(*) FROM %1 WHERE client_id = %2").arg(QLatin1String(table)).arg(cleo.id().value());
        EXPECT_EQ(cleo.studio().rows(count), QStringList{QStringLiteral("0")}) << table;
    }
}

TEST(ClientWriter, WhoTrainsIsNotDiscarded)
{
    Newcomer cleo;
    ASSERT_TRUE(cleo.writer().startLifts(cleo.id(), {squatFromThePattern()}));
    EXPECT_FALSE(cleo.writer().discard(cleo.id()));
    EXPECT_EQ(cleo.file().client.name, "Cleo Marsh");
}

TEST(ClientWriter, LiftsBeginOnce)
{
    Newcomer cleo;
    ASSERT_EQ(cleo.writer().startLifts(cleo.id(), {squatFromThePattern()}).value().size(), 1U);
    const ClientFile file = cleo.file();
    ASSERT_EQ(file.lifts.size(), 1U);
    EXPECT_EQ(file.lifts[0].lift.machine.state().stage, progression::Stage::Pattern);
    const auto again = cleo.writer().startLifts(cleo.id(), {squatFromThePattern()});
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().message, QStringLiteral("squat has begun already"));
    EXPECT_EQ(cleo.file().lifts.size(), 1U);
}

RC_GTEST_PROP(ClientWriter, WhoeverIsSentToADoctorIsBlockedInTheFile, ())
{
    static Newcomer cleo;
    HealthIntake intake;
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        const auto question = static_cast<HealthQuestion>(i);
        intake.answerTo(question).isYes = *rc::gen::element(std::optional<bool>(), std::optional(false), std::optional(false), std::optional(true));
        intake.answerTo(question).marks = *rc::gen::element(std::vector<HealthMark>(), std::vector{clients::marksOf(question).back()});
    }
    intake.isRegularExerciser = *rc::gen::arbitrary<bool>();
    const auto outcome = cleo.answer(intake);
    RC_ASSERT(outcome.has_value());
    const bool isDoctorAsked = clients::isClearanceAdvised(outcome->advice) || outcome->isCareNeededNow;
    RC_ASSERT(!isDoctorAsked || cleo.isBlocked());
    RC_ASSERT(outcome->isComplete() || cleo.isBlocked());
}

namespace {

studio::NewClient wholeArrival()
{
    studio::NewClient added;
    added.client.name = "Tove Aldane";
    added.client.birthDate = base::Date::fromYmd(1991, 5, 14);
    added.client.coach = base::CoachId(1);
    added.client.startedOn = kToday;
    added.profile.consentOn = kToday;
    added.intake = intakeWith(HealthQuestion::Breathless, HealthMark::BreathlessOnLightEffort);
    clients::BodyMeasures late;
    late.date = kToday;
    late.mass = base::Mass::of(base::Load::fromCenti(6850), base::MassUnit::Kilogram);
    clients::BodyMeasures early;
    early.date = kToday - 30;
    early.mass = base::Mass::of(base::Load::fromCenti(7100), base::MassUnit::Kilogram);
    added.measures = {late, early};
    added.screen = exchange::builtInScreenCatalogue(exchange::builtInCatalogue()).blankScreen(kToday);
    added.fieldTests = {{kToday, {screens::Plank{62500}}}};
    added.cautions.push_back({{}, "Left knee", "No deep bend", "Knee", {lifts::CautionTag::Knee}, {}});
    return added;
}

Result<AddedClient> addTo(test::StudioOnTest& studio, const studio::NewClient& added, SameName sameName = SameName::Refuse)
{
    return ClientWriter(studio.database()).addWhole(added, {}, [](const clients::HealthOutcome&) { return std::string("why"); }, sameName, kToday);
}

/// How many rows a new client has left anywhere.
QStringList countsOfRows(test::StudioOnTest& studio)
{
    return studio.rows(QStringLiteral("SELECT (SELECT count(*) FROM client), (SELECT count(*) FROM form), (SELECT count(*) FROM clearance), (SELECT count(*) FROM caution)"));
}

}  // namespace

TEST(ClientWriter, AddsAllThatIsKnownOfSomebody)
{
    test::StudioOnTest studio;
    const studio::NewClient added = wholeArrival();
    const auto done = addTo(studio, added);
    ASSERT_TRUE(done) << done.error().message.toStdString();
    EXPECT_EQ(done->clearance.state, ClearanceState::Recommended);
    EXPECT_EQ(done->clearance.reason, "why");
    ClientForms forms(studio.database());
    EXPECT_EQ(forms.profile(done->id).value(), added.profile);
    EXPECT_EQ(forms.healthIntake(done->id).value(), added.intake);
    EXPECT_EQ(forms.movementScreen(done->id).value(), added.screen);
    EXPECT_EQ(forms.fieldTests(done->id).value(), added.fieldTests);
    EXPECT_EQ(forms.measures(done->id).value(), (std::vector{added.measures[1], added.measures[0]}));
    const ClientFile file = ClientReader(studio.database()).read(done->id, kToday).value();
    EXPECT_EQ(file.client.bodyMass, base::Load::fromCenti(6850)) << "the latest";
    ASSERT_EQ(file.cautions.size(), 1U);
    EXPECT_EQ(file.clearance, done->clearance);
}

TEST(ClientWriter, MeasuresGoOnAfterAddingInTheSameForm)
{
    test::StudioOnTest studio;
    const auto done = addTo(studio, wholeArrival()).value();
    clients::BodyMeasures again = wholeArrival().measures[0];
    again.mass = base::Mass::of(base::Load::fromCenti(6900), base::MassUnit::Kilogram);
    ASSERT_TRUE(ClientWriter(studio.database()).saveMeasures(done.id, again, kToday));
    EXPECT_EQ(ClientForms(studio.database()).measures(done.id).value().size(), 2U);
}

TEST(ClientWriter, AddsNobodyWhereAnyPartCannotBe)
{
    test::StudioOnTest studio;
    const QStringList before = countsOfRows(studio);
    const auto refusal = [&studio](auto spoil) {
        studio::NewClient added = wholeArrival();
        spoil(added);
        const auto done = addTo(studio, added);
        return done ? std::string("taken") : done.error().message.toStdString();
    };
    const auto has = [](const std::string& text, const char* words) { return text.find(words) != std::string::npos; };
    EXPECT_TRUE(has(refusal([](auto& added) { added.client.name = "  "; }), "name"));
    EXPECT_TRUE(has(refusal([](auto& added) { added.profile.consentOn.reset(); }), "profile.consent"));
    EXPECT_TRUE(has(refusal([](auto& added) { added.client.birthDate = kToday - 5000; }), "profile.guardian_consent"));
    EXPECT_TRUE(has(refusal([](auto& added) { added.cautions[0].bodyPart.clear(); }), "body_part"));
    EXPECT_TRUE(has(refusal([](auto& added) { added.measures[0].date = kToday + 1; }), "date"));
    EXPECT_NE(refusal([](auto& added) { added.client.coach = base::CoachId(99); }), "taken");
    EXPECT_EQ(countsOfRows(studio), before);
}

TEST(ClientWriter, ASecondOfTheSameNameIsMeant)
{
    test::StudioOnTest studio;
    ASSERT_TRUE(addTo(studio, wholeArrival()));
    studio::NewClient again = wholeArrival();
    again.client.name = "tove  ALDANE";
    EXPECT_FALSE(addTo(studio, again));
    EXPECT_TRUE(addTo(studio, again, SameName::Allow));
}

}  // namespace chalk::store
