#include "ui/direction/plan_outcome.h"

#include "tests/support/accessible_audit.h"
#include "tests/ui/direction/outcome_on_test.h"
#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"

#include <QLabel>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

class PlanOutcomeTest : public ::testing::Test {
protected:
    PlanOutcomeTest()
    {
        m_outcome.setOutcome(outcomeOnTest());
        m_outcome.resize(900, 500);
        m_outcome.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_outcome));
    }
    common::ActionButton& button(const char* text)
    {
        for (common::ActionButton* one : m_outcome.findChildren<common::ActionButton*>()) {
            if (one->text() == QLatin1String(text)) {
                return *one;
            }
        }
        throw std::logic_error(text);
    }

    const common::Look m_look;
    PlanOutcome m_outcome{m_look};
};

TEST_F(PlanOutcomeTest, ShowsTheSentencesAndTheLifts)
{
    QStringList said;
    for (const QLabel* label : m_outcome.findChildren<QLabel*>()) {
        said.append(common::plainText(label->text()));
    }
    for (const QString& sentence : outcomeSentences(outcomeOnTest())) {
        EXPECT_TRUE(said.join(QLatin1Char(' ')).contains(sentence)) << sentence.toStdString();
    }
    EXPECT_EQ(m_outcome.findChild<QTableView*>()->model()->rowCount(), 3);
    m_outcome.setOutcome(outcomeOnTest());
    EXPECT_EQ(m_outcome.findChild<QTableView*>()->model()->rowCount(), 3) << "shown again";
}

TEST_F(PlanOutcomeTest, EachWayOnIsAskedForByMouseAndKey)
{
    QSignalSpy next(&m_outcome, &PlanOutcome::nextPlanAsked);
    QSignalSpy back(&m_outcome, &PlanOutcome::backAsked);
    QSignalSpy print(&m_outcome, &PlanOutcome::printAsked);
    QTest::mouseClick(&button("Next plan"), Qt::LeftButton);
    button("Back to the cycle").setFocus();
    QTest::keyClick(&button("Back to the cycle"), Qt::Key_Return);
    QTest::keyClick(&button("Print"), Qt::Key_Space);
    EXPECT_EQ(next.count(), 1);
    EXPECT_EQ(back.count(), 1);
    EXPECT_EQ(print.count(), 1);
}

TEST_F(PlanOutcomeTest, NamesWhatTakesTheFocus)
{
    EXPECT_GT(tests::focusableCount(m_outcome), 3);
    EXPECT_EQ(tests::unnamedFocusables(m_outcome), QStringList());
}

}  // namespace chalk::ui::direction
