#include "ui/history/history_words.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/csv_rows.h"
#include "tests/support/lift_on_test.h"

#include <QBuffer>
#include <QDateTime>
#include <QJsonArray>

#include <gtest/gtest.h>

#include <set>

namespace chalk::ui::history {

namespace {

const lifts::Catalogue& builtIn()
{
    static const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    return catalogue;
}

store::ChangeEntry audited(store::AuditWhat what, const QJsonObject& before, const QJsonObject& after)
{
    return {"2026-11-24T17:31:05Z", "Ines", base::ClientId(1), "Ada Lund", store::AuditRecord{1, what, before, after}, {}};
}

store::ChangeEntry acted(store::ActKind kind)
{
    store::ActRecord act;
    act.kind = kind;
    act.patterns = {lifts::Pattern::Squat, lifts::Pattern::Hinge};
    act.isUndone = true;
    return {"2026-11-24T17:31:05Z", {}, base::ClientId(1), "Ada Lund", act, {}};
}

/// What the history says of one lift that was set by hand.
QString handSetDetail(const progression::CoachSet& set, const progression::LiftSetup& setup = test::lowerLift())
{
    store::ActRecord act;
    act.kind = store::ActKind::Set;
    return historyDetail({"2026-11-24T17:31:05Z", {}, base::ClientId(1), "Ada Lund", act, {{base::LiftId(1), lifts::Pattern::Squat, "back_squat", {{set, setup}}}}}, builtIn());
}

}  // namespace

TEST(HistoryWords, SayWhatWasChangedFromWhatToWhat)
{
    const auto entry = audited(store::AuditWhat::ClientDetails, {{QStringLiteral("sessions_per_week"), QStringLiteral("2")}}, {{QStringLiteral("sessions_per_week"), QStringLiteral("3")}});
    EXPECT_EQ(historyTitle(entry, builtIn()), QStringLiteral("Client’s own details changed"));
    EXPECT_EQ(historyDetail(entry, builtIn()), QStringLiteral("sessions per week: 2 → 3"));
    const QDateTime here = QDateTime(QDate(2026, 11, 24), QTime(17, 31), Qt::UTC).toLocalTime();
    EXPECT_EQ(momentText(entry.atUtc), QStringLiteral("%1 Nov 2026, %2").arg(here.date().day()).arg(here.toString(QStringLiteral("HH:mm"))));
    EXPECT_EQ(momentText("soon"), QStringLiteral("soon"));
    EXPECT_EQ(topicOf(entry), HistoryTopic::Person);
}

TEST(HistoryWords, AMondayIsWrittenAsADay)
{
    const int monday = base::Date::parse("2026-11-30")->daysSince1970();
    const auto entry = audited(store::AuditWhat::WeekQuota, {}, {{QString::number(monday), QStringLiteral("3")}});
    EXPECT_EQ(historyDetail(entry, builtIn()), QStringLiteral("2026-11-30: 3"));
}

TEST(HistoryWords, OfHealthNameTheFieldsOnly)
{
    const auto entry = audited(store::AuditWhat::HealthIntake, {}, {{QStringLiteral("fields"), QJsonArray{QStringLiteral("answers"), QStringLiteral("resting")}}});
    EXPECT_EQ(historyDetail(entry, builtIn()), QStringLiteral("answers, resting"));
    EXPECT_EQ(topicOf(entry), HistoryTopic::Health);
}

TEST(HistoryWords, TellOfActs)
{
    const auto entry = acted(store::ActKind::Record);
    EXPECT_EQ(historyTitle(entry, builtIn()), QStringLiteral("Recorded: Squat, Hinge"));
    EXPECT_EQ(historyDetail(entry, builtIn()), QStringLiteral("taken back later"));
    EXPECT_EQ(historyAuthor(entry), QStringLiteral("nobody named"));
}

TEST(HistoryWords, NameTheExerciseWhereItIsKnown)
{
    store::ChangeEntry entry = acted(store::ActKind::Record);
    entry.lifts = {{base::LiftId(1), lifts::Pattern::Squat, "back_squat", {}}, {base::LiftId(2), lifts::Pattern::Hinge, "of somebody else", {}}};
    EXPECT_EQ(historyTitle(entry, builtIn()), QStringLiteral("Recorded: Back squat, Hinge"));
}

TEST(HistoryWords, ALiftThatWasSetByHandSaysWhatAndWhy)
{
    progression::CoachSet set;
    set.load = test::kilos(82.5);
    set.reason = "back from a cold";
    store::ChangeEntry entry = acted(store::ActKind::Set);
    std::get<store::ActRecord>(entry.did).isUndone = false;
    entry.lifts = {{base::LiftId(1), lifts::Pattern::Squat, "back_squat", {{set, test::lowerLift()}}}};
    EXPECT_EQ(historyTitle(entry, builtIn()), QStringLiteral("Set by the coach: Back squat"));
    EXPECT_EQ(historyDetail(entry, builtIn()), QStringLiteral("82.5 kg; reason: back from a cold"));
    entry.lifts.push_back({base::LiftId(2), lifts::Pattern::Hinge, {}, {}});
    EXPECT_EQ(historyDetail(entry, builtIn()), QStringLiteral("Back squat: 82.5 kg; reason: back from a cold")) << "several lifts: which one";
    EXPECT_TRUE(historyCsvOf({entry}, builtIn()).contains("reason: back from a cold"));
    EXPECT_TRUE(historyJsonOf({entry}, builtIn()).contains("reason: back from a cold"));
}

TEST(HistoryWords, EverythingHasATitleAndEveryTopicAName)
{
    std::set<QString> titles;
    for (int i = 0; i < store::kAuditWhats; ++i) {
        const QString title = historyTitle(audited(static_cast<store::AuditWhat>(i), {}, {}), builtIn());
        EXPECT_FALSE(title.isEmpty()) << i;
        EXPECT_TRUE(titles.insert(title).second) << title.toStdString();
    }
    for (const HistoryTopic topic : kHistoryTopics) {
        EXPECT_FALSE(historyTopicName(topic).isEmpty());
    }
}

TEST(HistoryWords, AreWrittenAsCsv)
{
    QByteArray csv = historyCsvOf({audited(store::AuditWhat::ClientDetails, {{QStringLiteral("goal"), QStringLiteral("Run, \"far\"")}}, {{QStringLiteral("goal"), QStringLiteral("Rest")}})}, builtIn());
    QBuffer file(&csv);
    file.open(QIODevice::ReadOnly);
    exchange::CsvRows records(file);
    ASSERT_TRUE(records.next());
    EXPECT_EQ(records.fields().value(5), QByteArray("goal: Run, \"far\" → Rest"));
    EXPECT_FALSE(records.next());
}

TEST(HandSets, SayAllThatWasSetAndWhy)
{
    progression::CoachSet set;
    set.load = test::kilos(82.5);
    set.sets = base::Sets(3);
    set.reps = base::Reps(8);
    set.rest = base::Seconds(150);
    set.stage = progression::Stage::RepBuild;
    set.reason = "back from\na cold";
    EXPECT_EQ(handSetDetail(set, test::lowerLift()), QStringLiteral("82.5 kg, 3 × 8, rest 2:30, Rep build; reason: back from a cold"));
}

TEST(HandSets, LeaveOutWhatWasNotGiven)
{
    progression::CoachSet set;
    EXPECT_EQ(handSetDetail(set, test::lowerLift()), QString());
    set.reason = "because";
    EXPECT_EQ(handSetDetail(set, test::lowerLift()), QStringLiteral("reason: because"));
    set.sets = base::Sets(1);
    EXPECT_EQ(handSetDetail(set, test::lowerLift()), QStringLiteral("1 set; reason: because"));
    set.sets = base::Sets(4);
    set.reason.clear();
    EXPECT_EQ(handSetDetail(set, test::lowerLift()), QStringLiteral("4 sets"));
}

TEST(HandSets, CountInTheMeasureAndTheUnitOfTheLift)
{
    progression::CoachSet set;
    set.load = test::kilos(12);
    set.reps = base::Reps(8);
    progression::LiftSetup setup = test::lowerLift(test::fixedKit({12, 16}));
    setup.unit = base::MassUnit::Pound;
    setup.kit.pieces = 2;
    EXPECT_EQ(handSetDetail(set, setup), QStringLiteral("2 × 12 lb, 8 reps"));
    set.load.reset();
    setup.kit.measure = lifts::Measure::Seconds;
    EXPECT_TRUE(handSetDetail(set, setup).endsWith(QStringLiteral(" s"))) << handSetDetail(set, setup).toStdString();
}

}  // namespace chalk::ui::history
