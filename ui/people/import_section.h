#pragma once

#include "ui/settings/settings_section.h"

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::people {

/// The way to the import of lists and to clients who may be one, in the settings.
class ImportSection : public settings::SettingsSection {
    Q_OBJECT

public:
    /// `look` outlives the section.
    explicit ImportSection(const common::Look& look, QWidget* parent = nullptr);

    void refresh() override {}
};

}  // namespace chalk::ui::people
