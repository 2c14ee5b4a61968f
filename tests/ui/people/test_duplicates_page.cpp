#include "ui/people/duplicates_page.h"

#include "core/store/client_reader.h"
#include "core/store/client_writer.h"
#include "core/store/record_writer.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/small_studio.h"
#include "ui/common/act_history.h"
#include "ui/common/banner.h"
#include "ui/common/look.h"

#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::people {

class DuplicatesPageTest : public ::testing::Test {
protected:
    DuplicatesPageTest()
        : m_acts(m_clock, [this](base::ActId act) -> tl::expected<base::ActId, QString> {
              auto undone = store::RecordWriter(m_studio.database(), test::someMoment).undo(act);
              return undone ? tl::expected<base::ActId, QString>(undone->act) : tl::make_unexpected(undone.error().message);
          })
    {
        clients::Client client;
        client.name = "Lund Ada";
        client.coach = base::CoachId(1);
        client.startedOn = m_clock.today();
        m_second = *store::ClientWriter(m_studio.database()).add(client, m_clock.today());
    }

    QPushButton* button(DuplicatesPage& page, const char* text)
    {
        const auto buttons = page.findChildren<QPushButton*>();
        const auto found = std::find_if(buttons.begin(), buttons.end(), [text](const QPushButton* one) { return one->text() == QString::fromLatin1(text); });
        return found == buttons.end() ? nullptr : *found;
    }
    int clientCount() { return static_cast<int>(store::ClientReader(m_studio.database()).names()->size()); }

    test::StudioOnTest m_studio;
    tests::FakeClock m_clock;
    common::Look m_look;
    common::ActHistory m_acts;
    base::ClientId m_second;
};

TEST_F(DuplicatesPageTest, OffersAPairShowsWhatGoesWhereAndMerges)
{
    DuplicatesPage page({m_look, m_studio.database(), m_clock, m_acts, test::someMoment});
    page.show();
    EXPECT_EQ(tests::unnamedFocusables(page), QStringList());
    ASSERT_EQ(page.findChild<QListWidget*>()->count(), 1);
    const auto ada = test::clientNamed(m_studio.database(), "Ada Lund");
    EXPECT_EQ(page.chosen(), std::pair(ada, m_second));
    ASSERT_TRUE(button(page, "Merge")->isEnabled());
    button(page, "Keep the other")->click();
    EXPECT_EQ(page.chosen(), std::pair(m_second, ada));
    EXPECT_FALSE(button(page, "Merge")->isEnabled());  // Ada has a session to come
    button(page, "Keep the other")->click();
    button(page, "Merge")->click();
    EXPECT_EQ(clientCount(), 2);
    EXPECT_EQ(page.findChild<QListWidget*>()->count(), 0);
    const auto* banner = page.findChild<common::Banner*>();
    EXPECT_TRUE(banner->isVisible());
    m_acts.undo();
    EXPECT_EQ(clientCount(), 3);
    EXPECT_FALSE(banner->isVisible()) << "it says what is not so any more";
    page.refresh();
    EXPECT_EQ(page.findChild<QListWidget*>()->currentRow(), 0);
    EXPECT_EQ(page.chosen(), std::pair(ada, m_second));
}

TEST_F(DuplicatesPageTest, OpenedForAClientItShowsWhomItIsLike)
{
    DuplicatesPage page({m_look, m_studio.database(), m_clock, m_acts, test::someMoment});
    page.show();
    page.open({.page = QStringLiteral("duplicates"), .client = m_second});
    EXPECT_EQ(page.chosen(), std::pair(m_second, test::clientNamed(m_studio.database(), "Ada Lund")));
    EXPECT_EQ(page.findChild<QListWidget*>()->currentRow(), 0);
    page.open({.page = QStringLiteral("duplicates"), .client = test::clientNamed(m_studio.database(), "Bo Arden")});
    EXPECT_TRUE(page.chosen().second.isNone());
    EXPECT_EQ(page.findChild<QListWidget*>()->currentRow(), -1);
}

}  // namespace chalk::ui::people
