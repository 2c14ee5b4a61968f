#include "ui/shell/open_clients.h"

#include <gtest/gtest.h>

namespace chalk::ui::shell {

namespace {

std::vector<std::int64_t> idsOf(const OpenClients& open)
{
    std::vector<std::int64_t> ids;
    for (const OpenClient& client : open.clients()) {
        ids.push_back(client.id.value());
    }
    return ids;
}

void look(OpenClients& open, std::initializer_list<int> ids)
{
    for (const int id : ids) {
        open.show({base::ClientId(id), QStringLiteral("Client %1").arg(id)});
    }
}

}  // namespace

TEST(OpenClients, AFifthTakesThePlaceOfTheOneNotLookedAtForLongest)
{
    OpenClients open;
    look(open, {1, 2, 3, 4});
    look(open, {1});
    EXPECT_EQ(idsOf(open), (std::vector<std::int64_t>{1, 2, 3, 4}));
    look(open, {5});
    EXPECT_EQ(idsOf(open), (std::vector<std::int64_t>{1, 5, 3, 4}));
}

TEST(OpenClients, GoesRoundFromThePresentOne)
{
    OpenClients open;
    EXPECT_FALSE(open.next());
    look(open, {1, 2, 3});
    EXPECT_EQ(open.next(), base::ClientId(1));
    look(open, {1});
    EXPECT_EQ(open.next(), base::ClientId(2));
    open.showNone();
    EXPECT_EQ(open.next(), base::ClientId(1));  // back to the last one looked at
    open.forget(base::ClientId(1));
    EXPECT_EQ(open.next(), base::ClientId(3));
    EXPECT_EQ(idsOf(open), (std::vector<std::int64_t>{2, 3}));
}

TEST(OpenClients, TakesOverAChangedName)
{
    OpenClients open;
    look(open, {1});
    open.show({base::ClientId(1), QStringLiteral("Ana Berg")});
    ASSERT_EQ(open.clients().size(), 1U);
    EXPECT_EQ(open.clients().front().name, QStringLiteral("Ana Berg"));
}

}  // namespace chalk::ui::shell
