#include "ui/board/stage_board_accessible.h"

#include "ui/board/stage_board.h"

#include <QAccessibleActionInterface>
#include <QAccessibleWidget>
#include <QPointer>

#include <vector>

namespace chalk::ui::board {

namespace {

/// One lift of a board.
class ColumnAccessible : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    ColumnAccessible(StageBoard* board, int index) : m_board(board), m_index(index) {}

    bool isValid() const override { return m_board && m_index < static_cast<int>(m_board->columns().size()); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(m_board.data()); }
    QAccessibleInterface* child(int /*index*/) const override { return nullptr; }
    QAccessibleInterface* childAt(int /*x*/, int /*y*/) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface* /*child*/) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    void setText(QAccessible::Text /*kind*/, const QString& /*text*/) override {}

    QString text(QAccessible::Text kind) const override
    {
        return isValid() && kind == QAccessible::Name ? m_board->columns()[static_cast<std::size_t>(m_index)].spoken : QString();
    }

    QRect rect() const override
    {
        if (!isValid()) {
            return {};
        }
        const BoardGeometry geometry = m_board->geometryNow();
        const QRect seen = (geometry.columnRect(m_index) & geometry.columnsArea()).toAlignedRect();
        return {m_board->mapToGlobal(seen.topLeft()), seen.size()};
    }

    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.selectable = true;
        state.focusable = true;
        state.selected = isValid() && m_board->selected() == m_index;
        state.focused = state.selected && m_board->hasFocus();
        state.offscreen = rect().isEmpty();
        return state;
    }

    void* interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }

    QStringList actionNames() const override { return {pressAction()}; }
    QStringList keyBindingsForAction(const QString& /*action*/) const override { return {}; }
    void doAction(const QString& action) override
    {
        if (isValid() && action == pressAction()) {
            m_board->select(m_index);
        }
    }

private:
    QPointer<StageBoard> m_board;
    int m_index;
};

/// A board as a list of its lifts.
class BoardAccessible : public QAccessibleWidget {
public:
    explicit BoardAccessible(StageBoard* board) : QAccessibleWidget(board, QAccessible::List), m_board(board) {}

    ~BoardAccessible() override
    {
        for (const QAccessible::Id id : m_children) {
            QAccessible::deleteAccessibleInterface(id);
        }
    }

    int childCount() const override { return static_cast<int>(m_board->columns().size()); }

    QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount()) {
            return nullptr;
        }
        while (static_cast<int>(m_children.size()) <= index) {
            auto* column = new ColumnAccessible(m_board, static_cast<int>(m_children.size()));
            m_children.push_back(QAccessible::registerAccessibleInterface(column));
        }
        return QAccessible::accessibleInterface(m_children[static_cast<std::size_t>(index)]);
    }

    QAccessibleInterface* childAt(int x, int y) const override
    {
        const QPoint point = m_board->mapFromGlobal(QPoint(x, y));
        return child(m_board->geometryNow().boxAt(point, m_board->columns()).column);
    }

    int indexOfChild(const QAccessibleInterface* wanted) const override
    {
        for (int i = 0; i < childCount(); ++i) {
            if (child(i) == wanted) {
                return i;
            }
        }
        return -1;
    }

    QAccessibleInterface* focusChild() const override { return m_board->hasFocus() ? child(m_board->selected()) : nullptr; }

private:
    StageBoard* m_board;
    mutable std::vector<QAccessible::Id> m_children;
};

QAccessibleInterface* makeBoardAccessible(const QString& /*className*/, QObject* object)
{
    auto* board = qobject_cast<StageBoard*>(object);
    return board == nullptr ? nullptr : new BoardAccessible(board);
}

}  // namespace

void installBoardAccessibility()
{
    QAccessible::installFactory(makeBoardAccessible);
}

}  // namespace chalk::ui::board
