#include "ui/common/look.h"
#include "ui/common/search_field.h"

#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(SearchField, EscapeClearsItThenLetsGo)
{
    const Look look;
    QWidget window;
    SearchField field(look, QStringLiteral("Find a client"), QStringLiteral("/"), &window);
    window.show();
    QTest::keyClicks(&field, QStringLiteral("ferro"));
    EXPECT_EQ(field.text(), QStringLiteral("ferro"));
    QTest::keyClick(&field, Qt::Key_Escape);
    EXPECT_TRUE(field.text().isEmpty());
    EXPECT_EQ(field.accessibleName(), QStringLiteral("Find a client"));
}

}  // namespace chalk::ui::common
