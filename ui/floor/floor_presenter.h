#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/history_reader.h"
#include "core/store/record_writer.h"
#include "ui/floor/floor_case.h"

#include <functional>

namespace chalk::ui::floor {

/// Reads a day's run and writes what is recorded. Owns nothing that it is handed.
class FloorPresenter {
public:
    FloorPresenter(store::Database& database, const lifts::Catalogue& catalogue, std::function<QString()> atUtc);

    /// The slots of a day, by time.
    [[nodiscard]] store::Result<std::vector<RunSlot>> run(base::Date day);
    /// The clients of a slot with their lifts, those already recorded among them.
    [[nodiscard]] store::Result<std::vector<FloorClient>> clients(const RunSlot& slot, base::Date day);

    /// Saves one lift of a session, or corrects what was saved for it.
    [[nodiscard]] store::Result<store::ActOutcome> save(const FloorClient& client, const FloorLift& lift, const progression::EventBody& body);
    [[nodiscard]] store::Result<store::ActOutcome> setSessionState(const sessions::Session& session, sessions::SessionState state);

private:
    [[nodiscard]] std::optional<FloorLift> floorLift(const progression::LiftMachine& present, base::LiftId id, const sessions::Session& session);

    store::Database& m_database;
    const lifts::Catalogue& m_catalogue;
    std::function<QString()> m_atUtc;
};

/// What is due after `body`, judged on a copy; with the rules that fired.
struct Preview {
    progression::Prescription next;
    progression::RuleList rules;
};
[[nodiscard]] std::optional<Preview> previewOf(const FloorLift& lift, const progression::EventBody& body, base::Date day);

}  // namespace chalk::ui::floor
