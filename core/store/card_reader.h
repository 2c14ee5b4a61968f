#pragma once

#include "core/lifts/catalogue.h"
#include "core/sessions/card_content.h"
#include "core/store/database.h"

#include <string>
#include <vector>

namespace chalk::store {

/// Which cards are wanted.
struct CardsWanted {
    base::Date first;
    int days = 1;
    bool isOpenOnly = false;  ///< without what was recorded or missed already
    QString name;             ///< part of a client's name; everybody where it is empty
    base::ClientId client;    ///< only of this client; everybody where it is none
};

/// The cards of some days.
struct CardsRead {
    std::vector<sessions::CardContent> cards;  ///< by day, time, coach and client
    std::vector<sessions::Session> sessions;   ///< of the cards, in the same order
    std::vector<std::string> withheld;         ///< who gets none because clearance is missing, each once
};

/// Reads the cards of sessions that are not called off. A session that nobody planned gets the lifts that have waited longest, counted with the
/// client's sessions before it among the days that are wanted.
class CardReader {
public:
    CardReader(Database& database, const lifts::Catalogue& catalogue) : m_database(database), m_catalogue(catalogue) {}

    [[nodiscard]] Result<CardsRead> read(const CardsWanted& wanted);

private:
    Database& m_database;
    const lifts::Catalogue& m_catalogue;
};

}  // namespace chalk::store
