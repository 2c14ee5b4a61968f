#pragma once

#include "ui/shell/find_provider.h"

namespace chalk::ui::shell {

/// The text in parts, with what `query` matches in it in bold: `Joaquin `, **Fer**, `ro`. With `FindWeight::Detail` all of it is a
/// detail.
[[nodiscard]] std::vector<FindPart> markedParts(const QString& text, const QString& query, FindWeight weight = FindWeight::Plain);

}  // namespace chalk::ui::shell
