#pragma once

#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <QByteArray>
#include <QDate>
#include <QString>

#include <optional>
#include <vector>

class QPrinter;

namespace chalk::ui::print {

/// A page for each sheet as one PDF: fonts embedded, text that can be extracted, and the same bytes for the same sheets. `created` is written
/// into the file as its day. Needs QGuiApplication and loadFonts().
[[nodiscard]] QByteArray sheetsPdf(const std::vector<Sheet>& sheets, PaperSize paper, const QString& title, const QDate& created);

/// Writes a file whole or not at all. Nothing where it worked, else why not, in words of the system.
[[nodiscard]] std::optional<QString> savePdf(const QString& file, const QByteArray& pdf);

/// Sends the sheets to a printer that the user chose. Sets its paper and margins. False where the printer refuses.
[[nodiscard]] bool printSheets(QPrinter& printer, const std::vector<Sheet>& sheets, PaperSize paper);

}  // namespace chalk::ui::print
