#include "ui/shell/page_registry.h"

#include <algorithm>
#include <stdexcept>

namespace chalk::ui::shell {

void PageRegistry::add(PageEntry entry)
{
    if (find(entry.key) != nullptr) {
        throw std::logic_error("two pages are called " + entry.key.toStdString());
    }
    m_entries.push_back(std::move(entry));
}

const PageEntry* PageRegistry::find(const QString& key) const
{
    const auto found = std::find_if(m_entries.begin(), m_entries.end(), [&key](const PageEntry& entry) { return entry.key == key; });
    return found == m_entries.end() ? nullptr : &*found;
}

}  // namespace chalk::ui::shell
