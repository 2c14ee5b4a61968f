#include "ui/settings/waited_work.h"

#include "ui/common/look.h"

#include <QApplication>
#include <QDialog>
#include <QProgressBar>
#include <QTest>
#include <QThread>
#include <QTimer>

#include <gtest/gtest.h>

#include <atomic>

namespace chalk::ui::settings {

class WaitedWorkTest : public ::testing::Test {
protected:
    static QDialog* box()
    {
        for (QWidget* widget : QApplication::topLevelWidgets()) {
            if (auto* dialog = qobject_cast<QDialog*>(widget); dialog != nullptr && dialog->isVisible()) {
                return dialog;
            }
        }
        return nullptr;
    }

    common::Look m_look;
};

TEST_F(WaitedWorkTest, ShortWorkShowsNothingAndRunsElsewhere)
{
    const QThread* here = QThread::currentThread();
    bool wasElsewhere = false;
    const int answer = waitFor<int>(m_look, nullptr, QStringLiteral("Working"), [&](const store::Progress& progress) {
        wasElsewhere = QThread::currentThread() != here;
        return progress(1, 2) ? 7 : 0;
    });
    EXPECT_EQ(answer, 7);
    EXPECT_TRUE(wasElsewhere);
    EXPECT_EQ(box(), nullptr);
}

TEST_F(WaitedWorkTest, LongWorkHasABoxThatStopsIt)
{
    int seen = -1;
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, [&seen] {
        if (QDialog* dialog = box()) {
            seen = dialog->findChild<QProgressBar*>()->value();
            QTest::keyClick(dialog, Qt::Key_Escape);
        }
    });
    look.start(20);
    const bool wasStopped = waitFor<bool>(m_look, nullptr, QStringLiteral("Working"), [](const store::Progress& progress) {
        for (int i = 0; i < 2000; ++i) {
            if (!progress(1, 2)) {
                return true;
            }
            QThread::msleep(5);
        }
        return false;
    });
    EXPECT_TRUE(wasStopped);
    EXPECT_EQ(seen, 500);
}

}  // namespace chalk::ui::settings
