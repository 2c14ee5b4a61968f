#include "ui/board/log_model.h"

#include "tests/ui/board/client_fixture.h"
#include "ui/board/log_row.h"

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::board {

TEST(LogModel, KeepsTheRulesOfModels)
{
    LogModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.setCase(test::ferro());
    EXPECT_GT(model.rowCount(), 100);
    model.setFilter(lifts::Pattern::Hinge, std::nullopt);
    model.setFilter(lifts::Pattern::Hinge, progression::Stage::Pattern);
    model.setFilter(std::nullopt, std::nullopt);
}

TEST(LogModel, PicksOutALiftAndAStage)
{
    LogModel model;
    model.setCase(test::ferro());
    const int all = model.rowCount();
    model.setFilter(lifts::Pattern::Squat, progression::Stage::RestCut);
    ASSERT_GT(model.rowCount(), 0);
    EXPECT_LT(model.rowCount(), all);
    for (int i = 0; i < model.rowCount(); ++i) {
        EXPECT_EQ(model.row(i).pattern, lifts::Pattern::Squat);
        EXPECT_EQ(model.row(i).stage, progression::Stage::RestCut);
    }
}

TEST(LogModel, TheNewestComesFirst)
{
    LogModel model;
    model.setCase(test::ferro());
    for (int i = 1; i < model.rowCount(); ++i) {
        EXPECT_GE(model.row(i - 1).date, model.row(i).date);
    }
}

TEST(LogModel, AnAttemptThatWasMissedSaysSo)
{
    ClientCase client = test::ferro();
    LogEntry& entry = client.lifts.front().log.back();
    entry.body = progression::Exposure{0, {{base::Load::fromCenti(12000), 1}, {base::Load::fromCenti(13000), 0}}};
    LogModel model;
    model.setCase(client);
    const auto says = [&model](const QString& words) {
        for (int i = 0; i < model.rowCount(); ++i) {
            if (model.row(i).what.contains(words)) {
                return true;
            }
        }
        return false;
    };
    EXPECT_TRUE(says(QStringLiteral("1 × 1 at 120, missed at 130")));
    EXPECT_FALSE(says(QStringLiteral("× 0")));
}

TEST(LogModel, BothVersionsOfACorrectionAreThere)
{
    ClientCase client = test::ferro();
    LogEntry& entry = client.lifts.front().log.back();
    progression::Event before{entry.date, entry.body};
    std::get<progression::Exposure>(before.body).sets.front().amount = 3;
    entry.earlier = {before};
    LogModel model;
    model.setCase(client);
    int at = 0;
    while (at < model.rowCount() && !model.row(at).isCorrected) {
        ++at;
    }
    ASSERT_LT(at + 1, model.rowCount());
    EXPECT_TRUE(model.index(at, LogModel::Lift).data(LogModel::NoteRole).toString().endsWith(QStringLiteral("corrected")));
    EXPECT_EQ(model.row(at + 1).kind, LogRowKind::Replaced);
    EXPECT_TRUE(model.row(at + 1).what.startsWith(QLatin1Char('3')));
}

TEST(LogModel, ALiftThatFollowsAPlanSaysSoInPlaceOfItsStage)
{
    ClientCase client = test::ferro();
    LiftCase& lift = client.lifts.front();
    lift.log[lift.log.size() - 2].after.block = progression::BlockMark{3, 8, false, false};
    const auto rows = logRowsOf(client);
    const auto planned = [](const LogRow& row) { return row.stageText == QStringLiteral("Plan of 8 weeks"); };
    ASSERT_EQ(std::count_if(rows.begin(), rows.end(), planned), 1) << "the plan leads what is done after it was said";
    const auto row = std::find_if(rows.begin(), rows.end(), planned);
    EXPECT_EQ(row->date, lift.log.back().date);
    EXPECT_EQ(row->pattern, lift.pattern);
}

TEST(LogModel, ASessionThatWasMissedIsListed)
{
    ClientCase client = test::ferro();
    sessions::Session missed;
    missed.date = client.today - 1;
    missed.startMinute = 540;
    missed.place = "Rack 1";
    missed.state = sessions::SessionState::Missed;
    client.sessions = {missed};
    LogModel model;
    model.setCase(client);
    EXPECT_EQ(model.row(0).kind, LogRowKind::NotHeld);
    EXPECT_EQ(model.row(0).what, QStringLiteral("Missed"));
    EXPECT_EQ(model.row(0).dayNote, QStringLiteral("09:00 Rack 1"));
}

TEST(LogModel, WhatWasSaidOfASessionIsListed)
{
    ClientCase client = test::ferro();
    sessions::Session session;
    session.id = base::SessionId(7);
    session.date = client.today + 1;
    session.startMinute = 540;
    session.place = "Rack 1";
    session.state = sessions::SessionState::Recorded;
    client.sessions = {session};
    client.reports[session.id] = {4, 2, {}, 75, 55, "Late\nBack squat: belt on"};
    LogModel model;
    const int without = static_cast<int>(logRowsOf(test::ferro()).size());
    model.setCase(client);
    EXPECT_EQ(model.rowCount(), without + 1);
    EXPECT_EQ(model.row(0).kind, LogRowKind::Said);
    EXPECT_EQ(model.row(0).dayNote, QStringLiteral("09:00 Rack 1"));
    EXPECT_EQ(model.row(0).lift, QStringLiteral("How it felt"));
    EXPECT_EQ(model.row(0).what, QStringLiteral("Effort 7.5 of 10, 55 min"));
    EXPECT_EQ(model.row(0).whatNote, QStringLiteral("load 413"));
    EXPECT_EQ(model.row(0).decision, QStringLiteral("Sleep 4 of 5, soreness 2 of 5. Late; Back squat: belt on"));
    model.setFilter(lifts::Pattern::Squat, std::nullopt);
    EXPECT_NE(model.row(0).kind, LogRowKind::Said) << "it belongs to no lift";
    client.reports.clear();
    model.setFilter(std::nullopt, std::nullopt);
    model.setCase(client);
    EXPECT_EQ(model.rowCount(), without);
}

}  // namespace chalk::ui::board
