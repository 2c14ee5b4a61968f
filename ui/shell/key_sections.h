#pragma once

#include "ui/shell/key_sheet.h"

class QMenuBar;

namespace chalk::ui::shell {

/// The page's actions, then the keys that are not actions, such as arrows in a list.
[[nodiscard]] KeySection pageSection(const QString& name, const Page& page);
/// A section per menu, each with every action that it lists. The page's own menu is left out.
[[nodiscard]] std::vector<KeySection> menuSections(const QMenuBar& bar, const QString& pageName);

}  // namespace chalk::ui::shell
