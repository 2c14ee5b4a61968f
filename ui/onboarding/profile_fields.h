#pragma once

#include "core/clients/client.h"
#include "core/clients/profile.h"
#include "ui/onboarding/field_column.h"

#include <vector>

class QCheckBox;
class QComboBox;
class QLineEdit;
class QPlainTextEdit;
class QSpinBox;

namespace chalk::ui::common {
class SegmentedChoice;
}

namespace chalk::ui::onboarding {

/// What the fields of a profile say.
struct ProfileEntry {
    clients::Client client;
    clients::Profile profile;

    bool operator==(const ProfileEntry&) const = default;
};

/// All fields of a client's profile but the hours and the kit at home.
class ProfileFields : public FieldColumn {
    Q_OBJECT

public:
    explicit ProfileFields(const common::Look& look, QWidget* parent = nullptr);

    void setCoaches(const std::vector<clients::Coach>& coaches);
    /// What is being typed in keeps its text, and so does a birth date that cannot be until it is mended.
    void setEntry(const ProfileEntry& entry, base::Date today);
    /// Empties the texts, those being typed in too: they are another person's.
    void forgetTyping();
    /// `base` with what the fields say in place of its own. Fields that make no sense are passed over and say so.
    [[nodiscard]] ProfileEntry entryOn(const ProfileEntry& base) const;
    /// Shows what is wrong and what was understood. False where a field makes no sense.
    bool review(base::Date today);
    void takeFocus();
    [[nodiscard]] QLineEdit* nameField() const { return m_name; }
    /// Locks everything but the name, for somebody who has none yet.
    void setNameOnly(bool isNameOnly);
    /// Lifts that run keep the unit that they began in.
    void setUnitLocked(bool isLocked);

Q_SIGNALS:
    /// Something is being typed.
    void typed();
    /// Something was chosen, or a field was left.
    void settled();

private:
    QLineEdit* line(const QString& name, const QString& hint = {});
    QPlainTextEdit* text(const QString& name);
    void addPerson();
    void addContacts();
    void addTraining();
    void addConsent();
    [[nodiscard]] std::optional<base::Date> birth() const;
    /// What is wrong with the birth date; empty: nothing.
    [[nodiscard]] QString faultOfBirth() const;
    void showGuardian(base::Date today);

    QLineEdit* m_name;
    QLineEdit* m_pronouns;
    QLineEdit* m_birth;
    common::SegmentedChoice* m_sex;
    QLineEdit* m_phone;
    QLineEdit* m_email;
    QLineEdit* m_emergencyName;
    QLineEdit* m_emergencyPhone;
    QPlainTextEdit* m_goal;
    QPlainTextEdit* m_history;
    QComboBox* m_coach;
    QSpinBox* m_sessions;
    QSpinBox* m_minutes;
    common::SegmentedChoice* m_group;
    common::SegmentedChoice* m_unit;
    QCheckBox* m_consent;
    QLineEdit* m_guardian;
    QCheckBox* m_guardianConsent;
    bool m_isNameOnly = false;
    std::optional<base::Date> m_consentOn;
    std::optional<base::Date> m_guardianConsentOn;
    base::Date m_today;
};

}  // namespace chalk::ui::onboarding
