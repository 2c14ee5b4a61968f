#pragma once

#include "core/exchange/json_reading.h"
#include "core/planning/plan_template.h"

#include <vector>

namespace chalk::exchange {

/// Reads a template, strictly, and checks it against the catalogue. `path` names it in faults.
[[nodiscard]] JsonResult<planning::PlanTemplate> readPlanTemplate(const QJsonValue& value, const std::string& path,
                                                                  const lifts::Catalogue& catalogue);
/// The same, written; read back it is equal.
[[nodiscard]] QJsonObject toJson(const planning::PlanTemplate& plan);

/// Reads a file of templates. A fault names the place: `templates[1].sessions[0].patterns`.
[[nodiscard]] JsonResult<std::vector<planning::PlanTemplate>> readPlanTemplates(const QByteArray& text, const lifts::Catalogue& catalogue);

/// Those that come with the program: one to four sessions a week. They are sound: a test reads them.
[[nodiscard]] std::vector<planning::PlanTemplate> builtInPlanTemplates(const lifts::Catalogue& catalogue);

}  // namespace chalk::exchange
