#include "tests/support/plain_page.h"

#include <QLineEdit>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

namespace {

/// Says something once more while it goes away.
class Talker : public QLineEdit {
public:
    using QLineEdit::QLineEdit;
    ~Talker() override { setText(QStringLiteral("gone")); }
};

}  // namespace

TEST(PageTest, HearsItsPartsWhileItLivesAndNotWhileItGoesAway)
{
    int heard = 0;
    {
        tests::PlainPage page(QStringLiteral("floor"), nullptr);
        auto* const talker = new Talker(&page);
        QObject::connect(talker, &QLineEdit::textChanged, &page, [&heard] { ++heard; });
        talker->setText(QStringLiteral("here"));
        EXPECT_EQ(heard, 1);
    }
    EXPECT_EQ(heard, 1);
}

}  // namespace chalk::ui::shell
