#pragma once

#include "core/exchange/table_file.h"
#include "core/store/people_import.h"
#include "core/tables/people_match.h"
#include "core/tables/table_layout.h"

#include <QString>

namespace chalk::ui::people {

// An import of people in words.

/// `Birth date`, `Reps left in reserve`.
[[nodiscard]] QString fieldName(tables::Field field);
/// Why a layout cannot be read.
[[nodiscard]] QString problemText(const tables::LayoutProblem& problem);
/// `Comma, UTF-8, day.month.year, decimal point, kg`: how a file was read; what is a guess says so.
[[nodiscard]] QString readingText(const exchange::TableFile& file, const tables::TableLayout& layout);
/// `Not taken: Colour, Locker.`: every column of which nothing comes in; empty where all of them do.
[[nodiscard]] QString leftOutText(const exchange::TableFile& file, const tables::TableLayout& layout);
[[nodiscard]] QString encodingName(exchange::TextEncoding encoding);
[[nodiscard]] QString separatorName(char separator);
[[nodiscard]] QString dateOrderName(tables::DateOrder order);
/// `the same name`.
[[nodiscard]] QString groundText(tables::MatchGround ground);
/// `line 3, Load (column 7): must be …`, with the file's name before it where there are several.
[[nodiscard]] QString faultText(const tables::CellFault& fault, const QStringList& files);
/// `2 new clients, 1 known, 14 sessions with 52 lifts done` and what is left out.
[[nodiscard]] QString importedText(const store::PeopleImported& imported);
/// `2 new clients, 14 sessions`: what it is called afterwards.
[[nodiscard]] QString importedBriefly(const store::PeopleImported& imported);
/// `17 May 1984`.
[[nodiscard]] QString birthDayText(base::Date born);
/// What is taken for granted where the files do not say it: where lifts begin, when sessions were, that the health intake is still to come.
[[nodiscard]] QString assumptionsText();

}  // namespace chalk::ui::people
