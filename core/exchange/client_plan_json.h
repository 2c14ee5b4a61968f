#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/tested_maximum.h"
#include "core/exchange/json_reading.h"
#include "core/exchange/studio_document.h"

#include <QJsonObject>

namespace chalk::exchange {

/// What a plan says by itself: `plan` (see block_plan_json.h) and `singles`, for each lift `load` (effective; 0: not known) and `tested`.
struct PlanContent {
    direction::BlockPlan plan;
    std::vector<direction::PlanSingle> singles;
};

[[nodiscard]] JsonResult<PlanContent> readPlanContent(const QJsonObject& object, const std::string& path);
[[nodiscard]] QJsonObject planContentToJson(const direction::ClientPlan& plan);

/// Reads `plans` and `tested_maxima` of a client, where they are there: after the client's lifts. A plan has `begun`, `ended` where it was ended by hand,
/// `note` and its content, whose lifts are numbers of the client's `lifts`, counted from 1. A test has `lift` (a pattern), `day`, `load`, `reps`, `end` and
/// `note`. What is wrong becomes the fault of the reader.
void readDirection(ObjectReader& reader, DocumentClient& client, base::Date today);
/// One plan of a document.
[[nodiscard]] QJsonObject toJson(const direction::ClientPlan& plan);
[[nodiscard]] QJsonObject toJson(const DocumentTest& test);

}  // namespace chalk::exchange
