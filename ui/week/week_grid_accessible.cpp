#include "ui/week/week_grid_accessible.h"

#include "ui/week/block_spoken.h"
#include "ui/week/week_grid.h"

#include <QAccessibleActionInterface>
#include <QAccessibleWidget>
#include <QPointer>

#include <vector>

namespace chalk::ui::week {

namespace {

/// One block of a week.
class BlockAccessible : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    BlockAccessible(WeekGrid* grid, int index) : m_grid(grid), m_index(index) {}

    bool isValid() const override { return m_grid && m_index < static_cast<int>(m_grid->scene().blocks.size()); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(m_grid.data()); }
    QAccessibleInterface* child(int /*index*/) const override { return nullptr; }
    QAccessibleInterface* childAt(int /*x*/, int /*y*/) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface* /*child*/) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    void setText(QAccessible::Text /*kind*/, const QString& /*text*/) override {}

    QString text(QAccessible::Text kind) const override
    {
        return isValid() && kind == QAccessible::Name ? blockSpoken(m_grid->scene(), m_grid->scene().blocks[static_cast<std::size_t>(m_index)]) : QString();
    }

    QRect rect() const override
    {
        if (!isValid()) {
            return {};
        }
        const QRectF block = m_grid->geometryNow().blockRect(m_grid->scene().blocks[static_cast<std::size_t>(m_index)]);
        const QRect seen = block.translated(-m_grid->offset()).toAlignedRect() & m_grid->viewport()->rect();
        return {m_grid->viewport()->mapToGlobal(seen.topLeft()), seen.size()};
    }

    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.selectable = true;
        state.focusable = true;
        state.selected = isValid() && m_grid->selected() == m_index;
        state.focused = state.selected && m_grid->hasFocus();
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
            m_grid->select(m_index);
        }
    }

private:
    QPointer<WeekGrid> m_grid;
    int m_index;
};

/// A week as a list of its blocks.
class WeekGridAccessible : public QAccessibleWidget {
public:
    explicit WeekGridAccessible(WeekGrid* grid) : QAccessibleWidget(grid, QAccessible::List), m_grid(grid) {}

    ~WeekGridAccessible() override
    {
        for (const QAccessible::Id id : m_children) {
            QAccessible::deleteAccessibleInterface(id);
        }
    }

    int childCount() const override { return static_cast<int>(m_grid->scene().blocks.size()); }

    QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount()) {
            return nullptr;
        }
        while (static_cast<int>(m_children.size()) <= index) {
            auto* block = new BlockAccessible(m_grid, static_cast<int>(m_children.size()));
            m_children.push_back(QAccessible::registerAccessibleInterface(block));
        }
        return QAccessible::accessibleInterface(m_children[static_cast<std::size_t>(index)]);
    }

    QAccessibleInterface* childAt(int x, int y) const override
    {
        const QPointF point = m_grid->viewport()->mapFromGlobal(QPointF(x, y)) + m_grid->offset();
        return child(m_grid->geometryNow().blockAt(point));
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

    QAccessibleInterface* focusChild() const override { return m_grid->hasFocus() ? child(m_grid->selected()) : nullptr; }

private:
    WeekGrid* m_grid;
    mutable std::vector<QAccessible::Id> m_children;
};

QAccessibleInterface* makeWeekGridAccessible(const QString& /*className*/, QObject* object)
{
    auto* grid = qobject_cast<WeekGrid*>(object);
    return grid == nullptr ? nullptr : new WeekGridAccessible(grid);
}

}  // namespace

void installWeekGridAccessibility()
{
    QAccessible::installFactory(makeWeekGridAccessible);
}

}  // namespace chalk::ui::week
