#include "ui/direction/plan_editor_wishes.h"

#include "tests/support/lift_on_test.h"
#include "tests/ui/direction/plan_on_test.h"
#include "ui/common/look.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

namespace {

template <class Widget>
Widget& wishNamed(QWidget& root, const char* name)
{
    for (Widget* widget : root.findChildren<Widget*>()) {
        if (widget->accessibleName() == QLatin1String(name)) {
            return *widget;
        }
    }
    throw std::logic_error(name);
}

bool saysIn(QWidget& root, const char* words)
{
    const auto labels = root.findChildren<QLabel*>();
    return std::any_of(labels.begin(), labels.end(), [words](const QLabel* label) { return label->text() == QString::fromUtf8(words); });
}

}  // namespace

TEST(PlanEditorWishes, AChangeIsOnlyAskedFor)
{
    const common::Look look;
    PlanEditorModel model(caseOnTest());
    PlanEditorWishes wishes(look, model);
    std::vector<chalk::direction::PlanWishes> asked;
    QObject::connect(&wishes, &PlanEditorWishes::asked, &wishes, [&](const chalk::direction::PlanWishes& wanted) { asked.push_back(wanted); });
    auto& sessions = wishNamed<QSpinBox>(wishes, "Sessions a week");
    sessions.setValue(1);
    ASSERT_EQ(asked.size(), 1U);
    EXPECT_EQ(asked[0].sessionsAWeek, 1);
    EXPECT_EQ(asked[0].lifts[0].exposures, 1) << "no more days than sessions";
    EXPECT_EQ(model.wishes(), wishesOnTest());
    EXPECT_EQ(sessions.value(), 3) << "nobody followed it";
}

TEST(PlanEditorWishes, EveryWishIsAskedForAsItIsSet)
{
    const common::Look look;
    PlanEditorModel model(caseOnTest());
    PlanEditorWishes wishes(look, model);
    QObject::connect(&wishes, &PlanEditorWishes::asked, &wishes, [&](const chalk::direction::PlanWishes& wanted) { model.setWishes(wanted, true); });
    wishNamed<QSpinBox>(wishes, "Weeks").setValue(16);
    for (QToolButton* segment : wishes.findChildren<QToolButton*>()) {
        if (segment->text() == QStringLiteral("Undulating")) {
            QTest::mouseClick(segment, Qt::LeftButton);
        }
    }
    for (QCheckBox* box : wishes.findChildren<QCheckBox*>()) {
        if (box->text() == QStringLiteral("Ends with a test") || box->text() == QStringLiteral("Dumbbell row")) {
            box->toggle();
        }
    }
    auto wanted = wishesOnTest();
    wanted.weeks = 16;
    wanted.wave = chalk::direction::Wave::Undulating;
    wanted.endsWithTest = false;
    wanted.lifts.pop_back();
    EXPECT_EQ(model.wishes(), wanted);
    EXPECT_FALSE(wishNamed<QLineEdit>(wishes, "Single of Dumbbell row").isEnabled());
}

TEST(PlanEditorWishes, SinglesSayTheirUnitAndWhereTheyComeFrom)
{
    PlanEditorCase facts = caseOnTest();
    progression::CoachSet loaded;
    loaded.stage = progression::Stage::LoadBuild;
    loaded.load = test::kilos(60);
    loaded.reason = "because";
    facts.lifts[0].machine.apply(firstMonday() - 20, loaded);
    const common::Look look;
    PlanEditorModel model(facts);
    PlanEditorWishes wishes(look, model);
    EXPECT_TRUE(saysIn(wishes, "kg, estimated"));
    EXPECT_TRUE(saysIn(wishes, "kg, tested. Not loaded yet: it joins later"));
    EXPECT_TRUE(saysIn(wishes, "lb, not known. Not loaded yet: it joins later"));
    model.setSingle(0, test::kilos(105));
    EXPECT_TRUE(saysIn(wishes, "kg, typed"));
}

TEST(PlanEditorWishes, AnEstimateStandsAsTheTabShowsItAndLeavingTheFieldTypesNothing)
{
    PlanEditorCase facts = caseOnTest();
    facts.lifts[0].single = facts.plan.singles[0] = {base::Load::fromCenti(8667), false};
    const common::Look look;
    PlanEditorModel model(facts);
    PlanEditorWishes wishes(look, model);
    auto& single = wishNamed<QLineEdit>(wishes, "Single of Back squat");
    EXPECT_EQ(single.text(), QStringLiteral("86.5"));
    Q_EMIT single.editingFinished();
    EXPECT_EQ(model.plan().singles[0].load, base::Load::fromCenti(8667));
    single.setText(QStringLiteral("87"));
    Q_EMIT single.editingFinished();
    EXPECT_EQ(model.plan().singles[0].load, test::kilos(87));
    EXPECT_EQ(single.text(), QStringLiteral("87"));
}

TEST(PlanEditorWishes, AHeavySingleIsReadWhole)
{
    const common::Look look;
    PlanEditorModel model(caseOnTest());
    PlanEditorWishes wishes(look, model);
    model.setSingle(0, base::Load::fromCenti(114325));
    const auto& single = wishNamed<QLineEdit>(wishes, "Single of Back squat");
    ASSERT_EQ(single.text(), QStringLiteral("1143.25"));
    constexpr int kPaddingAndEdge = 2 * (10 + 1);  // of the style sheet
    EXPECT_GE(single.maximumWidth(), single.fontMetrics().horizontalAdvance(single.text()) + kPaddingAndEdge);
}

TEST(PlanEditorWishes, APlanThatHasBegunKeepsItsStart)
{
    const common::Look look;
    PlanEditorModel early(caseOnTest());
    PlanEditorModel running(caseOnTest(firstMonday() + 9));
    PlanEditorWishes before(look, early);
    PlanEditorWishes after(look, running);
    EXPECT_TRUE(wishNamed<QSpinBox>(before, "First Monday").isEnabled());
    EXPECT_FALSE(wishNamed<QSpinBox>(after, "First Monday").isEnabled());
}

}  // namespace chalk::ui::direction
