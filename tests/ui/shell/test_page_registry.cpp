#include "ui/shell/page_registry.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace chalk::ui::shell {

TEST(PageRegistry, KeepsTheOrderAndRefusesAKeyTwice)
{
    PageRegistry pages;
    pages.add({.key = QStringLiteral("roster"), .name = QStringLiteral("Roster"), .icon = {}, .shortcut = {}, .make = {}});
    pages.add({.key = QStringLiteral("floor"), .name = QStringLiteral("Floor"), .icon = {}, .shortcut = {}, .make = {}});
    ASSERT_EQ(pages.entries().size(), 2U);
    EXPECT_EQ(pages.entries().front().key, QStringLiteral("roster"));
    EXPECT_EQ(pages.find(QStringLiteral("floor"))->name, QStringLiteral("Floor"));
    EXPECT_EQ(pages.find(QStringLiteral("week")), nullptr);
    EXPECT_THROW(pages.add({.key = QStringLiteral("floor"), .name = {}, .icon = {}, .shortcut = {}, .make = {}}), std::logic_error);
    EXPECT_EQ(pages.entries().size(), 2U);
}

}  // namespace chalk::ui::shell
