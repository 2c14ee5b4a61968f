#pragma once

#include "core/lifts/catalogue.h"
#include "core/planning/plan_template.h"
#include "core/store/conflict.h"
#include "core/store/database.h"

#include <vector>

namespace chalk::store {

/// The studio's own templates of a week. `seen` is what stood under a name when whoever writes began, an empty object where nothing did: where it is
/// something else by now, that is a Conflict.
class PlanTemplates {
public:
    /// `catalogue` names the exercises; it outlives this.
    PlanTemplates(Database& database, const lifts::Catalogue& catalogue) : m_database(database), m_catalogue(catalogue) {}

    /// By name. One that can no longer be read is a fault of the file that names it.
    [[nodiscard]] Result<std::vector<planning::PlanTemplate>> all();
    /// Keeps one under its name; one of that name is put in its place. Refused where it is not sound.
    [[nodiscard]] Result<void> save(const planning::PlanTemplate& plan, const Seen& seen = {});
    /// Gives one another name; what it holds stays as whoever wrote last left it. Refused where another one has that name, or none has the old one.
    [[nodiscard]] Result<void> rename(const std::string& from, const std::string& to);
    /// Nothing to do where there is none.
    [[nodiscard]] Result<void> remove(const std::string& name, const Seen& seen = {});

private:
    void compare(const std::string& name, const QJsonObject& yours, const Seen& seen);

    Database& m_database;
    const lifts::Catalogue& m_catalogue;
};

}  // namespace chalk::store
