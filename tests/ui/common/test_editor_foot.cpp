#include "ui/common/editor_foot.h"

#include "ui/common/look.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::common {

namespace {

/// The texts of its buttons from left to right.
QStringList textsOf(const EditorFoot& foot)
{
    auto buttons = foot.findChildren<ActionButton*>();
    std::sort(buttons.begin(), buttons.end(), [](const ActionButton* one, const ActionButton* other) { return one->x() < other->x(); });
    QStringList texts;
    for (const ActionButton* button : buttons) {
        texts.append(button->text());
    }
    return texts;
}

}  // namespace

TEST(EditorFoot, SaysWhichButtonWasPressed)
{
    const Look look;
    EditorFoot foot(look, QStringLiteral("Put on file"));
    foot.show();
    const QSignalSpy kept(&foot, &EditorFoot::keepAsked);
    const QSignalSpy left(&foot, &EditorFoot::leaveAsked);
    const auto buttons = foot.findChildren<ActionButton*>();
    ASSERT_EQ(buttons.size(), 2);
    for (ActionButton* button : buttons) {
        if (button->text() == QStringLiteral("Put on file")) {
            button->click();
        }
    }
    EXPECT_EQ(kept.count(), 1);
    EXPECT_EQ(left.count(), 0);
    for (ActionButton* button : buttons) {
        if (button->text() == QStringLiteral("Leave")) {
            button->click();
        }
    }
    EXPECT_EQ(kept.count(), 1);
    EXPECT_EQ(left.count(), 1);
}

TEST(EditorFoot, AFurtherButtonStandsBeforeTheOneThatLeaves)
{
    const Look look;
    EditorFoot foot(look, QStringLiteral("Keep"));
    foot.addButton(QStringLiteral("As screened"));
    foot.resize(foot.sizeHint());
    foot.show();
    EXPECT_EQ(textsOf(foot), (QStringList{QStringLiteral("Keep"), QStringLiteral("As screened"), QStringLiteral("Leave")}));
}

TEST(EditorFoot, IsNarrowerAndLowerWhereItIsCompact)
{
    const Look look;
    EditorFoot foot(look, QStringLiteral("Keep"));
    foot.addButton(QStringLiteral("As screened"));
    const QSize before = foot.sizeHint();
    foot.setCompact();
    EXPECT_LT(foot.sizeHint().width(), before.width() - 30);
    EXPECT_LT(foot.sizeHint().height(), before.height());
}

}  // namespace chalk::ui::common
