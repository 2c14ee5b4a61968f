#pragma once

#include "core/clients/client.h"
#include "core/progression/lift_state.h"
#include "core/store/statement.h"

#include <string>

namespace chalk::store {

/// A lift as it begins: no history yet.
struct NewLift {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string equipmentKey;      ///< of the studio's equipment; empty where it is done with nothing
    progression::LiftSetup setup;  ///< its kit names the exercise
    base::Date startedOn;
};

/// Adds the rows that a client's file is made of. Belongs into a transaction.
class ClientInserts {
public:
    explicit ClientInserts(Database& database);

    /// The client's own id is given anew.
    [[nodiscard]] base::ClientId client(const clients::Client& client);
    [[nodiscard]] base::LiftId lift(base::ClientId client, const NewLift& lift);
    base::CautionId caution(base::ClientId client, const clients::Caution& caution);
    /// Writes over one of the client's cautions, known by its id.
    void changeCaution(base::ClientId client, const clients::Caution& caution);
    /// Puts the clearance in the place of the former one.
    void clearance(base::ClientId client, const clients::Clearance& clearance);

private:
    Database& m_database;
    Statement m_client;
    Statement m_goal;
    Statement m_lift;
    Statement m_caution;
    Statement m_cautionTexts;
    Statement m_clearance;
};

}  // namespace chalk::store
