#include "core/exchange/week_plan_json.h"

#include "core/exchange/json_writing.h"
#include "core/exchange/studio_fields.h"

#include <QJsonArray>

#include <unordered_map>

namespace chalk::exchange {

namespace {

using week::WeekPlan;
using week::WeekProblem;

template <class Item>
std::unordered_map<std::string, std::size_t> placesById(const std::vector<Item>& items)
{
    std::unordered_map<std::string, std::size_t> places;
    for (std::size_t i = 0; i < items.size(); ++i) {
        places.emplace(items[i].id, i);
    }
    return places;
}

/// Reads the entries of a plan one by one.
class PlanEntries {
public:
    explicit PlanEntries(const WeekProblem& problem)
        : m_coaches(placesById(problem.coaches)), m_sessions(placesById(problem.sessions)), m_plan(problem.sessions.size()), m_isMet(m_plan.size())
    {
    }

    void take(ObjectReader& reader)
    {
        reader.allowOnly({"session", "coach", "start"});
        const std::string id = labelAt(reader, "session");
        const auto session = m_sessions.find(id);
        if (reader.isSound() && session == m_sessions.end()) {
            reader.fail("session", id + " is not among the sessions");
        } else if (reader.isSound() && m_isMet[session->second]) {
            reader.fail("session", id + " is there twice");
        }
        const auto slot = slotOf(reader);
        if (reader.isSound()) {
            m_isMet[session->second] = true;
            m_plan[session->second] = slot;
        }
    }

    [[nodiscard]] const WeekPlan& plan() const { return m_plan; }

private:
    std::optional<week::Slot> slotOf(ObjectReader& reader) const
    {
        if (reader.required("coach").isNull() && reader.required("start").isNull()) {
            return std::nullopt;
        }
        const std::string id = labelAt(reader, "coach");
        const auto coach = m_coaches.find(id);
        if (reader.isSound() && coach == m_coaches.end()) {
            reader.fail("coach", id + " is not among the coaches");
        }
        const int start = reader.wholeNumber("start", 0, week::kWeekDays * week::kDayMinutes - 1);
        return coach == m_coaches.end() ? std::nullopt : std::optional(week::Slot{coach->second, start});
    }

    std::unordered_map<std::string, std::size_t> m_coaches;
    std::unordered_map<std::string, std::size_t> m_sessions;
    WeekPlan m_plan;
    std::vector<bool> m_isMet;
};

}  // namespace

QJsonObject toJson(const WeekPlan& plan, const WeekProblem& problem, long objective)
{
    QJsonArray entries;
    for (std::size_t i = 0; i < plan.size(); ++i) {
        QJsonObject entry;
        put(entry, "session", textOf(problem.sessions.at(i).id));
        put(entry, "coach", plan[i] ? QJsonValue(textOf(problem.coaches.at(plan[i]->coach).id)) : QJsonValue(QJsonValue::Null));
        put(entry, "start", plan[i] ? QJsonValue(plan[i]->start) : QJsonValue(QJsonValue::Null));
        entries.append(entry);
    }
    QJsonObject object;
    put(object, "instance", textOf(problem.name));
    put(object, "objective", static_cast<qint64>(objective));
    put(object, "plan", entries);
    return object;
}

JsonResult<WeekPlan> readWeekPlan(const QJsonValue& value, const WeekProblem& problem)
{
    ObjectReader reader(value, {});
    reader.allowOnly({"instance", "objective", "plan"});
    PlanEntries entries(problem);
    eachOf(reader, "plan", [&entries](ObjectReader& item) { entries.take(item); });
    return resultOf(reader, entries.plan());
}

}  // namespace chalk::exchange
