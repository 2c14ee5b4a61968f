#include "ui/check_in/queue_model.h"

#include "ui/common/icon_store.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

TEST(QueueModelTest, EveryFindingHasAnIcon)
{
    for (const checkin::FindingKind kind : checkin::kFindingKinds) {
        EXPECT_TRUE(common::IconStore::has(iconOf(kind))) << iconOf(kind).toStdString();
    }
}

TEST(QueueModelTest, SaysARowInWords)
{
    QueueModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    QueueRow row{base::ClientId(3), QStringLiteral("Tomasz Wyre"), QStringLiteral("Plateau"), QStringLiteral("Bench press"), QStringLiteral("plateau"),
                 common::Signal::Warn, false, false};
    model.setRows({row});
    EXPECT_EQ(model.rowOf(base::ClientId(3)), 0);
    EXPECT_EQ(model.rowOf(base::ClientId(4)), -1);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    row.isDecided = true;
    model.setRows({row});
    EXPECT_EQ(reset.size(), 0) << "the same clients: the selection stays";
    EXPECT_EQ(model.data(model.index(0), Qt::AccessibleTextRole).toString(), QStringLiteral("Tomasz Wyre, Plateau, Bench press, decided"));
}

}  // namespace chalk::ui::check_in
