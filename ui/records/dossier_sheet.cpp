#include "ui/records/dossier_sheet.h"

#include "ui/common/day_entry.h"
#include "ui/print/page_flow.h"

#include <QCoreApplication>

namespace chalk::ui::records {

namespace {

QString dossierPaperText(const char* text)
{
    return QCoreApplication::translate("Dossier", text);
}

}  // namespace

std::vector<print::Sheet> dossierSheets(const DossierContent& content, print::PaperSize size)
{
    const QString title = dossierPaperText(QT_TRANSLATE_NOOP("Dossier", "What is kept of you"));
    print::PageFlow flow(size, QStringLiteral("%1 · %2 · %3").arg(content.studioName, content.clientName, title));
    flow.title(title);
    flow.entry(dossierPaperText(QT_TRANSLATE_NOOP("Dossier", "Client")), content.clientName);
    flow.entry(dossierPaperText(QT_TRANSLATE_NOOP("Dossier", "Day")), common::entryOfDay(content.today));
    flow.paragraph(dossierPaperText(QT_TRANSLATE_NOOP("Dossier", "This is all that %1 keeps of you in its training records. The same is in the files beside it, in an open format "
                                                                 "that other programs can read. You can have it corrected, and you can have it erased."))
                       .arg(content.studioName));
    for (const DossierPart& part : content.parts) {
        flow.heading(part.heading);
        if (part.entries.empty()) {
            flow.paragraph(dossierPaperText(QT_TRANSLATE_NOOP("Dossier", "Nothing.")));
        }
        for (const auto& [name, text] : part.entries) {
            flow.entry(name, text);
        }
    }
    return flow.sheets();
}

}  // namespace chalk::ui::records
