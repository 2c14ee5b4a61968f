#pragma once

#include "core/progression/evidence.h"
#include "core/progression/evidence_records.h"
#include "core/progression/exposure_facts.h"

#include <optional>

namespace chalk::progression {

/// The lift as it stands on the day, and what its records say.
struct EvidenceSubject {
    const LiftMachine& machine;
    const RecordFacts& facts;
    const Policy& policy = machine.setup().policy;
    const LiftState& state = machine.state();
    std::optional<ExposureFacts> counted = {};  ///< of the last exposure since the stage began
};

/// Write progress, checks, target and shortfall of one stage into `evidence`.
void describePattern(Evidence& evidence, const EvidenceSubject& lift);
void describeControl(Evidence& evidence, const EvidenceSubject& lift);
void describeBaseLoad(Evidence& evidence, const EvidenceSubject& lift);
void describeLoadBuild(Evidence& evidence, const EvidenceSubject& lift);
void describeRepBuild(Evidence& evidence, const EvidenceSubject& lift);
void describeSetBuild(Evidence& evidence, const EvidenceSubject& lift);
void describeRestCut(Evidence& evidence, const EvidenceSubject& lift);

[[nodiscard]] Check plainCheck(CheckKind kind, bool isMet, std::optional<base::Date> date = {}, int value = 0,
                               int needed = 0);
/// Pain and steadiness of the records so far; nothing where the stage has no record yet (`date`).
void addBodyChecks(Evidence& evidence, const RecordFacts& facts, std::optional<base::Date> date);

}  // namespace chalk::progression
