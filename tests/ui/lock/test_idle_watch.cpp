#include "ui/lock/idle_watch.h"

#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::lock {

namespace {

/// How long the watch still waits, in milliseconds.
int waitOf(const IdleWatch& watch)
{
    return watch.findChild<QTimer*>() == nullptr ? -1 : watch.findChild<QTimer*>()->remainingTime();
}

}  // namespace

TEST(IdleWatch, RunsForAsLongAsItIsTold)
{
    IdleWatch watch;
    EXPECT_FALSE(watch.isRunning());
    watch.setMinutes(2);
    EXPECT_TRUE(watch.isRunning());
    watch.pause();
    EXPECT_FALSE(watch.isRunning());
    watch.resume();
    EXPECT_TRUE(watch.isRunning());
    watch.setMinutes(0);
    EXPECT_FALSE(watch.isRunning());
    watch.resume();
    EXPECT_FALSE(watch.isRunning());
}

TEST(IdleWatch, EveryKeyAndEveryMoveOfTheMouseBeginsItAnew)
{
    QLineEdit field;
    field.show();
    IdleWatch watch;
    watch.setMinutes(1);
    for (const bool isKey : {true, false}) {
        QTest::qWait(60);
        ASSERT_LT(waitOf(watch), 60'000 - 40);
        if (isKey) {
            QTest::keyClick(&field, Qt::Key_A);
        } else {
            QTest::mouseMove(&field, QPoint(5, 5));
            QTest::mouseClick(&field, Qt::LeftButton, {}, QPoint(5, 5));
        }
        EXPECT_GT(waitOf(watch), 60'000 - 40);
    }
}

}  // namespace chalk::ui::lock
