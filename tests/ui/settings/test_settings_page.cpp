#include "ui/settings/settings_page.h"

#include "tests/support/accessible_audit.h"
#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/settings/appearance_section.h"
#include "ui/settings/section_list.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::settings {

/// A section that counts what it is asked.
class CountingSection : public SettingsSection {
public:
    using SettingsSection::SettingsSection;
    void refresh() override { ++readings; }
    bool closeOrClear() override { return isEditing; }

    int readings = 0;
    bool isEditing = false;
};

class SettingsPageTest : public ::testing::Test {
protected:
    SettingsPageTest()
        : m_page(m_look,
                 {{QStringLiteral("look"), QStringLiteral("Appearance"), QStringLiteral("theme"), [this](QWidget* parent) { return new AppearanceSection(m_look, parent); }},
                  {QStringLiteral("count"), QStringLiteral("Backup"), QStringLiteral("backup"),
                   [this](QWidget* parent) {
                       ++m_made;
                       m_section = new CountingSection(parent);
                       return m_section;
                   }}},
                 QStringLiteral("Harbour"))
    {
        m_page.resize(1360, 856);
        m_page.show();
        m_page.activateWindow();
    }

    SectionButton& button(int index) { return *m_page.findChildren<SectionButton*>()[index]; }

    common::Look m_look;
    CountingSection* m_section = nullptr;
    int m_made = 0;
    SettingsPage m_page;
};

TEST_F(SettingsPageTest, APlaceNamesItsSectionWhichIsMadeOnceAndReadWheneverItComesOnShow)
{
    m_page.open({.page = QStringLiteral("settings")});
    EXPECT_EQ(m_page.place().tab, QStringLiteral("look"));
    EXPECT_EQ(m_made, 0) << "a section is made when it is first gone to";
    m_page.open({.page = QStringLiteral("settings"), .tab = QStringLiteral("count")});
    EXPECT_EQ(m_page.place().tab, QStringLiteral("count"));
    ASSERT_EQ(m_made, 1);
    EXPECT_EQ(m_section->readings, 1);
    m_page.open({.page = QStringLiteral("settings"), .tab = QStringLiteral("nowhere")});
    EXPECT_EQ(m_page.place().tab, QStringLiteral("count")) << "what is unknown changes nothing";
    m_page.refresh();
    EXPECT_EQ(m_section->readings, 3);
    EXPECT_EQ(m_made, 1);
}

TEST_F(SettingsPageTest, UpAndDownGoThroughTheSectionsAndStopAtTheEnds)
{
    m_page.open({.page = QStringLiteral("settings")});
    ASSERT_TRUE(QTest::qWaitFor([this] { return button(0).hasFocus(); }));
    QTest::keyClick(&button(0), Qt::Key_Up);
    EXPECT_EQ(m_page.place().tab, QStringLiteral("look"));
    QTest::keyClick(&button(0), Qt::Key_Down);
    EXPECT_EQ(m_page.place().tab, QStringLiteral("count"));
    EXPECT_TRUE(button(1).hasFocus());
    EXPECT_TRUE(button(1).isChecked());
    QTest::keyClick(&button(1), Qt::Key_Down);
    EXPECT_EQ(m_page.place().tab, QStringLiteral("count"));
    QTest::mouseClick(&button(0), Qt::LeftButton);
    EXPECT_EQ(m_page.place().tab, QStringLiteral("look"));
}

TEST_F(SettingsPageTest, WhatASectionWritesOrAsksForReachesTheWindow)
{
    m_page.open({.page = QStringLiteral("settings"), .tab = QStringLiteral("count")});
    const QSignalSpy written(&m_page, &shell::Page::studioChanged);
    const QSignalSpy asked(&m_page, &shell::Page::placeAsked);
    Q_EMIT m_section->studioChanged();
    Q_EMIT m_section->placeAsked({.page = QStringLiteral("roster")});
    EXPECT_EQ(written.count(), 1);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.first().first().value<shell::Place>().page, QStringLiteral("roster"));
    EXPECT_FALSE(m_page.closeOrClear());
    m_section->isEditing = true;
    EXPECT_TRUE(m_page.closeOrClear());
}

TEST_F(SettingsPageTest, TheAppearanceFollowsItsControlsAndShowsWhatWasChangedElsewhere)
{
    m_page.open({.page = QStringLiteral("settings"), .tab = QStringLiteral("look")});
    const auto buttons = m_page.findChildren<common::ActionButton*>();
    ASSERT_EQ(buttons.size(), 2);
    m_look.setTextPercent(140);
    EXPECT_TRUE(buttons[1]->isEnabled());
    buttons[1]->click();
    EXPECT_EQ(m_look.theme().textPercent, 150);
    EXPECT_FALSE(buttons[1]->isEnabled());
    buttons[0]->click();
    EXPECT_EQ(m_look.theme().textPercent, 140);
}

TEST_F(SettingsPageTest, EverythingInItHasAName)
{
    for (const QString& section : {QStringLiteral("look"), QStringLiteral("count")}) {
        m_page.open({.page = QStringLiteral("settings"), .tab = section});
        EXPECT_GT(tests::focusableCount(m_page), 1);
        EXPECT_EQ(tests::unnamedFocusables(m_page), QStringList());
    }
}

}  // namespace chalk::ui::settings
