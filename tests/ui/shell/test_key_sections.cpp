#include "ui/shell/key_sections.h"

#include "tests/support/plain_page.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

namespace {

QAction* actionWith(QWidget* parent, const QString& text, const QList<QKeySequence>& keys)
{
    auto* action = new QAction(text, parent);
    action->setShortcuts(keys);
    parent->addAction(action);
    return action;
}

}  // namespace

TEST(KeySections, AHintThatIsAnActionIsListedOnce)
{
    tests::PlainPage page(QStringLiteral("List"), nullptr);  // its hint: Enter, Open
    actionWith(&page, QStringLiteral("&Open the client"), {Qt::Key_Return});
    actionWith(&page, QStringLiteral("Next lift"), {Qt::Key_Down});
    const KeySection section = pageSection(QStringLiteral("List"), page);
    EXPECT_EQ(section.keys, (std::vector<KeyHint>{{QStringLiteral("Enter"), QStringLiteral("Open the client")},
                                                  {QString::fromUtf8("↓"), QStringLiteral("Next lift")}}));
}

TEST(KeySections, AHintThatIsNoActionIsKept)
{
    const tests::PlainPage page(QStringLiteral("List"), nullptr);
    EXPECT_EQ(pageSection(QStringLiteral("List"), page).keys, (std::vector<KeyHint>{{QStringLiteral("Enter"), QStringLiteral("Open")}}));
}

TEST(KeySections, EveryMenuEntryIsListedWithAllOfItsKeys)
{
    QMenuBar bar;
    QMenu* edit = bar.addMenu(QStringLiteral("&Edit"));
    edit->addAction(actionWith(&bar, QStringLiteral("Do &again"), {QKeySequence(QStringLiteral("Ctrl+Shift+Z")), QKeySequence(QStringLiteral("Ctrl+Y"))}));
    edit->addSeparator();
    edit->addAction(actionWith(&bar, QStringLiteral("Restore…"), {}));
    bar.addMenu(QStringLiteral("Roster"))->addAction(QStringLiteral("Peek"));
    const auto sections = menuSections(bar, QStringLiteral("Roster"));
    ASSERT_EQ(sections.size(), 1U);
    EXPECT_EQ(sections[0].heading, QStringLiteral("Edit"));
    EXPECT_EQ(sections[0].keys, (std::vector<KeyHint>{{QStringLiteral("Ctrl+Shift+Z Ctrl+Y"), QStringLiteral("Do again")},
                                                      {QString(), QStringLiteral("Restore")}}));
}

}  // namespace chalk::ui::shell
