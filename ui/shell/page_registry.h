#pragma once

#include "ui/shell/page.h"

#include <QKeySequence>
#include <QString>

#include <cstdint>
#include <functional>
#include <vector>

namespace chalk::ui::shell {

/// Where the rail shows a page.
enum class RailSlot : std::uint8_t {
    None,   ///< not in the rail: reached from elsewhere
    Top,    ///< among those at the top
    Bottom  ///< at the foot
};

/// A page that the window can show. `make` is called once, when the page is first gone to; the parent owns what it returns.
struct PageEntry {
    QString key;   ///< `roster`
    QString name;  ///< `Roster`, in the rail
    QString icon;  ///< a name of resources/icons
    RailSlot slot = RailSlot::Top;
    QKeySequence shortcut;
    std::function<Page*(QWidget* parent)> make;
    QString markedPage = {};  ///< the page that the rail marks while this one is on show; empty: itself
};

/// The pages that there are, in the order of the rail. What is not registered is not shown.
class PageRegistry {
public:
    /// Adds a page. Throws std::logic_error where its key is taken.
    void add(PageEntry entry);
    [[nodiscard]] const std::vector<PageEntry>& entries() const { return m_entries; }
    /// Nothing where no page has that key.
    [[nodiscard]] const PageEntry* find(const QString& key) const;

private:
    std::vector<PageEntry> m_entries;
};

}  // namespace chalk::ui::shell
