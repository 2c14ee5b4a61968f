#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/paper.h"

#include <QByteArray>
#include <QDate>
#include <QRectF>
#include <QString>

#include <optional>
#include <span>

class QPagedPaintDevice;
class QPainter;
class QPrinter;

namespace chalk::ui::print {

/// How many sheets a card takes.
[[nodiscard]] int sheetCount(const sessions::CardContent& card, PaperSize paper);

/// Draws one sheet of a card, counted from 0, as large as it fits into `rect` without a change of its proportions; `rect` is
/// in the painter's own units. White paper is the caller's.
void paintCard(QPainter& painter, const sessions::CardContent& card, PaperSize paper, const QRectF& rect, int sheet = 0);

/// All sheets of all cards as one PDF: fonts embedded, text that can be extracted, and the same bytes for the same cards.
/// `created` is written into the file as its day. Needs QGuiApplication and loadFonts().
[[nodiscard]] QByteArray cardsPdf(std::span<const sessions::CardContent> cards, PaperSize paper, const QDate& created);

/// Sends all sheets to a printer that the user chose. Sets its paper and margins. False where the printer refuses.
[[nodiscard]] bool printCards(QPrinter& printer, std::span<const sessions::CardContent> cards, PaperSize paper);

}  // namespace chalk::ui::print
