#pragma once

#include "ui/settings/settings_section.h"

class QLabel;

namespace chalk::ui::common {
class ActionButton;
class Look;
class SegmentedChoice;
}

namespace chalk::ui::settings {

/// How the program looks on this machine: Paper or Slate, and the size of its text.
class AppearanceSection : public SettingsSection {
    Q_OBJECT

public:
    /// `look` outlives the section.
    explicit AppearanceSection(common::Look& look, QWidget* parent = nullptr);

    void refresh() override;

private:
    void addTone();
    void addTextSize();
    void changeTextBy(int percent);

    common::Look& m_look;
    common::SegmentedChoice* m_tone = nullptr;
    QLabel* m_percent = nullptr;
    common::ActionButton* m_smaller = nullptr;
    common::ActionButton* m_larger = nullptr;
};

}  // namespace chalk::ui::settings
