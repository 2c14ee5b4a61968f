#include "ui/decisions/swap_editor.h"

#include "core/clients/client.h"
#include "core/exchange/catalogue_json.h"
#include "core/progression/lift_machine.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"
#include "ui/common/look.h"
#include "ui/decisions/swap_offers.h"

#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::decisions {

class SwapEditorTest : public ::testing::Test {
protected:
    SwappedLift squat() const
    {
        auto machine = progression::LiftMachine::create(test::lowerLift());
        progression::CoachSet set;
        set.stage = progression::Stage::RepBuild;
        set.load = base::Load::fromCenti(7750);
        set.reason = "a test";
        machine->apply(test::smallStudioDay(), set);
        return swappedLiftOf(*machine, *m_catalogue.find("back_squat"), lifts::Pattern::Squat);
    }

    std::vector<SwapOffer> offers(std::vector<lifts::CautionTag> tags = {})
    {
        clients::Caution caution;
        caution.tags = std::move(tags);
        return swapOffers(m_studio.database(), m_catalogue, squat(), std::vector{caution}).value();
    }

    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    const common::Look m_look;
    test::StudioOnTest m_studio;
};

TEST_F(SwapEditorTest, OffersAreOfThePatternWithTheLiftsOwnEquipmentFirst)
{
    const auto all = offers();
    ASSERT_GT(all.size(), 3U);
    EXPECT_EQ(all.front().equipmentName, "Bar and plates");
    for (const SwapOffer& one : all) {
        EXPECT_EQ(one.exercise->pattern, lifts::Pattern::Squat);
        EXPECT_NE(one.exercise->key, "back_squat");
        EXPECT_NE(one.exercise->key, "leg_press") << "the studio has no machine";
    }
    const auto isOfDumbbells = [](const SwapOffer& one) { return one.exercise->key == "dumbbell_squat" && one.equipmentName == "Dumbbells"; };
    EXPECT_TRUE(std::any_of(all.begin(), all.end(), isOfDumbbells));
}

TEST_F(SwapEditorTest, WhatACautionRulesOutIsNotOffered)
{
    const auto isRuledOut = [](const SwapOffer& one) {
        const auto& tags = one.exercise->ruledOutBy;
        return std::find(tags.begin(), tags.end(), lifts::CautionTag::Shoulder) != tags.end();
    };
    const auto all = offers();
    ASSERT_TRUE(std::any_of(all.begin(), all.end(), isRuledOut));
    const auto careful = offers({lifts::CautionTag::Shoulder});
    EXPECT_TRUE(std::none_of(careful.begin(), careful.end(), isRuledOut));
}

TEST_F(SwapEditorTest, TheEventIsOfWhatIsChosenAndOfItsStart)
{
    const auto all = offers();
    SwapEditor editor(m_look, squat(), all);
    editor.show();
    auto* list = editor.findChild<QListWidget*>();
    const auto at = std::find_if(all.begin(), all.end(), [](const SwapOffer& one) { return one.exercise->key == "dumbbell_squat"; });
    list->setCurrentRow(static_cast<int>(at - all.begin()));
    EXPECT_EQ(editor.chosenName(), QString::fromStdString(at->exercise->name));
    const auto start = [&editor](const char* text) {
        for (QLineEdit* field : editor.findChildren<QLineEdit*>()) {
            if (field->accessibleName() == QStringLiteral("Start at")) {
                field->setText(QLatin1String(text));
            }
        }
    };
    ASSERT_TRUE(editor.event());
    EXPECT_EQ(editor.event()->exerciseKey, "dumbbell_squat");
    EXPECT_EQ(editor.event()->pieces, at->exercise->pieces);
    EXPECT_FALSE(editor.event()->startLoad);
    start("8");
    ASSERT_TRUE(editor.event());
    EXPECT_EQ(editor.event()->startLoad, base::Load::fromCenti(800));
    start("7");
    EXPECT_FALSE(editor.event()) << "there are dumbbells of 6 and of 8";
    EXPECT_FALSE(editor.findChildren<QPushButton*>().front()->isEnabled());
}

TEST_F(SwapEditorTest, WithoutOffersNothingCanBeAccepted)
{
    SwapEditor editor(m_look, squat(), {});
    editor.show();
    const QSignalSpy accepted(&editor, &CoachEditor::accepted);
    QTest::keyClick(&editor, Qt::Key_Return);
    EXPECT_EQ(accepted.count(), 0);
    EXPECT_FALSE(editor.event());
    EXPECT_TRUE(editor.chosenName().isEmpty());
}

}  // namespace chalk::ui::decisions
