#pragma once

#include "core/exchange/table_file.h"

class QSettings;

namespace chalk::ui::people {

// How a list was read last time, remembered on this machine by its headings. Nothing of its people is kept.

/// Puts what is remembered for the file's headings over the guess; false where nothing is.
bool recallMapping(QSettings& settings, const exchange::TableFile& file, tables::TableLayout& layout);
void rememberMapping(QSettings& settings, const exchange::TableFile& file, const tables::TableLayout& layout);

}  // namespace chalk::ui::people
