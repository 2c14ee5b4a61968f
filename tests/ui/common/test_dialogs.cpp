#include "ui/common/dialogs.h"

#include <QApplication>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

/// Does something to the message box that is about to be opened.
template <class Act>
void whenBoxOpens(Act act)
{
    QTimer::singleShot(0, qApp, [act] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(box, nullptr);
        act(*box);
    });
}

Question deleting()
{
    return {Signal::Warn, QStringLiteral("Delete Joaquin Ferro?"), QStringLiteral("This cannot be undone."), {},
            {QStringLiteral("Keep the client"), QStringLiteral("Delete the client")}, 0};
}

}  // namespace

TEST(ScreenDialogs, GiveTheAnswerThatWasChosen)
{
    ScreenDialogs dialogs;
    whenBoxOpens([](QMessageBox& box) {
        EXPECT_EQ(box.text(), QStringLiteral("Delete Joaquin Ferro?"));
        for (QAbstractButton* button : box.buttons()) {
            if (button->text() == QStringLiteral("Delete the client")) {
                button->click();
            }
        }
    });
    EXPECT_EQ(dialogs.ask(nullptr, deleting()), 1);
}

TEST(ScreenDialogs, ClosingIsTheSafeAnswerAndHasTheFocus)
{
    ScreenDialogs dialogs;
    whenBoxOpens([](QMessageBox& box) {
        EXPECT_EQ(box.defaultButton()->text(), QStringLiteral("Keep the client"));
        box.reject();
    });
    EXPECT_EQ(dialogs.ask(nullptr, deleting()), 0);
    whenBoxOpens([](QMessageBox& box) { box.close(); });
    Question safeLast = deleting();
    safeLast.answers = {QStringLiteral("Restore"), QStringLiteral("Keep things as they are")};
    safeLast.safeAnswer = 1;
    EXPECT_EQ(dialogs.ask(nullptr, safeLast), 1);
}

TEST(ScreenDialogs, AMessageWithoutAnswersCanBeClosed)
{
    ScreenDialogs dialogs;
    whenBoxOpens([](QMessageBox& box) {
        ASSERT_EQ(box.buttons().size(), 1);
        box.buttons().constFirst()->click();
    });
    EXPECT_EQ(dialogs.ask(nullptr, {Signal::Info, QStringLiteral("Done."), {}, {}, {}, 0}), 0);
}

}  // namespace chalk::ui::common
