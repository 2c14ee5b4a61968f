#pragma once

#include "core/store/database.h"
#include "ui/settings/settings_section.h"

class QComboBox;
class QSettings;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::settings {

/// Who works with a studio's file on this machine, as it was chosen last; none where nobody was, or where that coach is no longer there.
[[nodiscard]] base::CoachId keptAuthor(QSettings& settings, store::Database& database);

/// Who works here: from then on what is done is written down as theirs. Of a studio in a file; at a server everybody signs in.
class AuthorSection : public SettingsSection {
    Q_OBJECT

public:
    /// Everything outlives the section.
    AuthorSection(const common::Look& look, store::Database& database, QSettings& settings, QWidget* parent = nullptr);
    ~AuthorSection() override;

    void refresh() override;

private:
    void choose(int index);

    store::Database& m_database;
    QSettings& m_settings;
    QComboBox* m_who;
};

}  // namespace chalk::ui::settings
