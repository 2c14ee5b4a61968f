#include "ui/shell/action_finder.h"

#include <QAction>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

TEST(ActionFinder, FindsWhatCanBeDoneNow)
{
    QAction print(QStringLiteral("&Print the card…"));
    print.setShortcut(QKeySequence(QStringLiteral("Ctrl+P")));
    QAction off(QStringLiteral("Print nothing"));
    off.setEnabled(false);
    QAction roster(QStringLiteral("Roster"));
    roster.setProperty(kActionGoes, true);
    int printed = 0;
    QObject::connect(&print, &QAction::triggered, &print, [&printed] { ++printed; });
    ActionFinder finder([&] { return QList<QAction*>{&print, &off, &roster}; });
    EXPECT_TRUE(finder.find(QStringLiteral("print")).empty());
    finder.prepare();
    const auto items = finder.find(QStringLiteral("print"));
    ASSERT_EQ(items.size(), 1U);
    ASSERT_EQ(items.front().parts.size(), 2U);
    EXPECT_EQ(items.front().parts[0].text, QStringLiteral("Print"));
    EXPECT_EQ(items.front().parts[0].weight, FindWeight::Bold);
    EXPECT_EQ(items.front().parts[1].text, QStringLiteral(" the card"));
    EXPECT_EQ(items.front().keys, QStringLiteral("Ctrl+P"));
    EXPECT_EQ(items.front().group, FindGroup::Do);
    items.front().run();
    EXPECT_EQ(printed, 1);
    EXPECT_EQ(finder.find(QStringLiteral("rost")).front().group, FindGroup::GoTo);
}

TEST(ActionFinder, WhatThePageDoesAlreadyStandsOnce)
{
    QAction ofPage(QStringLiteral("Import a &list…"));
    ofPage.setShortcut(Qt::Key_I);
    QAction ofWindow(QStringLiteral("Import a list…"));
    bool isPageThere = true;
    ActionFinder finder([&] { return isPageThere ? QList<QAction*>{&ofPage, &ofWindow} : QList<QAction*>{&ofWindow}; });
    finder.prepare();
    ASSERT_EQ(finder.find(QStringLiteral("import")).size(), 1U);
    EXPECT_EQ(finder.find(QStringLiteral("import")).front().keys, QStringLiteral("I"));
    isPageThere = false;
    finder.prepare();
    ASSERT_EQ(finder.find(QStringLiteral("import")).size(), 1U);
    EXPECT_EQ(finder.find(QStringLiteral("import")).front().keys, QString());
}

TEST(ActionFinder, KeysStandAsOnTheCaps)
{
    QAction action;
    action.setShortcuts({QKeySequence(Qt::CTRL | Qt::Key_Return), QKeySequence(Qt::Key_Down), QKeySequence(QStringLiteral("Ctrl++")),
                         QKeySequence(Qt::ALT | Qt::Key_Left)});
    EXPECT_EQ(actionKeys(action), (QStringList{QStringLiteral("Ctrl+Enter"), QString::fromUtf8("↓"), QStringLiteral("Ctrl++"),
                                               QString::fromUtf8("Alt+←")}));
}

TEST(ActionFinder, AnActionThatIsGoneDoesNothing)
{
    auto action = std::make_unique<QAction>(QStringLiteral("Book"));
    ActionFinder finder([&] { return QList<QAction*>{action.get()}; });
    finder.prepare();
    const auto items = finder.find(QStringLiteral("book"));
    ASSERT_EQ(items.size(), 1U);
    action.reset();
    items.front().run();
}

}  // namespace chalk::ui::shell
