#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/client_reader.h"
#include "core/store/record_writer.h"
#include "ui/board/client_case.h"
#include "ui/decisions/swap_offers.h"
#include "ui/floor/maximum_test_desk.h"

#include <QString>

#include <functional>
#include <vector>

namespace chalk::ui::board {

/// Between the client page and the studio: reads what the page shows, writes what the coach decides there.
class ClientPresenter {
public:
    /// The database and the catalogue outlive the presenter. `atUtc` is the moment of an act, ISO 8601.
    ClientPresenter(store::Database& database, const lifts::Catalogue& catalogue, std::function<QString()> atUtc);

    [[nodiscard]] store::Result<ClientCase> read(base::ClientId client, base::Date today);
    [[nodiscard]] store::Database& database() { return m_database; }

    /// What could take the place of the lift's exercise.
    [[nodiscard]] store::Result<std::vector<decisions::SwapOffer>> swapOffers(const LiftCase& lift, const ClientCase& client);

    /// Where the guided test of a maximum reads and writes.
    [[nodiscard]] floor::MaximumTestDesk maximumTests() { return {m_database, m_atUtc}; }

    /// Writes a coach's event for a lift on `today`. Refused where the lift cannot take it; the message names the field.
    /// Where the log of the lift is another one by now, that is a Conflict; `isSeen` says that the coach has seen it and chooses all the same.
    [[nodiscard]] store::Result<store::ActOutcome> write(const LiftCase& lift, base::ClientId client, base::Date today,
                                                         progression::EventBody body, bool isSeen = false);

private:
    [[nodiscard]] store::Result<LiftCase> readLift(const store::ClientLift& lift, base::Date today);

    store::Database& m_database;
    const lifts::Catalogue& m_catalogue;
    std::function<QString()> m_atUtc;
    store::RecordWriter m_writer;
};

}  // namespace chalk::ui::board
