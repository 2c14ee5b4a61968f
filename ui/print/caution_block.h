#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/sheet.h"

#include <QRectF>

#include <span>

namespace chalk::ui::print {

/// Cautions where room is short, each with its label white on black and its text in as many lines as it takes; `No cautions` where there is
/// none. Begins at the top of `area` and answers where it ends. Sizes go down to 8 pt; only what does not go into the whole height of `area`
/// then is cut, with an ellipsis.
double addCautionBlock(Sheet& sheet, std::span<const sessions::CardCaution> cautions, const QRectF& area);

}  // namespace chalk::ui::print
