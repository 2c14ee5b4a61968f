#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/trends_reader.h"

#include <QString>

#include <utility>
#include <variant>
#include <vector>

namespace chalk::ui::trends {

/// Whose trends are wanted, and over what.
struct TrendsAsk {
    base::ClientId client;  ///< none: everybody
    base::Date day;
    int weeks = checkin::kTrendWeeks[1];

    bool operator==(const TrendsAsk&) const = default;
};

/// What was found.
struct TrendsView {
    TrendsAsk ask;
    std::vector<std::pair<base::ClientId, QString>> clients;  ///< who can be chosen, by name
    std::variant<checkin::StudioTrends, store::ClientTrends> trends;

    /// Nothing where it is of everybody.
    [[nodiscard]] const store::ClientTrends* client() const { return std::get_if<store::ClientTrends>(&trends); }
    [[nodiscard]] const checkin::StudioTrends* studio() const { return std::get_if<checkin::StudioTrends>(&trends); }
    [[nodiscard]] const std::vector<checkin::TrendWeek>& weeks() const { return client() ? client()->trends.weeks : studio()->weeks; }
    [[nodiscard]] base::MassUnit unit() const { return client() ? client()->unit : base::MassUnit::Kilogram; }
    [[nodiscard]] bool hasVolume() const { return !(client() ? client()->trends.volumeGap : studio()->volumeGap); }
};

/// Where trends come from.
class TrendsSource {
public:
    virtual ~TrendsSource() = default;

    /// Called from any thread, but never from two at a time.
    [[nodiscard]] virtual store::Result<TrendsView> read(const TrendsAsk& ask) = 0;
};

/// Those of a studio. Each reading opens a connection of its own, so that it can run beside the window's.
class StudioTrendsSource final : public TrendsSource {
public:
    /// `access` is what store::Database::open takes.
    StudioTrendsSource(store::Access access, lifts::Catalogue catalogue);

    [[nodiscard]] store::Result<TrendsView> read(const TrendsAsk& ask) override;

private:
    store::Access m_access;
    lifts::Catalogue m_catalogue;
};

}  // namespace chalk::ui::trends
