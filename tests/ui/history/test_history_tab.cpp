#include "ui/history/history_tab.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/client_writer.h"
#include "core/store/record_writer.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/look.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QFile>
#include <QHeaderView>
#include <QTableView>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::ui::history {

class HistoryTabTest : public ::testing::Test {
protected:
    HistoryTabTest()
    {
        m_studio.database().setAuthor(base::CoachId(1));
        const base::LiftId squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);
        EXPECT_TRUE(store::RecordWriter(m_studio.database(), test::someMoment).record(m_ada, {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}}));
        m_studio.database().setAuthor(base::CoachId(2));
        clients::Profile profile;
        profile.pronouns = "she";
        EXPECT_TRUE(store::ClientWriter(m_studio.database()).saveProfile(m_ada, profile, test::smallStudioDay()));
        m_tab.resize(1200, 700);
        m_tab.setClient(m_ada, QStringLiteral("Ada Lund"));
        m_tab.show();
    }

    void choose(const QString& box, const QString& text)
    {
        for (auto* combo : m_tab.findChildren<QComboBox*>()) {
            if (combo->accessibleName() == box) {
                combo->setCurrentIndex(combo->findText(text));
            }
        }
    }
    QString cell(int row, int column) { return m_tab.model()->index(row, column).data().toString(); }

    test::StudioOnTest m_studio;
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
    lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    HistoryTab m_tab{m_look, m_studio.database(), m_catalogue, m_dialogs};
};

TEST_F(HistoryTabTest, ShowsWhoDidWhat)
{
    const QAbstractItemModelTester tester(m_tab.model());
    ASSERT_EQ(m_tab.model()->rowCount(), 2);
    QStringList whats{cell(0, HistoryModel::What), cell(1, HistoryModel::What)};
    EXPECT_TRUE(whats.contains(QStringLiteral("Recorded: Back squat"))) << whats.join(QLatin1Char('|')).toStdString();
    EXPECT_TRUE(whats.contains(QStringLiteral("Profile changed")));
    EXPECT_TRUE(tests::unnamedFocusables(m_tab).isEmpty()) << tests::unnamedFocusables(m_tab).join(QLatin1Char('\n')).toStdString();
}

/// The first column of pixels of a picture that is not all of one colour; -1 where there is none.
int firstInk(const QImage& image)
{
    for (int x = 0; x < image.width(); ++x) {
        for (int y = 0; y < image.height(); ++y) {
            if (image.pixel(x, y) != image.pixel(0, y)) {
                return x;
            }
        }
    }
    return -1;
}

TEST_F(HistoryTabTest, CellsBeginUnderTheirHeadings)
{
    auto* table = m_tab.findChild<QTableView*>();
    table->clearSelection();
    table->setCurrentIndex({});
    for (const int column : {HistoryModel::Who, HistoryModel::What}) {
        const int left = table->columnViewportPosition(column);
        const int width = table->columnWidth(column);
        const QImage head = table->horizontalHeader()->viewport()->grab({left, 4, width, table->horizontalHeader()->height() - 8}).toImage();
        const QImage cell = table->viewport()->grab({left, table->rowViewportPosition(0) + 2, width, table->rowHeight(0) - 4}).toImage();
        ASSERT_GE(firstInk(head), 0);
        ASSERT_GE(firstInk(cell), 0);
        EXPECT_NEAR(firstInk(head), firstInk(cell), 2) << column << ": the letters themselves begin a little apart";
    }
    const int named = table->fontMetrics().horizontalAdvance(QStringLiteral("nobody named"));
    EXPECT_GE(table->columnWidth(HistoryModel::Who), named + 2 * 11 + 8);
}

TEST_F(HistoryTabTest, IsChosenByTopicAndByPerson)
{
    choose(QStringLiteral("What it is about"), QStringLiteral("Training"));
    ASSERT_EQ(m_tab.model()->rowCount(), 1);
    EXPECT_EQ(cell(0, HistoryModel::Who), QStringLiteral("Ines"));
    choose(QStringLiteral("Who did it"), QStringLiteral("Tobias"));
    EXPECT_EQ(m_tab.model()->rowCount(), 0);
    choose(QStringLiteral("What it is about"), QStringLiteral("Everything"));
    EXPECT_EQ(m_tab.model()->rowCount(), 1);
}

TEST_F(HistoryTabTest, IsSavedAsItIsShown)
{
    const QTemporaryDir folder;
    choose(QStringLiteral("What it is about"), QStringLiteral("Training"));
    m_dialogs.paths.push_back(folder.filePath(QStringLiteral("history.csv")));
    m_tab.save();
    QFile file(folder.filePath(QStringLiteral("history.csv")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray csv = file.readAll();
    EXPECT_TRUE(csv.startsWith("at_utc,who,client,topic,what,detail\r\n"));
    EXPECT_EQ(csv.count("\r\n"), 2);
}

TEST_F(HistoryTabTest, OfAnotherClientShowsTheirs)
{
    m_tab.setClient(test::clientNamed(m_studio.database(), "Bo Arden"), QStringLiteral("Bo Arden"));
    EXPECT_EQ(m_tab.model()->rowCount(), 0);
}

}  // namespace chalk::ui::history
