#pragma once

#include "ui/roster/roster_reach.h"
#include "ui/roster/roster_row.h"

#include <QFrame>

#include <optional>

namespace chalk::ui::common {
class Look;
struct Theme;
}

namespace chalk::ui::roster {

/// A short look at a client over the roster: cautions, the next and the last sessions, every lift with its stage. Space or Esc closes
/// it, Up and Down go on to the neighbours, Enter opens the client, P asks for the card.
class PeekPopup : public QFrame {
    Q_OBJECT

public:
    /// `look` outlives the popup.
    PeekPopup(const common::Look& look, RosterReach reach, QWidget* parent = nullptr);

    /// Shows a client beside a row of the roster, in screen coordinates, inside `bounds`.
    void showFor(const RosterRow& row, const QRect& beside, const QRect& bounds);
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    /// The client so many lines further on is wanted.
    void moveAsked(int lines);
    void openAsked();
    void cardAsked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QString spokenText() const;

    const common::Look& m_look;
    const RosterReach m_reach;
    RosterRow m_row;
};

}  // namespace chalk::ui::roster
