#pragma once

#include "core/seal/key_wrap.h"
#include "core/store/database.h"
#include "ui/lock/sealing_work.h"
#include "ui/settings/settings_section.h"

class QCheckBox;
class QLabel;
class QVBoxLayout;

namespace chalk::ui::common {
class ActionButton;
class Look;
class Panel;
class SegmentedChoice;
}

namespace chalk::ui::lock {

class LockDesk;
class PassphraseField;

/// The passphrase of the studio and when the program locks itself. What is sealed, and what is not, is said here.
class LockSection : public settings::SettingsSection {
    Q_OBJECT

public:
    /// All of these outlive the section. `cost` is what a try of a new passphrase will cost.
    LockSection(const common::Look& look, store::Database& database, LockDesk& desk, QWidget* parent = nullptr,
                const seal::KeyCost& cost = seal::KeyCost::moderate());
    ~LockSection() override;

    void refresh() override;
    /// Stops what is at work.
    bool closeOrClear() override;
    /// What is said of the last thing that was done; empty where nothing is.
    [[nodiscard]] QString saying() const;

private:
    void addState();
    void addWork();
    void addLocking();
    void addScope();
    PassphraseField* addField(QVBoxLayout* in, const QString& name, QWidget*& row);
    void readFields();
    void set();
    void change();
    void remove();
    void begin(SealingWork::Work work, const QString& doing, const QString& done);
    void say(const QString& words);
    /// Into the first field, after work that took the buttons away.
    void focusFirst();

    const common::Look& m_look;
    store::Database& m_database;
    LockDesk& m_desk;
    seal::KeyCost m_cost;
    SealingWork m_work;
    QString m_doing;
    QString m_done;
    common::Panel* m_panel = nullptr;
    QLabel* m_state = nullptr;
    PassphraseField* m_present = nullptr;
    PassphraseField* m_new = nullptr;
    PassphraseField* m_again = nullptr;
    QWidget* m_presentRow = nullptr;
    QCheckBox* m_understood = nullptr;
    QLabel* m_hint = nullptr;
    QLabel* m_news = nullptr;
    common::ActionButton* m_set = nullptr;
    common::ActionButton* m_change = nullptr;
    common::ActionButton* m_remove = nullptr;
    common::ActionButton* m_stop = nullptr;
    common::SegmentedChoice* m_minutes = nullptr;
    common::ActionButton* m_lockNow = nullptr;
};

}  // namespace chalk::ui::lock
