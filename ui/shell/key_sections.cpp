#include "ui/shell/key_sections.h"

#include "ui/shell/action_finder.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QSet>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

KeyHint hintOf(const QAction& action)
{
    return {actionKeys(action).join(QLatin1Char(' ')), actionWords(action)};
}

}  // namespace

KeySection pageSection(const QString& name, const Page& page)
{
    KeySection section{name, {}};
    QSet<QString> known;
    for (const QAction* action : page.actions()) {
        if (!action->text().isEmpty()) {
            section.keys.push_back(hintOf(*action));
            for (const QString& key : actionKeys(*action)) {
                known.insert(key);
            }
        }
    }
    for (const KeyHint& hint : page.keyHints()) {
        const QStringList keys = hint.keys.split(QLatin1Char(' '), Qt::SkipEmptyParts);
        const bool isOneAction = known.contains(keys.join(QLatin1Char('+')));
        const bool isAllActions = std::all_of(keys.begin(), keys.end(), [&known](const QString& key) { return known.contains(key); });
        if (!isOneAction && !isAllActions) {
            section.keys.push_back(hint);
        }
    }
    return section;
}

std::vector<KeySection> menuSections(const QMenuBar& bar, const QString& pageName)
{
    std::vector<KeySection> sections;
    for (const QAction* entry : bar.actions()) {
        KeySection section{actionWords(*entry), {}};
        if (entry->menu() == nullptr || section.heading == pageName) {
            continue;
        }
        for (const QAction* action : entry->menu()->actions()) {
            if (!action->isSeparator()) {
                section.keys.push_back(hintOf(*action));
            }
        }
        sections.push_back(std::move(section));
    }
    return sections;
}

}  // namespace chalk::ui::shell
