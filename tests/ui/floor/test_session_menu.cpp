#include "ui/floor/session_menu.h"

#include "ui/floor/session_words.h"

#include <QMenu>

#include <gtest/gtest.h>

namespace chalk::ui::floor {

namespace {

using sessions::SessionState;

const base::Date kMenuDay = *base::Date::fromYmd(2026, 11, 24);

sessions::Session sessionOf(int id, SessionState state)
{
    sessions::Session session;
    session.id = base::SessionId(id);
    session.date = kMenuDay;
    session.startMinute = 600;
    session.state = state;
    return session;
}

RunSlot slotOf(const std::vector<sessions::Session>& sessions)
{
    RunSlot slot;
    slot.sessions = sessions;
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        slot.firstNames.append(QString(QChar(static_cast<ushort>('A' + i))));
    }
    return slot;
}

QAction* actionOf(const QMenu& menu, const char* text)
{
    for (QAction* action : menu.actions()) {
        if (action->text().remove(QLatin1Char('&')) == QLatin1String(text)) {
            return action;
        }
    }
    return nullptr;
}

/// A menu and what was set by it.
struct MenuOnTest {
    explicit MenuOnTest(const RunSlot& slot, base::Date today = kMenuDay)
    {
        fillSessionMenu(menu, slot, today, 540, [this](const sessions::Session& session, SessionState state) { set.emplace_back(session.id.value(), state); });
    }
    QMenu menu;
    std::vector<std::pair<std::int64_t, SessionState>> set;
};

}  // namespace

TEST(SessionMenu, AloneItIsSetAtOnce)
{
    MenuOnTest one(slotOf({sessionOf(7, SessionState::Planned)}));
    actionOf(one.menu, "Missed")->trigger();
    EXPECT_EQ(one.set, (std::vector<std::pair<std::int64_t, SessionState>>{{7, SessionState::Missed}}));
    EXPECT_EQ(actionOf(one.menu, "Planned again"), nullptr);
}

TEST(SessionMenu, LateByTheClockIsMarkedButBothAreThere)
{
    const MenuOnTest today(slotOf({sessionOf(7, SessionState::Planned)}));
    EXPECT_EQ(today.menu.defaultAction(), actionOf(today.menu, "Called off late"));
    const MenuOnTest ahead(slotOf({sessionOf(7, SessionState::Planned)}), kMenuDay - 1);
    EXPECT_EQ(ahead.menu.defaultAction(), actionOf(ahead.menu, "Called off in time"));
}

TEST(SessionMenu, WhatWasRecordedIsNotMarkedOtherwise)
{
    const MenuOnTest one(slotOf({sessionOf(7, SessionState::Recorded)}));
    EXPECT_EQ(actionOf(one.menu, "Missed"), nullptr);
}

TEST(SessionMenu, AGroupHasOneForEachAndOneForAll)
{
    MenuOnTest group(slotOf({sessionOf(1, SessionState::Planned), sessionOf(2, SessionState::Missed), sessionOf(3, SessionState::Recorded)}));
    ASSERT_NE(actionOf(group.menu, "2 B, missed"), nullptr);
    actionOf(*actionOf(group.menu, "2 B, missed")->menu(), "Planned again")->trigger();
    actionOf(*actionOf(group.menu, "All of them")->menu(), "Missed")->trigger();
    EXPECT_EQ(group.set, (std::vector<std::pair<std::int64_t, SessionState>>{{2, SessionState::Planned}, {1, SessionState::Missed}}));
}

TEST(SessionWords, LateIsLessThanADayAhead)
{
    const sessions::Session session = sessionOf(1, SessionState::Planned);
    EXPECT_FALSE(isLateNow(session, kMenuDay - 1, 600));
    EXPECT_TRUE(isLateNow(session, kMenuDay - 1, 601));
    EXPECT_TRUE(isLateNow(session, kMenuDay, 700)) << "past";
}

TEST(SkipReasons, AKeyIsSaidInWordsAndOwnWordsStayAsTheyAre)
{
    QStringList words;
    for (const sessions::SkipReason reason : sessions::kSkipReasons) {
        words.append(skipReasonText(std::string(sessions::keyOf(reason))));
        EXPECT_TRUE(skipReasonAction(reason).contains(QLatin1Char('&')));
    }
    EXPECT_EQ(words.join(QLatin1String(" | ")), QStringLiteral("no time | equipment taken | client’s wish | pain or discomfort | another reason"));
    EXPECT_EQ(skipReasonText("slept badly"), QStringLiteral("slept badly"));
    EXPECT_TRUE(skipReasonText("").isEmpty());
}

}  // namespace chalk::ui::floor
