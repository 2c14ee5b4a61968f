#pragma once

#include "ui/settings/settings_section.h"
#include "ui/shell/page.h"

#include <vector>

class QScrollArea;
class QStackedWidget;

namespace chalk::ui::common {
class Look;
class PageHeader;
}

namespace chalk::ui::settings {

class SectionList;

/// What a studio and this machine have set: the sections at the left, the one on show at the right.
class SettingsPage : public shell::Page {
    Q_OBJECT

public:
    /// `sections` is not empty. `studioName` stands beside the title.
    SettingsPage(const common::Look& look, std::vector<SectionEntry> sections, const QString& studioName, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override;
    /// The tab of the place is the key of a section; without one, or with an unknown one, the section stays.
    void open(const shell::Place& place) override;
    [[nodiscard]] shell::Place place() const override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    bool closeOrClear() override;

private:
    void showSection(int index);
    [[nodiscard]] SettingsSection* section(int index);

    const common::Look& m_look;
    std::vector<SectionEntry> m_sections;
    std::vector<QScrollArea*> m_frames;          ///< none where a section was not shown yet
    common::PageHeader* m_header;
    SectionList* m_list;
    QStackedWidget* m_stack;
    int m_present = 0;
};

}  // namespace chalk::ui::settings
