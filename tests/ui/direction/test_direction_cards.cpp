#include "ui/direction/direction_cards.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

using chalk::direction::Direction;
using chalk::direction::DirectionFit;
using chalk::direction::FitNote;

TEST(DirectionCards, EveryNoteHasAMarkOfItsOwnKindAndWords)
{
    using common::Signal;
    const std::vector<std::pair<FitNote, Signal>> notes{{FitNote::FitsTheWeek, Signal::Ok},        {FitNote::FewerThanWanted, Signal::Warn},
                                                        {FitNote::TooFewSessions, Signal::Warn},   {FitNote::CareWithHeavyLoads, Signal::Warn},
                                                        {FitNote::LiftOnHold, Signal::Pain},       {FitNote::FewLiftsGoneRound, Signal::Muted}};
    QStringList words;
    for (const auto& [note, signal] : notes) {
        const DirectionCardView view = cardViewOf({Direction::Strength, {note}, false}, 3);
        ASSERT_EQ(view.notes.size(), 1U);
        EXPECT_EQ(view.notes[0].signal, signal);
        EXPECT_TRUE(common::IconStore::has(view.notes[0].icon)) << view.notes[0].icon.toStdString();
        EXPECT_FALSE(words.contains(view.notes[0].text));
        words.append(view.notes[0].text);
        EXPECT_TRUE(spokenOf(view).contains(view.notes[0].text));
    }
}

TEST(DirectionCards, TheSuggestedOneSaysSo)
{
    EXPECT_EQ(cardViewOf({Direction::Movement, {FitNote::FitsTheWeek}, true}, 2).notes.front().text, QStringLiteral("Suggested"));
    EXPECT_NE(cardViewOf({Direction::Movement, {FitNote::FitsTheWeek}, false}, 2).notes.front().text, QStringLiteral("Suggested"));
}

TEST(DirectionCards, ANarrowCardIsHigherAndNeverCutsItsNotes)
{
    const common::Look look;
    DirectionCard card(look);
    card.setView(cardViewOf({Direction::Strength, {FitNote::FewerThanWanted, FitNote::LiftOnHold, FitNote::CareWithHeavyLoads, FitNote::FewLiftsGoneRound}, true}, 2));
    EXPECT_GT(card.heightForWidth(240), card.heightForWidth(420));
    common::Look large;
    large.setTextPercent(common::Look::kMostTextPercent);
    DirectionCard largeCard(large);
    largeCard.setView(card.view());
    EXPECT_GT(largeCard.heightForWidth(300), card.heightForWidth(300));
}

TEST(DirectionCards, ClicksAndArrowsChoose)
{
    const common::Look look;
    DirectionCards cards(look);
    cards.resize(900, 140);
    cards.show();
    const QSignalSpy chosen(&cards, &DirectionCards::choiceMade);
    QTest::mouseClick(cards.card(Direction::Movement), Qt::LeftButton);
    EXPECT_EQ(cards.chosen(), Direction::Movement);
    QTest::keyClick(cards.card(Direction::Movement), Qt::Key_Right);
    EXPECT_EQ(cards.chosen(), Direction::Movement);
    QTest::keyClick(cards.card(Direction::Movement), Qt::Key_Left);
    EXPECT_EQ(cards.chosen(), Direction::Physique);
    EXPECT_EQ(chosen.count(), 2);
    cards.setChosen(Direction::Strength);
    EXPECT_EQ(chosen.count(), 2);
}

}  // namespace chalk::ui::direction
