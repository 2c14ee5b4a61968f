#include "ui/shell/action_finder.h"

#include "ui/common/fuzzy_match.h"
#include "ui/shell/find_parts.h"

#include <QAction>
#include <QHash>
#include <QPointer>
#include <QSet>

namespace chalk::ui::shell {

QString actionWords(const QAction& action)
{
    QString words = action.text();
    words.remove(QLatin1Char('&'));
    while (words.endsWith(QChar(0x2026)) || words.endsWith(QLatin1Char('.'))) {
        words.chop(1);
    }
    return words;
}

QStringList actionKeys(const QAction& action)
{
    static const QHash<QString, QString> caps{{QStringLiteral("Return"), QStringLiteral("Enter")},
                                              {QStringLiteral("Up"), QStringLiteral("↑")},
                                              {QStringLiteral("Down"), QStringLiteral("↓")},
                                              {QStringLiteral("Left"), QStringLiteral("←")},
                                              {QStringLiteral("Right"), QStringLiteral("→")}};
    QStringList keys;
    for (const QKeySequence& shortcut : action.shortcuts()) {
        const QString text = shortcut.toString(QKeySequence::NativeText);
        const qsizetype at = text.lastIndexOf(QLatin1Char('+'), -2) + 1;
        keys.append(text.left(at) + caps.value(text.mid(at), text.mid(at)));
    }
    return keys;
}

ActionFinder::ActionFinder(std::function<QList<QAction*>()> actions) : m_source(std::move(actions)) {}

void ActionFinder::prepare()
{
    m_actions.clear();
    QSet<QString> words;
    for (QAction* action : m_source()) {
        const bool canBeDone = action->isEnabled() && action->isVisible() && !action->isSeparator() && !action->text().isEmpty();
        if (canBeDone && !words.contains(actionWords(*action))) {
            words.insert(actionWords(*action));  // what the page calls the same comes first
            m_actions.append(action);
        }
    }
}

std::vector<FindItem> ActionFinder::find(const QString& query) const
{
    std::vector<FindItem> items;
    for (QAction* action : m_actions) {
        const QString words = actionWords(*action);
        const auto score = common::matchScore(query, words, common::Typos::Allowed);
        if (!score) {
            continue;
        }
        const QString icon = action->property(kActionIcon).toString();
        const bool goes = action->property(kActionGoes).toBool();
        items.push_back({goes ? FindGroup::GoTo : FindGroup::Do,
                         icon.isEmpty() ? QStringLiteral("right") : icon,
                         markedParts(words, query),
                         actionKeys(*action).value(0),
                         *score,
                         [wanted = QPointer<QAction>(action)] {
                             if (wanted != nullptr) {
                                 wanted->trigger();
                             }
                         }});
    }
    return items;
}

}  // namespace chalk::ui::shell
