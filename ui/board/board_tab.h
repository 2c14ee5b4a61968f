#pragma once

#include "core/lifts/pattern.h"
#include "core/progression/stage.h"

#include <QWidget>

#include <optional>

namespace chalk::ui::common {
class Look;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::board {

class LiftInspector;
class StageBoard;
struct ClientCase;
struct LiftCase;

/// The ladder of a client and the lift that is selected on it.
class BoardTab : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the tab.
    explicit BoardTab(const common::Look& look, QWidget* parent = nullptr);

    /// Shows a case, which must outlive the tab or the next call. A lift that was selected stays selected; an editor stays
    /// open.
    void setCase(const ClientCase& client);
    /// Selects the first lift of a pattern.
    void selectPattern(lifts::Pattern pattern);
    /// The selected lift; none where its pattern has no lift yet.
    [[nodiscard]] const LiftCase* selectedLift() const;
    void setRoom(bool isNarrow, bool isLow);

    [[nodiscard]] StageBoard* board() const { return m_board; }
    [[nodiscard]] LiftInspector* inspector() const { return m_inspector; }
    /// Closes what is open in the inspector, then a rung that is read. False where there was neither.
    bool closeOrClear();
    /// Shows the selected lift again after an editor.
    void endEditing();

Q_SIGNALS:
    void liftSelected();
    /// The sessions of a pattern were asked for, of one stage or all.
    void sessionsAsked(lifts::Pattern pattern, std::optional<progression::Stage> stage);

    /// The movement screen is wanted, for a pattern without a lift.
    void screenAsked();

private:
    void showSelected();
    void readRung(std::optional<progression::Stage> stage);

    StageBoard* m_board;
    LiftInspector* m_inspector;
    const ClientCase* m_client = nullptr;
};

}  // namespace chalk::ui::board
