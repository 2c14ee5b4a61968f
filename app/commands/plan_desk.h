#pragma once

#include "app/commands/command.h"
#include "core/direction/client_plan.h"
#include "core/direction/lift_for_plan.h"
#include "core/exchange/catalogue_json.h"
#include "core/store/client_reader.h"
#include "core/store/plan_reader.h"

#include <optional>
#include <vector>

namespace chalk::app {

/// One client's plans and what they are made from: shown, begun, changed and ended as the options say.
class PlanDesk {
public:
    PlanDesk(const CommandContext& context, store::Database& database, base::ClientId client)
        : m_context(context), m_database(database), m_plans(database), m_catalogue(exchange::builtInCatalogue()), m_client(client)
    {
    }

    /// Answers the exit status; what went wrong is said.
    int run();

private:
    /// Reads the client's file, lifts and plans. False, and a message, where that fails.
    bool read();
    int showDraft();
    int begin(const direction::ClientPlan& plan);
    int showDirections();
    int showTests();
    int changeMissed();
    int end();
    int show(const direction::ClientPlan& plan);
    /// The plan as it is on file after an act, in the form that is asked for.
    int showWritten(base::PlanId plan, const QString& said);
    int fail(const store::StoreError& error)
    {
        m_status = m_context.report(error);
        return m_status;
    }
    [[nodiscard]] std::optional<direction::ClientPlan> last() const;
    [[nodiscard]] bool is(const char* option) const { return m_context.has(QLatin1String(option)); }

    const CommandContext& m_context;
    store::Database& m_database;
    store::PlanReader m_plans;
    lifts::Catalogue m_catalogue;
    base::ClientId m_client;
    store::ClientFile m_file;
    std::vector<direction::LiftForPlan> m_lifts;
    std::vector<direction::ClientPlan> m_history;
    std::optional<direction::ClientPlan> m_running;
    int m_status = kDone;
};

}  // namespace chalk::app
