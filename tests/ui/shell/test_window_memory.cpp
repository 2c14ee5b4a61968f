#include "ui/common/look.h"
#include "ui/shell/window_memory.h"

#include <QScreen>
#include <QSettings>
#include <QTemporaryDir>
#include <QWidget>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

class WindowMemoryTest : public ::testing::Test {
protected:
    WindowMemoryTest() : m_settings(m_folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat), m_memory(m_settings) {}

    QTemporaryDir m_folder;
    QSettings m_settings;
    WindowMemory m_memory;
};

TEST_F(WindowMemoryTest, RemembersTheLook)
{
    common::Look look;
    look.setTone(common::Tone::Slate);
    look.setTextPercent(130);
    m_memory.rememberLook(look);
    common::Look next;
    m_memory.restoreLook(next);
    EXPECT_EQ(next.theme().tone, common::Tone::Slate);
    EXPECT_EQ(next.theme().textPercent, 130);
}

TEST_F(WindowMemoryTest, PassesOverSettingsThatMakeNoSense)
{
    m_settings.setValue(QStringLiteral("look/theme"), QStringLiteral("pink"));
    m_settings.setValue(QStringLiteral("look/text_percent"), QStringLiteral("huge"));
    m_settings.setValue(QStringLiteral("window/place"), QStringLiteral("client?client=x"));
    m_settings.setValue(QStringLiteral("window/geometry"), QByteArray("no geometry"));
    common::Look look;
    m_memory.restoreLook(look);
    EXPECT_EQ(look.theme().tone, common::Tone::Paper);
    EXPECT_EQ(look.theme().textPercent, 100);
    EXPECT_FALSE(m_memory.place());
    QWidget window;
    EXPECT_FALSE(m_memory.restoreWindow(window));
    m_settings.setValue(QStringLiteral("look/text_percent"), 900);
    m_memory.restoreLook(look);
    EXPECT_EQ(look.theme().textPercent, common::Look::kMostTextPercent);
}

TEST_F(WindowMemoryTest, RemembersSizeAndPlace)
{
    QWidget window;
    EXPECT_FALSE(m_memory.restoreWindow(window));
    window.resize(640, 480);
    m_memory.rememberWindow(window);
    QWidget next;
    EXPECT_TRUE(m_memory.restoreWindow(next));
    EXPECT_EQ(next.size(), QSize(640, 480));
    const Place place{.page = QStringLiteral("client"), .client = base::ClientId(4), .lift = lifts::Pattern::Hinge};
    m_memory.rememberPlace(place);
    EXPECT_EQ(m_memory.place(), place);
}

TEST_F(WindowMemoryTest, FitsTheScreenThatIsThereNow)
{
    QWidget window;
    window.resize(9000, 7000);
    m_memory.rememberWindow(window);
    QWidget next;
    next.setMinimumSize(300, 200);
    ASSERT_TRUE(m_memory.restoreWindow(next));
    EXPECT_LE(next.width(), next.screen()->availableSize().width());
    EXPECT_LE(next.height(), next.screen()->availableSize().height());
    EXPECT_GE(next.width(), 300);
}

}  // namespace chalk::ui::shell
