#include "ui/check_in/evidence_chart.h"

#include "tests/support/scripted_dialogs.h"
#include "tests/ui/check_in/check_in_fixture.h"
#include "ui/common/look.h"

#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

class EvidenceChartTest : public ::testing::Test {
protected:
    EvidenceChartTest()
    {
        m_chart.resize(720, 260);
        m_chart.setScene(singleScene(m_page.evidence, m_page.evidence.lifts[1]));
        m_chart.show();
        m_chart.setFocus();
        QApplication::processEvents();
    }

    QByteArray saved(const QString& suffix)
    {
        const QString path = m_folder.filePath(QStringLiteral("chart.") + suffix);
        m_dialogs.paths = {path};
        m_chart.save(suffix);
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
    const CheckInCase m_page = test::tomasz();
    EvidenceChart m_chart{m_look, m_dialogs};
    QTemporaryDir m_folder;
};

TEST_F(EvidenceChartTest, ArrowsGoFromPointToPointAndSayTheValue)
{
    EXPECT_TRUE(m_chart.accessibleName().startsWith(QStringLiteral("Estimated best single, bench press, kg")));
    QTest::keyClick(&m_chart, Qt::Key_Right);
    EXPECT_EQ(m_chart.accessibleName(), QStringLiteral("Tue 8 Sep: 78 kg estimated, likely 76 to 80 kg"));
    QTest::keyClick(&m_chart, Qt::Key_End);
    EXPECT_TRUE(m_chart.accessibleName().contains(QStringLiteral("85 kg estimated")));
    QTest::keyClick(&m_chart, Qt::Key_Left);
    EXPECT_EQ(m_chart.chosen()->point, m_page.evidence.lifts[1].estimates.size() - 2);
}

TEST_F(EvidenceChartTest, ThePlotOfTheLinesIsTheFrameOfTheShades)
{
    EXPECT_EQ(m_chart.chart()->plotArea(), m_chart.frame().plot);
    const ChartPoint& point = m_chart.scene().series.front().points[3];
    const auto* line = m_chart.chart()->series().back();
    const QPointF drawn = m_chart.chart()->mapToPosition({point.date - m_page.evidence.days.from + 0.5, point.value}, const_cast<QAbstractSeries*>(line));
    const QPointF framed = m_chart.frame().at(point, 0);
    EXPECT_NEAR(drawn.x(), framed.x(), 1);
    EXPECT_NEAR(drawn.y(), framed.y(), 1);
}

TEST_F(EvidenceChartTest, IsSavedAsPictureDrawingAndTable)
{
    const QImage picture = QImage::fromData(saved(QStringLiteral("png")), "PNG");
    EXPECT_EQ(picture.size(), m_chart.viewport()->size() * 2);
    EXPECT_TRUE(saved(QStringLiteral("svg")).contains("<svg"));
    EXPECT_TRUE(saved(QStringLiteral("csv")).startsWith("series,date"));
    EXPECT_EQ(m_dialogs.askedFiles.back().suggestion, QStringLiteral("estimated-single.csv"));
    EXPECT_TRUE(m_dialogs.asked.empty());
}

TEST_F(EvidenceChartTest, SaysWhereItCannotBeSaved)
{
    m_dialogs.paths = {m_folder.filePath(QStringLiteral("no/such/chart.csv"))};
    m_chart.save(QStringLiteral("csv"));
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_FALSE(m_dialogs.asked.front().details.isEmpty());
}

TEST_F(EvidenceChartTest, TooLittleDataHasWordsInPlaceOfLines)
{
    m_chart.setScene(singleScene(m_page.evidence, m_page.evidence.lifts[0]));
    EXPECT_TRUE(m_chart.chart()->series().isEmpty());
    EXPECT_TRUE(m_chart.accessibleName().contains(QStringLiteral("4 more sessions")));
    QTest::keyClick(&m_chart, Qt::Key_Right);
    EXPECT_FALSE(m_chart.chosen());
}

}  // namespace chalk::ui::check_in
