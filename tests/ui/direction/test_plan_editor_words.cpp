#include "ui/direction/plan_editor_words.h"

#include "tests/support/lift_on_test.h"
#include "tests/ui/direction/plan_on_test.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

namespace {

std::string linesOf(const QStringList& lines)
{
    return lines.join(QLatin1Char('\n')).toStdString();
}

}  // namespace

TEST(PlanEditorWords, EveryFaultIsASentenceOfItsOwn)
{
    QStringList said;
    for (int fault = 0; fault <= static_cast<int>(EditFault::TestWeek); ++fault) {
        said.append(editFaultText(static_cast<EditFault>(fault)));
        EXPECT_TRUE(said.last().endsWith(QLatin1Char('.'))) << fault;
    }
    for (const char* field : {"weeks", "sessions", "start", "lifts", "exposures"}) {
        said.append(wishFaultText({field, {}}));
    }
    EXPECT_EQ(said.removeDuplicates(), 0);
}

TEST(PlanEditorWords, NumbersAreReadAsTheyAreWritten)
{
    const auto typed = [](WorkField field, const char* text) {
        const WorkEdit edit = typedEdit(field, QString::fromUtf8(text));
        return std::pair(edit.value, edit.most);
    };
    EXPECT_EQ(typed(WorkField::Sets, " 4 ").first, 4);
    EXPECT_EQ(typed(WorkField::Reps, "6"), std::pair(6, 6));
    EXPECT_EQ(typed(WorkField::Reps, "6-8"), std::pair(6, 8));
    EXPECT_EQ(typed(WorkField::Reps, "6 – 8"), std::pair(6, 8));
    EXPECT_EQ(typed(WorkField::Share, "82.5").first, 825);
    EXPECT_EQ(typed(WorkField::Share, "82,5 %").first, 825);
    EXPECT_EQ(typed(WorkField::Share, "150").first, 1500) << "out of range, not unread";
    EXPECT_EQ(typed(WorkField::Rest, "3:00").first, 180);
    EXPECT_EQ(typed(WorkField::Rest, "90").first, 90);
    for (const WorkField field : {WorkField::Sets, WorkField::Reps, WorkField::Share, WorkField::Rest, WorkField::Reserve}) {
        EXPECT_EQ(typed(field, "many").first, -1) << static_cast<int>(field);
        EXPECT_EQ(typed(field, "").first, -1);
    }
}

TEST(PlanEditorWords, CellsReadBackWhatTheySay)
{
    chalk::direction::PlannedWork work;
    work.scheme = {base::Sets(4), base::Reps(6), base::Milli(825), base::Seconds(150), 2};
    work.repsMost = base::Reps(8);
    EXPECT_EQ(cellText(work, WorkField::Reps), QStringLiteral("6–8"));
    EXPECT_EQ(cellText(work, WorkField::Share), QStringLiteral("82.5"));
    EXPECT_EQ(cellText(work, WorkField::Rest), QStringLiteral("2:30"));
    EXPECT_EQ(typedEdit(WorkField::Reps, cellText(work, WorkField::Reps)).most, 8);
    EXPECT_EQ(typedEdit(WorkField::Share, cellText(work, WorkField::Share)).value, 825);
    EXPECT_EQ(typedEdit(WorkField::Rest, cellText(work, WorkField::Rest)).value, 150);
    work.repsMost = work.scheme.reps;
    EXPECT_EQ(cellText(work, WorkField::Reps), QStringLiteral("6"));
}

/// Haff and Triplett 2016, table 21.2: basic strength is printed with 80 to 95 per cent.
TEST(PlanEditorWords, DeparturesOfWeeksOnEndAreOneLine)
{
    PlanEditorModel model(caseOnTest());
    EXPECT_TRUE(departureLines(model).isEmpty());
    for (std::size_t week = 0; week < 3; ++week) {
        model.setWork({week, 0, 0}, {WorkField::Share, 700});
    }
    model.setWork({5, 1, 1}, {WorkField::Sets, 9});
    EXPECT_EQ(linesOf(departureLines(model)), "Back squat, weeks 1–3, day 1: Load 70 %; published 80 %–95 % (Haff and Triplett 2016, table 21.2)\n"
                                              "Bench press, week 6, day 2: Sets 9; published 2–6 (Haff and Triplett 2016, table 21.2)");
}

/// The table of Prilepin as given by Laputin and Oleshko 1982: 80 to 89 per cent with 10 to 20 repetitions, best 15, by 2 to 4.
TEST(PlanEditorWords, RepetitionsStandBesideThePrintedOnes)
{
    PlanEditorModel model(caseOnTest());
    model.setWork({0, 0, 0}, {WorkField::Reps, 6, 6});
    EXPECT_EQ(linesOf(zoneLines(model, 0, 0)).substr(0, linesOf(zoneLines(model, 0, 0)).find('\n')),
              "Day 1: 24 reps at 80–89 %; printed 10–20, best 15; total outside; a set is printed with 2–4");
    EXPECT_EQ(zoneLines(model, 11, 0).last(), QStringLiteral("Day 2: the test."));
}

/// Schoenfeld 2017: ten weekly sets and more.
TEST(PlanEditorWords, FewSetsOfAMuscleGroupSaySo)
{
    PlanEditorModel model(caseOnTest());
    EXPECT_TRUE(muscleLines(model, 0).filter(QStringLiteral("Quadriceps: 8 sets, fewer than 10")).size() == 1) << linesOf(muscleLines(model, 0));
    model.setWork({0, 0, 0}, {WorkField::Sets, 6});
    EXPECT_TRUE(muscleLines(model, 0).contains(QStringLiteral("Quadriceps: 10 sets")));
}

}  // namespace chalk::ui::direction
