#include "ui/floor/card_desk.h"

#include "core/store/session_reader.h"
#include "core/store/week_settings.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/ui/floor/floor_fixture.h"
#include "ui/common/look.h"

#include <QFile>
#include <QSignalSpy>

namespace chalk::ui::floor {

class CardDeskTest : public test::FloorTest {
protected:
    const common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
    CardDesk m_desk{{m_presenter, m_clock, m_acts, {m_look, m_dialogs, [](QPrinter&, QWidget*) { return false; }}}};

    sessions::SessionState stateOf(const char* code)
    {
        return (*store::SessionReader(m_studio.database()).withCode(code))->session.state;
    }
};

TEST_F(CardDeskTest, ASavedCardCountsAsPrintedAndThatCanBeUndone)
{
    const auto run = m_presenter.run(test::smallStudioDay());
    m_desk.showClient(run->front().sessions.front().client, nullptr);
    ASSERT_NE(m_desk.dialog(), nullptr);
    EXPECT_EQ(m_desk.dialog()->sheetCount(), 1);
    const QSignalSpy changed(&m_desk, &CardDesk::studioChanged);
    m_desk.dialog()->save();
    EXPECT_EQ(stateOf("S3"), sessions::SessionState::Planned) << "the file dialog was called off";
    const QString file = m_studio.folder() + QStringLiteral("/card.pdf");
    m_dialogs.paths = {file};
    m_desk.dialog()->save();
    EXPECT_TRUE(QFile::exists(file));
    EXPECT_TRUE(m_desk.dialog()->saying().contains(file));
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(stateOf("S3"), sessions::SessionState::Printed);
    m_acts.undo();
    EXPECT_EQ(stateOf("S3"), sessions::SessionState::Planned);
}

TEST_F(CardDeskTest, AGroupSharesWhatTheStudioHas)
{
    week::StudioWeek studio;
    studio.stations[lifts::Station::Rack] = 5;
    ASSERT_TRUE(store::WeekSettings(m_studio.database()).setStudioWeek(studio));
    m_desk.showDay(test::smallStudioDay(), nullptr);
    EXPECT_EQ(m_desk.dialog()->request().stations, studio.stations);
}

TEST_F(CardDeskTest, WhoWaitsForClearanceGetsNoCard)
{
    m_desk.showDay(test::smallStudioDay(), nullptr);
    EXPECT_EQ(m_desk.dialog()->sheetCount(), 1);
    EXPECT_TRUE(m_desk.dialog()->saying().contains(QStringLiteral("No card for Bo Arden.")));
    const auto run = m_presenter.run(test::smallStudioDay());
    m_desk.showClient(run->back().sessions.front().client, nullptr);
    EXPECT_EQ(m_desk.dialog()->sheetCount(), 0);
}

TEST_F(CardDeskTest, TheWholeWeekCountsAsPrintedWhereItWasPrinted)
{
    m_desk.showDay(test::smallStudioDay() - 1, nullptr);
    EXPECT_EQ(m_desk.dialog()->sheetCount(), 0) << "nobody comes on Monday";
    m_desk.dialog()->setWholeWeek(true);
    EXPECT_EQ(m_desk.dialog()->sheetCount(), 1);
    m_dialogs.paths = {m_studio.folder() + QStringLiteral("/week.pdf")};
    m_desk.dialog()->save();
    EXPECT_EQ(stateOf("S3"), sessions::SessionState::Printed);
}

TEST_F(CardDeskTest, AClientWhoIsNotThereIsSaidInWords)
{
    m_desk.showClient(base::ClientId(99), nullptr);
    EXPECT_TRUE(m_desk.dialog()->saying().contains(QStringLiteral("did not answer")));
    m_desk.showDay(test::smallStudioDay() + 1, nullptr);
    EXPECT_TRUE(m_desk.dialog()->saying().contains(QStringLiteral("no card to make")));
}

TEST_F(CardDeskTest, AReportIsMadeOfTheClientAndNoSessionCountsAsPrinted)
{
    const auto run = m_presenter.run(test::smallStudioDay());
    m_desk.showReport(run->front().sessions.front().client, nullptr);
    ASSERT_EQ(m_desk.dialog()->sheetCount(), 1);
    EXPECT_EQ(m_desk.dialog()->paper(), print::paperOf(print::SheetLayout::Week, print::PaperFamily::Iso));
    const QString file = m_studio.folder() + QStringLiteral("/report.pdf");
    m_dialogs.paths = {file};
    m_desk.dialog()->save();
    EXPECT_TRUE(QFile::exists(file));
    EXPECT_EQ(m_dialogs.askedFiles.front().suggestion, QStringLiteral("report-ada-lund-2026-11-24.pdf"));
    EXPECT_EQ(stateOf("S3"), sessions::SessionState::Planned);
    m_desk.dialog()->setLayoutOfSheets(print::SheetLayout::Card);
    EXPECT_EQ(m_desk.dialog()->paper(), print::PaperSize::A5);
    EXPECT_EQ(m_desk.dialog()->sheetCount(), 1);
}

TEST_F(CardDeskTest, ReportsOfSeveralAreOnePrint)
{
    const auto run = m_presenter.run(test::smallStudioDay());
    const base::ClientId client = run->front().sessions.front().client;
    m_desk.showReports({}, nullptr);
    EXPECT_EQ(m_desk.dialog(), nullptr);
    m_desk.showReports({client}, nullptr);
    EXPECT_EQ(m_desk.dialog()->sheetCount(), 1);
    m_desk.showReports({client, run->back().sessions.front().client, client}, nullptr);
    EXPECT_EQ(m_desk.dialog()->sheetCount(), 2) << "one of them has nothing to report";
    m_dialogs.paths = {m_studio.folder() + QStringLiteral("/reports.pdf")};
    m_desk.dialog()->save();
    EXPECT_EQ(m_dialogs.askedFiles.front().suggestion, QStringLiteral("report-3-clients-2026-11-24.pdf"));
}

TEST_F(CardDeskTest, WhereNothingIsOnRecordTheReportSaysSo)
{
    const auto run = m_presenter.run(test::smallStudioDay());
    m_desk.showReport(run->back().sessions.front().client, nullptr);
    EXPECT_EQ(m_desk.dialog()->sheetCount(), 0);
    EXPECT_TRUE(m_desk.dialog()->saying().startsWith(QStringLiteral("There is nothing to report yet."))) << m_desk.dialog()->saying().toStdString();
    m_desk.dialog()->setLayoutOfSheets(print::SheetLayout::Card);
    EXPECT_TRUE(m_desk.dialog()->saying().startsWith(QStringLiteral("No card for Bo Arden.")));
}

}  // namespace chalk::ui::floor
