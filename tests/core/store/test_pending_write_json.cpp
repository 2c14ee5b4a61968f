#include "core/store/pending_write.h"

#include "tests/support/pending_writes.h"

#include <QJsonDocument>

#include <gtest/gtest.h>

namespace chalk::store {

TEST(PendingWriteJson, EveryKindComesBackFromItsText)
{
    for (const PendingWrite& write : test::everyPendingWrite()) {
        const QByteArray text = QJsonDocument(toJson(write)).toJson(QJsonDocument::Compact);
        const auto read = pendingWriteIn(QJsonDocument::fromJson(text).object());
        ASSERT_TRUE(read) << text.toStdString();
        EXPECT_EQ(*read, write) << text.toStdString();
    }
}

TEST(PendingWriteJson, WhatCannotBeReadIsNothing)
{
    EXPECT_EQ(pendingWriteIn({}), std::nullopt);
    EXPECT_EQ(pendingWriteIn({{QStringLiteral("state"), QJsonObject{{QStringLiteral("session"), 1}, {QStringLiteral("state"), QStringLiteral("gone")}}}}), std::nullopt);
    for (const PendingWrite& write : test::everyPendingWrite()) {
        QJsonObject object = toJson(write);
        object[object.keys().first()] = QJsonObject{{QStringLiteral("session"), 1}};
        EXPECT_EQ(pendingWriteIn(object), std::nullopt) << write.index();
    }
}

}  // namespace chalk::store
