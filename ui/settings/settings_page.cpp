#include "ui/settings/settings_page.h"

#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/scroll_column.h"
#include "ui/settings/section_list.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::settings {

SettingsPage::SettingsPage(const common::Look& look, std::vector<SectionEntry> sections, const QString& studioName, QWidget* parent)
    : Page(parent),
      m_look(look),
      m_sections(std::move(sections)),
      m_frames(m_sections.size(), nullptr),
      m_header(new common::PageHeader(look, this)),
      m_list(new SectionList(look, m_sections, this)),
      m_stack(new QStackedWidget(this))
{
    m_header->setTitle(tr("Settings"));
    m_header->setSubtitle(studioName);
    auto* note = new QLabel(tr("Changes are kept as you make them"), m_header);
    note->setProperty("role", QStringLiteral("secondary"));
    m_header->addTool(note);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(0);
    outer->addWidget(m_header);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(24, 0, 24, 0);
    row->setSpacing(16);
    row->addWidget(m_list);
    row->addWidget(m_stack, 1);
    outer->addLayout(row, 1);
    connect(m_list, &SectionList::sectionChosen, this, &SettingsPage::showSection);
}

QString SettingsPage::title() const
{
    return tr("Settings");
}

SettingsSection* SettingsPage::section(int index)
{
    QScrollArea*& frame = m_frames[static_cast<std::size_t>(index)];
    if (frame == nullptr) {
        frame = new QScrollArea(m_stack);
        SettingsSection* made = m_sections[static_cast<std::size_t>(index)].make(frame);
        common::holdColumn(*frame, made);
        made->setProperty("ground", QStringLiteral("win"));
        m_stack->addWidget(frame);
        connect(made, &SettingsSection::studioChanged, this, &Page::studioChanged);
        connect(made, &SettingsSection::placeAsked, this, &Page::placeAsked);
    }
    return qobject_cast<SettingsSection*>(frame->widget());
}

void SettingsPage::showSection(int index)
{
    m_present = index;
    SettingsSection* shown = section(index);
    shown->refresh();
    m_stack->setCurrentWidget(m_frames[static_cast<std::size_t>(index)]);
    Q_EMIT pageChanged();
}

void SettingsPage::open(const shell::Place& place)
{
    const auto asked = std::find_if(m_sections.begin(), m_sections.end(), [&place](const SectionEntry& entry) { return entry.key == place.tab; });
    const int index = asked == m_sections.end() ? m_present : static_cast<int>(asked - m_sections.begin());
    m_list->setChosen(index);
    showSection(index);
    m_list->takeFocus();
}

shell::Place SettingsPage::place() const
{
    return {.page = {}, .tab = m_sections[static_cast<std::size_t>(m_present)].key};
}

void SettingsPage::refresh()
{
    section(m_present)->refresh();
}

std::vector<shell::KeyHint> SettingsPage::keyHints() const
{
    return {{tr("↑ ↓"), tr("Section")}, {tr("Tab"), tr("Into it")}};
}

bool SettingsPage::closeOrClear()
{
    return section(m_present)->closeOrClear();
}

}  // namespace chalk::ui::settings
