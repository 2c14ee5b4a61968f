#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/sheet.h"

#include "ui/print/sheet.h"

#include <QString>

#include <string>
#include <vector>

namespace chalk::test {

/// Measures one page: every text is on the printable area and in its cell, none is below the least size, and none lies over another, over a
/// line, a box or a shape. `what` stands in the message.
void expectSound(const ui::print::Sheet& sheet, const std::string& what);

/// Lays a card out on every paper and measures it.
void expectSound(const sessions::CardContent& card, const std::string& what);

/// The same for sheets that are laid out already, each of `size`.
void expectSheetsSound(const std::vector<ui::print::Sheet>& sheets, const QSizeF& size, const std::string& what);
/// All the text of all sheets, a line for each.
[[nodiscard]] QString textOf(const std::vector<ui::print::Sheet>& sheets);

}  // namespace chalk::test
