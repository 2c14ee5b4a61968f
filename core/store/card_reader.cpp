#include "core/store/card_reader.h"

#include "core/sessions/session_lifts.h"
#include "core/store/client_reader.h"
#include "core/store/session_reader.h"

#include <algorithm>
#include <map>

namespace chalk::store {

namespace {

using sessions::SessionState;

/// Makes cards one after the other and keeps what the days before hold.
class CardMaker {
public:
    CardMaker(Database& database, const CardsWanted& wanted, const lifts::Catalogue& catalogue)
        : m_database(database), m_wanted(wanted), m_catalogue(catalogue)
    {
    }

    [[nodiscard]] Result<void> add(const NamedSession& session)
    {
        const std::string& name = session.clientName;
        if (!isWanted(session.session) || !QString::fromStdString(name).contains(m_wanted.name, Qt::CaseInsensitive)) {
            return {};
        }
        const auto file = ClientReader(m_database).read(session.session.client, session.session.date);
        if (!file) {
            return tl::make_unexpected(file.error());
        }
        if (clients::isBlocked(file->clearance, session.session.date)) {
            if (std::find(m_read.withheld.begin(), m_read.withheld.end(), name) == m_read.withheld.end()) {
                m_read.withheld.push_back(name);
            }
            return {};
        }
        const auto planned = SessionReader(m_database).plannedLifts(session.session.id);
        if (!planned) {
            return tl::make_unexpected(planned.error());
        }
        m_read.cards.push_back(cardOf(session, *file, *planned));
        m_read.sessions.push_back(session.session);
        return {};
    }

    [[nodiscard]] CardsRead take() { return std::move(m_read); }

private:
    [[nodiscard]] bool isWanted(const sessions::Session& session) const
    {
        if (!m_wanted.client.isNone() && session.client != m_wanted.client) {
            return false;
        }
        switch (session.state) {
        case SessionState::Planned:
        case SessionState::Printed:
            return true;
        case SessionState::Recorded:
        case SessionState::Missed:
            return !m_wanted.isOpenOnly;
        case SessionState::CancelledInTime:
        case SessionState::CancelledLate:
        case SessionState::Withdrawn:
            return false;
        }
        return false;
    }

    [[nodiscard]] sessions::CardContent cardOf(const NamedSession& session, const ClientFile& file, std::vector<base::LiftId> lifts)
    {
        if (lifts.empty()) {
            std::vector<sessions::LiftCandidate> candidates;
            for (const ClientLift& lift : file.lifts) {
                const auto before = m_lastOnACard.find(lift.lift.id);
                candidates.push_back({lift.lift.id, lift.lift.pattern, before == m_lastOnACard.end() ? lift.lift.lastEvent : std::optional(before->second)});
            }
            lifts = sessions::chooseLifts(std::move(candidates));
        }
        std::vector<sessions::LiftDue> due;
        for (const base::LiftId id : lifts) {
            m_lastOnACard[id] = session.session.date;
            for (const ClientLift& lift : file.lifts) {
                const auto* exercise = m_catalogue.find(lift.lift.machine.kit().exerciseKey);
                if (lift.lift.id == id && exercise != nullptr) {
                    due.push_back({exercise, &lift.lift.machine});
                }
            }
        }
        return sessions::cardContentOf({file.client, session.session, session.coachName, 0, file.cautions, due, m_catalogue});
    }

    Database& m_database;
    const CardsWanted& m_wanted;
    const lifts::Catalogue& m_catalogue;
    std::map<base::LiftId, base::Date> m_lastOnACard;
    CardsRead m_read;
};

}  // namespace

Result<CardsRead> CardReader::read(const CardsWanted& wanted)
{
    CardMaker maker(m_database, wanted, m_catalogue);
    for (int day = 0; day < wanted.days; ++day) {
        const auto sessions = SessionReader(m_database).on(wanted.first + day);
        if (!sessions) {
            return tl::make_unexpected(sessions.error());
        }
        for (const NamedSession& session : *sessions) {
            if (const auto added = maker.add(session); !added) {
                return tl::make_unexpected(added.error());
            }
        }
    }
    return maker.take();
}

}  // namespace chalk::store
