#pragma once

#include "core/base/load.h"
#include "ui/shell/find_provider.h"
#include "ui/shell/place.h"

namespace chalk::ui::shell {

struct TypedResult;

/// A lift of a client by the name of its exercise.
struct FindableLift {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    QString name;        ///< `Bench press`
    QString stand = {};  ///< `6 Set build, cycle 2`
};

/// What a client can be found by, and what can be done for them today.
struct FindableClient {
    base::ClientId id;
    QString name;
    QString about;  ///< `45 · Strong, back-safe`
    std::vector<FindableLift> lifts;
    base::MassUnit unit = base::MassUnit::Kilogram;
    base::SessionId sessionToday = {};  ///< none where nothing is booked for today
    QString todayAt = {};               ///< `09:00`; empty with it
    bool isBlocked = false;             ///< clearance: nothing loaded may be recorded
};

/// The keys of the pages that a client's results lead to.
struct ClientPages {
    QString client;
    QString floor;
    QString onboarding;  ///< for who has no lift yet
};

/// Finds clients by name or goal, a client's lift by both (`ferro bench`), and reads a result behind it (`ferro bench 60x8x5`): that
/// leads to the floor with the line filled in, where Enter keeps it.
class ClientFinder final : public FindProvider {
public:
    /// `go` shows a place.
    ClientFinder(ClientPages pages, std::function<std::vector<FindableClient>()> clients, std::function<void(const Place&)> go);

    void prepare() override;
    [[nodiscard]] std::vector<FindItem> find(const QString& query) const override;
    [[nodiscard]] QStringList names() const override;

private:
    using Items = std::vector<FindItem>;

    void addToday(Items& items) const;
    void addClient(const FindableClient& client, const QString& query, Items& items) const;
    void addParts(const FindableClient& client, int score, Items& items) const;
    void addLifts(const FindableClient& client, const QString& query, Items& items) const;
    void addResults(const FindableClient& client, const TypedResult& result, Items& items) const;
    /// Why a result cannot be recorded today, and where that is settled.
    [[nodiscard]] FindItem obstacleTo(const FindableClient& client, const FindableLift& lift, int score) const;
    [[nodiscard]] std::function<void()> going(Place place) const;
    /// The client's board; the first steps for who has no lift yet.
    [[nodiscard]] Place homeOf(const FindableClient& client) const;
    [[nodiscard]] Place floorFor(const FindableClient& client) const;

    ClientPages m_pages;
    std::function<std::vector<FindableClient>()> m_source;
    std::function<void(const Place&)> m_go;
    std::vector<FindableClient> m_clients;
};

}  // namespace chalk::ui::shell
