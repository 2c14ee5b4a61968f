#pragma once

#include "core/base/id.h"
#include "core/progression/event.h"

#include <QObject>
#include <QString>

#include <optional>

namespace chalk::ui::common {
class ActHistory;
class Dialogs;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::decisions {
class CoachEditor;
}

namespace chalk::ui::board {

class BoardTab;
class ClientPresenter;
struct ClientCase;
struct LiftCase;

/// What the coach decides about the selected lift of a board: each opens its editor in the place of the inspector, writes
/// what it says, and tells the history of acts. What the lift does not allow does nothing.
class LiftDecisions : public QObject {
    Q_OBJECT

public:
    /// All of them outlive the decisions.
    LiftDecisions(const common::Look& look, BoardTab& board, ClientPresenter& presenter, common::Dialogs& dialogs, common::ActHistory& acts,
                  QObject* parent = nullptr);

    /// The case on show, which outlives the next call; null for none.
    void setCase(const ClientCase* client) { m_client = client; }

    [[nodiscard]] bool canChange() const;
    [[nodiscard]] bool canHold() const;
    [[nodiscard]] bool canSwap() const;
    [[nodiscard]] bool canRelease() const;
    [[nodiscard]] bool canTest() const;

    void change();
    void hold();
    void swap();
    void release();
    /// Guides a test of the lift's maximum, in a window of its own.
    void test();

Q_SIGNALS:
    /// A decision was written, or given up for what somebody else wrote, and its editor is closed: the client is to be read again.
    void written();

private:
    /// The selected lift where anything may be decided about it.
    [[nodiscard]] const LiftCase* lift() const;
    void edit(decisions::CoachEditor* editor);
    void finish(base::ActId act, const QString& words);
    /// Writes an event for a lift. Where somebody else wrote something of the lift meanwhile, the coach sees that first. Where nothing was written, the
    /// editor says why, or is closed where the coach gave way.
    [[nodiscard]] std::optional<base::ActId> write(decisions::CoachEditor& editor, const LiftCase& lift, const progression::EventBody& body);

    const common::Look& m_look;
    BoardTab& m_board;
    ClientPresenter& m_presenter;
    common::Dialogs& m_dialogs;
    common::ActHistory& m_acts;
    const ClientCase* m_client = nullptr;
};

}  // namespace chalk::ui::board
