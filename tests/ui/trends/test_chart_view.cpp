#include "ui/trends/chart_view.h"

#include "ui/common/look.h"

#include <QHelpEvent>
#include <QSignalSpy>
#include <QTest>
#include <QToolTip>

#include <gtest/gtest.h>

namespace chalk::ui::trends {

TEST(ChartView, SaysWhatIsUnderThePointerAndIsChosen)
{
    const common::Look look;
    ChartView view(look);
    view.setChart([](QPainter&, const QRectF&, const common::Theme&) {
        return HotSpots{{QRectF(0, 0, 50, 100), QStringLiteral("left")}, {QRectF(50, 0, 50, 100), QStringLiteral("right")}};
    }, QStringLiteral("Two halves"));
    view.resize(200, 100);
    view.show();
    QTest::qWait(20);
    view.grab();
    ASSERT_EQ(view.spots().size(), 2U);
    EXPECT_EQ(view.accessibleName(), QStringLiteral("Two halves"));
    QSignalSpy chosen(&view, &ChartView::spotChosen);
    QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(70, 40));
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.first().first().toInt(), 1);
    QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(150, 40));
    EXPECT_EQ(chosen.count(), 1) << "nothing there";
    QHelpEvent help(QEvent::ToolTip, QPoint(20, 20), view.mapToGlobal(QPoint(20, 20)));
    QCoreApplication::sendEvent(&view, &help);
    EXPECT_EQ(QToolTip::text(), QStringLiteral("left"));
    QToolTip::hideText();
}

}  // namespace chalk::ui::trends
