#include "ui/settings/restore_dialog.h"

#include "core/store/key_ring.h"
#include "core/store/sealing.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/look.h"

#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QTest>

#include <gtest/gtest.h>

#include <memory>
#include <stdexcept>

namespace chalk::ui::settings {

class RestoreDialogTest : public ::testing::Test {
protected:
    store::BackupShelf shelf() { return {store::BackupShelf::folderFor(m_studio.file()), [this] { return m_now; }}; }
    QString backUp()
    {
        ++m_now.at.minute;
        return shelf().add(m_studio.database()).value();
    }
    std::unique_ptr<RestoreDialog> dialogOn(const QString& chosen = {})
    {
        auto dialog = std::make_unique<RestoreDialog>(m_look, m_dialogs, shelf(), m_studio.file(), test::smallStudioDay(), chosen,
                                                     [this](const QString&) { return m_otherKeys; });
        dialog->show();
        waitFor(*dialog);
        return dialog;
    }
    static void waitFor(RestoreDialog& dialog) { ASSERT_TRUE(QTest::qWaitFor([&dialog] { return !dialog.isLooking(); }, 10000)); }
    static common::ActionButton& button(RestoreDialog& dialog, const char* text)
    {
        for (auto* button : dialog.findChildren<common::ActionButton*>()) {
            if (button->text() == QString::fromUtf8(text)) {
                return *button;
            }
        }
        throw std::runtime_error(text);
    }
    static QStringList words(RestoreDialog& dialog)
    {
        QStringList found;
        for (const QLabel* label : dialog.findChildren<QLabel*>()) {
            found.append(label->text());
        }
        return found;
    }

    test::StudioOnTest m_studio;
    store::BackupShelf::Moment m_now{{test::smallStudioDay(), 500}, 0};
    common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
    std::shared_ptr<store::KeyRing> m_otherKeys;  ///< what is given where a passphrase is asked for
};

TEST_F(RestoreDialogTest, WhatABackupHoldsStandsBesideWhatIsOpen)
{
    const QString backup = backUp();
    m_studio.rows(QStringLiteral("UPDATE studio SET name = 'Renamed Studio'"));
    const auto dialog = dialogOn();
    EXPECT_EQ(dialog->file(), backup);
    EXPECT_TRUE(words(*dialog).contains(QStringLiteral("Small Studio")));
    EXPECT_TRUE(words(*dialog).contains(QStringLiteral("Renamed Studio")));
    EXPECT_TRUE(button(*dialog, "Change nothing").isDefault());
    button(*dialog, "Restore this backup").click();
    EXPECT_EQ(dialog->result(), QDialog::Accepted);
}

TEST_F(RestoreDialogTest, ADamagedOneCannotBeChosenAndAnotherFileCan)
{
    const QString sound = backUp();
    const QString damaged = backUp();
    const QString elsewhere = m_studio.folder() + QStringLiteral("/elsewhere.chalkrung");
    ASSERT_TRUE(QFile::copy(sound, elsewhere));
    ASSERT_TRUE(QFile::resize(damaged, 20000));
    const auto dialog = dialogOn(damaged);
    EXPECT_FALSE(button(*dialog, "Restore this backup").isEnabled());
    EXPECT_TRUE(dialog->findChild<common::Banner*>()->accessibleName().contains(QStringLiteral("it was cut short")));
    m_dialogs.paths = {elsewhere};
    button(*dialog, "Another file…").click();
    waitFor(*dialog);
    EXPECT_EQ(dialog->file(), elsewhere);
    EXPECT_TRUE(button(*dialog, "Restore this backup").isEnabled());
    dialog->findChild<QListWidget*>()->setCurrentRow(0);
    EXPECT_FALSE(button(*dialog, "Restore this backup").isEnabled()) << "not before it was looked at";
    waitFor(*dialog);
    EXPECT_FALSE(button(*dialog, "Restore this backup").isEnabled());
}

TEST_F(RestoreDialogTest, ABackupWithAnotherPassphraseIsAskedForIt)
{
    const seal::Passphrase former(QStringLiteral("three quiet mornings"));
    store::Sealing sealing(m_studio.database(), seal::KeyCost::least());
    ASSERT_TRUE(sealing.set(former));
    const QString backup = backUp();
    ASSERT_TRUE(sealing.remove(former));
    m_studio.close();
    m_studio.open();
    const auto dialog = dialogOn();
    EXPECT_FALSE(button(*dialog, "Restore this backup").isEnabled());
    EXPECT_TRUE(button(*dialog, "Give its passphrase…").isVisible());
    button(*dialog, "Give its passphrase…").click();
    EXPECT_FALSE(button(*dialog, "Restore this backup").isEnabled()) << "left sealed";
    m_otherKeys = std::make_shared<store::KeyRing>(former);
    ASSERT_TRUE(m_otherKeys->open(*seal::sealedHeadOf(backup), backup));
    button(*dialog, "Give its passphrase…").click();
    waitFor(*dialog);
    EXPECT_TRUE(button(*dialog, "Restore this backup").isEnabled());
    EXPECT_FALSE(button(*dialog, "Give its passphrase…").isVisible());
    EXPECT_EQ(dialog->keys(), m_otherKeys);
}

TEST_F(RestoreDialogTest, WithoutABackupThereIsNothingToRestore)
{
    const auto dialog = dialogOn();
    EXPECT_EQ(dialog->file(), QString());
    EXPECT_FALSE(button(*dialog, "Restore this backup").isEnabled());
    EXPECT_TRUE(words(*dialog).contains(QStringLiteral("There is no backup yet.")));
}

}  // namespace chalk::ui::settings
