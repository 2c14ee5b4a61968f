#pragma once

#include "ui/shell/find_provider.h"
#include "ui/shell/place.h"

namespace chalk::ui::shell {

/// A lift of a client by the name of its exercise.
struct FindableLift {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    QString name;  ///< `Bench press`
};

/// What a client can be found by.
struct FindableClient {
    base::ClientId id;
    QString name;
    QString about;  ///< `45 · Strong, back-safe`
    std::vector<FindableLift> lifts;
};

/// Finds clients by name or goal, and a client's lift by both: `ferro bench`.
class ClientFinder final : public FindProvider {
public:
    /// `page` is the key of the page that shows a client; `go` shows a place.
    ClientFinder(QString page, std::function<std::vector<FindableClient>()> clients, std::function<void(const Place&)> go);

    void prepare() override;
    [[nodiscard]] std::vector<FindItem> find(const QString& query) const override;
    [[nodiscard]] QStringList names() const override;

private:
    void addClient(const FindableClient& client, const QString& query, std::vector<FindItem>& items) const;
    void addLifts(const FindableClient& client, const QString& query, std::vector<FindItem>& items) const;

    QString m_page;
    std::function<std::vector<FindableClient>()> m_source;
    std::function<void(const Place&)> m_go;
    std::vector<FindableClient> m_clients;
};

}  // namespace chalk::ui::shell
