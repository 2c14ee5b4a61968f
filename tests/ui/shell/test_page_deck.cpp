#include "tests/support/plain_page.h"
#include "ui/shell/page_deck.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

class PageDeckTest : public ::testing::Test {
protected:
    PageDeckTest() : m_deck(pages()) {}

    const PageRegistry& pages()
    {
        for (const char* key : {"roster", "floor"}) {
            const QString name = QLatin1String(key);
            m_pages.add({.key = name, .name = name, .icon = {}, .shortcut = {}, .make = [this, name](QWidget* parent) -> Page* {
                             ++m_made;
                             return new tests::PlainPage(name, parent);
                         }});
        }
        return m_pages;
    }

    tests::PlainPage& page() { return *static_cast<tests::PlainPage*>(m_deck.present()); }
    void goTo(const char* key) { EXPECT_TRUE(m_deck.goTo({.page = QLatin1String(key)})); }

    int m_made = 0;
    PageRegistry m_pages;
    PageDeck m_deck;
};

TEST_F(PageDeckTest, MakesAPageWhenItIsGoneToAndKeepsIt)
{
    EXPECT_EQ(m_made, 0);
    EXPECT_EQ(m_deck.present(), nullptr);
    goTo("roster");
    goTo("floor");
    goTo("roster");
    EXPECT_EQ(m_made, 2);
    EXPECT_EQ(page().opened.size(), 2U);
    EXPECT_EQ(m_deck.place().page, QStringLiteral("roster"));
    EXPECT_FALSE(m_deck.goTo({.page = QStringLiteral("week")}));
    EXPECT_EQ(m_deck.presentKey(), QStringLiteral("roster"));
}

TEST_F(PageDeckTest, APageThatMissedAChangeReadsAgainWhenItIsShownNext)
{
    goTo("roster");
    tests::PlainPage& roster = page();
    goTo("floor");
    tests::PlainPage& floor = page();
    const QSignalSpy written(&m_deck, &PageDeck::written);
    Q_EMIT floor.studioChanged();
    EXPECT_EQ(written.count(), 1);
    EXPECT_EQ(floor.refreshes, 0);
    EXPECT_EQ(roster.refreshes, 0);
    goTo("roster");
    EXPECT_EQ(roster.refreshes, 1);
    goTo("floor");
    goTo("roster");
    EXPECT_EQ(roster.refreshes, 1);
    m_deck.refreshAll();
    EXPECT_EQ(roster.refreshes, 2);
    goTo("floor");
    EXPECT_EQ(floor.refreshes, 1);
}

TEST_F(PageDeckTest, TellsEveryPageHowMuchRoomThereIs)
{
    m_deck.setRoom(true, false);
    goTo("roster");
    EXPECT_TRUE(page().isNarrow);
    EXPECT_FALSE(page().isLow);
    m_deck.setRoom(false, true);
    EXPECT_FALSE(page().isNarrow);
    EXPECT_TRUE(page().isLow);
}

}  // namespace chalk::ui::shell
