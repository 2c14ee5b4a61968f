#include "ui/common/look.h"
#include "ui/shell/day_line.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

TEST(DayLine, EveryBarCanBeClickedAndNothingElse)
{
    const common::Look look;
    DayLine line(look);
    line.resize(400, 41);
    std::vector<LedgeSession> sessions;
    const char* coaches[] = {"Ines", "Tobias", "Mara"};
    for (int i = 0; i < 9; ++i) {
        sessions.push_back({base::SessionId(i + 1), 420 + i * 75, 60, QLatin1String(coaches[i % 3]), QStringLiteral("A B"), false});
    }
    line.setDay(ledgeDayOf(sessions, 522));
    line.show();
    QSignalSpy chosen(&line, &DayLine::sessionChosen);
    for (const LedgeBar& bar : line.day().bars) {
        const QRectF rect = line.barRect(bar);
        EXPECT_TRUE(QRectF(line.rect()).contains(rect));
        QTest::mouseClick(&line, Qt::LeftButton, {}, rect.center().toPoint());
        ASSERT_EQ(chosen.count(), 1);
        EXPECT_EQ(chosen.takeFirst().constFirst().value<base::SessionId>(), bar.first);
    }
    QTest::mouseClick(&line, Qt::LeftButton, {}, QPoint(395, 38));
    EXPECT_EQ(chosen.count(), 0);
}

TEST(DayLine, TellsTheDayToScreenReaders)
{
    const common::Look look;
    DayLine line(look);
    const std::vector<LedgeSession> sessions{{base::SessionId(1), 540, 60, QStringLiteral("Ines"), QStringLiteral("Joaquin Ferro"), false}};
    line.setDay(ledgeDayOf(sessions, 522));
    EXPECT_EQ(line.accessibleDescription().toStdString(), "09:00 to 10:00, Ines: Ferro");
}

}  // namespace chalk::ui::shell
