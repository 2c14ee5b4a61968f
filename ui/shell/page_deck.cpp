#include "ui/shell/page_deck.h"

namespace chalk::ui::shell {

PageDeck::PageDeck(const PageRegistry& pages, QWidget* parent) : QStackedWidget(parent), m_registry(pages) {}

Page* PageDeck::pageFor(const PageEntry& entry)
{
    Page*& page = m_made[entry.key];
    if (page == nullptr) {
        page = entry.make(this);
        page->setRoom(m_isNarrow, m_isLow);
        addWidget(page);
        connect(page, &Page::placeAsked, this, &PageDeck::placeAsked);
        connect(page, &Page::pageChanged, this, [this, page] {
            if (page == present()) {
                Q_EMIT presentChanged();
            }
        });
        connect(page, &Page::studioChanged, this, [this, key = entry.key] {
            markStale(key);
            if (key != m_presentKey && present() != nullptr) {
                present()->refresh();
                m_stale.erase(m_presentKey);
            }
            Q_EMIT written();
        });
    }
    return page;
}

bool PageDeck::goTo(const Place& place)
{
    const PageEntry* entry = m_registry.find(place.page);
    if (entry == nullptr) {
        return false;
    }
    Page* page = pageFor(*entry);
    if (m_stale.erase(entry->key) > 0) {
        page->refresh();
    }
    m_presentKey = entry->key;
    setCurrentWidget(page);
    page->open(place);
    Q_EMIT presentChanged();
    return true;
}

Page* PageDeck::present() const
{
    return qobject_cast<Page*>(currentWidget());
}

Place PageDeck::place() const
{
    Place place = present() == nullptr ? Place() : present()->place();
    place.page = m_presentKey;
    return place;
}

void PageDeck::studioChanged()
{
    markStale(m_presentKey);
}

void PageDeck::refreshAll()
{
    markStale(m_presentKey);
    if (present() != nullptr) {
        present()->refresh();
    }
}

void PageDeck::markStale(const QString& except)
{
    for (const auto& [key, page] : m_made) {
        if (key != except) {
            m_stale.insert(key);
        }
    }
}

void PageDeck::setRoom(bool isNarrow, bool isLow)
{
    if (isNarrow == m_isNarrow && isLow == m_isLow) {
        return;
    }
    m_isNarrow = isNarrow;
    m_isLow = isLow;
    for (const auto& [key, page] : m_made) {
        page->setRoom(isNarrow, isLow);
    }
}

}  // namespace chalk::ui::shell
