#include "ui/common/loading_rows.h"
#include "ui/common/look.h"

#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(LoadingRows, AppearOnlyWhereItTakesLong)
{
    const Look look;
    QWidget page;
    LoadingRows rows(look, &page);
    page.show();
    EXPECT_FALSE(rows.isVisible());
    rows.begin();
    rows.end();
    rows.begin();
    EXPECT_FALSE(rows.isVisible());
    EXPECT_TRUE(QTest::qWaitFor([&rows] { return rows.isVisible(); }, 5000));
    rows.end();
    EXPECT_FALSE(rows.isVisible());
}

}  // namespace chalk::ui::common
