#include "ui/history/history_words.h"

#include "core/exchange/csv_rows.h"

#include <QBuffer>
#include <QDateTime>
#include <QJsonArray>

#include <gtest/gtest.h>

#include <set>

namespace chalk::ui::history {

namespace {

store::ChangeEntry audited(store::AuditWhat what, const QJsonObject& before, const QJsonObject& after)
{
    return {"2026-11-24T17:31:05Z", "Ines", base::ClientId(1), "Ada Lund", store::AuditRecord{1, what, before, after}};
}

store::ChangeEntry acted(store::ActKind kind)
{
    store::ActRecord act;
    act.kind = kind;
    act.patterns = {lifts::Pattern::Squat, lifts::Pattern::Hinge};
    act.isUndone = true;
    return {"2026-11-24T17:31:05Z", {}, base::ClientId(1), "Ada Lund", act};
}

}  // namespace

TEST(HistoryWords, SayWhatWasChangedFromWhatToWhat)
{
    const auto entry = audited(store::AuditWhat::ClientDetails, {{QStringLiteral("sessions_per_week"), QStringLiteral("2")}}, {{QStringLiteral("sessions_per_week"), QStringLiteral("3")}});
    EXPECT_EQ(historyTitle(entry), QStringLiteral("Client’s own details changed"));
    EXPECT_EQ(historyDetail(entry), QStringLiteral("sessions per week: 2 → 3"));
    const QDateTime here = QDateTime(QDate(2026, 11, 24), QTime(17, 31), Qt::UTC).toLocalTime();
    EXPECT_EQ(momentText(entry.atUtc), QStringLiteral("%1 Nov 2026, %2").arg(here.date().day()).arg(here.toString(QStringLiteral("HH:mm"))));
    EXPECT_EQ(momentText("soon"), QStringLiteral("soon"));
    EXPECT_EQ(topicOf(entry), HistoryTopic::Person);
}

TEST(HistoryWords, AMondayIsWrittenAsADay)
{
    const int monday = base::Date::parse("2026-11-30")->daysSince1970();
    const auto entry = audited(store::AuditWhat::WeekQuota, {}, {{QString::number(monday), QStringLiteral("3")}});
    EXPECT_EQ(historyDetail(entry), QStringLiteral("2026-11-30: 3"));
}

TEST(HistoryWords, OfHealthNameTheFieldsOnly)
{
    const auto entry = audited(store::AuditWhat::HealthIntake, {}, {{QStringLiteral("fields"), QJsonArray{QStringLiteral("answers"), QStringLiteral("resting")}}});
    EXPECT_EQ(historyDetail(entry), QStringLiteral("answers, resting"));
    EXPECT_EQ(topicOf(entry), HistoryTopic::Health);
}

TEST(HistoryWords, TellOfActs)
{
    const auto entry = acted(store::ActKind::Record);
    EXPECT_EQ(historyTitle(entry), QStringLiteral("Recorded: Squat, Hinge"));
    EXPECT_EQ(historyDetail(entry), QStringLiteral("taken back later"));
    EXPECT_EQ(historyAuthor(entry), QStringLiteral("nobody named"));
}

TEST(HistoryWords, EverythingHasATitleAndEveryTopicAName)
{
    std::set<QString> titles;
    for (int i = 0; i < store::kAuditWhats; ++i) {
        const QString title = historyTitle(audited(static_cast<store::AuditWhat>(i), {}, {}));
        EXPECT_FALSE(title.isEmpty()) << i;
        EXPECT_TRUE(titles.insert(title).second) << title.toStdString();
    }
    for (const HistoryTopic topic : kHistoryTopics) {
        EXPECT_FALSE(historyTopicName(topic).isEmpty());
    }
}

TEST(HistoryWords, AreWrittenAsCsv)
{
    QByteArray csv = historyCsvOf({audited(store::AuditWhat::ClientDetails, {{QStringLiteral("goal"), QStringLiteral("Run, \"far\"")}}, {{QStringLiteral("goal"), QStringLiteral("Rest")}})});
    QBuffer file(&csv);
    file.open(QIODevice::ReadOnly);
    exchange::CsvRows records(file);
    ASSERT_TRUE(records.next());
    EXPECT_EQ(records.fields().value(5), QByteArray("goal: Run, \"far\" → Rest"));
    EXPECT_FALSE(records.next());
}

}  // namespace chalk::ui::history
