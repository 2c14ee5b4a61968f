#pragma once

#include "core/store/erasure.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::records {

/// What goes, and what is kept, a sentence each.
[[nodiscard]] QStringList erasurePreviewLines(const store::ErasurePreview& preview);
/// That earlier backups hold the person, and until when.
[[nodiscard]] QString erasureBackupsText();
/// What was done, and whether anything is still in the file.
[[nodiscard]] QString erasedText(const store::Erased& erased);

}  // namespace chalk::ui::records
