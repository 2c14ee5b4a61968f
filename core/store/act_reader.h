#pragma once

#include "core/base/date.h"
#include "core/lifts/pattern.h"
#include "core/store/act.h"
#include "core/store/database.h"

#include <string>
#include <vector>

namespace chalk::store {

/// One act as it is told.
struct ActRecord {
    base::ActId id;
    std::string atUtc;                    ///< ISO 8601
    ActKind kind = ActKind::Record;
    base::ClientId client;                ///< none where it was about several, or none
    std::string clientName;
    std::string coachName;                ///< who did it; empty where nobody said
    std::vector<lifts::Pattern> patterns; ///< of the lifts whose logs it wrote to or that it decided about, in the order shown
    int sessions = 0;                     ///< how many sessions it changed
    std::optional<sessions::SessionState> sessionState;  ///< what those are after it
    base::ActId undoes;                   ///< the act that it took back
    bool isUndone = false;                ///< another act took it back
};

/// Reads what people did.
class ActReader {
public:
    explicit ActReader(Database& database) : m_database(database) {}

    /// The last acts, the latest first.
    [[nodiscard]] Result<std::vector<ActRecord>> latest(int count);
    /// The acts that were about a client, alone or with others, the latest first.
    [[nodiscard]] Result<std::vector<ActRecord>> of(base::ClientId client, int count);
    /// What to give to RecordWriter::undo in order to take back the last thing done; nothing where there is none.
    [[nodiscard]] Result<std::optional<ActRecord>> undoable();
    /// What to give to RecordWriter::undo in order to bring back the last thing taken back; nothing where something new was done
    /// since.
    [[nodiscard]] Result<std::optional<ActRecord>> redoable();

private:
    [[nodiscard]] std::vector<ActRecord> collect(const QString& rest, int count, base::ClientId client = {});
    void readTouched(ActRecord& act);

    Database& m_database;
};

}  // namespace chalk::store
