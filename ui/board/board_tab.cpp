#include "ui/board/board_tab.h"

#include "ui/board/board_words.h"
#include "ui/board/lift_inspector.h"
#include "ui/board/stage_board.h"
#include "ui/common/lock_words.h"
#include "ui/common/panel.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::board {

BoardTab::BoardTab(const common::Look& look, QWidget* parent)
    : QWidget(parent), m_board(new StageBoard(look)), m_inspector(new LiftInspector(look, this))
{
    auto* panel = new common::Panel(look, this);
    panel->body()->setContentsMargins(9, 5, 5, 3);
    panel->body()->addWidget(m_board);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(24, 12, 24, 16);
    row->setSpacing(16);
    row->addWidget(panel, 1);
    row->addWidget(m_inspector);
    setFocusProxy(m_board);
    connect(m_board, &StageBoard::selectionChanged, this, [this] {
        showSelected();
        Q_EMIT liftSelected();
    });
    connect(m_board, &StageBoard::rungRead, this, &BoardTab::readRung);
    connect(m_board, &StageBoard::evidenceAsked, m_inspector, &LiftInspector::revealEvidence);
    connect(m_board, &StageBoard::screenAsked, this, &BoardTab::screenAsked);
    connect(m_board, &StageBoard::sessionsAsked, this, [this](int column, std::optional<progression::Stage> stage) {
        Q_EMIT sessionsAsked(m_board->columns()[static_cast<std::size_t>(column)].pattern, stage);
    });
}

void BoardTab::setCase(const ClientCase& client)
{
    m_client = &client;
    const common::LockWords lock = common::lockWordsOf(client.clearance, client.client, client.today);
    m_inspector->setLock(lock.headline, lock.text);
    const bool wasEditing = m_inspector->isEditing();
    {
        const QSignalBlocker blocker(m_board);
        m_board->setColumns(columnsOf(client));
    }
    if (!wasEditing) {
        showSelected();
    }
    Q_EMIT liftSelected();
}

void BoardTab::selectPattern(lifts::Pattern pattern)
{
    const BoardColumns& columns = m_board->columns();
    const auto found =
        std::find_if(columns.begin(), columns.end(), [pattern](const BoardColumn& column) { return column.pattern == pattern; });
    if (found != columns.end()) {
        m_board->select(static_cast<int>(found - columns.begin()));
    }
}

const LiftCase* BoardTab::selectedLift() const
{
    if (m_client == nullptr || m_board->selected() < 0) {
        return nullptr;
    }
    const base::LiftId id = m_board->columns()[static_cast<std::size_t>(m_board->selected())].lift;
    const auto found = std::find_if(m_client->lifts.begin(), m_client->lifts.end(), [id](const LiftCase& lift) { return lift.id == id; });
    return found == m_client->lifts.end() ? nullptr : &*found;
}

void BoardTab::showSelected()
{
    if (const LiftCase* lift = selectedLift()) {
        m_inspector->showLift(*lift, *m_client);
    } else if (m_board->selected() >= 0) {
        const BoardColumn& column = m_board->columns()[static_cast<std::size_t>(m_board->selected())];
        m_inspector->showNothing(column.name, nothingToPrescribe(standingOf(*m_client, column.pattern)));
    }
}

void BoardTab::readRung(std::optional<progression::Stage> stage)
{
    if (const LiftCase* lift = selectedLift(); lift != nullptr && !m_inspector->isEditing()) {
        m_inspector->readStage(*lift, stage);
    }
}

void BoardTab::endEditing()
{
    m_inspector->closeEditor();
    showSelected();
    m_board->setFocus(Qt::OtherFocusReason);
}

bool BoardTab::closeOrClear()
{
    if (m_inspector->isEditing()) {
        endEditing();
        return true;
    }
    return m_board->stopReading();
}

void BoardTab::setRoom(bool isNarrow, bool isLow)
{
    m_inspector->setRoom(isNarrow, isLow);
}

}  // namespace chalk::ui::board
