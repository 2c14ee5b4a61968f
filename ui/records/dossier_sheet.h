#pragma once

#include "core/base/date.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <QString>

#include <utility>
#include <vector>

namespace chalk::ui::records {

/// One part of a dossier: a heading, and entries of a name and a text.
struct DossierPart {
    QString heading;
    std::vector<std::pair<QString, QString>> entries;
};

/// All that is kept of a client, in plain words.
struct DossierContent {
    QString studioName;
    QString clientName;
    base::Date today;
    std::vector<DossierPart> parts;  ///< one without entries says that there is nothing
};

/// All pages of a dossier, for a person who asks what is kept of them.
[[nodiscard]] std::vector<print::Sheet> dossierSheets(const DossierContent& content, print::PaperSize size);

}  // namespace chalk::ui::records
