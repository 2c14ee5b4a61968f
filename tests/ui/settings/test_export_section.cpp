#include "ui/settings/export_section.h"

#include "core/store/change_history.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/look.h"
#include "ui/settings/author_section.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSemaphore>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>
#include <QThreadPool>

#include <gtest/gtest.h>

namespace chalk::ui::settings {

class ExportSectionTest : public ::testing::Test {
protected:
    ExportSectionTest()
    {
        m_section.resize(900, 600);
        m_section.show();
    }

    QPushButton* button(const QString& words)
    {
        for (auto* one : m_section.findChildren<QPushButton*>()) {
            if (one->text().startsWith(words)) {
                return one;
            }
        }
        return nullptr;
    }
    QString note()
    {
        for (const auto* label : m_section.findChildren<QLabel*>()) {
            if (label->accessibleName() == QLatin1String("What became of the export")) {
                return label->text();
            }
        }
        return {};
    }
    QString out(const char* name) { return m_folder.filePath(QStringLiteral("studio-2026-11-24/") + QLatin1String(name)); }
    void exportAll()
    {
        m_dialogs.paths.push_back(m_folder.path());
        QTest::mouseClick(button(QStringLiteral("Export everything")), Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([this] { return !m_section.isRunning(); }, 20'000));
    }

    test::StudioOnTest m_studio;
    QTemporaryDir m_folder;
    common::Look m_look;
    tests::FakeClock m_clock;
    tests::ScriptedDialogs m_dialogs;
    ExportSection m_section{{m_studio.database().access(), [] { return base::CoachId(1); }, m_look, m_clock, m_dialogs}};
};

TEST_F(ExportSectionTest, WritesBothFormsBesideTheWindow)
{
    QSignalSpy changed(&m_section, &SettingsSection::studioChanged);
    exportAll();
    EXPECT_TRUE(QFile::exists(out("studio.json")));
    EXPECT_TRUE(QFile::exists(out("tables/clients.csv")));
    EXPECT_EQ(changed.count(), 1) << "the history has a line more";
    EXPECT_EQ(store::ChangeHistory(m_studio.database()).all().value().front().coachName, "Ines");
    EXPECT_TRUE(tests::unnamedFocusables(m_section).isEmpty()) << tests::unnamedFocusables(m_section).join(QLatin1Char('\n')).toStdString();
}

TEST_F(ExportSectionTest, WritesOnlyTheFormThatIsWanted)
{
    m_section.findChildren<QCheckBox*>().front()->setChecked(false);
    exportAll();
    EXPECT_FALSE(QFile::exists(out("studio.json")));
    EXPECT_TRUE(QFile::exists(out("tables/clients.csv")));
}

TEST_F(ExportSectionTest, NothingIsWantedWithoutAForm)
{
    for (auto* box : m_section.findChildren<QCheckBox*>()) {
        box->setChecked(false);
    }
    EXPECT_FALSE(button(QStringLiteral("Export everything"))->isEnabled());
}

TEST_F(ExportSectionTest, SaysWhyItCouldNotBeDone)
{
    QFile inTheWay(m_folder.filePath(QStringLiteral("studio-2026-11-24")));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    inTheWay.close();
    exportAll();
    EXPECT_TRUE(button(QStringLiteral("Export everything"))->isEnabled());
    EXPECT_FALSE(button(QStringLiteral("Open the folder"))->isVisible());
    EXPECT_TRUE(note().endsWith(QLatin1Char('.'))) << note().toStdString();
}

TEST_F(ExportSectionTest, StoppedItSaysSoInAWholeSentence)
{
    QThreadPool& pool = *QThreadPool::globalInstance();
    const int usual = pool.maxThreadCount();
    QSemaphore goOn;
    pool.setMaxThreadCount(1);
    pool.start([&goOn] { goOn.acquire(); });  // the export waits behind it
    m_dialogs.paths.push_back(m_folder.path());
    QTest::mouseClick(button(QStringLiteral("Export everything")), Qt::LeftButton);
    EXPECT_TRUE(m_section.closeOrClear());
    goOn.release();
    const bool isDone = QTest::qWaitFor([this] { return !m_section.isRunning(); }, 20'000);
    pool.setMaxThreadCount(usual);
    ASSERT_TRUE(isDone);
    EXPECT_EQ(note(), QStringLiteral("Stopped: what was written is taken away again, and what was there before is as it was."));
}

TEST_F(ExportSectionTest, CalledOffNothingHappens)
{
    QTest::mouseClick(button(QStringLiteral("Export everything")), Qt::LeftButton);
    EXPECT_FALSE(m_section.isRunning());
    EXPECT_FALSE(m_section.closeOrClear());
}

TEST(AuthorSection, WhoIsChosenIsKeptForThisStudio)
{
    test::StudioOnTest studio;
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    const common::Look look;
    EXPECT_TRUE(keptAuthor(settings, studio.database()).isNone());
    AuthorSection section(look, studio.database(), settings);
    auto* who = section.findChild<QComboBox*>();
    EXPECT_EQ(who->currentText(), QStringLiteral("Nobody named"));
    who->setCurrentIndex(who->findText(QStringLiteral("Tobias")));
    EXPECT_EQ(studio.database().author(), base::CoachId(2));
    EXPECT_EQ(keptAuthor(settings, studio.database()), base::CoachId(2));
    test::StudioOnTest another;
    EXPECT_TRUE(keptAuthor(settings, another.database()).isNone());
}

}  // namespace chalk::ui::settings
