#include "ui/floor/swap_dialog.h"

#include "tests/ui/floor/floor_fixture.h"
#include "ui/common/act_history.h"
#include "ui/common/look.h"
#include "ui/decisions/swap_editor.h"
#include "ui/floor/entry_field.h"
#include "ui/floor/floor_page.h"
#include "ui/floor/lift_table.h"
#include "ui/floor/next_time_bar.h"

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include <algorithm>

namespace chalk::ui::floor {

class SwapOnFloorTest : public test::FloorTest {
protected:
    SwapOnFloorTest()
    {
        m_page.resize(1360, 856);
        m_page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_page));
        m_page.open({});
    }

    const FloorDesk& desk() const { return m_page.desk(); }
    EntryField& field() { return *m_page.findChild<EntryField*>(); }
    QString says() { return m_page.findChild<NextTimeBar*>()->accessibleName(); }
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) { QTest::keyClick(m_page.focusWidget(), static_cast<Qt::Key>(key), modifiers); }
    void type(const QString& text) { QTest::keyClicks(m_page.focusWidget(), text); }
    /// Presses the key of the swap and does `act` in its dialog; answers whether it was there.
    bool inDialog(const std::function<void(SwapDialog&)>& act)
    {
        bool isThere = false;
        QTimer watch;
        QObject::connect(&watch, &QTimer::timeout, &m_page, [&] {
            if (auto* dialog = qobject_cast<SwapDialog*>(QApplication::activeModalWidget())) {
                watch.stop();
                isThere = true;
                act(*dialog);
            }
        });
        watch.start(5);
        press(Qt::Key_W, Qt::AltModifier);
        m_page.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_page));
        return isThere;
    }
    static void accept(SwapDialog& dialog) { QTest::keyClick(dialog.findChild<decisions::SwapEditor*>()->firstField(), Qt::Key_Return); }
    static void leave(SwapDialog& dialog) { QTest::keyClick(dialog.findChild<decisions::SwapEditor*>()->firstField(), Qt::Key_Escape); }

    const common::Look m_look;
    FloorPage m_page{{m_look, m_clock, m_acts, m_presenter}};
};

TEST_F(SwapOnFloorTest, TheEntryWorksWithTheNewExerciseAndUndoBringsTheOldOneBack)
{
    const QSignalSpy changed(&m_page, &shell::Page::studioChanged);
    const base::LiftId squat = desk().lift()->id;
    const progression::Prescription before = desk().lift()->due;
    QString name;
    ASSERT_TRUE(inDialog([&name](SwapDialog& dialog) {
        name = dialog.findChild<decisions::SwapEditor*>()->chosenName();
        accept(dialog);
    }));
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(desk().lift()->id, squat);
    EXPECT_EQ(QString::fromStdString(desk().lift()->exercise.name), name);
    EXPECT_EQ(desk().lift()->due.stage, progression::Stage::BaseLoad);
    EXPECT_EQ(desk().lift()->due.load, base::Load::fromCenti(2000)) << "the bare bar";
    EXPECT_EQ(m_page.focusWidget(), &field());
    ASSERT_TRUE(m_acts.lastDone());
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Back squat swapped for %1 for Ada").arg(name));
    type(QStringLiteral("8 8 r4"));
    EXPECT_TRUE(says().startsWith(QStringLiteral("Next time"))) << says().toStdString();
    press(Qt::Key_Return);
    EXPECT_EQ(entriesOf(squat), 7U) << "the swap and the record";
    m_acts.undo();
    m_acts.undo();
    m_page.refresh();
    const auto& lifts = desk().client()->lifts;
    const auto again = std::find_if(lifts.begin(), lifts.end(), [squat](const FloorLift& one) { return one.id == squat; });
    ASSERT_NE(again, lifts.end());
    EXPECT_EQ(again->exercise.key, "back_squat");
    EXPECT_EQ(again->due, before);
}

