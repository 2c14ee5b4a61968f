#pragma once

#include "app/commands/record_input.h"
#include "core/lifts/catalogue.h"
#include "core/store/client_reader.h"
#include "core/store/record_writer.h"

#include <QStringList>

namespace chalk::app {

/// Why nothing of a file can be recorded: what the store says, or what is wrong in the file.
struct RecordRefusal {
    QString message;  ///< one line that names the place
    std::optional<store::StoreError> store = std::nullopt;
};

/// What a file of results stands for: nothing of it is written yet.
struct CheckedRecords {
    base::SessionId session;  ///< none where the client has not just one session on that day and the file names none
    std::vector<store::NewRecord> records;
    std::optional<sessions::SessionReport> report;  ///< what the session's becomes; nothing where the file says nothing of it
    QStringList doubts;       ///< what somebody should look at, `line 4: …`
};

/// Checks a file's results against the studio, each in the light of those before it. `today` is the last day that may be recorded.
[[nodiscard]] tl::expected<CheckedRecords, RecordRefusal> checkRecords(store::Database& database, const store::ClientFile& client,
                                                                       const lifts::Catalogue& catalogue, const RecordInput& input,
                                                                       base::Date today);

}  // namespace chalk::app
