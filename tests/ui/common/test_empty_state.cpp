#include "ui/common/action_button.h"
#include "ui/common/empty_state.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"

#include <QLabel>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(EmptyState, SaysWhatWillBeHereAndOffersIt)
{
    const Look look;
    EmptyState state(look);
    state.setWords(QStringLiteral("No client matches “joquin”"),
                   QStringLiteral("Did you mean %1?").arg(linkHtml(QStringLiteral("3"), QStringLiteral("Joaquin Ferro"))));
    ActionButton* clear = state.addButton(QStringLiteral("Clear the search"));
    EXPECT_FALSE(clear->text().isEmpty());
    QSignalSpy chosen(&state, &EmptyState::linkChosen);
    for (QLabel* label : state.findChildren<QLabel*>()) {
        Q_EMIT label->linkActivated(QStringLiteral("3"));
    }
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.takeFirst().constFirst().toString(), QStringLiteral("3"));
}

}  // namespace chalk::ui::common