TEST_F(SwapOnFloorTest, EscLeavesEverythingAsItIs)
{
    type(QStringLiteral("8 8"));
    ASSERT_TRUE(inDialog(leave));
    EXPECT_EQ(desk().lift()->exercise.key, "back_squat");
    EXPECT_EQ(field().text(), QStringLiteral("8 8"));
    EXPECT_FALSE(m_acts.lastDone());
}

TEST_F(SwapOnFloorTest, WhatIsRecordedIsNotSwappedAndThePageSaysWhy)
{
    type(QStringLiteral("8 8 r2"));
    press(Qt::Key_Return);
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    ASSERT_EQ(desk().lift()->exercise.key, "back_squat");
    EXPECT_FALSE(inDialog(leave));
    EXPECT_TRUE(says().contains(QStringLiteral("recorded already"))) << says().toStdString();
}

TEST_F(SwapOnFloorTest, ALiftThatWasLeftOutIsTakenInAgain)
{
    FloorDesk other(m_presenter, m_clock, m_acts);
    other.read();
    chooseLift(other, "back_squat");
    other.skip("equipment_taken");
    m_page.refresh();
    const auto indexOf = [this] {
        const auto& lifts = desk().client()->lifts;
        return static_cast<int>(std::find_if(lifts.begin(), lifts.end(), [](const FloorLift& one) { return one.isSkipped; }) - lifts.begin());
    };
    ASSERT_EQ(indexOf(), desk().liftIndex());
    ASSERT_TRUE(inDialog(accept));
    EXPECT_EQ(indexOf(), static_cast<int>(desk().client()->lifts.size())) << "none is left out";
    m_page.refresh();
    EXPECT_EQ(indexOf(), static_cast<int>(desk().client()->lifts.size())) << "it is kept";
}

TEST_F(SwapOnFloorTest, TheMenuOfALiftOffersIt)
{
    auto& table = *m_page.findChild<LiftTable*>();
    QStringList offered;
    QTimer watch;
    QObject::connect(&watch, &QTimer::timeout, &m_page, [&] {
        if (auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget())) {
            watch.stop();
            for (const QAction* action : menu->actions()) {
                if (action->isEnabled() && !action->isSeparator()) {
                    offered.append(action->text());
                }
            }
            menu->close();
        }
    });
    watch.start(5);
    Q_EMIT table.customContextMenuRequested(table.visualRect(table.model()->index(1, 0)).center());
    EXPECT_EQ(desk().liftIndex(), 1);
    EXPECT_TRUE(offered.contains(QStringLiteral("Swap the exercise of this lift"))) << offered.join(QLatin1Char('|')).toStdString();
    EXPECT_FALSE(offered.contains(QStringLiteral("Delete what is recorded for this lift")));
}

TEST_F(SwapOnFloorTest, ARefusalIsSaidAndTheDialogStays)
{
    const FloorLift& lift = *desk().lift();
    const auto offers = m_presenter.swapOffers(*desk().client(), lift);
    ASSERT_TRUE(offers);
    QString asked;
    SwapDialog dialog(m_look, decisions::swappedLiftOf(lift.machine, lift.exercise, lift.exercise.pattern), *offers,
                      [&asked](const progression::Swap& swap, const QString&) {
                          asked = QString::fromStdString(swap.exerciseKey);
                          return QStringLiteral("The file cannot be written.");
                      });
    dialog.show();
    accept(dialog);
    EXPECT_EQ(asked, QString::fromStdString(offers->front().exercise->key));
    EXPECT_TRUE(dialog.isVisible());
    const auto banners = dialog.findChildren<QWidget*>();
    EXPECT_TRUE(std::any_of(banners.begin(), banners.end(), [](const QWidget* one) {
        return one->isVisible() && one->accessibleName().contains(QStringLiteral("The file cannot be written."));
    }));
}

}  // namespace chalk::ui::floor
