#pragma once

#include "core/base/id.h"
#include "core/checkin/client_flags.h"
#include "core/checkin/phase.h"
#include "core/checkin/roster_order.h"
#include "core/clients/client.h"
#include "core/lifts/pattern.h"
#include "core/progression/stage.h"
#include "ui/common/attendance_dots.h"
#include "ui/common/lift_strip.h"
#include "ui/common/sparkline.h"
#include "ui/common/tags.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace chalk::ui::roster {

/// One lift as the peek lists it.
struct PeekLift {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    QString name;   ///< of the exercise
    progression::Stage stage = progression::Stage::Pattern;
    int cycle = 1;
    QString note;   ///< `since 2 Nov`, `on hold`
};

/// A client's line of the roster, ready to be painted: no cell works anything out.
struct RosterRow {
    base::ClientId client;
    base::CoachId coach;
    QString name;
    QString detail;                         ///< `45 · Strong, back-safe`
    QString when;                           ///< `Today 09:00`
    QString where;                          ///< `Rack 1 · 3 of 4`
    common::LiftStripView strip;
    common::AttendanceView attendance;
    common::SparklineView load;
    std::vector<checkin::ClientFlag> flags; ///< the most pressing first
    checkin::Phase phase = checkin::Phase::NotScreened;
    checkin::RosterPosition position;
    QStringList searchWords;                ///< folded words of name, goal, lifts and flags; see folded()

    // for the peek
    QString coachName;
    QString lastCame;                       ///< `Last here Tue 17 Nov`; empty where never
    QStringList cautions;
    std::vector<PeekLift> lifts;            ///< by pattern

    [[nodiscard]] bool isAway() const;
};

/// A line of what needs attention today.
struct AttentionItem {
    base::ClientId client;
    QString name;
    checkin::ClientFlag flag = checkin::ClientFlag::Pain;
    QString sentence;                      ///< why, with the numbers and dates
    QString action;                        ///< `Look at the lift`: what choosing the item does
    QString tab;                           ///< the part of the client page that settles it, by its key; empty for the board
    std::optional<lifts::Pattern> lift;
    checkin::RosterPosition position;
};

/// Everything that the roster shows.
struct RosterView {
    int sessionsToday = 0;                 ///< slots, not clients
    std::vector<clients::Coach> coaches;   ///< those with clients, by name
    std::vector<RosterRow> rows;           ///< by name
    std::vector<AttentionItem> attention;  ///< the most pressing first; of one kind those due today first, by time
};

/// A flag's icon, word and colours.
[[nodiscard]] common::FlagTagView tagOf(checkin::ClientFlag flag);

/// Text as it is compared while searching: no case, no accents.
[[nodiscard]] QString folded(const QString& text);

}  // namespace chalk::ui::roster
