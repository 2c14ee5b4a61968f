#include "ui/check_in/chart_export.h"

#include "tests/ui/check_in/check_in_fixture.h"
#include "ui/common/whole_file.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

TEST(CheckInChartExport, WritesEveryValueWithItsRange)
{
    const CheckInCase page = test::tomasz();
    const QByteArray csv = chartCsv(singleScene(page.evidence, page.evidence.lifts[1]));
    const QList<QByteArray> lines = csv.split('\n');
    EXPECT_EQ(lines[0], "series,date,value,low,high,unit\r");
    EXPECT_EQ(lines[1], "Estimated best single,2026-09-08,78,76,80,kg\r");
    EXPECT_EQ(lines.size(), static_cast<qsizetype>(page.evidence.lifts[1].estimates.size()) + 2);
}

TEST(CheckInChartExport, WritesStagesAsStretches)
{
    const CheckInCase page = test::tomasz();
    const QByteArray csv = chartCsv(stagesScene(page.evidence, page.evidence.lifts[1]));
    EXPECT_TRUE(csv.startsWith("lift,from,to,stage,cycle\r\nH push,2026-09-07,2026-10-17,7,1\r\n")) << csv.constData();
}

// RFC 4180, 2.6 and 2.7: fields with commas or quotes are enclosed in quotes, quotes are doubled.
TEST(CheckInChartExport, QuotesWhatNeedsIt)
{
    ChartScene scene;
    scene.series.push_back({QStringLiteral("a \"b\", c"), {{test::checkInDay(), 1, {}, {}, {}}}, false});
    EXPECT_TRUE(chartCsv(scene).contains("\"a \"\"b\"\", c\",2026-11-24,1,,,\r\n")) << chartCsv(scene).constData();
}

TEST(CheckInChartExport, WritesWholeFilesOrSaysWhyNot)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.csv"));
    EXPECT_FALSE(common::writeWhole(path, "abc"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), QByteArray("abc"));
    EXPECT_TRUE(common::writeWhole(folder.filePath(QStringLiteral("no/such/a.csv")), "abc"));
}

}  // namespace chalk::ui::check_in
