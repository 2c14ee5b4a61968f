#pragma once

#include "core/base/date.h"
#include "core/clients/client.h"
#include "core/lifts/catalogue.h"
#include "core/progression/lift_machine.h"
#include "core/sessions/session.h"
#include "core/sessions/warm_up.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace chalk::sessions {

/// A caution as a card says it.
struct CardCaution {
    std::string label;  ///< the body part: `Lower back`
    std::string text;

    bool operator==(const CardCaution&) const = default;
};

/// One set of a card's warm-up, in what the lift is counted in.
struct CardWarmUp {
    base::Load load;
    int amount = 0;  ///< reps, seconds or metres

    bool operator==(const CardWarmUp&) const = default;
};

/// One lift of a card. Amounts are in what the lift is counted in: reps, whole seconds or whole metres.
struct CardLift {
    std::string name;
    progression::PrescriptionKind kind = progression::PrescriptionKind::Work;
    progression::Stage stage = progression::Stage::Pattern;
    int cycle = 1;
    progression::Lever lever = progression::Lever::Movement;  ///< the number that moves today; of no meaning for a hold, a lighter week or one of a plan
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Measure measure = lifts::Measure::Reps;
    lifts::EquipmentKind equipment = lifts::EquipmentKind::None;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    lifts::Station station = lifts::Station::Floor;  ///< where it is done
    int pieces = 1;
    base::Load load;
    int sets = 0;
    int amountLow = 0;   ///< for a rehearsal both amounts are those of one trial
    int amountHigh = 0;
    base::Seconds rest;
    int reserve = 0;
    bool isPauseAsked = false;
    std::optional<base::Date> lighterUntil = {};  ///< the last day of the lighter week that the numbers are of; nothing moves in it
    std::optional<progression::BlockMark> plan = {};  ///< the week of a plan that the numbers are of; nothing moves in a lighter one
    int pauseMs = 0;                           ///< a rehearsal in Control: how long each pause is held at least
    bool isOnBar = false;                      ///< plates go on a bar, `platesPerSide` of them
    std::vector<base::Load> platesPerSide;     ///< heaviest first; empty for the bare bar
    std::vector<CardWarmUp> warmUp;            ///< lightest first
    std::vector<std::string> cues;             ///< of the exercise

    bool operator==(const CardLift&) const = default;
};

/// All that a session card says; how it is worded and drawn is not said here.
struct CardContent {
    base::ClientId client;
    std::string clientName;
    base::Date date;
    int startMinute = 0;
    std::string coachName;
    std::string place;
    std::string sessionCode;
    int sessionNumber = 0;  ///< 58 for the client's 58th session; 0 where it is not counted
    std::vector<CardCaution> cautions;
    std::vector<std::string> drills;  ///< names of unloaded exercises to warm up with
    std::vector<CardLift> lifts;

    bool operator==(const CardContent&) const = default;
};

/// A lift as it stands on the day of the session. Points at what the caller keeps.
struct LiftDue {
    const lifts::Exercise* exercise = nullptr;
    const progression::LiftMachine* machine = nullptr;
};

/// What a card is made from. The values are the caller's and only read.
struct CardRequest {
    const clients::Client& client;
    const Session& session;
    std::string coachName;
    int sessionNumber = 0;
    std::span<const clients::Caution> cautions;  ///< those past their last day are left out
    std::span<const LiftDue> lifts;              ///< in the order of the card
    const lifts::Catalogue& catalogue;
};

/// The card of a session: each lift's prescription on its day, plates, warm-up, and the cautions in force. Whether the client may
/// train at all (see clients::isBlocked) is for the caller to ask.
[[nodiscard]] CardContent cardContentOf(const CardRequest& request);

/// The same card with `J. F.` in place of the client's name: for paper that lies open. The coach's name stays.
[[nodiscard]] CardContent withInitials(CardContent card);

}  // namespace chalk::sessions
