#pragma once

#include "ui/shell/find_provider.h"

#include <QList>

class QAction;

namespace chalk::ui::shell {

/// The name of the property that an action carries its icon in, and the one that is true for an action that only goes somewhere.
inline constexpr const char* kActionIcon = "iconName";
inline constexpr const char* kActionGoes = "goesSomewhere";

/// Finds what the window and its page can be told to do: every action that has a text and is enabled.
class ActionFinder final : public FindProvider {
public:
    /// `actions` gives them as they are when the box opens.
    explicit ActionFinder(std::function<QList<QAction*>()> actions);

    void prepare() override;
    [[nodiscard]] std::vector<FindItem> find(const QString& query) const override;

private:
    std::function<QList<QAction*>()> m_source;
    QList<QAction*> m_actions;
};

/// The words of an action without its mnemonic and its dots.
[[nodiscard]] QString actionWords(const QAction& action);
/// Its keys as they stand on the caps: `Ctrl+Enter`, `↓`.
[[nodiscard]] QStringList actionKeys(const QAction& action);

}  // namespace chalk::ui::shell
