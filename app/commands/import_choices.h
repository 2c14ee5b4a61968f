#pragma once

#include "app/commands/command.h"
#include "core/exchange/table_file.h"
#include "core/store/people_reader.h"

#include <QString>

#include <optional>
#include <vector>

namespace chalk::app {

/// `NAME=VALUE,NAME=VALUE` of an option, in its order; nothing, after one line to `context.err`, where a part has no `=`.
[[nodiscard]] std::optional<std::vector<std::pair<QString, QString>>> pairsOf(const CommandContext& context, const QString& option);

/// What the options say of how files are written; nothing, after one line, where an option cannot be.
[[nodiscard]] std::optional<exchange::TableWishes> tableWishes(const CommandContext& context, base::MassUnit usualUnit);

/// Lays --map, --dates, --decimals and --unit over a guessed layout. Answers false, after one line, where one cannot be.
[[nodiscard]] bool changeLayout(const CommandContext& context, const exchange::TableFile& file, tables::TableLayout& layout);

/// Lays --exercise, --person and --coach over a proposal. Answers false, after one line, where one cannot be.
[[nodiscard]] bool changeProposal(const CommandContext& context, store::Database& database, const lifts::Catalogue& catalogue, store::PeopleProposal& proposal);


}  // namespace chalk::app
