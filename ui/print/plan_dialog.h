#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/lifts/exercise.h"
#include "core/store/database.h"
#include "ui/print/card_dialog.h"

#include <memory>

namespace chalk::ui::print {

class PaperDialog;

/// A plan as it will be printed: the one that a client follows on `today`, else the one that was begun last. Null where none was begun yet.
[[nodiscard]] store::Result<std::unique_ptr<PaperDialog>> planDialog(const CardDialogServices& services, store::Database& database,
                                                                     const lifts::Catalogue& catalogue, base::ClientId client,
                                                                     base::Date today, QWidget* parent = nullptr);

}  // namespace chalk::ui::print
