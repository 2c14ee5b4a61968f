#include "ui/print/report_sheet.h"

#include "tests/ui/print/pdf_checks.h"
#include "tests/ui/print/report_fixture.h"
#include "tests/ui/print/sheet_checks.h"
#include "ui/print/report_words.h"
#include "ui/print/sheet_printing.h"

#include <QDate>

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

using checkin::ProgressReport;
using test::crowdedReport;
using test::ferroReport;
using test::textOf;

}  // namespace

TEST(ReportSheet, NothingClipsOrOverlaps)
{
    ProgressReport none = ferroReport();
    none.lifts.clear();
    none.weeks.clear();
    ProgressReport alike = ferroReport();
    alike.lifts[1] = alike.lifts[0];
    alike.lifts[2] = alike.lifts[0];
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        for (const auto& [report, what] : {std::pair(ferroReport(), "usual"), std::pair(crowdedReport(), "crowded"), std::pair(none, "nothing"), std::pair(alike, "alike")}) {
            const auto sheets = reportSheets(report, paper);
            EXPECT_EQ(sheets.size(), 1U);
            test::expectSheetsSound(sheets, millimetresOf(paper), what);
        }
    }
}

TEST(ReportSheet, SaysWhatWasDoneInAClientsWords)
{
    EXPECT_EQ(reportSentence(ferroReport()).toStdString(),
              "You came to 22 of 24 sessions. Your trap-bar deadlift went from 85 kg to 112.5 kg, with no pain above 2 of 10.");
    EXPECT_EQ(reportSpan(ferroReport()).toStdString(), "31 Aug – 22 Nov 2026 · 12 weeks · prepared by Ines");
    const QString text = textOf(reportSheets(ferroReport(), PaperSize::A4));
    for (const char* words : {"Ketch Lane Studio", "Joaquin Ferro", "112.5 kg", "trap-bar deadlift, 3 × 5", "was 85 kg, 3 × 5", "5 Rep build", "c2", "85 → 112.5 kg",
                              "Back squat: 76.25 kg, 3 × 6.", "From Ines", "Working load, kg"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\nis not in\n" << text.toStdString();
    }
}

TEST(ReportSheet, NothingOnRecordIsSaid)
{
    ProgressReport report;
    report.from = ferroReport().from;
    report.to = report.from + 6;
    EXPECT_EQ(reportSentence(report).toStdString(), "Nothing is recorded for these weeks yet.");
    EXPECT_TRUE(reportFigures(report).empty());
    EXPECT_TRUE(nextTexts(report).isEmpty());
}

TEST(ReportSheet, ALiftOnHoldIsSaidWithoutTheTradesWords)
{
    ProgressReport report = ferroReport();
    report.lifts[0].next->kind = progression::PrescriptionKind::Hold;
    report.lifts[1].next->kind = progression::PrescriptionKind::Rehearse;
    report.lifts[2].next.reset();
    EXPECT_EQ(nextTexts(report).join(QLatin1Char('|')).toStdString(),
              "Back squat: rests until your coach has looked at it.|Trap-bar deadlift: the movement first, without a load.");
}

TEST(ReportSheet, ThreeLinesAreToldApartByTheirDash)
{
    ProgressReport one = ferroReport();
    one.lifts.resize(1);
    const auto shapes = [](const ProgressReport& report) { return reportSheets(report, PaperSize::A4)[0].shapes; };
    std::vector<qsizetype> elements;
    const auto all = shapes(ferroReport());
    for (const QPainterPath& shape : all) {
        elements.push_back(shape.elementCount());
    }
    // A dashed line is many pieces; a dotted one more.
    std::sort(elements.rbegin(), elements.rend());
    ASSERT_GT(elements.size(), 3U);
    EXPECT_GT(elements[0], elements[1]);
    EXPECT_GT(elements[1], elements[2]);
    EXPECT_GT(all.size(), shapes(one).size());
}

TEST(ReportSheet, IsAPlainPdf)
{
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        const QByteArray pdf = sheetsPdf(reportSheets(ferroReport(), paper), paper, QStringLiteral("Progress reports"), QDate(2026, 11, 24));
        EXPECT_TRUE(pdf == sheetsPdf(reportSheets(ferroReport(), paper), paper, QStringLiteral("Progress reports"), QDate(2026, 11, 24)));
        const test::PdfFile file(pdf);
        test::expectPlainPdf(file);
        EXPECT_TRUE(file.text().contains(QStringLiteral("You came to 22 of 24 sessions.")));
    }
}

}  // namespace chalk::ui::print
