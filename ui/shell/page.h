#pragma once

#include "core/base/id.h"
#include "ui/shell/place.h"

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

namespace chalk::ui::shell {

/// A key of a page and what it does: `Enter`, `Open`. Keys that belong together are written with a space: `↑ ↓`.
struct KeyHint {
    QString keys;
    QString does;

    bool operator==(const KeyHint&) const = default;
};

/// The client that a page shows, for the rail.
struct OpenClient {
    base::ClientId id;
    QString name;

    bool operator==(const OpenClient&) const = default;
};

/// One page of the window: everything right of the rail and above the ledge, its header included (see
/// ui/common/page_header.h). A page is made when it is first gone to and lives as long as the window.
///
/// What a page can be told to do is its QWidget::actions(): each with a text, a key and the shortcut context
/// Qt::WidgetWithChildrenShortcut. The window lists them in its menu, under F1 and under Ctrl+K. The page's own keys leave the
/// window's keys alone: Ctrl+1 to Ctrl+5, Ctrl+K, /, N, Ctrl+P, Ctrl+Z, Ctrl+Shift+Z, F1, F5, Esc, Ctrl+Tab, Ctrl+Plus,
/// Ctrl+Minus, Ctrl+0, Ctrl+Shift+L, Ctrl+comma.
class Page : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;
    /// From here on nobody hears the page's parts: they are destroyed after it, and what they still say would reach half a page.
    ~Page() override;

    /// For the window's title: `Roster`, `Joaquin Ferro`.
    [[nodiscard]] virtual QString title() const = 0;
    /// Shows what `place` asks for and puts the focus where work starts.
    virtual void open(const Place& place) = 0;
    /// Where the page is now, to come back to. Its `page` is filled in by the window.
    [[nodiscard]] virtual Place place() const { return {}; }
    /// Reads everything again: after F5, an undo, or a change made on another page.
    virtual void refresh() = 0;

    /// The keys shown in the ledge, the most useful first; a narrow window shows fewer.
    [[nodiscard]] virtual std::vector<KeyHint> keyHints() const { return {}; }
    /// The client on show, if the page is about one.
    [[nodiscard]] virtual std::optional<OpenClient> openClient() const { return std::nullopt; }

    /// Whether Ctrl+P has something to print.
    [[nodiscard]] virtual bool canPrint() const { return false; }
    virtual void print() {}
    /// The field that `/` goes to; none where the page has nothing to filter.
    [[nodiscard]] virtual QWidget* filterField() { return nullptr; }
    /// Esc: closes a popup or clears a filter. False where there was nothing to close or clear.
    virtual bool closeOrClear() { return false; }
    /// Ctrl+Tab: goes to the next client of its own. False where it has none; then the window goes to the next open client.
    virtual bool showNextClient() { return false; }
    /// The window is narrower than 1320 px, or lower than 820 px. Called before the page is first shown, and on each change.
    virtual void setRoom(bool isNarrow, bool isLow)
    {
        Q_UNUSED(isNarrow)
        Q_UNUSED(isLow)
    }

Q_SIGNALS:
    /// The person chose something that is shown elsewhere.
    void placeAsked(const chalk::ui::shell::Place& place);
    /// Something was written to the studio; the other pages and the ledge read again.
    void studioChanged();
    /// title(), keyHints(), canPrint(), openClient() or the actions are different now.
    void pageChanged();
};

}  // namespace chalk::ui::shell
