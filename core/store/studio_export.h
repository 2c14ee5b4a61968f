#pragma once

#include "core/exchange/studio_document.h"
#include "core/store/database.h"
#include "core/store/studio_import.h"

#include <memory>
#include <string>
#include <vector>

namespace chalk::store {

/// Reads a studio client by client, so that not all of a big one need be in memory. Everything is of one state of the data, however long that
/// takes. Ids are those of the document: coaches and clients are counted from 1.
class StudioExport {
public:
    /// The document's day is `today`, or a later one that something is known of.
    StudioExport(Database& database, base::Date today);
    ~StudioExport();
    StudioExport(const StudioExport&) = delete;
    StudioExport& operator=(const StudioExport&) = delete;

    /// Leaves out all clients but one, and who was erased. Refused where there is no such client.
    [[nodiscard]] Result<void> onlyClient(base::ClientId client);
    /// The studio without its clients.
    [[nodiscard]] Result<exchange::StudioDocument> header() const;
    [[nodiscard]] std::size_t clientCount() const { return m_clients.size(); }
    /// `index` counts from 0.
    [[nodiscard]] Result<exchange::DocumentClient> client(std::size_t index);
    [[nodiscard]] const std::string& clientName(std::size_t index) const { return m_clients[index].name; }

private:
    class Reading;

    Database& m_database;
    Snapshot m_snapshot;
    exchange::StudioDocument m_header;
    std::vector<clients::Client> m_clients;
    std::unique_ptr<Reading> m_reading;
};

/// The whole studio as plain values, as `importStudio` takes them: people and sessions in the order in which they came in, every entry
/// of the log with its former versions in the order in which it was entered. `today` becomes the document's day. Stops where
/// `progress` answers false.
[[nodiscard]] Result<exchange::StudioDocument> exportStudio(Database& database, base::Date today, const Progress& progress = {});

}  // namespace chalk::store
