#pragma once

#include "ui/shell/page_registry.h"

#include <QStackedWidget>

#include <map>
#include <set>

namespace chalk::ui::shell {

/// The pages that were gone to so far, one of them on show. A page that is not on show when the studio changes is read again
/// before it is shown next.
class PageDeck : public QStackedWidget {
    Q_OBJECT

public:
    /// The registry outlives the deck.
    explicit PageDeck(const PageRegistry& pages, QWidget* parent = nullptr);

    /// Shows a place, making its page where needed. False where no page has that key.
    bool goTo(const Place& place);
    /// None before the first goTo.
    [[nodiscard]] Page* present() const;
    [[nodiscard]] const QString& presentKey() const { return m_presentKey; }
    /// The place on show, with its page filled in.
    [[nodiscard]] Place place() const;

    /// Something was written by the page on show.
    void studioChanged();
    /// Something was written by nobody on show, or time went on: the page on show reads again at once.
    void refreshAll();
    void setRoom(bool isNarrow, bool isLow);

Q_SIGNALS:
    void placeAsked(const chalk::ui::shell::Place& place);
    /// The page on show wrote to the studio.
    void written();
    /// Another page is on show, or the one on show says that it is different.
    void presentChanged();

private:
    Page* pageFor(const PageEntry& entry);
    void markStale(const QString& except);

    const PageRegistry& m_registry;
    std::map<QString, Page*> m_made;
    std::set<QString> m_stale;
    QString m_presentKey;
    bool m_isNarrow = false;
    bool m_isLow = false;
};

}  // namespace chalk::ui::shell
