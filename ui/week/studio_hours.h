#pragma once

#include "core/clients/client.h"
#include "core/store/database.h"
#include "core/store/week_settings.h"
#include "core/week/studio_week.h"

#include <QString>

#include <map>
#include <vector>

namespace chalk::ui::common {
class Dialogs;
}

namespace chalk::ui::week {

/// The hours, the closures and the stations that weeks are planned from, read and written at once: there is nothing to save. No widget.
class StudioHours {
public:
    /// Both outlive this. Where somebody else set the same thing since it was read, the person decides in `dialogs`.
    StudioHours(store::Database& database, common::Dialogs& dialogs) : m_database(database), m_dialogs(dialogs) {}

    /// Closures are those that end on `today` or later.
    void read(base::Date today);
    /// Why something could not be read or written; empty where all went well.
    [[nodiscard]] const QString& refusal() const { return m_refusal; }

    [[nodiscard]] const chalk::week::StudioWeek& studio() const { return m_studio; }
    [[nodiscard]] const std::vector<clients::Coach>& coaches() const { return m_coaches; }
    [[nodiscard]] const std::vector<store::KeptClosure>& closures() const { return m_closures; }
    /// Of a coach who has no hours of their own: the studio's.
    [[nodiscard]] clients::WeekHours hoursOf(base::CoachId coach) const;
    [[nodiscard]] chalk::week::CoachWork workOf(base::CoachId coach) const;

    // Each is false where it was refused, or given up for what somebody else set; then nothing of it is written. What is there now is read again.
    bool setOpen(const clients::WeekHours& open);
    bool setUnits(lifts::Station station, int units);
    bool setHours(base::CoachId coach, const clients::WeekHours& hours);
    bool setCapacity(base::CoachId coach, int capacity);
    bool addClosure(const chalk::week::Closure& closure);
    bool removeClosure(std::int64_t id);

private:
    template <class Outcome>
    bool done(const Outcome& outcome);
    bool setStudio(chalk::week::StudioWeek studio);
    bool setWork(base::CoachId coach, chalk::week::CoachWork work);

    store::Database& m_database;
    common::Dialogs& m_dialogs;
    base::Date m_today;
    chalk::week::StudioWeek m_studio;
    std::vector<clients::Coach> m_coaches;
    std::map<base::CoachId, chalk::week::CoachWork> m_work;
    std::vector<store::KeptClosure> m_closures;
    QString m_refusal;
};

/// A closure with its days: `Thu 24 Dec – Sat 2 Jan · Closed all day: Between the years`.
[[nodiscard]] QString closureLine(const chalk::week::Closure& closure, const std::vector<clients::Coach>& coaches);

}  // namespace chalk::ui::week
