#pragma once

#include "core/exchange/studio_document.h"
#include "core/lifts/catalogue.h"
#include "core/store/client_reader.h"
#include "core/store/record_writer.h"
#include "ui/board/client_case.h"

#include <QString>

#include <functional>
#include <vector>

namespace chalk::ui::board {

/// Another exercise for a lift, and the studio's equipment that it can be done with.
struct SwapOffer {
    const lifts::Exercise* exercise = nullptr;  ///< of the catalogue
    std::string equipmentName;                  ///< empty where it needs none
    lifts::Equipment equipment;
};

/// Between the client page and the studio: reads what the page shows, writes what the coach decides there.
class ClientPresenter {
public:
    /// The database and the catalogue outlive the presenter. `atUtc` is the moment of an act, ISO 8601.
    ClientPresenter(store::Database& database, const lifts::Catalogue& catalogue, std::function<QString()> atUtc);

    [[nodiscard]] store::Result<ClientCase> read(base::ClientId client, base::Date today);

    /// What could take the place of the lift's exercise: allowed by the client's cautions, possible with the studio's
    /// equipment in the lift's unit; the nearest in difficulty first.
    [[nodiscard]] store::Result<std::vector<SwapOffer>> swapOffers(const LiftCase& lift, const ClientCase& client);
    /// The event of such a swap.
    [[nodiscard]] static progression::Swap swapOf(const SwapOffer& offer, std::optional<base::Load> startLoad);

    /// Writes a coach's event for a lift on `today`. Refused where the lift cannot take it; the message names the field.
    [[nodiscard]] store::Result<store::ActOutcome> write(const LiftCase& lift, base::ClientId client, base::Date today,
                                                         progression::EventBody body);

private:
    [[nodiscard]] store::Result<LiftCase> readLift(const store::ClientLift& lift, base::Date today);

    store::Database& m_database;
    const lifts::Catalogue& m_catalogue;
    store::RecordWriter m_writer;
};

}  // namespace chalk::ui::board
