#include "tests/support/accessible_audit.h"

#include <QAccessible>
#include <QWidget>

#include <functional>

namespace chalk::tests {

namespace {

constexpr int kDeepest = 20;
constexpr int kMostChildren = 400;

void walkAccessible(QAccessibleInterface* node, int depth, const std::function<void(QAccessibleInterface&)>& visit)
{
    if (node == nullptr || !node->isValid() || depth > kDeepest) {
        return;
    }
    const QAccessible::State state = node->state();
    const bool isCell = node->role() == QAccessible::Cell || node->role() == QAccessible::ListItem;
    if (state.focusable && !state.invisible && !isCell) {
        visit(*node);
    }
    for (int i = 0; i < std::min(node->childCount(), kMostChildren); ++i) {
        walkAccessible(node->child(i), depth + 1, visit);
    }
}

}  // namespace

QStringList unnamedFocusables(QWidget& root)
{
    QStringList unnamed;
    walkAccessible(QAccessible::queryAccessibleInterface(&root), 0, [&unnamed](QAccessibleInterface& node) {
        if (node.text(QAccessible::Name).isEmpty()) {
            const QObject* object = node.object();
            unnamed.append(QStringLiteral("%1 (role %2, object %3)")
                               .arg(QLatin1String(object == nullptr ? "?" : object->metaObject()->className()))
                               .arg(static_cast<int>(node.role()))
                               .arg(object == nullptr ? QString() : object->objectName()));
        }
    });
    return unnamed;
}

int focusableCount(QWidget& root)
{
    int count = 0;
    walkAccessible(QAccessible::queryAccessibleInterface(&root), 0, [&count](QAccessibleInterface&) { ++count; });
    return count;
}

}  // namespace chalk::tests
